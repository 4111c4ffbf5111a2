package lanewarden.rules;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lanewarden.quantity.MeanSpeed;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;

/**
 * How the counted readings decide.
 *
 * <p>Every kind decides as soon as the readings still outstanding cannot change the outcome,
 * whatever their speeds, and no sooner. An outstanding reading is taken to be of any speed at all:
 * no kind reasons from what is physically likely.
 */
public sealed interface Decision {

  /** How the rule book writes the ways to decide. */
  static List<String> words() {
    return ShootingSection.ways();
  }

  /**
   * The verdict on the readings that are in.
   *
   * @param readings those that stand, in the order taken; {@code counted} of them at most
   * @param counted how many count, one or more
   * @return within, over, or not decided with the fewest further readings that can decide
   */
  Verdict on(List<Speed> readings, int counted, Bound bound);

  /** Between which bounds the figure that decides lies, with readings still outstanding. */
  FigureRange figure(List<Speed> readings, int counted);

  /**
   * What a single reading must be to decide before any other is in: within or over; empty where no
   * single reading ever does.
   */
  default Optional<Demand> decidesByOne(int counted) {
    return Optional.empty();
  }

  /** In a sentence for the official's screen, where a verdict falls as soon as it can. */
  Sentence inWords(int counted);

  /** Which figure it is that decides, for the sentence that says how far over it lies. */
  Sentence figureName();

  /** What must be within of so many readings to come, two or more, for a sentence. */
  Sentence ofFurther(int counted);

  /** The same where a verdict waits for all counted readings. */
  default Sentence withAllIn(int counted) {
    return inWords(counted);
  }

  /** The same where a fail waits until no reading still to come can move it into another band. */
  default Sentence inBands(int counted) {
    return inWords(counted);
  }

  /** The mean of the counted readings decides, once all are in. */
  record Mean() implements Decision {
    @Override
    public Verdict on(List<Speed> readings, int counted, Bound bound) {
      if (readings.size() < counted) {
        return Counting.moreReadings(counted - readings.size());
      }
      MeanSpeed mean = MeanSpeed.of(readings);
      return bound.verdict(bound.admits(mean), Sentence.of(Because.MEAN, bound.show(mean)));
    }

    @Override
    public FigureRange figure(List<Speed> readings, int counted) {
      return FigureRange.mean(readings, counted);
    }

    @Override
    public Sentence figureName() {
      return Sentence.of(Because.THE_MEAN);
    }

    @Override
    public Sentence ofFurther(int counted) {
      return Sentence.of(Demand.FURTHER_MEAN, counted);
    }

    @Override
    public Sentence inWords(int counted) {
      return Sentence.of(Demand.MEAN, counted);
    }
  }

  /** The highest of the counted readings decides: one over is enough to fail. */
  record Highest() implements Decision {
    @Override
    public Verdict on(List<Speed> readings, int counted, Bound bound) {
      return Counting.of(readings, bound)
          .decide(
              counted,
              counted,
              tally -> Sentence.of(Because.HIGHEST, counted, tally.show(highest(readings))),
              Highest::firstOver);
    }

    private static Sentence firstOver(Counting tally) {
      return Sentence.of(Because.READING, tally.show(tally.over().get(0)));
    }

    private static Speed highest(List<Speed> readings) {
      return readings.stream().max(Comparator.naturalOrder()).orElseThrow();
    }

    @Override
    public FigureRange figure(List<Speed> readings, int counted) {
      return FigureRange.places(readings, counted, counted, counted);
    }

    @Override
    public Optional<Demand> decidesByOne(int counted) {
      return Optional.of(Demand.OVER);
    }

    @Override
    public Sentence figureName() {
      return Sentence.of(Because.THE_HIGHEST);
    }

    @Override
    public Sentence ofFurther(int counted) {
      return Sentence.of(Demand.FURTHER_HIGHEST, counted);
    }

    @Override
    public Sentence inWords(int counted) {
      return Sentence.of(Demand.HIGHEST_AT_ONCE, counted);
    }

    @Override
    public Sentence withAllIn(int counted) {
      return Sentence.of(Demand.HIGHEST, counted);
    }

    @Override
    public Sentence inBands(int counted) {
      return Sentence.of(Demand.HIGHEST_BANDED, counted);
    }
  }

  /** The median of the counted readings decides; of an even number, the mean of the middle two. */
  record Median() implements Decision {
    @Override
    public Verdict on(List<Speed> readings, int counted, Bound bound) {
      return new MiddleReadings(readings, counted, bound).verdict();
    }

    @Override
    public FigureRange figure(List<Speed> readings, int counted) {
      return FigureRange.places(readings, counted, (counted + 1) / 2, counted / 2 + 1);
    }

    @Override
    public Sentence figureName() {
      return Sentence.of(Because.THE_MEDIAN);
    }

    @Override
    public Sentence ofFurther(int counted) {
      return Sentence.of(Demand.FURTHER_MEDIAN, counted);
    }

    @Override
    public Sentence inWords(int counted) {
      return Sentence.of(counted % 2 == 0 ? Demand.MEDIAN_OF_EVEN : Demand.MEDIAN, counted);
    }
  }

  /**
   * So many of the counted readings must be within.
   *
   * @param needed how many, one or more
   */
  record WithinCount(int needed) implements Decision {
    /** How the rule book writes it. */
    public static final String WORD = "k of n";

    /**
     * @throws IllegalArgumentException if none is needed
     */
    public WithinCount {
      if (needed < 1) {
        throw new IllegalArgumentException("at least 1 reading must be within, not " + needed);
      }
    }

    @Override
    public Verdict on(List<Speed> readings, int counted, Bound bound) {
      return Counting.of(readings, bound)
          .decide(
              needed,
              counted,
              tally -> fact(Because.ENOUGH_WITHIN, tally.within(), counted, tally),
              tally -> fact(Because.TOO_MANY_OVER, tally.over(), counted, tally));
    }

    private Sentence fact(Because form, List<Speed> readings, int counted, Counting tally) {
      return Sentence.of(form, readings.size(), counted, tally.shown(readings), needed);
    }

    @Override
    public FigureRange figure(List<Speed> readings, int counted) {
      return FigureRange.places(readings, counted, needed, needed);
    }

    @Override
    public Optional<Demand> decidesByOne(int counted) {
      return needed == counted
          ? Optional.of(Demand.OVER)
          : Optional.of(Demand.WITHIN).filter(within -> needed == 1);
    }

    @Override
    public Sentence figureName() {
      return needed == 1
          ? Sentence.of(Because.THE_SLOWEST)
          : Sentence.of(Because.THE_SLOWEST_BUT, needed - 1);
    }

    @Override
    public Sentence ofFurther(int counted) {
      return Sentence.of(Demand.FURTHER_COUNT, needed, counted);
    }

    @Override
    public Sentence inWords(int counted) {
      return Sentence.of(Demand.WITHIN_COUNT, needed, counted);
    }
  }

  /** The first reading within passes; when none of the counted ones is, the check fails. */
  record FirstWithin() implements Decision {
    @Override
    public Verdict on(List<Speed> readings, int counted, Bound bound) {
      return Counting.of(readings, bound)
          .decide(
              1,
              counted,
              tally -> Sentence.of(Because.FIRST_WITHIN, tally.show(tally.within().get(0))),
              tally -> Sentence.of(Because.NONE_WITHIN, counted, tally.shown(tally.over())));
    }

    @Override
    public FigureRange figure(List<Speed> readings, int counted) {
      return FigureRange.places(readings, counted, 1, 1);
    }

    @Override
    public Optional<Demand> decidesByOne(int counted) {
      return Optional.of(Demand.WITHIN);
    }

    @Override
    public Sentence figureName() {
      return Sentence.of(Because.THE_SLOWEST);
    }

    @Override
    public Sentence ofFurther(int counted) {
      return Sentence.of(Demand.FURTHER_COUNT, 1, counted);
    }

    @Override
    public Sentence inWords(int counted) {
      return Sentence.of(Demand.FIRST_WITHIN, counted);
    }

    @Override
    public Sentence withAllIn(int counted) {
      return Sentence.of(Demand.ONE_WITHIN, counted);
    }
  }
}
