package lanewarden.metrology;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/**
 * Checks acted out shot by shot with drawn readings: for every model, and the second opinion on
 * {@link ClosedForm}, with which it shares no formula.
 *
 * <p>The same seed gives the same result. Use on one thread at a time.
 */
public final class CheckSimulation {
  private static final int NOT_DECIDED = 3;

  private final ShotAllowance shots;
  private final int rechecks;
  private final double calibration;
  private final double each;
  private final double grain;
  private final double half;
  private final double spread;
  private final boolean spreadLimited;
  private final ScoreSheet sheet;

  /** A simulation of checks as the model has them. */
  public CheckSimulation(CheckModel model) {
    ReadingRounding rounding = model.rounding();
    this.shots = model.shots();
    this.rechecks = model.rechecks();
    this.calibration = model.dispersion().calibration();
    this.each = model.dispersion().each();
    // rounded readings are counted in whole steps, so that equal ones are equal in binary too
    this.grain = rounding.step();
    this.half = rounding.way() == ReadingRounding.Way.NEAREST ? 0.5 : 0;
    double unit = rounding.rounds() ? grain : 1;
    double slack = ClosedForm.SLACK;
    double bar = model.threshold().speed() + (model.threshold().equalIsWithin() ? slack : -slack);
    this.sheet = ScoreSheet.of(model.figure(), bar / unit);
    this.spreadLimited = model.spread().isPresent();
    this.spread = (model.spread().orElse(0) + slack) / unit;
  }

  /**
   * So many archers of one speed, each with a calibration error, checked until the rule is done.
   *
   * @param trueSpeed the mean speed of the archers' arrows, m/s
   * @param archers how many, one or more
   * @param seed of the readings
   */
  public CurvePoint at(double trueSpeed, int archers, long seed) {
    return at(trueSpeed, archers, new SplittableRandom(seed));
  }

  /** The same with readings from the given source. */
  CurvePoint at(double trueSpeed, int archers, RandomGenerator random) {
    Figures.requirePositive(trueSpeed, "the true speed, in m/s,");
    Figures.requireAtLeast(1, archers, "the simulated archers");
    int[] first = new int[NOT_DECIDED + 1];
    int[] ending = new int[NOT_DECIDED + 1];
    for (int i = 0; i < archers; i++) {
      double centre = calibration > 0 ? trueSpeed + calibration * random.nextGaussian() : trueSpeed;
      int outcome = check(centre, random);
      first[outcome]++;
      for (int again = 0; again < rechecks && outcome == ScoreSheet.OVER; again++) {
        outcome = check(centre, random);
      }
      ending[outcome]++;
    }
    return new CurvePoint(trueSpeed, shares(first, archers), shares(ending, archers));
  }

  private static Chances shares(int[] outcomes, double archers) {
    return new Chances(outcomes[ScoreSheet.WITHIN] / archers, outcomes[ScoreSheet.OVER] / archers);
  }

  private int check(double centre, RandomGenerator random) {
    sheet.clear();
    int voids = 0;
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    int spare = shots.allowed() - sheet.readings;
    while (true) {
      if (shots.voidChance() > 0 && random.nextDouble() < shots.voidChance()) {
        voids++;
        if (voids > shots.voids()) {
          return NOT_DECIDED;
        }
      } else {
        double reading = shown(centre + each * random.nextGaussian());
        int outcome = entered(reading);
        if (spreadLimited) {
          lowest = Math.min(lowest, reading);
          highest = Math.max(highest, reading);
          boolean wide = highest - lowest > spread;
          if (sheet.entered == sheet.readings || wide) {
            return wide ? NOT_DECIDED : outcome;
          }
        } else if (outcome != ScoreSheet.OPEN) {
          return outcome;
        }
      }
      // with a shot left for every reading still to come, no figure can lack one
      if (voids > spare) {
        int left = shots.allowed() - sheet.entered - voids;
        if (left < (spreadLimited ? sheet.readings - sheet.entered : sheet.fewestMore())) {
          return NOT_DECIDED;
        }
      }
    }
  }

  /**
   * Asked by kind, because three kinds of one call in the hottest loop are not compiled into it.
   */
  private int entered(double reading) {
    if (sheet instanceof ScoreSheet.Counted counted) {
      return counted.enter(reading);
    }
    return sheet instanceof ScoreSheet.Summed summed ? summed.enter(reading) : sheet.enter(reading);
  }

  /** The reading as the rule sees it, in steps where it is rounded. */
  private double shown(double reading) {
    return grain > 0 ? Math.floor(reading / grain + half) : reading;
  }
}
