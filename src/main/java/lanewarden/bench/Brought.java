package lanewarden.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import lanewarden.bow.Arrow;
import lanewarden.bow.BowLimit;
import lanewarden.bow.DrawCurve;
import lanewarden.bow.DrawShape;
import lanewarden.bow.Launch;
import lanewarden.bow.MeasuredBow;
import lanewarden.metrology.Estimate;
import lanewarden.metrology.Interval;
import lanewarden.metrology.Mixture;
import lanewarden.quantity.Energy;
import lanewarden.quantity.EnergyUnit;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
import lanewarden.quantity.Mass;
import lanewarden.quantity.MassUnit;
import lanewarden.quantity.MomentumUnit;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import lanewarden.rules.Division;
import lanewarden.rules.RuleEffect;
import lanewarden.rules.SetUp;

/**
 * A set-up that an archer thinks of bringing.
 *
 * @param arrow its mass
 * @param setUp bow and arrow, as far as they are known
 * @param speed of its arrows on average, m/s
 * @param bow whose shots tell that speed; empty where it was only expected
 * @param curve its force-draw curve, where it was measured
 */
public record Brought(
    Mass arrow, SetUp setUp, Mixture speed, Optional<MeasuredBow> bow, Optional<DrawCurve> curve) {

  /** So many alike likely speeds stand for what is believed of the mean. */
  private static final int SPEEDS = 60;

  /** Two-sided, of every interval told. */
  private static final double CONFIDENCE = 0.95;

  /**
   * What awaits it in each of these divisions, in their order.
   *
   * @param supposed of archer and instrument
   */
  public List<Prospect> prospects(List<Division> divisions, RuleEffect.Supposed supposed) {
    List<Double> speeds =
        IntStream.range(0, SPEEDS).mapToObj(i -> speed.quantile((i + 0.5) / SPEEDS)).toList();
    return divisions.stream()
        .map(division -> Prospect.of(division, setUp, speeds, supposed))
        .toList();
  }

  /** What it does, in sentences: speed, energy, momentum, and what is known of the bow. */
  public List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    Speed mean = feet(speed.mean());
    Interval range = speed.interval(CONFIDENCE);
    sentences.add(
        "An arrow of "
            + arrow
            + " at "
            + mean
            + " ("
            + feet(range.low()).value()
            + " to "
            + feet(range.high())
            + " with 95 % confidence).");
    Arrow flying = new Arrow(arrow);
    sentences.add(
        "It carries "
            + flying.kineticEnergyAt(mean).to(EnergyUnit.FOOT_POUND, 1)
            + " ("
            + flying.kineticEnergyAt(mean).to(EnergyUnit.JOULE, 1)
            + ") and "
            + flying.momentumAt(mean).to(MomentumUnit.SLUG_FOOT_PER_SECOND, 3)
            + ".");
    bow.flatMap(shot -> shot.fittedVirtualMass().map(fit -> virtualMass(shot, fit)))
        .ifPresent(sentences::add);
    stored(flying, mean).ifPresent(sentences::add);
    return sentences;
  }

  private static String virtualMass(MeasuredBow bow, Estimate fit) {
    String alone =
        "By the shots alone the bow's virtual mass is "
            + grains(fit.value())
            + " gr with a standard uncertainty of "
            + grains(fit.standard())
            + " gr";
    if (bow.isNoise()) {
      return alone
          + ": less than nothing, which no bow has. That is noise and is not used; supposed are "
          + bow.supposed().inWords()
          + ".";
    }
    Interval believed = bow.virtualMass(CONFIDENCE);
    return alone
        + "; with "
        + bow.supposed().inWords()
        + " supposed, it is "
        + grains(believed.low())
        + " to "
        + grains(believed.high())
        + " gr with 95 % confidence.";
  }

  private static String grains(double kilograms) {
    return String.format(Locale.ROOT, "%.0f", kilograms / MassUnit.GRAIN.inSi().doubleValue());
  }

  private Optional<String> stored(Arrow flying, Speed mean) {
    if (curve.isPresent()) {
      Energy stored = curve.get().stored();
      Launch launch = new Launch(flying, mean, stored);
      return Optional.of(
          "By its force-draw curve the bow stores "
              + stored.to(EnergyUnit.FOOT_POUND, 1)
              + "; the arrow takes "
              + percent(launch.efficiency())
              + " % of it, a virtual mass of "
              + grains(launch.virtualMass())
              + " gr."
              + misfit(launch.efficiency()));
    }
    Force draw = setUp.drawWeight();
    Length length = setUp.drawLength();
    Length brace = setUp.braceHeight();
    if (draw == null || length == null || brace == null) {
      return Optional.empty();
    }
    Interval stored = DrawShape.LET_OFF.stored(new BowLimit(draw, length, brace));
    double carried = flying.kineticEnergyAt(mean).siDouble();
    return Optional.of(
        "A compound bow of these figures stores about "
            + joules(stored.low()).value()
            + " to "
            + joules(stored.high())
            + " (rule of thumb); the arrow takes "
            + percent(carried / stored.high())
            + " to "
            + percent(carried / stored.low())
            + " % of it."
            + misfit(carried / stored.high()));
  }

  private static String misfit(double efficiency) {
    return efficiency > 1 ? " More than all cannot be: look at the figures again." : "";
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f", 100 * share);
  }

  private static Energy joules(double joules) {
    return Energy.ofSi(joules, EnergyUnit.JOULE).to(EnergyUnit.FOOT_POUND, 1);
  }

  private static Speed feet(double metresPerSecond) {
    return Speed.ofSi(metresPerSecond, SpeedUnit.METRES_PER_SECOND)
        .to(SpeedUnit.FEET_PER_SECOND, 1);
  }
}
