package lanewarden.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every rule and every row of shots, tried on seeded random ones. */
class VerdictPropertiesTest {
  private static final int SHOTS_TRIED = 300;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 40);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void fasterArrowNeverTurnsOverIntoWithin(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < SHOTS_TRIED; i++) {
      Rule rule = rule(random);
      List<Shot> shots = shots(random, Cases.plan(rule).allowed());
      List<Shot> faster = new ArrayList<>(shots);
      int which = random.nextInt(shots.size());
      if (shots.get(which) instanceof Shot.Read read) {
        faster.set(which, new Shot.Read(read.speed().plus(speed(random, 0, 20))));
      }
      if (Cases.judge(rule, shots) instanceof Verdict.Over) {
        assertFalse(
            Cases.judge(rule, faster) instanceof Verdict.Within,
            () -> rule + " " + shots + " " + faster);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void addingToleranceNeverTurnsWithinIntoOver(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < SHOTS_TRIED; i++) {
      Rule rule = rule(random);
      Tolerance more =
          random.nextBoolean()
              ? new Tolerance.Absolute(speed(random, 0, 20))
              : new Tolerance.Share(new Percent(BigDecimal.valueOf(random.nextInt(60), 1)));
      Rule milder =
          Cases.rule(
              Cases.limit(rule).limit(),
              more,
              Cases.plan(rule),
              rule.shooting().orElseThrow().decision(),
              rule.aftermath().rechecks());
      List<Shot> shots = shots(random, Cases.plan(rule).allowed());
      if (Cases.judge(rule, shots) instanceof Verdict.Within) {
        assertFalse(Cases.judge(milder, shots) instanceof Verdict.Over, () -> milder + " " + shots);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void sameSpeedsInMetresGiveTheSameOutcome(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < SHOTS_TRIED; i++) {
      Rule rule = rule(random);
      List<Shot> shots = shots(random, Cases.plan(rule).allowed());
      List<Shot> inMetres =
          shots.stream()
              .map(
                  shot ->
                      shot instanceof Shot.Read read
                          ? new Shot.Read(Speed.of(read.speed().si(), SpeedUnit.METRES_PER_SECOND))
                          : shot)
              .toList();
      assertEquals(
          Cases.judge(rule, shots).word(),
          Cases.judge(rule, inMetres).word(),
          () -> rule + " " + shots);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void forgivenVoidsChangeNoOutcome(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < SHOTS_TRIED; i++) {
      Rule rule = rule(random);
      List<Shot> shots = shots(random, Cases.plan(rule).allowed());
      List<Shot> withoutVoids = shots.stream().filter(Shot.Read.class::isInstance).toList();
      Verdict verdict = Cases.judge(rule, shots);
      if (verdict instanceof Verdict.Within || verdict instanceof Verdict.Over) {
        assertEquals(verdict, Cases.judge(rule, withoutVoids), () -> rule + " " + shots);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyCheckEndsWithItsLastShotAtTheLatest(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < SHOTS_TRIED; i++) {
      Rule rule = rule(random);
      List<Shot> shots = shots(random, Cases.plan(rule).allowed());
      assertTrue(Cases.judge(rule, shots).ends(), () -> rule + " " + shots);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void endedCheckStaysAsItEnded(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < SHOTS_TRIED; i++) {
      Rule rule = rule(random);
      List<Shot> shots = shots(random, Cases.plan(rule).allowed());
      int first = 0;
      while (!Cases.judge(rule, shots.subList(0, first)).ends()) {
        first++;
      }
      Verdict ended = Cases.judge(rule, shots.subList(0, first));
      for (int more = first; more <= shots.size(); more++) {
        assertEquals(ended, Cases.judge(rule, shots.subList(0, more)), () -> rule + " " + shots);
      }
    }
  }

  private static Rule rule(Random random) {
    int counted = 1 + random.nextInt(5);
    int allowed = counted + random.nextInt(3);
    Decision decision =
        switch (random.nextInt(5)) {
          case 0 -> new Decision.Mean();
          case 1 -> new Decision.Highest();
          case 2 -> new Decision.Median();
          case 3 -> new Decision.FirstWithin();
          default -> new Decision.WithinCount(1 + random.nextInt(counted));
        };
    return Cases.rule(
        speed(random, 295, 305),
        new Tolerance.None(),
        new ShotPlan(counted, allowed, random.nextInt(3)),
        decision,
        0);
  }

  private static List<Shot> shots(Random random, int count) {
    List<Shot> shots = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      shots.add(
          random.nextInt(6) == 0 ? new Shot.Voided() : new Shot.Read(speed(random, 292, 308)));
    }
    return shots;
  }

  /** In ft/s with one decimal, from {@code least} to {@code most}. */
  private static Speed speed(Random random, int least, int most) {
    int tenths = least * 10 + random.nextInt((most - least) * 10 + 1);
    return Speed.of(BigDecimal.valueOf(tenths, 1), SpeedUnit.FEET_PER_SECOND);
  }
}
