package lanewarden.audit.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewarden.bow.Drag;
import lanewarden.journal.Check;
import lanewarden.journal.Outcome;
import lanewarden.journal.Place;
import lanewarden.journal.TakenShot;
import lanewarden.metrology.Conformance;
import lanewarden.quantity.Mass;
import lanewarden.quantity.MeanSpeed;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import lanewarden.rules.Rule;
import lanewarden.rules.Verdict;

/**
 * How far the figure that decided a check can be believed, in words for its row.
 *
 * @param conformance with which probability the limit was kept, after JCGM 106:2012, 7.3, or why
 *     that cannot be said although the accuracy of the instrument is stated; nothing where no
 *     figure decided, where it is not stated, and where the instrument itself is in question
 * @param atBow about how fast the fastest reading that counts left the bow, or that it is not
 *     computable; nothing where distance or arrow is not known
 */
public record FigureWorth(String conformance, String atBow) {
  /** The coverage factor of the expanded uncertainty: about 95 % where errors are normal. */
  private static final double FACTOR = 2;

  private static final int DECIMALS = 2;

  /**
   * @param rule that governs the check, if it is known
   */
  public static FigureWorth of(Check check, Optional<Rule> rule, Openings openings) {
    return new FigureWorth(
        rule.flatMap(r -> conformance(check, r, openings.statesAccuracy(check.number())))
            .orElse(""),
        atBow(check, rule, openings).orElse(""));
  }

  /**
   * @param stated whether the accuracy of the instrument is
   */
  private static Optional<String> conformance(Check check, Rule rule, boolean stated) {
    Verdict verdict = check.judgedBy(rule);
    Optional<MeanSpeed> figure = rule.decidingFigure(verdict, check.setUp(), check.judged());
    Optional<Speed> limit = rule.tolerated(check.setUp());
    // What does not follow from the readings is a finding, and no probability makes it better
    boolean follows = check.outcome().equals(Optional.of(Outcome.of(verdict)));
    if (check.inQuestion() || !follows || figure.isEmpty() || limit.isEmpty()) {
      return Optional.empty();
    }
    List<TakenShot> without =
        settled(check).filter(s -> s.reading().uncertainty() == null).toList();
    return without.isEmpty()
        ? standard(check)
            .map(u -> words(figure.get(), limit.get(), u, verdict instanceof Verdict.Within))
        : without(without, stated);
  }

  private static Stream<TakenShot> settled(Check check) {
    return check.shots().stream().filter(TakenShot::isSettled);
  }

  /** One reading without uncertainty takes it from the figure: that is said, not passed over. */
  private static Optional<String> without(List<TakenShot> without, boolean stated) {
    if (!stated) {
      return Optional.empty();
    }
    boolean typed = without.stream().allMatch(s -> s.reading().source().equals(ReadingMark.TYPED));
    return Optional.of(
        "No uncertainty and no probability: for shot "
            + without.stream()
                .map(s -> String.valueOf(s.reading().shot()))
                .collect(Collectors.joining(", "))
            + (typed ? ", typed by an official," : "")
            + " none is known.");
  }

  private static String words(MeanSpeed figure, Speed limit, double standard, boolean pass) {
    double kept =
        Conformance.probabilityWithin(
            figure.sumSi().doubleValue() / figure.count(), limit.siDouble(), standard);
    SpeedUnit unit = limit.unit();
    return figure.to(unit, DECIMALS)
        + " ± "
        + expanded(standard, unit)
        + " (k = 2): at most "
        + Wording.plain(limit)
        + " with a probability of "
        + percent(kept)
        + ". A "
        + (pass ? "pass" : "fail")
        + " like this is wrong "
        + timesInHundred(pass ? 1 - kept : kept)
        + ".";
  }

  /**
   * The standard uncertainty of the deciding figure, m/s: the largest of the readings that count,
   * since what they share does not average out of a mean, and the ledger does not say how much of
   * it that is. Empty if none has one.
   */
  private static Optional<Double> standard(Check check) {
    return settled(check)
        .flatMap(s -> Optional.ofNullable(s.reading().uncertainty()).stream())
        .map(Speed::siDouble)
        .max(Comparator.naturalOrder());
  }

  /** Rounded up, so that it never claims too much. */
  private static Speed expanded(double standard, SpeedUnit unit) {
    return Speed.of(
        BigDecimal.valueOf(FACTOR * standard).divide(unit.inSi(), DECIMALS, RoundingMode.CEILING),
        unit);
  }

  private static String percent(double probability) {
    if (probability >= 0.9995) {
      return "more than 99.9 %";
    }
    return probability < 0.0005
        ? "less than 0.1 %"
        : String.format(Locale.ROOT, "%.1f %%", 100 * probability);
  }

  private static String timesInHundred(double risk) {
    return risk < 0.0005
        ? "less than 0.1 times in 100"
        : String.format(Locale.ROOT, "about %.1f times in 100", 100 * risk);
  }

  private static Optional<String> atBow(Check check, Optional<Rule> rule, Openings openings) {
    Mass arrow = check.setUp().arrowMass();
    Optional<TakenShot> fastest =
        settled(check).max(Comparator.comparing(s -> s.reading().speed()));
    if (arrow == null || fastest.isEmpty()) {
      return Optional.empty();
    }
    Speed reading = fastest.get().reading().speed();
    SpeedUnit unit = rule.map(Rule::unit).orElse(reading.unit());
    return openings
        .place(fastest.get().sequence())
        .map(
            place ->
                atBow(place, arrow, reading)
                    .map(speed -> "about " + speed.to(unit, 1) + " at the bow")
                    .orElse("at the bow: not computable from the place signed at the opening"));
  }

  private static Optional<Speed> atBow(Place place, Mass arrow, Speed reading) {
    return Drag.of(
            place.airDensity().doubleValue(),
            place.dragCoefficient().doubleValue(),
            place.shaftDiameter(),
            arrow)
        .atBow(place.distance(), reading);
  }
}
