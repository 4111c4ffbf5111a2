package lanewarden.station;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import lanewarden.metrology.LanePlan;
import lanewarden.metrology.SamplePlan;
import lanewarden.metrology.WaitingLine;

/**
 * What the organizer asks before an event: do the lanes cope, and what does a random share find.
 *
 * @param competitors who come to be checked, one or more
 * @param minutes in which they come, more than zero
 * @param shots a check takes on average, more than zero
 * @param secondsAShot more than zero
 * @param secondsAChange from one archer to the next, zero or more
 * @param lanes that work side by side, 1 to 100
 * @param drawn how many of them are drawn to be checked, 0 to all
 * @param overLimit how many of them shoot over the limit, 0 to all
 * @param caught probability that a check ends over for one of these, more than 0, at most 1
 */
public record LaneQuestion(
    int competitors,
    double minutes,
    double shots,
    double secondsAShot,
    double secondsAChange,
    int lanes,
    int drawn,
    int overLimit,
    double caught) {

  /** The chance with which a sample is meant to find someone, for the smallest that does. */
  public static final double WANTED = 0.9;

  /** More lanes than any range has. */
  static final int MOST_LANES = 100;

  /**
   * What was typed: the question, or what is wrong with each figure.
   *
   * @param question empty if anything is wrong
   * @param faults how to mend each figure of which no sense can be made
   */
  public record Typed(Optional<LaneQuestion> question, Map<LaneFigure, String> faults) {}

  /** Reads what was typed. */
  public static Typed read(Function<LaneFigure, String> typed) {
    Map<LaneFigure, Double> read = new EnumMap<>(LaneFigure.class);
    Map<LaneFigure, String> faults = new EnumMap<>(LaneFigure.class);
    double competitors = LaneFigure.COMPETITORS.read(typed.apply(LaneFigure.COMPETITORS));
    for (LaneFigure figure : LaneFigure.values()) {
      double value = figure.read(typed.apply(figure));
      read.put(figure, value);
      if (!figure.allows(value, competitors)) {
        faults.put(figure, figure.mend());
      }
    }
    return new Typed(faults.isEmpty() ? Optional.of(of(read)) : Optional.empty(), faults);
  }

  private static LaneQuestion of(Map<LaneFigure, Double> read) {
    return new LaneQuestion(
        (int) of(read, LaneFigure.COMPETITORS),
        of(read, LaneFigure.MINUTES),
        of(read, LaneFigure.SHOTS),
        of(read, LaneFigure.SECONDS_A_SHOT),
        of(read, LaneFigure.SECONDS_A_CHANGE),
        (int) of(read, LaneFigure.LANES),
        (int) of(read, LaneFigure.DRAWN),
        (int) of(read, LaneFigure.OVER_LIMIT),
        of(read, LaneFigure.CAUGHT));
  }

  private static double of(Map<LaneFigure, Double> read, LaneFigure figure) {
    return Objects.requireNonNull(read.get(figure));
  }

  /**
   * The answer.
   *
   * @param secondsACheck how long one competitor takes a lane
   * @param secondsAvailable how long one may take it if all who are drawn are to be checked in time
   * @param capacity how many can be checked in the time, if a lane never stands idle
   * @param lanesNeeded the fewest lanes with which the line does not grow without end
   * @param busy the share of the time in which a lane is taken; 1 or more if they cannot cope
   * @param waiting what waiting there is; empty if the line grows without end
   * @param finds probability that at least one of those over the limit is caught, if all who are
   *     drawn are checked
   * @param findsInTime the same, if only as many of them are checked as the lanes have time for
   * @param enough the smallest sample that catches one with {@link #WANTED}; empty if none does
   */
  public record Answer(
      double secondsACheck,
      double secondsAvailable,
      long capacity,
      long lanesNeeded,
      double busy,
      Optional<Waiting> waiting,
      double finds,
      double findsInTime,
      OptionalInt enough) {}

  /**
   * Waiting in the long run, if checks vary as much as by chance; less than that in truth.
   *
   * @param probability that a competitor has to wait
   * @param meanSeconds which a competitor waits on average
   * @param meanLength competitors who stand in line on average
   */
  public record Waiting(double probability, double meanSeconds, double meanLength) {}

  /**
   * Works the answer out: only those drawn come to the lanes.
   *
   * @throws IllegalArgumentException if a number makes no sense, saying which
   */
  public Answer answer() {
    SamplePlan sample = new SamplePlan(competitors, overLimit, caught);
    double finds = sample.catchesOne(drawn);
    LanePlan plan =
        new LanePlan(Math.max(1, drawn), minutes, shots, secondsAShot, secondsAChange, lanes);
    Optional<Waiting> waiting =
        plan.line() instanceof WaitingLine.Steady line
            ? Optional.of(new Waiting(line.probability(), line.meanSeconds(), line.meanLength()))
            : Optional.empty();
    return new Answer(
        plan.secondsACheck(),
        plan.secondsAvailable(),
        plan.capacity(),
        plan.lanesNeeded(),
        plan.utilisation(),
        waiting,
        finds,
        sample.catchesOne((int) Math.min(drawn, plan.capacity())),
        overLimit == 0 ? OptionalInt.empty() : sample.smallestFor(WANTED));
  }
}
