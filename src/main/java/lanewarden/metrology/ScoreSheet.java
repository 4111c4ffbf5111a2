package lanewarden.metrology;

import lanewarden.metrology.DecidingFigure.Mean;
import lanewarden.metrology.DecidingFigure.MiddlePair;
import lanewarden.metrology.DecidingFigure.Ranked;

/**
 * The readings of one simulated check and what they decide so far; used again for the next one.
 *
 * <p>A reading still to come is taken to be of any speed at all, as in the rules. Not for more than
 * one thread.
 */
abstract sealed class ScoreSheet {
  static final int OPEN = 0;
  static final int WITHIN = 1;
  static final int OVER = 2;

  final int readings;
  final double bar;
  int entered;

  private ScoreSheet(int readings, double bar) {
    this.readings = readings;
    this.bar = bar;
  }

  /**
   * @param bar the highest figure that is within, in the unit of the readings
   */
  static ScoreSheet of(DecidingFigure figure, double bar) {
    if (figure instanceof Ranked ranked) {
      return new Counted(ranked, bar);
    }
    if (figure instanceof Mean) {
      return new Summed(figure.readings(), bar);
    }
    return new Sorted((MiddlePair) figure, bar);
  }

  /** For the next check. */
  void clear() {
    entered = 0;
  }

  /** Takes a reading and says what is decided. */
  abstract int enter(double reading);

  /** The fewest further readings that can decide a check that is open. */
  abstract int fewestMore();

  static final class Counted extends ScoreSheet {
    private final int needed;

    /** By readings entered and readings within; looked up, as a branch would be guessed wrong. */
    private final byte[] decided;

    private int within;

    Counted(Ranked figure, double bar) {
      super(figure.readings(), bar);
      this.needed = figure.place();
      this.decided = new byte[(readings + 1) * (readings + 1)];
      for (int in = 0; in <= readings; in++) {
        for (int good = 0; good <= in; good++) {
          boolean tooFew = readings - (in - good) < needed;
          decided[in * (readings + 1) + good] =
              (byte) (good >= needed ? WITHIN : tooFew ? OVER : OPEN);
        }
      }
    }

    @Override
    void clear() {
      super.clear();
      within = 0;
    }

    @Override
    int enter(double reading) {
      entered++;
      within += reading <= bar ? 1 : 0;
      return decided[entered * (readings + 1) + within];
    }

    @Override
    int fewestMore() {
      int over = entered - within;
      return Math.min(needed - within, readings - needed + 1 - over);
    }
  }

  static final class Summed extends ScoreSheet {
    private double sum;

    Summed(int readings, double bar) {
      super(readings, bar);
    }

    @Override
    void clear() {
      super.clear();
      sum = 0;
    }

    @Override
    int enter(double reading) {
      entered++;
      sum += reading;
      if (entered < readings) {
        return OPEN;
      }
      return sum <= bar * readings ? WITHIN : OVER;
    }

    @Override
    int fewestMore() {
      return readings - entered;
    }
  }

  static final class Sorted extends ScoreSheet {
    private final double[] sorted;
    private final int half;

    Sorted(MiddlePair figure, double bar) {
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
}
