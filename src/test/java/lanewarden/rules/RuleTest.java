package lanewarden.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class RuleTest {
  private static final Speed LIMIT = Speed.parse("300 ft/s");
  private static final ShotPlan THREE = new ShotPlan(3, 4, 1);

  private static Rule rule(Tolerance tolerance, Decision decision, int rechecks) {
    return Cases.rule(LIMIT, tolerance, THREE, decision, rechecks);
  }

  @Test
  void allowedSpeedIsExactAndInTheGoverningUnit() {
    Speed allowed = Cases.rule("91.5 m/s", "1 %", "mean", 3, 3, 0).speed().orElseThrow().allowed();
    assertEquals(0, allowed.compareTo(Speed.parse("92.415 m/s")));
    assertEquals(SpeedUnit.METRES_PER_SECOND, allowed.unit());
  }

  /** The figure that decided, in ft/s. */
  private static String figure(Rule rule, String shots) {
    List<Shot> taken = Cases.shots(shots);
    return rule.decidingFigure(Cases.judge(rule, taken), SetUp.unknown(), taken)
        .map(mean -> mean.to(SpeedUnit.FEET_PER_SECOND, 1).value().toPlainString())
        .orElse("none");
  }

  @Test
  void tellsTheFigureThatDecidedAtItsEdgeNearestToTheLimit() {
    Rule mean = Cases.rule("300 ft/s", "none", "mean", 3, 4, 1);
    assertEquals("300.0", figure(mean, "299 void 300 301"));
    assertEquals("none", figure(mean, "299 300"));
    Rule highest = Cases.rule("300 ft/s", "none", "highest", 3, 3, 0);
    assertEquals("302.0", figure(highest, "299 302"));
    assertEquals("299.5", figure(highest, "299 298 299.5"));
    Rule first = Cases.rule("300 ft/s", "none", "first within", 3, 3, 0);
    assertEquals("299.0", figure(first, "304 299"));
    assertEquals("301.0", figure(first, "304 301 302"));
    Rule median = Cases.rule("300 ft/s", "none", "median", 3, 3, 0);
    assertEquals("301.0", figure(median, "301 305"));
    Rule two = Cases.rule("300 ft/s", "none", "k of n 2", 3, 3, 0);
    assertEquals("299.0", figure(two, "299 298"));
  }

  @Test
  void readingVoidedLaterIsJudgedAnew() {
    Rule rule = Cases.rule("300 ft/s", "none", "highest", 2, 3, 1);
    List<Shot> shots = new ArrayList<>(Cases.shots("301 299"));
    assertEquals("over", Cases.judge(rule, shots).word());
    shots.set(0, new Shot.Voided());
    assertEquals("not decided", Cases.judge(rule, shots).word());
    shots.addAll(Cases.shots("300"));
    assertEquals("within", Cases.judge(rule, shots).word());
  }

  @Test
  void readingVoidedLateDoesNotLetOffWhoIsOverByTheOthers() {
    Rule rule = Cases.rule("280 ft/s", "none", "highest", 3, 3, 0);
    assertEquals("over", Cases.judge(rule, Cases.shots("270 283")).word());
    assertEquals(
        "over: reading 283 ft/s, limit 280 ft/s", told(Cases.judge(rule, Cases.shots("void 283"))));
    assertEquals("not decided", Cases.judge(rule, Cases.shots("void 279")).word());
    assertEquals("not decided", Cases.judge(rule, Cases.shots("270 void")).word());
  }

  private static String told(Verdict verdict) {
    return verdict.word() + ": " + verdict.reason();
  }

  @Test
  void readingVoidedLateDoesNotEndAnUndecidedCheckAsWithin() {
    Rule rule = Cases.rule("280 ft/s", "none", "highest", 2, 3, 0);
    assertEquals("within", Cases.judge(rule, Cases.shots("270 271")).word());
    assertEquals("not decided", Cases.judge(rule, Cases.shots("void 271 272")).word());
  }

  @Test
  void voidsAreCountedAfterAllThatWereTaken() {
    Rule rule = Cases.rule("300 ft/s", "none", "mean", 3, 3, 0);
    assertEquals(
        new Verdict.NotDecided(new Missing.VoidsSpent(2, 0)),
        Cases.judge(rule, Cases.shots("void 299 void")));
  }

  @Test
  void checkEndsWithTheLastShotThatCouldHaveDecided() {
    Rule rule = Cases.rule("300 ft/s", "none", "k of n 2", 3, 3, 1);
    assertEquals(
        new Verdict.NotDecided(new Missing.MoreReadings(1)),
        Cases.judge(rule, Cases.shots("301 void")));
    assertEquals(
        new Verdict.NotDecided(new Missing.ShotsSpent(0, 3, 1)),
        Cases.judge(rule, Cases.shots("301 void 299")));
    assertEquals("over", Cases.judge(rule, Cases.shots("301 void 301")).word());
  }

  @Test
  void onlyWaitingForReadingsKeepsTheCheckOpen() {
    Sentence fact = Sentence.verbatim("fact");
    assertTrue(new Verdict.Within(fact).ends());
    assertTrue(new Verdict.Over(fact).ends());
    assertTrue(new Verdict.NotAdmitted(fact).ends());
    assertTrue(new Verdict.NotDecided(new Missing.ShotsSpent(0, 3, 1)).ends());
    assertTrue(new Verdict.NotDecided(new Missing.VoidsSpent(1, 0)).ends());
    assertFalse(new Verdict.NotDecided(new Missing.MoreReadings(1)).ends());
  }

  @Test
  void otherClauseIsTheReasonOfNotAdmitted() {
    Verdict verdict =
        new Verdict.NotAdmitted(Sentence.verbatim("arrow of 250 gr, at least 300 gr asked for"));
    assertEquals("not admitted", verdict.word());
    assertEquals("arrow of 250 gr, at least 300 gr asked for", verdict.reason());
  }

  @Test
  void toleranceInAnotherUnitIsRefused() {
    Tolerance metres = new Tolerance.Absolute(Speed.parse("1 m/s"));
    assertThrows(IllegalArgumentException.class, () -> rule(metres, new Decision.Mean(), 0));
  }

  @Test
  void moreWithinThanCountedIsRefused() {
    Decision four = new Decision.WithinCount(4);
    assertThrows(IllegalArgumentException.class, () -> rule(new Tolerance.None(), four, 0));
    assertThrows(IllegalArgumentException.class, () -> new Decision.WithinCount(0));
  }

  @Test
  void negativeRechecksAreRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> rule(new Tolerance.None(), new Decision.Mean(), -1));
  }

  @Test
  void limitOfZeroIsRefused() {
    Speed zero = Speed.parse("0 ft/s");
    assertThrows(
        IllegalArgumentException.class,
        () -> Cases.rule(zero, new Tolerance.None(), THREE, new Decision.Mean(), 0));
  }

  @ParameterizedTest
  @CsvSource({"0, 3, 0", "3, 2, 0", "3, 3, -1"})
  void impossibleShotPlanIsRefused(int counted, int allowed, int voids) {
    assertThrows(IllegalArgumentException.class, () -> new ShotPlan(counted, allowed, voids));
  }

  static List<String> rulesInWords() throws IOException {
    return Files.readAllLines(Path.of("src/test/resources/lanewarden/rules/rules-in-words.txt"))
        .stream()
        .filter(line -> !line.startsWith("#"))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("rulesInWords")
  void saysItselfInPlainSentences(String line) {
    String[] part = line.split(" \\| ", -1);
    Rule rule =
        Cases.rule(
            part[0],
            part[1],
            part[2],
            Integer.parseInt(part[3]),
            Integer.parseInt(part[4]),
            Integer.parseInt(part[5]));
    assertEquals(part[6], rule.inWords());
  }

  @Test
  void saysHowManyRechecksThereAre() {
    String none = rule(new Tolerance.None(), new Decision.Mean(), 0).inWords();
    String two = rule(new Tolerance.None(), new Decision.Mean(), 2).inWords();
    assertTrue(none.endsWith(" No re-check after a fail."), none);
    assertTrue(
        two.endsWith(
            " After a fail before the event, 2 re-checks are allowed; during and after it, a judge"
                + " rules."),
        two);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "fail-during = \"re-check\" | Where a fail brings a re-check, 1 re-check is allowed."
            + " A fail before the event: a re-check, while one is left."
            + " A fail during the event: a re-check, while one is left."
            + " A fail after the event: a judge rules.",
        "fail-before = \"barred\" | No re-check after a fail."
            + " A fail before the event: the archer is barred from the event."
            + " A fail during the event: a judge rules. A fail after the event: a judge rules.",
        "fail-before = \"judge\";bands = [\"up to 1 %: re-check\"]"
            + " | Where a fail brings a re-check, 1 re-check is allowed."
            + " Over by up to 1 %: a re-check, while one is left."
            + " Any other fail before the event: a judge rules."
            + " Any other fail during the event: a judge rules."
            + " Any other fail after the event: a judge rules.",
        "bands = [\"up to 1 %: struck\"]"
            + " | Where a fail brings a re-check, 1 re-check is allowed."
            + " Over by up to 1 %: the scores shot with this set-up are struck out."
            + " Any other fail before the event: a re-check, while one is left."
            + " Any other fail during the event: a judge rules."
            + " Any other fail after the event: a judge rules."
      })
  void promisesNoRecheckWhereAFailBringsNone(String lines, String says) {
    String said = Cases.division(MEASURED + lines.replace(';', '\n') + "\n").inWords();
    assertTrue(said.endsWith(" No void reading is forgiven. " + says), said);
  }

  @Test
  void promisesNothingToThoseWhoAreNotMeasured() {
    String said =
        Cases.division("who = \"not measured\"\n" + MEASURED + "conditions = [\"full draw\"]\n")
            .inWords();
    assertTrue(
        said.endsWith(
            " No void reading is forgiven."
                + " The rule holds, but it is not measured at this event."),
        said);
  }

  private static final String MEASURED =
      "limit = \"300 ft/s\"\ntolerance = \"none\"\ndecide = \"highest\"\ncounted = 3\nshots = 3\n"
          + "voids = 0\nrechecks = 1\n";
}
