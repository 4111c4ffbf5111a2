package lanewarden.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanewarden.quantity.Force;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import lanewarden.rules.Division;
import lanewarden.rules.Overrun;
import lanewarden.rules.SetUp;
import lanewarden.rules.Shot;
import lanewarden.rules.Verdict;
import org.junit.jupiter.api.Test;

/**
 * What is advised is judged by the whole rule again. The bow is own algebra, ½(m + K)v² of one
 * size; virtual masses of 0 to 80 gr are common practice of the trade.
 */
class HeavierArrowTest {
  private static final int RULES = 120;
  private static final double ENOUGH = 0.95;
  private static final Pattern HEAVIER =
      Pattern.compile("an arrow (?:\\d+ to|up to) \\d+ gr heavier \\((?:(\\d+) to )?(\\d+) gr[;)]");
  private static final Pattern FREE = Pattern.compile("an arrow of ([0-9.]+) gr or more");
  private static final Pattern HEAVIEST = Pattern.compile("one of more than (\\d+) gr");

  /** A bow that was shot at 300 ft/s with hardly any scatter, and the rule that judged it. */
  private record Case(Division division, double arrow, double draw) {
    private SetUp setUp(double grains) {
      return new SetUp(
          Mass.parse(String.format("%.1f gr", grains)),
          Force.parse(String.format("%.1f lbf", draw)),
          null);
    }

    private Verdict judge(SetUp setUp, List<Speed> readings) {
      return division
          .rule()
          .judge(setUp, Set.of(), readings.stream().<Shot>map(Shot.Read::new).toList());
    }

    private Optional<Overrun> overrun() {
      List<Speed> readings =
          Stream.of("300.00 ft/s", "300.01 ft/s", "299.99 ft/s").map(Speed::parse).toList();
      SetUp setUp = setUp(arrow);
      Verdict verdict = judge(setUp, readings);
      return Optional.of(verdict)
          .filter(Verdict.Over.class::isInstance)
          .map(over -> new Overrun(division.rule(), setUp, readings, Optional.empty()));
    }

    /** For which share of the virtual masses three readings of such an arrow pass. */
    private double passes(double grains) {
      return IntStream.range(0, 80)
              .mapToDouble(
                  k -> 300 * Math.sqrt((arrow + k + 0.5) / (Math.ceil(10 * grains) / 10 + k + 0.5)))
              .mapToObj(feet -> Speed.ofSi(feet * 0.3048, SpeedUnit.METRES_PER_SECOND))
              .filter(v -> judge(setUp(grains), List.of(v, v, v)) instanceof Verdict.Within)
              .count()
          / 80.0;
    }
  }

  private static Case some(Random random) throws Exception {
    String clauses =
        String.format("limit = \"%d ft/s\"\ntolerance = \"none\"\n", 230 + random.nextInt(70));
    if (random.nextInt(8) > 0) {
      clauses += String.format("energy = \"%.1f J\"\n", 94 + 14 * random.nextDouble());
    }
    if (random.nextInt(8) > 0) {
      clauses += String.format("only-below = \"%.1f gr/lb\"\n", 5.5 + 4 * random.nextDouble());
    }
    return new Case(Rules.mean(clauses), 340 + random.nextInt(20), 55 + random.nextInt(100) / 10.0);
  }

  /** Every rule alike likely with or without an energy limit and an end of the speed limit. */
  @Test
  void whateverMassIsAdvisedPassesTheWholeRuleAndNoneIsWithheldThatWould() throws Exception {
    Random random = new Random(61);
    int heavier = 0;
    int free = 0;
    int neither = 0;
    for (int i = 0; i < RULES; i++) {
      Case shot = some(random);
      Optional<Overrun> over = shot.overrun();
      if (over.isEmpty()) {
        continue;
      }
      Advice advice = Advice.on(over.get());
      String told = shot.division().rule().inWords() + " " + shot.arrow() + " gr: " + advice;
      Matcher more = HEAVIER.matcher(advice.line().toString());
      Matcher escape = FREE.matcher(advice.line().toString());
      if (more.find()) {
        heavier++;
        isEnough(shot, Double.parseDouble(more.group(2)), advice, told);
        if (more.group(1) != null) {
          assertTrue(shot.passes(Double.parseDouble(more.group(1))) > 0, told);
        }
      } else if (escape.find()) {
        free++;
        isEnough(shot, Double.parseDouble(escape.group(1)), advice, told);
      } else {
        neither++;
        assertTrue(
            IntStream.iterate(
                    (int) shot.arrow() + 1, grains -> grains < 1_000, grains -> grains + 4)
                .allMatch(grains -> shot.passes(grains) < ENOUGH + 0.02),
            told);
      }
      farther(shot, advice, told);
    }
    assertTrue(heavier > 10 && free > 10 && neither > 10, heavier + " " + free + " " + neither);
  }

  /** From the least mass advised to the most, and to any where no most is told. */
  private static void isEnough(Case shot, double least, Advice advice, String told) {
    assertTrue(shot.passes(least) >= ENOUGH - 0.02, told);
    Matcher heaviest = HEAVIEST.matcher(advice.line().toString());
    double most = heaviest.find() ? Double.parseDouble(heaviest.group(1)) : 2_000;
    assertTrue(most >= least && shot.passes(most) >= ENOUGH - 0.02, told);
  }

  private static void farther(Case shot, Advice advice, String told) {
    Matcher note = Pattern.compile("From ([0-9.]+) gr on").matcher(advice.toString());
    if (note.find()) {
      assertTrue(shot.passes(Double.parseDouble(note.group(1))) >= ENOUGH - 0.02, told);
    }
  }

  /** 310 gr escape the speed limit at 62 lbf, but carry 84 J where 75 J are allowed. */
  @Test
  void anArrowThatEscapesTheSpeedLimitIsNotAdvisedOverTheEnergyLimit() throws Exception {
    Case shot =
        new Case(
            Rules.mean(
                "limit = \"270 ft/s\"\ntolerance = \"none\"\nenergy = \"75 J\"\n"
                    + "only-below = \"5 gr/lb\"\n"),
            309,
            62);
    Advice advice = Advice.on(shot.overrun().orElseThrow());
    assertTrue(!advice.line().toString().contains("an arrow"), advice.line().toString());
    assertTrue(!advice.toString().contains("no speed limit applies"), advice.toString());
    assertTrue(
        advice.exception().orElseThrow().toString().contains("energy limit"), advice.toString());
  }
}
