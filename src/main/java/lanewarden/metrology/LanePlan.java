package lanewarden.metrology;

/**
 * Whether the check line copes with the competitors who come to it.
 *
 * <p>Competitors come at random, at the same rate all the time; each takes a lane for as long as
 * their shots and the change to the next one need; whoever finds no lane free waits in one line.
 *
 * @param competitors who come, one or more
 * @param minutes in which they come, more than zero
 * @param shots a check takes on average, re-checks and void ones included, more than zero
 * @param secondsAShot more than zero
 * @param secondsAChange from the last shot of one archer to the first of the next, zero or more
 * @param lanes that work side by side, 1 to 100
 */
public record LanePlan(
    int competitors,
    double minutes,
    double shots,
    double secondsAShot,
    double secondsAChange,
    int lanes) {

  private static final int MOST_LANES = 100;

  /**
   * @throws IllegalArgumentException if a number makes no sense
   */
  public LanePlan {
    Figures.requireAtLeast(1, competitors, "the competitors");
    Figures.requirePositive(minutes, "the minutes");
    Figures.requirePositive(shots, "the shots of a check");
    Figures.requirePositive(secondsAShot, "the seconds a shot");
    Figures.requireNotNegative(secondsAChange, "the seconds a change of archers");
    if (lanes < 1 || lanes > MOST_LANES) {
      throw new IllegalArgumentException("the lanes must be 1 to " + MOST_LANES + ", not " + lanes);
    }
  }

  /** How long one competitor takes a lane, s. */
  public double secondsACheck() {
    return shots * secondsAShot + secondsAChange;
  }

  /** How long a competitor may take a lane if all are to be checked in time, s. */
  public double secondsAvailable() {
    return minutes * 60 * lanes / competitors;
  }

  /** How many competitors can be checked in time, if a lane never stands idle. */
  public long capacity() {
    // 3600 / (3 × 0.1) is 12000, whatever binary fractions make of it
    return lanes * (long) Math.floor(minutes * 60 / secondsACheck() * (1 + 1e-12));
  }

  /** The share of the time in which a lane is taken; 1 or more if the lanes cannot cope. */
  public double utilisation() {
    return load() / lanes;
  }

  /** How many lanes would be busy all the time: competitors a second times seconds a check. */
  private double load() {
    return competitors * secondsACheck() / (minutes * 60);
  }

  /** The fewest lanes with which the line does not grow without end. */
  public long lanesNeeded() {
    return (long) Math.floor(load()) + 1;
  }

  /** What waiting there is, or that there is no end to it. */
  public WaitingLine line() {
    if (lanes < lanesNeeded()) {
      return new WaitingLine.Growing(lanesNeeded());
    }
    double probability = WaitingLine.erlangC(lanes, load());
    double seconds = probability * secondsACheck() / (lanes - load());
    return new WaitingLine.Steady(probability, seconds, seconds * competitors / (minutes * 60));
  }
}
