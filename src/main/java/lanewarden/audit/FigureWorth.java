package lanewarden.audit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
 * @param conformance with which probability the limit was kept, after JCGM 106:2012, 7.3; nothing
 *     where no figure decided or a reading has no uncertainty
 * @param atBow about how fast the fastest reading that counts left the bow, or that it is not
 *     computable; nothing where distance or arrow is not known
 */
record FigureWorth(String conformance, String atBow) {
  /** The coverage factor of the expanded uncertainty: about 95 % where errors are normal. */
  private static final double FACTOR = 2;

  private static final int DECIMALS = 2;

  /**
   * @param rule that governs the check, if it is known
   */
  static FigureWorth of(Check check, Optional<Rule> rule, Openings openings) {
    return new FigureWorth(
        rule.flatMap(r -> conformance(check, r)).orElse(""),
        atBow(check, rule, openings).orElse(""));
  }

  private static Optional<String> conformance(Check check, Rule rule) {
    Verdict verdict = check.judgedBy(rule);
    Optional<MeanSpeed> figure = rule.decidingFigure(verdict, check.setUp(), check.judged());
    Optional<Speed> limit = rule.tolerated(check.setUp());
    Optional<Double> standard = standard(check);
    // What does not follow from the readings is a finding, and no probability makes it better
    boolean follows = check.outcome().equals(Optional.of(Outcome.of(verdict)));
    if (!follows || figure.isEmpty() || limit.isEmpty() || standard.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        words(figure.get(), limit.get(), standard.get(), verdict instanceof Verdict.Within));
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
   * it that is. Empty if one of them has none.
   */
  private static Optional<Double> standard(Check check) {
    List<TakenShot> counted = check.shots().stream().filter(TakenShot::counts).toList();
    if (counted.stream().anyMatch(s -> s.reading().uncertainty() == null)) {
      return Optional.empty();
    }
    return counted.stream()
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
        check.shots().stream()
            .filter(TakenShot::counts)
            .max(Comparator.comparing(s -> s.reading().speed()));
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
