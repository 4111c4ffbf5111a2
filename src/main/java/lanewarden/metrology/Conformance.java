package lanewarden.metrology;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * How a reading with an uncertainty is held against an upper limit, after JCGM 106:2012.
 *
 * <p>Errors are normal. The guard band is computed in double and then becomes a decimal, rounded
 * up, so that the verdict itself is an exact comparison.
 *
 * @param rule on which side the guard band lies
 * @param multiple guard band in standard uncertainties: 2 for w = U with k = 2; 0 with simple
 *     acceptance and more than 0 with the others
 */
public record Conformance(DecisionRule rule, double multiple) {

  /** A ten-thousandth of the limit's unit: finer than any display. */
  private static final int DECIMALS = 4;

  private static final int MOST_STEPS = 200;

  /** No guard band at all. */
  public static final Conformance SIMPLE = new Conformance(DecisionRule.SIMPLE_ACCEPTANCE, 0);

  /**
   * @throws IllegalArgumentException if rule and guard band do not fit together
   */
  public Conformance {
    Figures.requireNotNegative(multiple, "the guard band, in standard uncertainties,");
    if ((rule == DecisionRule.SIMPLE_ACCEPTANCE) != (multiple == 0)) {
      throw new IllegalArgumentException(
          "simple acceptance has a guard band of 0 and the guarded rules one of more than 0, not "
              + multiple);
    }
  }

  /**
   * The probability that the true speed is at most the limit (JCGM 106:2012, 7.3), the reading
   * being all that is known of it.
   *
   * @param measured m/s
   * @param limit m/s
   * @param standard standard uncertainty of the reading, m/s, zero or more
   */
  public static double probabilityWithin(double measured, double limit, double standard) {
    Figures.requireNotNegative(standard, "the standard uncertainty, in m/s,");
    if (standard == 0) {
      return measured <= limit ? 1 : 0;
    }
    return Bell.below((limit - measured) / standard);
  }

  /**
   * The fastest reading that passes, exact, in the limit's unit.
   *
   * @param limit the fastest true speed allowed
   * @param standard standard uncertainty of the reading, m/s, zero or more
   * @throws IllegalArgumentException if the guard band leaves no speed that could pass
   */
  public Speed acceptanceLimit(Speed limit, double standard) {
    Figures.requireNotNegative(standard, "the standard uncertainty, in m/s,");
    if (rule.side() == 0 || standard == 0) {
      return limit;
    }
    BigDecimal band =
        BigDecimal.valueOf(multiple * standard)
            .divide(limit.unit().inSi(), DECIMALS, RoundingMode.CEILING);
    BigDecimal value = limit.value().add(band.multiply(BigDecimal.valueOf(rule.side())));
    if (value.signum() <= 0) {
      throw new IllegalArgumentException(
          "a guard band of " + band + " leaves nothing of the limit of " + limit);
    }
    return Speed.of(value, limit.unit());
  }

  /**
   * The same where the uncertainty depends on the speed: the reading that lies one guard band from
   * the limit with the uncertainty it has itself (JCGM 106:2012, 8.3.3.2 example 1).
   *
   * @throws IllegalArgumentException if the uncertainty grows so fast that there is none
   */
  public Speed acceptanceLimit(Speed limit, ReadingUncertainty uncertainty) {
    if (rule.side() == 0) {
      return limit;
    }
    double reading = limit.siDouble();
    for (int step = 0; step < MOST_STEPS && reading > 0 && Double.isFinite(reading); step++) {
      double standard = uncertainty.at(Speed.ofSi(reading, SpeedUnit.METRES_PER_SECOND)).combined();
      double next = limit.siDouble() + rule.side() * multiple * standard;
      if (Math.abs(next - reading) < 1e-9) {
        return acceptanceLimit(limit, standard);
      }
      reading = next;
    }
    throw new IllegalArgumentException(
        "the readings are too uncertain for a guard band of "
            + multiple
            + " standard uncertainties about "
            + limit);
  }

  /** Whether a reading passes; exact against {@link #acceptanceLimit(Speed, double)}. */
  public boolean accepts(Speed measured, Speed limit, double standard) {
    return measured.isAtMost(acceptanceLimit(limit, standard));
  }

  /**
   * The specific risk of a reading exactly at the acceptance limit: that it passes though the true
   * speed is over (simple and guarded acceptance), or would fail though it is within (guarded
   * rejection). Farther from the edge it is less.
   */
  public double riskAtTheEdge() {
    return Bell.above(multiple);
  }

  /** The rule and its risk, for a rule sheet. */
  public Sentence inWords() {
    BigDecimal uncertainties = new BigDecimal(String.format(Locale.ROOT, "%.2f", multiple));
    return switch (rule) {
      case SIMPLE_ACCEPTANCE -> Sentence.of(Guarding.SIMPLE, risk());
      case GUARDED_ACCEPTANCE -> Sentence.of(Guarding.ACCEPTANCE, uncertainties, risk());
      case GUARDED_REJECTION -> Sentence.of(Guarding.REJECTION, uncertainties, risk());
    };
  }

  /**
   * Rounded up to a tenth, since the words say "at most"; the subtraction takes off binary dust.
   */
  private Percent risk() {
    double tenths = Math.max(1, Math.ceil(1000 * riskAtTheEdge() - 1e-9));
    return Percent.parse(String.format(Locale.ROOT, "%.1f %%", tenths / 10));
  }
}
