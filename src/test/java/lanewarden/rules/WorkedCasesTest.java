package lanewarden.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import lanewarden.quantity.MeanSpeed;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WorkedCasesTest {

  private static Division division(String lines) throws Exception {
    String toml =
        "format = 1\n[event]\nname = \"T\"\nedition = \"1\"\n[[division]]\ncode = \"T\"\nname = \"T\"\n"
            + lines;
    return RuleBook.read("test", toml.getBytes(StandardCharsets.UTF_8)).divisions().get(0);
  }

  private static String outcomes(Division division) {
    return division.workedCases().stream()
        .map(
            c ->
                c.name().english()
                    + ": "
                    + (c.verdict().takesShots() ? "shots" : c.verdict().word()))
        .collect(Collectors.joining(", "));
  }

  @ParameterizedTest
  @ValueSource(strings = {"mean", "highest", "median", "k of n\"\nwithin = \"2", "first within"})
  void insideEdgeAndOutsideAreWhatTheyAreCalled(String decide) throws Exception {
    for (int counted = 1; counted <= 5; counted++) {
      boolean some = decide.startsWith("k of n");
      if (some && counted < 2) {
        continue;
      }
      String decision = some ? "decide = \"k of n\"\nwithin = 2" : "decide = \"" + decide + "\"";
      Division division =
          division(
              "limit = \"300 ft/s\"\ntolerance = \"3 %\"\nrechecks = 0\n"
                  + decision
                  + "\ncounted = "
                  + counted
                  + "\nshots = 6\nvoids = 0\n");
      assertEquals(
          "inside: within, at the edge: within, outside: over",
          outcomes(division),
          decide + counted);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"mean", "highest", "median", "first within"})
  void aVerySlowLimitHasCasesToo(String decide) throws Exception {
    Division division =
        division(
            "limit = \"10 ft/s\"\ntolerance = \"none\"\nrechecks = 0\ndecide = \""
                + decide
                + "\"\ncounted = 3\nshots = 3\nvoids = 0\n");
    assertTrue(outcomes(division).startsWith("inside: within, at the edge: within"), decide);
  }

  @Test
  void theEdgeOfAMeanIsExactlyTheAllowedSpeed() throws Exception {
    Division division =
        division(
            "limit = \"300 ft/s\"\ntolerance = \"3 %\"\nrechecks = 0\ndecide = \"mean\"\n"
                + "counted = 3\nshots = 3\nvoids = 0\n");
    List<Speed> readings = division.workedCases().get(1).readings();
    assertEquals(0, MeanSpeed.of(readings).compareTo(Speed.parse("309 ft/s")));
    assertTrue(readings.stream().distinct().count() > 1, "readings that differ show more");
  }

  @Test
  void whatEqualsTheEdgeIsOverWhereTheRuleSaysBelow() throws Exception {
    Division division =
        division(
            "limit = \"300 ft/s\"\nbound = \"below\"\ntolerance = \"none\"\nrechecks = 0\n"
                + "decide = \"highest\"\ncounted = 2\nshots = 2\nvoids = 0\n");
    assertEquals("inside: within, at the edge: within, outside: over", outcomes(division));
    assertEquals("299.9 ft/s", highest(division, 1));
    assertEquals("300.0 ft/s", highest(division, 2));
  }

  private static String highest(Division division, int place) {
    return division.workedCases().get(place).readings().stream()
        .max(Speed::compareTo)
        .orElseThrow()
        .toString();
  }

  // by hand: the fastest reading of one decimal, or of the step's, that is still within, and the
  // next
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "round-reading = \"nearest 1 ft/s\" | 300.4 ft/s | 300.5 ft/s",
        "round-reading = \"down to 1 ft/s\" | 300.9 ft/s | 301.0 ft/s",
        "bound = \"below\";round-reading = \"nearest 1 ft/s\" | 299.4 ft/s | 299.5 ft/s",
        "bound = \"below\";round-reading = \"down to 5 ft/s\" | 299.9 ft/s | 300.0 ft/s",
        "round-reading = \"down to 0.25 ft/s\" | 300.24 ft/s | 300.25 ft/s",
        // 91.745 m/s and more is rounded to 92 m/s, 301.8 ft/s; 91.4 m/s is 299.87 ft/s
        "round-reading = \"nearest 0.1 m/s\" | 300.0 ft/s | 300.1 ft/s",
        "bow-correction = \"0.5 %\" | 298.5 ft/s | 298.6 ft/s",
        "bow-correction = \"0.5 %\";acceptance = \"guarded rejection\";guard = \"0.5 ft/s\";"
            + "round-reading = \"down to 0.1 ft/s\" | 299.1 ft/s | 299.2 ft/s",
        "jump = \"1 ft/s\" | 300.0 ft/s | 300.1 ft/s",
        "outlier = \"Grubbs at 20 %\";outlier-least = \"0.1 ft/s\" | 300.0 ft/s | 300.1 ft/s",
        "spread = \"0.1 ft/s\" | 300.0 ft/s | 300.1 ft/s"
      })
  void theEdgeIsTheFastestReadingThatPassesAfterTreatment(String lines, String edge, String outside)
      throws Exception {
    for (String decide : List.of("highest", "median", "mean", "first within")) {
      Division division =
          division(
              "limit = \"300 ft/s\"\ntolerance = \"none\"\nrechecks = 0\ndecide = \""
                  + decide
                  + "\"\ncounted = 3\nshots = 3\nvoids = 0\n"
                  + lines.replace(';', '\n')
                  + "\n");
      assertEquals(
          "inside: within, at the edge: within, outside: over", outcomes(division), decide);
      assertEquals(edge, deciding(division, 1), decide);
      assertEquals(outside, deciding(division, 2), decide);
    }
  }

  /** The reading that the others lie about, which is the last. */
  private static String deciding(Division division, int place) {
    List<Speed> readings = division.workedCases().get(place).readings();
    return readings.get(readings.size() - 1).toString();
  }

  @Test
  void noCaseIsNamedForAVerdictThatItDoesNotHave() {
    for (int i = 0; i < 300; i++) {
      RandomRule random = new RandomRule(new Random(i));
      for (WorkedCase one : WorkedCases.of(random.rule())) {
        String verdict = one.verdict().word();
        Worked name = one.name();
        if (name == Worked.INSIDE || name == Worked.EDGE) {
          assertEquals("within", verdict, () -> random + " " + one.inWords());
        } else if (name.english().contains("outside")) {
          assertEquals("over", verdict, () -> random + " " + one.inWords());
        }
      }
      List<Worked> names = WorkedCases.of(random.rule()).stream().map(WorkedCase::name).toList();
      assertTrue(
          names.containsAll(List.of(Worked.INSIDE, Worked.EDGE, Worked.OUTSIDE)), random::toString);
    }
  }

  @Test
  void whatIsFurtherOutsideLiesInTheLastBandOrIsNotTold() throws Exception {
    String banded =
        "limit = \"300 ft/s\"\ntolerance = \"none\"\nrechecks = 1\ncounted = 3\nshots = 3\nvoids = 0\n"
            + "round-reading = \"down to 1 ft/s\"\nbands = [\"up to 0.6 ft/s: re-check\", \"up to 1"
            + " ft/s: barred\"]\ndecide = ";
    // 300.8 in the middle is rounded down to 300 and within; 301.9 is still in the band
    assertEquals("301.9 ft/s", deciding(division(banded + "\"mean\"\n"), 3));
  }

  @Test
  void everyClauseOfBowAndArrowHasItsCases() throws Exception {
    Division division =
        division(
            "limit = \"280 ft/s\"\ntolerance = \"3 %\"\nonly-below = \"5 gr/lb\"\n"
                + "least-arrow = \"4 gr/lb\"\nleast-draw-weight = \"30 lbf\"\n"
                + "most-draw-weight = \"60 lbf\"\ndraw-weight = \"greater\"\nrechecks = 0\n"
                + "decide = \"mean\"\ncounted = 3\nshots = 3\nvoids = 0\n");
    assertEquals(
        "inside: within, at the edge: within, outside: over, heavy arrow: within,"
            + " lightest arrow admitted: shots, arrow too light: not admitted,"
            + " bow too weak: not admitted, bow too strong: not admitted",
        outcomes(division));
  }

  @Test
  void anArrowIsWorkedOutForAnEnergyLimit() throws Exception {
    Division division =
        division(
            "limit = \"none\"\nenergy = \"165 J\"\nrechecks = 0\n"
                + "decide = \"highest\"\ncounted = 1\nshots = 1\nvoids = 0\n");
    assertEquals("inside: within, at the edge: within, outside: over", outcomes(division));
    assertTrue(
        division
            .workedCases()
            .get(0)
            .inWords()
            .toString()
            .startsWith("inside (arrow 400 gr; readings "));
  }

  @Test
  void nothingIsWorkedOutWhereNothingIsChecked() throws Exception {
    assertEquals(List.of(), division("limit = \"none\"\n").workedCases());
    assertEquals(
        List.of(),
        division("limit = \"300 ft/s\"\ntolerance = \"none\"\nwho = \"not measured\"\n")
            .workedCases());
  }

  @Test
  void aHeavyArrowShowsTheEnergyLimitBesideASpeedLimit() throws Exception {
    Division division =
        division(
            "limit = \"300 ft/s\"\ntolerance = \"none\"\nenergy = \"80 ft·lbf\"\nrechecks = 0\n"
                + "decide = \"mean\"\ncounted = 3\nshots = 3\nvoids = 0\n");
    assertEquals(
        "inside: within, at the edge: within, outside: over, outside, heavy arrow: over",
        outcomes(division));
    assertTrue(
        division.workedCases().get(3).verdict().reason().contains(" ft·lbf), limit 80 ft·lbf for"),
        () -> division.workedCases().get(3).inWords().toString());
  }

  @Test
  void whatIsOverShowsWhatFollowsInItsBand() throws Exception {
    List<WorkedCase> cases =
        division(
                "limit = \"280 ft/s\"\ntolerance = \"none\"\nrechecks = 1\n"
                    + "bands = [\"up to 1 %: re-check\", \"up to 10 ft/s: barred\"]\n"
                    + "decide = \"highest\"\ncounted = 1\nshots = 1\nvoids = 0\n")
            .workedCases();
    assertEquals(
        "over, reading 280.1 ft/s, limit 280 ft/s; over by up to 1 %: a re-check, while one is left",
        cases.get(2).outcome().toString());
    // (282.8 + 290) / 2 = 286.4
    assertEquals(
        "further outside (readings 286.4 ft/s): over, reading 286.4 ft/s, limit 280 ft/s;"
            + " over by up to 10 ft/s: the archer is barred from the event",
        cases.get(3).inWords().toString());
  }
}
