package lanewarden.audit.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Fact;
import lanewarden.journal.Interpreter;
import lanewarden.journal.Interpreter.Interpretation;
import lanewarden.journal.LinePapers;
import lanewarden.ledger.Entry;

/**
 * Looks whether the line was opened with other papers than before, and what that did: every reading
 * and every refused line is read by the papers of the openings before as well.
 *
 * <p>Whoever is at the table may change the papers between two openings, for good reasons and for
 * bad ones; the difference is for whoever doubts. Owned by one thread.
 */
final class PapersExaminer {
  /** How many of a sort are told with what they say; the others are only numbered. */
  private static final int TOLD = 12;

  private final Interpreter interpreter;
  private final List<Finding> findings;
  private final List<Era> eras = new ArrayList<>();

  /** Openings one after the other with the same papers. */
  private static final class Era {
    private final LinePapers papers;
    private final Interpretation interpretation;
    private final String signer;
    private final List<Long> openings = new ArrayList<>();
    private final Map<Era, Differences> against = new LinkedHashMap<>();

    private Era(LinePapers papers, Interpretation interpretation, String signer) {
      this.papers = papers;
      this.interpretation = interpretation;
      this.signer = signer;
    }

    private long first() {
      return openings.get(0);
    }
  }

  /** What the papers of an earlier era make of what came in a later one. */
  private static final class Differences {
    private final Told readings = new Told();
    private final Told refused = new Told();
  }

  /** Entries with what they would have been. */
  private static final class Told {
    private final List<Long> entries = new ArrayList<>();
    private final List<String> words = new ArrayList<>();

    private void add(long entry, String is, String would) {
      entries.add(entry);
      if (words.size() < TOLD) {
        words.add("entry " + entry + ": " + is + would);
      }
    }

    private String inWords() {
      return String.join("; ", words)
          + (entries.size() > words.size()
              ? "; and entries " + Wording.numbers(entries.subList(words.size(), entries.size()))
              : "");
    }
  }

  PapersExaminer(Interpreter interpreter, List<Finding> findings) {
    this.interpreter = interpreter;
    this.findings = findings;
  }

  /** Looks at a fact. */
  void examine(Entry entry, Fact fact) {
    if (fact instanceof Fact.StationOpened opened) {
      opened(entry, new LinePapers(opened));
    } else if (fact instanceof Fact.ReadingTaken taken) {
      compare(
          papers -> papers.otherwise(taken),
          (differences, would) ->
              differences.readings.add(
                  entry.sequence(), "signed as " + taken.speed() + ", by them ", would));
    } else if (fact instanceof Fact.VerificationShot shot) {
      compare(
          papers -> papers.otherwise(shot),
          (differences, would) ->
              differences.readings.add(
                  entry.sequence(), "signed as " + shot.speed() + ", by them ", would));
    } else if (fact instanceof Fact.LineRefused line && nowRefuses(line)) {
      compare(
          papers -> papers.otherwise(line),
          (differences, would) -> differences.refused.add(entry.sequence(), "", would));
    }
  }

  private void opened(Entry entry, LinePapers papers) {
    Era last = eras.isEmpty() ? null : eras.get(eras.size() - 1);
    if (last == null || !last.papers.equals(papers)) {
      last = new Era(papers, interpreter.of(papers.opened()), entry.signer());
      eras.add(last);
    }
    last.openings.add(entry.sequence());
  }

  /** Whether the papers in force give no reading either: a line may be refused for its time too. */
  private boolean nowRefuses(Fact.LineRefused line) {
    return !eras.isEmpty() && eras.get(eras.size() - 1).interpretation.otherwise(line).isEmpty();
  }

  private interface Note {
    void take(Differences differences, String would);
  }

  /** Notes it under the first earlier papers by which it is something else. */
  private void compare(Function<Interpretation, Optional<String>> reading, Note note) {
    for (int i = 0; i < eras.size() - 1; i++) {
      Era now = eras.get(eras.size() - 1);
      Era before = eras.get(i);
      if (before.papers.readsAs(now.papers)) {
        continue;
      }
      Optional<String> would = reading.apply(before.interpretation);
      if (would.isPresent()) {
        note.take(now.against.computeIfAbsent(before, b -> new Differences()), would.get());
        return;
      }
    }
  }

  /** Tells it when the last entry is folded and all names are known. */
  void finish(Map<String, String> names) {
    for (int i = 1; i < eras.size(); i++) {
      Era before = eras.get(i - 1);
      Era now = eras.get(i);
      List<Long> entries =
          new ArrayList<>(List.of(before.openings.get(before.openings.size() - 1)));
      entries.addAll(now.openings);
      String words =
          Wording.capital(signed(now, names))
              + " opened the line with other papers in entry "
              + now.first()
              + " than "
              + signed(before, names)
              + " in entry "
              + entries.get(0)
              + ". "
              + now.papers.changedFrom(before.papers).stream()
                  .map(Wording::capital)
                  .collect(Collectors.joining("; "))
              + "."
              + now.against.entrySet().stream()
                  .map(e -> effect(e.getKey(), e.getValue(), entries))
                  .collect(Collectors.joining());
      findings.add(new Finding(Kind.PAPERS, entries, words));
    }
  }

  private static String signed(Era era, Map<String, String> names) {
    String name = names.get(era.signer);
    return name == null ? "a key that nobody enrolled" : Wording.quoted(name);
  }

  private static String effect(Era before, Differences found, List<Long> entries) {
    entries.addAll(found.readings.entries);
    entries.addAll(found.refused.entries);
    StringBuilder words = new StringBuilder();
    if (!found.readings.entries.isEmpty()) {
      int count = found.readings.entries.size();
      words
          .append(" By the papers of entry ")
          .append(before.first())
          .append(", ")
          .append(Wording.count(count, "reading"))
          .append(count == 1 ? " is" : " are")
          .append(" something else: ")
          .append(found.readings.inWords())
          .append('.');
    }
    if (!found.refused.entries.isEmpty()) {
      int count = found.refused.entries.size();
      words
          .append(" By the papers of entry ")
          .append(before.first())
          .append(", ")
          .append(Wording.count(count, "refused line"))
          .append(count == 1 ? " is a reading: " : " are readings: ")
          .append(found.refused.inWords())
          .append('.');
    }
    return words.toString();
  }
}
