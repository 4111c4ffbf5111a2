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
import lanewarden.quantity.Sentence;
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
  public List<Sentence> sentences() {
    List<Sentence> sentences = new ArrayList<>();
    Speed mean = feet(speed.mean());
    Interval range = speed.interval(CONFIDENCE);
    sentences.add(
        Sentence.of(Foretold.FLIES, arrow, mean, feet(range.low()).value(), feet(range.high())));
    Arrow flying = new Arrow(arrow);
    Energy carried = flying.kineticEnergyAt(mean);
    sentences.add(
        Sentence.of(
            Foretold.CARRIES,
            carried.to(EnergyUnit.FOOT_POUND, 1),
            carried.to(EnergyUnit.JOULE, 1),
            flying.momentumAt(mean).to(MomentumUnit.SLUG_FOOT_PER_SECOND, 3)));
    bow.flatMap(shot -> shot.fittedVirtualMass().map(fit -> virtualMass(shot, fit)))
        .ifPresent(sentences::add);
    stored(flying, mean).ifPresent(sentences::add);
    return sentences;
  }

  private static Sentence virtualMass(MeasuredBow bow, Estimate fit) {
    Mass least = bow.supposed().least();
    Mass most = bow.supposed().most();
    String value = grains(fit.value());
    String standard = grains(fit.standard());
    if (bow.isNoise()) {
      return Sentence.of(Foretold.MASS_IS_NOISE, value, standard, least, most);
    }
    Interval believed = bow.virtualMass(CONFIDENCE);
    return Sentence.of(
        Foretold.MASS,
        value,
        standard,
        least,
        most,
        grains(believed.low()),
        grains(believed.high()));
  }

  private static String grains(double kilograms) {
    return String.format(Locale.ROOT, "%.0f", kilograms / MassUnit.GRAIN.inSi().doubleValue());
  }

  private Optional<Sentence> stored(Arrow flying, Speed mean) {
    if (curve.isPresent()) {
      Energy stored = curve.get().stored();
      Launch launch = new Launch(flying, mean, stored);
      return Optional.of(
          Sentence.of(
              isTooMuch(launch.efficiency()) ? Foretold.STORED_TOO_LITTLE : Foretold.STORED,
              stored.to(EnergyUnit.FOOT_POUND, 1),
              percent(launch.efficiency()),
              grains(launch.virtualMass())));
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
        Sentence.of(
            isTooMuch(carried / stored.high()) ? Foretold.STORES_TOO_LITTLE : Foretold.STORES_ABOUT,
            joules(stored.low()).value(),
            joules(stored.high()),
            percent(carried / stored.high()),
            percent(carried / stored.low())));
  }

  /** The arrow cannot take more than all of what is stored. */
  private static boolean isTooMuch(double efficiency) {
    return efficiency > 1;
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
