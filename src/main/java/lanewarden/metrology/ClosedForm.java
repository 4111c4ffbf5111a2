package lanewarden.metrology;

import java.util.Optional;
import lanewarden.metrology.DecidingFigure.Mean;
import lanewarden.metrology.DecidingFigure.MiddlePair;
import lanewarden.metrology.DecidingFigure.Ranked;

/**
 * How a check ends, calculated; right to about six decimals.
 *
 * <p>Voids do not depend on the readings, so a check that its readings would decide at the m-th one
 * is decided if the voids let m readings come. What is left is at which reading a figure decides
 * ({@link RankedChances}, {@link MeanChances}, {@link MiddlePairChances}) and the calibration error
 * that all readings share ({@link CalibrationBlur}).
 *
 * <p>There is none for the mean or the middle pair of rounded readings, for a spread limit on
 * rounded readings, and for a spread limit with a middle pair.
 */
public final class ClosedForm {

  /** m/s. Far below the last digit of any reading, far above what binary fractions leave. */
  static final double SLACK = 1e-9;

  /** m/s. Readings that do not scatter at all are given this much, to be one case with the rest. */
  private static final double LEAST_SCATTER = 1e-12;

  private final double bar;
  private final double each;
  private final CalibrationBlur blur;

  private ClosedForm(CheckModel model, double bar, double each, MarginChances chances) {
    int readings = model.figure().readings();
    this.bar = bar;
    this.each = each;
    this.blur =
        new CalibrationBlur(
            chances,
            model.rechecks(),
            model.dispersion().calibration() / each,
            Math.sqrt((double) readings * (1 + model.rechecks())));
  }

  /** The closed form of a model that has one. */
  public static Optional<ClosedForm> of(CheckModel model) {
    double each = Math.max(model.dispersion().each(), LEAST_SCATTER);
    return chances(model, each).map(chances -> new ClosedForm(model, bar(model), each, chances));
  }

  private static Optional<MarginChances> chances(CheckModel model, double each) {
    boolean limited = model.spread().isPresent();
    double spread = model.spread().orElse(Double.POSITIVE_INFINITY) / each;
    boolean rounded = model.rounding().rounds();
    ShotAllowance shots = model.shots();
    DecidingFigure figure = model.figure();
    if (figure instanceof Ranked ranked && !limited) {
      return Optional.of(new RankedChances(ranked, shots));
    }
    if (figure instanceof Ranked ranked && !rounded) {
      return Optional.of(new SpreadRankedChances(ranked, shots, spread));
    }
    if (figure instanceof Mean mean && !rounded) {
      return Optional.of(MeanChances.of(mean.readings(), shots, spread));
    }
    if (figure instanceof MiddlePair pair && !rounded && !limited) {
      return Optional.of(new MiddlePairChances(pair, shots));
    }
    return Optional.empty();
  }

  /** The speed up to which a reading is within before it is rounded, m/s. */
  private static double bar(CheckModel model) {
    double step = model.rounding().step();
    double speed = model.threshold().speed();
    boolean equal = model.threshold().equalIsWithin();
    double allowed = equal ? speed + SLACK : speed - SLACK;
    double highest = Math.floor(allowed / step) * step;
    return switch (model.rounding().way()) {
      case NONE -> allowed;
      case NEAREST -> highest + step / 2;
      case DOWN -> highest + step;
    };
  }

  /**
   * How a check ends for an archer of the given speed.
   *
   * @param trueSpeed the mean speed of the archer's arrows, m/s
   */
  public CurvePoint at(double trueSpeed) {
    Figures.requirePositive(trueSpeed, "the true speed, in m/s,");
    return blur.at(trueSpeed, (bar - trueSpeed) / each);
  }
}
