package lanewarden.metrology;

/**
 * How a check may end: three probabilities that make 1.
 *
 * @param within that it ends within
 * @param over that it ends over
 */
public record Chances(double within, double over) {

  /** That it ends undecided. */
  public double notDecided() {
    return Math.max(0, 1 - within - over);
  }

  /**
   * After up to so many re-checks, each of which follows an over and draws new readings.
   *
   * @param rechecks zero or more
   */
  Chances after(int rechecks) {
    double passed = within;
    double stillOver = over;
    for (int i = 0; i < rechecks; i++) {
      passed += stillOver * within;
      stillOver *= over;
    }
    return new Chances(passed, stillOver);
  }
}
