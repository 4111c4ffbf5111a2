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
abstract sealed class ScoreSheet permits ScoreSheet.Counted, ScoreSheet.Summed, MiddlePairSheet {
  static final int OPEN = 0;
  static final int WITHIN = 1;
  static final int OVER = 2;

  final int readings;
  final double bar;
  int entered;

  ScoreSheet(int readings, double bar) {
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
    return new MiddlePairSheet((MiddlePair) figure, bar);
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
}
