package lanewarden.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import lanewarden.chronograph.Capture;
import lanewarden.journal.Check;
import lanewarden.journal.Outcome;
import lanewarden.journal.Standing;
import lanewarden.ledger.Verification;
import lanewarden.roster.Competitor;
import lanewarden.roster.Roster;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's morning, played through the real station and compared with outcomes found by hand. */
class MorningTest {
  private static final Path DEMO = Path.of("demo-data");

  @TempDir Path here;

  @Test
  void everyCompetitorHasTheOutcomeThatTheRulesDemand() throws Exception {
    DemoEvent demo = DemoEvent.in(here.resolve("demo"), PracticeEvent.here());
    play(demo);
    Map<String, String> found = new TreeMap<>();
    standing(demo).forEach((bib, checks) -> found.put(bib, row(checks)));
    assertEquals(expected(), found);
  }

  @Test
  void everyCapturedSectionBelongsToACompetitor() throws Exception {
    Capture capture =
        Capture.read("gate-timer.capture", Files.readAllBytes(DEMO.resolve("gate-timer.capture")));
    TreeSet<String> bibs = new TreeSet<>();
    capture.labels().forEach(label -> bibs.add(label.split("/", 2)[0]));
    Roster roster = Roster.read("roster.csv", Files.readAllBytes(DEMO.resolve("roster.csv")));
    assertEquals(new TreeSet<>(roster.competitors().stream().map(Competitor::bib).toList()), bibs);
  }

  /** Obeys the script as the line does; the words of the terminal have tests of their own. */
  private void play(DemoEvent demo) throws Exception {
    try (CheckInLine line =
        CheckInLine.open(demo.folder(), java.util.Optional.empty(), 0, PracticeEvent.here())) {
      Station station = line.station();
      station.signIn(DemoEvent.OFFICIAL, DemoEvent.PASSPHRASE.toCharArray());
      for (String typed : DemoEvent.script()) {
        String[] words = typed.split(" ", 2);
        switch (words[0]) {
          case "", "#", "status" -> {}
          case "wait" -> line.awaitArrows(Duration.ZERO);
          case "void" -> station.officiating().declareLastVoid(words[1]);
          case "typed" -> station.type(words[1]);
          case "tick" -> station.officiating().tickAll();
          case "setup" ->
              station.officiating().state(new SetUpText("", words[1].replace("draw ", ""), ""));
          case "end" -> station.endCheck(words[1]);
          case "next" -> station.next();
          case "close" -> station.closeLine("");
          default -> station.call(typed);
        }
      }
    }
  }

  private Map<String, List<Check>> standing(DemoEvent demo) throws Exception {
    Standing standing = new Standing();
    Verification verification =
        Verification.of(
            demo.folder().ledger(),
            List.of(),
            examined -> {
              try {
                standing.apply(examined.entry());
              } catch (lanewarden.journal.FactRefused e) {
                throw new AssertionError(e);
              }
            });
    assertTrue(verification.sound(), verification.faults().toString());
    Map<String, List<Check>> byBib = new TreeMap<>();
    for (Check check : standing.checks()) {
      assertTrue(check.isClosed(), check.opened().bib() + " left the line");
      byBib.computeIfAbsent(check.opened().bib(), b -> new ArrayList<>()).add(check);
    }
    return byBib;
  }

  /** Checks, last outcome, readings, void ones among them, refused lines. */
  private static String row(List<Check> checks) {
    Check last = checks.get(checks.size() - 1);
    return String.format(
        Locale.ROOT,
        "%d %s %d %d %d",
        checks.size(),
        last.outcome().map(Outcome::word).orElse("none"),
        checks.stream().mapToInt(c -> c.shots().size()).sum(),
        checks.stream().mapToLong(c -> c.shots().stream().filter(s -> !s.stands()).count()).sum(),
        checks.stream().mapToInt(c -> c.refused().size()).sum());
  }

  private static Map<String, String> expected() throws Exception {
    Map<String, String> expected = new TreeMap<>();
    try (CsvReader<NamedCsvRecord> rows =
        CsvReader.builder().ofNamedCsvRecord(DEMO.resolve("expected-outcomes.csv"))) {
      for (NamedCsvRecord row : rows) {
        expected.put(
            row.getField("bib"),
            String.join(
                " ",
                row.getField("checks"),
                row.getField("outcome"),
                row.getField("readings"),
                row.getField("voided"),
                row.getField("refused")));
      }
    }
    return expected;
  }
}
