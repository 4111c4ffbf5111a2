package lanewarden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What the pages of {@code hardware-notes} have in common: sources, links, an index. */
class NotesPagesTest {
  /** Tables of words, without a figure of our own computing. */
  private static final Set<String> WORDS =
      Set.of(
          "read",
          "levels",
          "what `listen` shows",
          "system",
          "what you see",
          "limit",
          "gates",
          "part");

  /** Tables which {@code NotedSentencesTest} checks. */
  private static final Set<String> SENTENCES = Set.of("baud", "the line", "time over 609.6 mm");

  /** Where a figure of the text is from, if it is not in a table of its page. */
  private static final Pattern SOURCE =
      Pattern.compile(
          "[Ff]rom memory|[Cc]ommon practice|[Oo]wn choice|OIML R 91|ASTM F1544|Ortiz et al\\.|national body");

  private static final Pattern FIGURE =
      Pattern.compile(
          "[0-9][0-9.,]*(?: |-)(?:%|ft/s|m/s|km/h|µs|ms|mm|m|in|V|mA|baud|kg/m³|MHz)(?![A-Za-z])");

  @Test
  void noTableGoesUnchecked() {
    Set<String> known = new TreeSet<>(WORDS);
    known.addAll(SENTENCES);
    known.addAll(ReferenceTimerTest.BUDGETS);
    known.addAll(HardwareNotesTest.rowTables());
    known.addAll(Set.of("what", "shot"));
    assertEquals(
        known, Notes.tables().stream().map(Notes.Table::title).collect(Collectors.toSet()));
  }

  @Test
  void aFigureInTheTextIsInATableOfItsPageOrHasItsSource() {
    List<String> unfounded = new ArrayList<>();
    for (String page : Notes.pages()) {
      String tables =
          Notes.tables().stream()
              .filter(t -> t.page().equals(page))
              .map(t -> t.head() + " " + Notes.lines(t.rows()))
              .collect(Collectors.joining("\n"));
      for (String paragraph : Notes.paragraphs(page)) {
        FIGURE
            .matcher(paragraph)
            .results()
            .map(r -> r.group())
            .filter(figure -> !SOURCE.matcher(paragraph).find() && !tables.contains(figure))
            .forEach(figure -> unfounded.add(page + ": " + figure + " in: " + paragraph));
      }
    }
    assertEquals(List.of(), unfounded);
  }

  @Test
  void everyLinkLeadsSomewhere() {
    Pattern link = Pattern.compile("\\]\\(([^)#]+)\\)|`((?:config|src|hardware-notes)/[^`]*)`");
    List<String> links = new ArrayList<>();
    for (String page : Notes.pages()) {
      link.matcher(Notes.text(page))
          .results()
          .map(r -> r.group(1) == null ? r.group(2) : r.group(1))
          .forEach(links::add);
    }
    assertTrue(links.size() > 20);
    assertEquals(List.of(), links.stream().filter(l -> !Notes.leadsSomewhere(l)).toList());
  }

  @Test
  void theIndexNamesEveryPage() {
    List<String> listed = Notes.table("read").column(0);
    assertEquals(
        Notes.pages().stream().filter(p -> !p.equals("README.md")).collect(Collectors.toSet()),
        listed.stream().map(l -> l.replaceAll(".*\\(|\\)", "")).collect(Collectors.toSet()));
  }
}
