package lanewarden.metrology;

/**
 * A sheet that keeps its readings in order, for the mean of the middle two.
 *
 * <p>The middle stands within when it is with every reading to come faster than all others, and
 * over when it is with every one slower.
 */
final class MiddlePairSheet extends ScoreSheet {
  private final double[] sorted;
  private final int half;

  MiddlePairSheet(DecidingFigure.MiddlePair figure, double bar) {
    super(figure.readings(), bar);
    this.sorted = new double[figure.readings()];
    this.half = figure.readings() / 2;
  }

  @Override
  int enter(double reading) {
    // every reading changes places without a question that would be guessed wrong
    double higher = reading;
    for (int place = 0; place < entered; place++) {
      double known = sorted[place];
      sorted[place] = Math.min(known, higher);
      higher = Math.max(known, higher);
    }
    sorted[entered] = higher;
    entered++;
    if (entered <= half) {
      return OPEN;
    }
    int toCome = readings - entered;
    if (staysWithin(0)) {
      return WITHIN;
    }
    return staysOver(toCome) ? OVER : OPEN;
  }

  /** Whether the middle is within when so many to come are slower than all, the rest faster. */
  private boolean staysWithin(int slower) {
    // of the middle two, the lower is one of the slow ones to come: it may be as slow as it likes
    boolean pulledDown = slower >= half;
    return half - slower < entered && (pulledDown || middle(half - slower) <= bar);
  }

  /** Whether the middle is over when so many to come are slower than all, the rest faster. */
  private boolean staysOver(int slower) {
    boolean pushedUp = half - slower >= entered;
    return half - 1 - slower >= 0 && (pushedUp || middle(half - slower) > bar);
  }

  /** The mean of the reading in this place, counted from 0, and the one before it. */
  private double middle(int upper) {
    return (sorted[upper - 1] + sorted[upper]) / 2;
  }

  @Override
  int fewestMore() {
    int toCome = readings - entered;
    int more = 1;
    while (!staysWithin(more) && !staysOver(toCome - more)) {
      more++;
    }
    return more;
  }
}
