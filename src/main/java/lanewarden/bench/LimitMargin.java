package lanewarden.bench;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanewarden.metrology.Interval;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.rules.Division;
import lanewarden.rules.Missing;
import lanewarden.rules.Rule;
import lanewarden.rules.SetUp;
import lanewarden.rules.Verdict;

/**
 * How far a set-up's mean stays below what a division allows. A look, and no verdict: that takes
 * the event's own shots.
 *
 * @param allowed the fastest speed that passes; empty where none applies or a figure is missing
 * @param margin allowed less mean, m/s, less than zero where the mean is over; empty without either
 * @param interval from where to where the margin lies, m/s, 95 times in 100
 * @param words what it comes to
 */
public record LimitMargin(
    Division division,
    Showing showing,
    Optional<Speed> allowed,
    Optional<Double> margin,
    Optional<Interval> interval,
    Sentence words) {

  static LimitMargin of(Division division, Showing showing) {
    Rule rule = division.rule();
    SetUp setUp = setUp(showing.series());
    Verdict unshot = rule.judge(setUp, Set.copyOf(rule.conditions()), List.of());
    if (unshot instanceof Verdict.NotAdmitted barred) {
      return without(division, showing, Sentence.of(Told.NOT_ADMITTED, barred.clause()));
    }
    if (unshot instanceof Verdict.Within) {
      return without(division, showing, Sentence.of(Told.NO_LIMIT));
    }
    if (unshot instanceof Verdict.NotDecided open
        && open.missing() instanceof Missing.SetUpFigures asked) {
      return without(division, showing, Sentence.of(Told.NOT_KNOWN, asked.row()));
    }
    Optional<Speed> allowed = rule.fastest(setUp);
    if (allowed.isEmpty() || !showing.hasMean()) {
      return without(
          division, showing, Sentence.of(showing.hasMean() ? Told.NO_LIMIT : Told.NO_SHOT));
    }
    double raised = raised(rule);
    double limit = allowed.get().siDouble();
    double margin = limit - raised * showing.sample().spread().mean();
    Optional<Interval> interval =
        showing
            .interval()
            .map(mean -> new Interval(limit - raised * mean.high(), limit - raised * mean.low()));
    return new LimitMargin(
        division, showing, allowed, Optional.of(margin), interval, words(interval));
  }

  private static LimitMargin without(Division division, Showing showing, Sentence why) {
    return new LimitMargin(
        division, showing, Optional.empty(), Optional.empty(), Optional.empty(), why);
  }

  private static SetUp setUp(Series series) {
    PracticeBow bow = series.bow();
    return new SetUp(
        series.mass(),
        bow.drawWeight().orElse(null),
        null,
        bow.drawLength().orElse(null),
        bow.braceHeight().orElse(null));
  }

  /** By how much the rule raises a reading to the speed at the bow. */
  private static double raised(Rule rule) {
    return 1
        + rule.shooting()
            .flatMap(how -> how.treatment().toBow())
            .map(Percent::fraction)
            .map(Number::doubleValue)
            .orElse(0.0);
  }

  private static Sentence words(Optional<Interval> margin) {
    if (margin.isEmpty()) {
      return Sentence.of(Told.TOO_FEW);
    }
    if (margin.get().low() > 0) {
      return Sentence.of(Told.INSIDE);
    }
    return Sentence.of(margin.get().high() < 0 ? Told.OVER : Told.TOO_NEAR);
  }
}
