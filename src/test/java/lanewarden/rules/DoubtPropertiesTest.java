package lanewarden.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import lanewarden.metrology.OutlierTest;
import lanewarden.quantity.Length;
import lanewarden.quantity.Speed;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds of readings that are not believed, for every rule, set-up and row of shots. */
class DoubtPropertiesTest {
  private static final int TRIED = 250;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 40);
  }

  /** An official who lets everything count gets the verdict of a rule that asks about nothing. */
  @ParameterizedTest
  @MethodSource("seeds")
  void readingsLetCountDecideAsIfNobodyHadAsked(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIED; i++) {
      Trial trial = Trial.of(random);
      List<Shot> kept = new ArrayList<>();
      for (Shot shot : trial.shots()) {
        kept.add(shot instanceof Shot.Read read ? new Shot.Read(read.speed(), true) : shot);
      }
      assertEquals(
          trial.judge(trial.written().without("jump", "outlier", "outlier-least")),
          trial.judge(kept),
          trial::toString);
    }
  }

  /** Energy against work, both in joules: ½mv² and peak force times way, written out once more. */
  @ParameterizedTest
  @MethodSource("seeds")
  void whatTheBowCannotGiveIsJudgedAsAVoidShot(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIED; i++) {
      Trial trial = Trial.of(random);
      SetUp known = trial.setUp();
      if (known.arrowMass() != null && known.drawWeight() != null) {
        Length draw = Length.parse("2" + random.nextInt(10) + " in");
        SetUp measured =
            new SetUp(known.arrowMass(), known.drawWeight(), null, draw, Length.parse("7 in"));
        BigDecimal way = draw.si().subtract(new BigDecimal("0.22225"));
        BigDecimal work = known.drawWeight().si().multiply(way);
        List<Shot> possible = new ArrayList<>();
        for (Shot shot : trial.shots()) {
          boolean tooMuch =
              shot instanceof Shot.Read read
                  && known
                          .arrowMass()
                          .si()
                          .multiply(read.speed().si().pow(2))
                          .compareTo(work.multiply(BigDecimal.valueOf(2)))
                      > 0;
          possible.add(tooMuch ? new Shot.Voided() : shot);
        }
        SetUp same = new SetUp(known.arrowMass(), known.drawWeight(), null);
        assertEquals(
            trial.rule().judge(same, trial.ticks(), possible),
            trial.rule().judge(measured, trial.ticks(), trial.shots()),
            () -> trial + " " + draw);
      }
    }
  }

  /**
   * What stood out after any of the shots, of all readings or of those that were not let count, is
   * let count or void, or nothing is decided: looked for with the test alone, and once more.
   */
  @ParameterizedTest
  @MethodSource("seeds")
  void noVerdictRestsOnAReadingThatOnceStoodOutAndNobodyLetCount(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIED; i++) {
      Trial trial = Trial.of(random);
      List<Shot> shots = someKept(trial, random);
      boolean stoodOut =
          trial.rule().shooting().flatMap(how -> how.screening().outlier()).stream()
              .anyMatch(test -> anyStoodOut(test, shots));
      Verdict verdict = trial.judge(shots);
      if (stoodOut && trial.rule().fastest(trial.setUp()).isPresent()) {
        assertFalse(
            verdict instanceof Verdict.Within || verdict instanceof Verdict.Over,
            () -> trial + " " + shots + " " + verdict);
      }
    }
  }

  private static List<Shot> someKept(Trial trial, Random random) {
    List<Shot> shots = new ArrayList<>();
    for (Shot shot : trial.shots()) {
      shots.add(
          shot instanceof Shot.Read read
              ? new Shot.Read(read.speed(), random.nextInt(4) == 0)
              : shot);
    }
    return shots;
  }

  private static boolean anyStoodOut(OutlierTest test, List<Shot> shots) {
    for (int taken = 0; taken <= shots.size(); taken++) {
      List<Shot.Read> all =
          shots.subList(0, taken).stream()
              .filter(Shot.Read.class::isInstance)
              .map(Shot.Read.class::cast)
              .toList();
      List<Shot.Read> notKept = all.stream().filter(read -> !read.kept()).toList();
      if (isOneUnasked(test, all) || isOneUnasked(test, notKept)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isOneUnasked(OutlierTest test, List<Shot.Read> reads) {
    return test.of(reads.stream().map(Shot.Read::speed).toList())
        .flagged()
        .filter(one -> !reads.get(one).kept())
        .isPresent();
  }

  /** A further shot withdraws no question, and changes no word of one. */
  @ParameterizedTest
  @MethodSource("seeds")
  void whatWasFoundHoldsOnWhateverIsShot(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIED; i++) {
      Trial trial = Trial.of(random);
      List<Shot> shots = someKept(trial, random);
      List<Doubt> all = trial.rule().doubts(trial.setUp(), shots);
      for (int taken = 0; taken < shots.size(); taken++) {
        List<Doubt> found = trial.rule().doubts(trial.setUp(), shots.subList(0, taken));
        assertTrue(all.containsAll(found), () -> trial + " " + found + " " + all);
      }
      assertEquals(
          all.stream().map(Doubt::shot).distinct().sorted().toList(),
          all.stream().map(Doubt::shot).toList(),
          trial::toString);
    }
  }

  /** A rule that asks says so where nobody is asked about a first reading, and only there. */
  @ParameterizedTest
  @MethodSource("seeds")
  void whereAFirstReadingDecidesTheRuleSaysThatNobodyIsAsked(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIED; i++) {
      Trial trial = Trial.of(random);
      Rule rule = trial.rule();
      Set<String> all = Set.copyOf(rule.conditions());
      boolean asks = rule.shooting().filter(how -> how.screening().asks()).isPresent();
      if (asks && rule.judge(trial.setUp(), all, List.of()).takesShots()) {
        boolean decides =
            Stream.of("1 ft/s", "2000 ft/s")
                .map(one -> List.<Shot>of(new Shot.Read(Speed.parse(one))))
                .anyMatch(one -> rule.judge(trial.setUp(), all, one).ends());
        assertEquals(decides, rule.inWords().contains("nobody is asked about it"), trial::toString);
      }
    }
  }

  /** A doubt only ever makes a verdict wait. */
  @ParameterizedTest
  @MethodSource("seeds")
  void aReadingInDoubtTurnsNoOutcomeIntoAnother(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < TRIED; i++) {
      Trial trial = Trial.of(random);
      Verdict verdict = trial.judge();
      boolean waits =
          verdict instanceof Verdict.NotDecided open
              && open.missing() instanceof Missing.OddReadings;
      if (!waits) {
        assertEquals(
            trial.judge(trial.written().without("jump", "outlier", "outlier-least")),
            verdict,
            trial::toString);
      }
    }
  }
}
