package lanewarden.station;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import lanewarden.metrology.CurvePoint;
import lanewarden.metrology.OperatingCharacteristic;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import lanewarden.rules.RuleEffect;

/**
 * What a division's rule does to archers of every speed, to be drawn.
 *
 * @param limit as the rule writes it; where an energy governs, the fastest speed for the arrow
 * @param allowed the fastest speed that keeps the rule
 * @param points how checks end, re-checks included, over evenly spaced true speeds in m/s
 * @param risks the two numbers that sum the rule up
 * @param caught probability that an archer who should fail ends over
 * @param inWords the two numbers in sentences, with what they hold for
 * @param drawn how many archers were drawn for each speed; 0 where the chances are calculated
 */
public record RuleCurve(
    Speed limit,
    Speed allowed,
    List<CurvePoint> points,
    OperatingCharacteristic.Risks risks,
    double caught,
    List<Sentence> inWords,
    int drawn) {

  /** How many points a curve has. */
  static final int POINTS = 121;

  /** Copies the lists. */
  public RuleCurve {
    points = List.copyOf(points);
    inWords = List.copyOf(inWords);
  }

  /** The unit in which the rule speaks of speeds. */
  public SpeedUnit unit() {
    return limit.unit();
  }

  /** Whether the figures are calculated, or from how many archers and how sure. */
  public Sentence how() {
    return drawn == 0
        ? Sentence.of(Reckoned.CALCULATED)
        : Sentence.of(
            Reckoned.SIMULATED,
            drawn,
            new BigDecimal(
                String.format(
                    Locale.ROOT, "%.1f", 100 * OperatingCharacteristic.standardError(drawn))));
  }

  static RuleCurve of(
      RuleEffect effect, double from, double to, Supposed supposed, List<Sentence> beside) {
    Speed excess = supposed.excess();
    return new RuleCurve(
        effect.limit(),
        effect.fastest(),
        effect.curve(from, to, POINTS),
        effect.risks(excess),
        effect.caught(excess),
        Stream.concat(Stream.of(effect.inWords(excess)), beside.stream()).toList(),
        effect.isCalculated() ? 0 : effect.drawn());
  }
}
