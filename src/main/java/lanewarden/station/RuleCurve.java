package lanewarden.station;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.metrology.CurvePoint;
import lanewarden.metrology.OperatingCharacteristic;
import lanewarden.quantity.Force;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import lanewarden.rules.Division;
import lanewarden.rules.RuleEffect;
import lanewarden.rules.SetUp;

/**
 * What a division's rule does to archers of every speed, to be drawn.
 *
 * @param limit as the rule writes it; where an energy governs, the fastest speed for the arrow
 * @param allowed the fastest speed that keeps the rule
 * @param points how checks end, re-checks included, over evenly spaced true speeds in m/s
 * @param risks the two numbers that sum the rule up
 * @param caught probability that an archer who should fail ends over
 * @param inWords the two numbers in a sentence
 * @param drawn how many archers were drawn for each speed; 0 where the chances are calculated
 */
public record RuleCurve(
    Speed limit,
    Speed allowed,
    List<CurvePoint> points,
    OperatingCharacteristic.Risks risks,
    double caught,
    String inWords,
    int drawn) {

  /** How many points a curve has. */
  static final int POINTS = 121;

  /**
   * What is supposed of archers, bows and the instrument.
   *
   * @param arrows standard deviation of an archer's arrows from one to the next
   * @param reading standard uncertainty of the instrument that is new with each reading
   * @param calibration standard uncertainty of the instrument that all readings share
   * @param voids the share of shots that give no reading that stands, less than 100 %
   * @param excess how far over the limit an archer is who should fail, more than zero
   * @param arrow mass of the arrow, where a clause asks for it
   * @param draw draw weight as set, where a clause asks for it
   * @param certified draw weight as certified, where a clause asks for it
   */
  public record Supposed(
      Speed arrows,
      Speed reading,
      Speed calibration,
      Percent voids,
      Speed excess,
      Mass arrow,
      Force draw,
      Force certified) {}

  /** Copies the list. */
  public RuleCurve {
    points = List.copyOf(points);
  }

  /** The unit in which the rule speaks of speeds. */
  public SpeedUnit unit() {
    return limit.unit();
  }

  /**
   * The curves of several divisions over the same speeds; empty for one in which no shot is
   * measured with this set-up.
   */
  public static List<Optional<RuleCurve>> together(List<Division> divisions, Supposed supposed) {
    List<Optional<RuleEffect>> effects = new ArrayList<>();
    double from = Double.POSITIVE_INFINITY;
    double to = 0;
    for (Division division : divisions) {
      Optional<RuleEffect> effect = effect(division, supposed);
      effects.add(effect);
      from = Math.min(from, effect.map(RuleEffect::from).orElse(from));
      to = Math.max(to, effect.map(RuleEffect::to).orElse(to));
    }
    List<Optional<RuleCurve>> curves = new ArrayList<>();
    for (Optional<RuleEffect> effect : effects) {
      curves.add(
          effect.isEmpty()
              ? Optional.empty()
              : Optional.of(of(effect.get(), from, to, supposed.excess())));
    }
    return curves;
  }

  private static Optional<RuleEffect> effect(Division division, Supposed supposed) {
    return RuleEffect.of(
        division.rule(),
        new SetUp(supposed.arrow(), supposed.draw(), supposed.certified()),
        new RuleEffect.Supposed(
            supposed.arrows(), supposed.reading(), supposed.calibration(), supposed.voids()));
  }

  private static RuleCurve of(RuleEffect effect, double from, double to, Speed excess) {
    return new RuleCurve(
        effect.limit(),
        effect.fastest(),
        effect.curve(from, to, POINTS),
        effect.risks(excess),
        effect.caught(excess),
        effect.inWords(excess),
        effect.isCalculated() ? 0 : effect.drawn());
  }
}
