package lanewarden.metrology;

/** The line before the lanes, in the long run. */
public sealed interface WaitingLine {

  /**
   * A line that comes and goes.
   *
   * <p>By Erlang's formula, which takes the times on a lane to vary as much as an exponential
   * distribution does. Checks vary less, so the true waiting is shorter.
   *
   * @param probability that a competitor has to wait
   * @param meanSeconds which a competitor waits on average, those who need not among them
   * @param meanLength competitors who stand in line on average (Little's law)
   */
  record Steady(double probability, double meanSeconds, double meanLength) implements WaitingLine {}

  /**
   * A line that grows as long as competitors come.
   *
   * @param lanesNeeded the fewest lanes with which it would not
   */
  record Growing(long lanesNeeded) implements WaitingLine {}

  /**
   * The probability that an arrival has to wait: Erlang C, from Erlang B by its recursion (A. K.
   * Erlang 1917; L. Kleinrock, Queueing Systems volume 1, section 3.5; from memory).
   *
   * @param lanes one or more
   * @param load arrivals in the mean time on a lane (erlang), zero or more, less than {@code lanes}
   */
  static double erlangC(int lanes, double load) {
    Figures.requireAtLeast(1, lanes, "the lanes");
    Figures.requireNotNegative(load, "the load");
    if (load >= lanes) {
      throw new IllegalArgumentException(
          "with a load of " + load + " on " + lanes + " lanes the line grows without end");
    }
    double lost = 1;
    for (int lane = 1; lane <= lanes; lane++) {
      lost = load * lost / (lane + load * lost);
    }
    double busy = load / lanes;
    return lost / (1 - busy * (1 - lost));
  }
}
