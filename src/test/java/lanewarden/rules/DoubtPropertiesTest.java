package lanewarden.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import lanewarden.quantity.Length;
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
