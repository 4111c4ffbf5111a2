package lanewarden.metrology;

import java.util.OptionalDouble;

/**
 * All that decides how a check ends for an archer of a given true speed.
 *
 * <p>A reading is the true speed, plus the calibration error, plus an error of its own; both errors
 * are normal with mean zero. A check decides at the first shot that leaves nothing open, as the
 * rules do, and an <em>over</em> is followed by a new check while re-checks are left.
 *
 * @param figure what is held against the threshold
 * @param threshold the fastest speed that is within
 * @param spread the most that the highest of the counted readings may lie above the lowest, m/s; a
 *     wider spread ends the check undecided at once, and no verdict falls before all are in
 * @param shots not fewer allowed than readings count
 * @param rounding of each reading before it decides
 * @param dispersion what makes readings differ
 * @param rechecks new checks after an over, 0 to 20
 */
public record CheckModel(
    DecidingFigure figure,
    Threshold threshold,
    OptionalDouble spread,
    ShotAllowance shots,
    ReadingRounding rounding,
    Dispersion dispersion,
    int rechecks) {

  /** More re-checks than any rule allows. */
  public static final int MOST_RECHECKS = 20;

  /**
   * @throws IllegalArgumentException if the parts contradict each other
   */
  public CheckModel {
    if (spread.isPresent()) {
      Figures.requirePositive(spread.getAsDouble(), "the spread limit, in m/s,");
    }
    if (shots.allowed() < figure.readings()) {
      throw new IllegalArgumentException(
          shots.allowed()
              + " shots cannot bring the "
              + figure.readings()
              + " readings that count");
    }
    if (rechecks < 0 || rechecks > MOST_RECHECKS) {
      throw new IllegalArgumentException(
          "the re-checks must be 0 to " + MOST_RECHECKS + ", not " + rechecks);
    }
  }
}
