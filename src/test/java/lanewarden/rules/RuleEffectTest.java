package lanewarden.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import lanewarden.metrology.Chances;
import lanewarden.metrology.CurvePoint;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The curve against the rule itself: readings drawn here are judged by the rule, exactly, and the
 * shares of its verdicts must agree with the chances.
 */
class RuleEffectTest {
  private static final int CHECKS = 6_000;
  private static final double STANDARD_ERRORS = 4.5;
  private static final RuleEffect.Supposed SUPPOSED =
      new RuleEffect.Supposed(
          Speed.parse("2 ft/s"),
          Speed.parse("0.5 ft/s"),
          Speed.parse("1 ft/s"),
          Percent.parse("6 %"));

  private static Rule rule(String lines) throws Exception {
    String toml =
        "format = 1\n[event]\nname = \"T\"\nedition = \"1\"\n[[division]]\ncode = \"T\"\nname = \"T\"\n"
            + lines.replace(";", "\n");
    return RuleBook.read("test", toml.getBytes(StandardCharsets.UTF_8)).divisions().get(0).rule();
  }

  static Stream<String> rules() {
    String limit = "limit = \"300 ft/s\";tolerance = \"1 %\";rechecks = 0;";
    return Stream.of(
        limit + "decide = \"mean\";counted = 3;shots = 4;voids = 1",
        limit + "decide = \"highest\";counted = 3;shots = 3;voids = 0",
        limit + "decide = \"median\";counted = 3;shots = 5;voids = 2",
        limit + "decide = \"median\";counted = 4;shots = 5;voids = 1",
        limit + "decide = \"k of n\";within = 2;counted = 3;shots = 4;voids = 1",
        limit + "decide = \"first within\";counted = 3;shots = 3;voids = 2",
        limit + "decide = \"highest\";counted = 2;shots = 3;voids = 1;spread = \"3 ft/s\"",
        limit + "decide = \"mean\";counted = 3;shots = 3;voids = 0;spread = \"4 ft/s\"",
        limit
            + "decide = \"mean\";counted = 3;shots = 4;voids = 1;round-reading = \"down to 1 ft/s\"",
        limit
            + "decide = \"highest\";counted = 2;shots = 2;voids = 0;bound = \"below\";"
            + "round-reading = \"nearest 1 ft/s\";round-limit = \"down to 1 ft/s\"",
        "limit = \"none\";energy = \"165 J\";rechecks = 0;decide = \"mean\";counted = 2;shots = 2;voids = 0",
        "limit = \"300 ft/s\";tolerance = \"1 %\";rechecks = 1;bands = [\"up to 1 %: re-check\"];"
            + "decide = \"highest\";counted = 3;shots = 4;voids = 1");
  }

  @ParameterizedTest
  @MethodSource("rules")
  void chancesAreTheSharesOfTheRulesOwnVerdicts(String lines) throws Exception {
    Rule rule = rule(lines);
    SetUp setUp = new SetUp(lanewarden.quantity.Mass.parse("400 gr"), null, null);
    RuleEffect effect = RuleEffect.of(rule, setUp, SUPPOSED).orElseThrow();
    double middle = effect.fastest().siDouble();
    List<CurvePoint> curve = effect.curve(middle - 0.6, middle + 0.6, 3);
    for (CurvePoint point : curve) {
      int[] outcomes = judged(rule, setUp, point.speed(), new Random(lines.hashCode()));
      Chances first = point.firstCheck();
      double simulated = effect.isCalculated() ? 0 : 0.5 / Math.sqrt(4_000);
      agree(first.within(), outcomes[0], simulated, "within at " + point.speed());
      agree(first.over(), outcomes[1], simulated, "over at " + point.speed());
      agree(first.notDecided(), outcomes[2], simulated, "not decided at " + point.speed());
    }
  }

  private static void agree(double chance, int times, double simulated, String what) {
    double own = Math.sqrt(Math.max(chance * (1 - chance), 1.0 / CHECKS) / CHECKS);
    assertEquals(
        chance, (double) times / CHECKS, STANDARD_ERRORS * Math.hypot(own, simulated), what);
  }

  /** Within, over and not decided out of {@link #CHECKS} checks of archers of one true speed. */
  private static int[] judged(Rule rule, SetUp setUp, double speed, Random random) {
    int[] outcomes = new int[3];
    int allowed = Cases.plan(rule).allowed();
    for (int i = 0; i < CHECKS; i++) {
      double centre = speed + SUPPOSED.calibration().siDouble() * random.nextGaussian();
      List<Shot> shots = new ArrayList<>();
      Verdict verdict = rule.judge(setUp, new HashSet<>(), shots);
      while (verdict.takesShots() && shots.size() < allowed) {
        double each = Math.hypot(SUPPOSED.arrows().siDouble(), SUPPOSED.reading().siDouble());
        double reading = centre + each * random.nextGaussian();
        shots.add(
            random.nextDouble() < SUPPOSED.voids().fraction().doubleValue()
                ? new Shot.Voided()
                : new Shot.Read(
                    Speed.of(
                        BigDecimal.valueOf(reading).setScale(6, RoundingMode.HALF_EVEN),
                        SpeedUnit.METRES_PER_SECOND)));
        verdict = rule.judge(setUp, new HashSet<>(), shots);
      }
      outcomes[verdict instanceof Verdict.Within ? 0 : verdict instanceof Verdict.Over ? 1 : 2]++;
    }
    return outcomes;
  }

  @Test
  void whatCannotBeCalculatedIsSimulated() throws Exception {
    List<String> rules = rules().toList();
    assertTrue(
        RuleEffect.of(rule(rules.get(0)), SetUp.unknown(), SUPPOSED).orElseThrow().isCalculated());
    assertFalse(
        RuleEffect.of(rule(rules.get(8)), SetUp.unknown(), SUPPOSED).orElseThrow().isCalculated());
  }

  @Test
  void aRuleWithoutAMeasuredLimitHasNoCurve() throws Exception {
    assertEquals(
        Optional.empty(), RuleEffect.of(rule("limit = \"none\""), SetUp.unknown(), SUPPOSED));
    assertEquals(
        Optional.empty(),
        RuleEffect.of(
            rule("limit = \"300 ft/s\";tolerance = \"none\";who = \"not measured\""),
            SetUp.unknown(),
            SUPPOSED));
  }

  @Test
  void halfOfTheArchersExactlyAtABareLimitFailOneReading() throws Exception {
    Rule rule =
        rule(
            "limit = \"300 ft/s\";tolerance = \"none\";rechecks = 0;decide = \"mean\";counted = 1;shots = 1;voids = 0");
    RuleEffect effect =
        RuleEffect.of(
                rule,
                SetUp.unknown(),
                new RuleEffect.Supposed(
                    Speed.parse("2 ft/s"),
                    Speed.parse("0 ft/s"),
                    Speed.parse("0 ft/s"),
                    Percent.parse("0 %")))
            .orElseThrow();
    assertEquals(
        "An archer whose arrows fly at exactly 300 ft/s on average is failed 50.0 times in 100;"
            + " one 4 ft/s faster passes 2.3 times in 100.",
        // normal table: 2.275 % lie more than two standard deviations below (ILAC-G8:09/2019)
        effect.inWords(Speed.parse("4 ft/s")).toString());
  }

  @Test
  void rareAndCertainAreSaidInWords() {
    assertEquals("less than once in 1000 times", RuleEffect.often(0.000_4).toString());
    assertEquals("0.1 times in 100", RuleEffect.often(0.001).toString());
    assertEquals("practically always", RuleEffect.often(0.999_6).toString());
  }
}
