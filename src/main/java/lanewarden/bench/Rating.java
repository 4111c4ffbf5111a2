package lanewarden.bench;

import java.util.Locale;
import java.util.Optional;
import lanewarden.metrology.Interval;
import lanewarden.quantity.Force;
import lanewarden.quantity.ForceUnit;
import lanewarden.quantity.Length;
import lanewarden.quantity.LengthUnit;
import lanewarden.quantity.Mass;
import lanewarden.quantity.MassUnit;
import lanewarden.quantity.Quantity;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * The speed a bow's maker states, with the conditions it was measured under.
 *
 * <p>Scaled to another draw and arrow it is a guess by rules of thumb, each with its range (common
 * practice of the trade): nothing may rest on it but a look whether a bow does about what it
 * should.
 *
 * @param speed as stated
 * @param drawWeight it was measured with
 * @param drawLength it was measured with
 * @param arrow it was measured with
 */
public record Rating(Speed speed, Force drawWeight, Length drawLength, Mass arrow) {

  private static final double FOOT = SpeedUnit.FEET_PER_SECOND.inSi().doubleValue();

  /** How much speed a step of one figure gives, ft/s. */
  private record Thumb(double least, double usual, double most) {
    /** What so many steps change, from the least to the most. */
    Expected change(double steps) {
      return new Expected(
          new Interval(
              FOOT * Math.min(steps * least, steps * most),
              FOOT * Math.max(steps * least, steps * most)),
          FOOT * steps * usual);
    }
  }

  private static final Thumb AN_INCH = new Thumb(8, 10, 12);
  private static final Thumb A_POUND = new Thumb(1.5, 2, 2.5);
  private static final Thumb A_GRAIN = new Thumb(-0.25, -1 / 3.0, -0.4);

  /**
   * What a bow should give by its rating.
   *
   * @param range with every rule of thumb at its ends, m/s
   * @param usual m/s
   */
  public record Expected(Interval range, double usual) {
    private Expected plus(Expected other) {
      return new Expected(
          new Interval(range.low() + other.range.low(), range.high() + other.range.high()),
          usual + other.usual);
    }

    /**
     * On which side of it a mean speed lies, for a person.
     *
     * @param metresPerSecond the mean
     */
    public String side(double metresPerSecond) {
      if (range.holds(metresPerSecond)) {
        return "as expected";
      }
      return metresPerSecond < range.low() ? "slower than expected" : "faster than expected";
    }

    /**
     * How a mean speed compares, for a person.
     *
     * @param metresPerSecond the mean
     */
    public Sentence inWords(double metresPerSecond) {
      Told side =
          range.holds(metresPerSecond)
              ? Told.AS_EXPECTED
              : metresPerSecond < range.low() ? Told.SLOWER : Told.FASTER;
      return Sentence.of(side, feet(usual), feet(range.low()), feet(range.high()));
    }

    private static String feet(double metresPerSecond) {
      return String.format(Locale.ROOT, "%.0f", metresPerSecond / FOOT);
    }
  }

  /** The speed stated, scaled to this set-up; empty where the bow's draw is not stated. */
  Optional<Expected> scaledTo(PracticeBow bow, Mass mass) {
    if (bow.drawWeight().isEmpty() || bow.drawLength().isEmpty()) {
      return Optional.empty();
    }
    double stated = speed.siDouble();
    double inch = LengthUnit.INCH.inSi().doubleValue();
    double pound = ForceUnit.POUND_FORCE.inSi().doubleValue();
    double grain = MassUnit.GRAIN.inSi().doubleValue();
    return Optional.of(
        new Expected(new Interval(stated, stated), stated)
            .plus(AN_INCH.change(in(bow.drawLength().get(), inch) - in(drawLength, inch)))
            .plus(A_POUND.change(in(bow.drawWeight().get(), pound) - in(drawWeight, pound)))
            .plus(A_GRAIN.change(in(mass, grain) - in(arrow, grain))));
  }

  private static double in(Quantity<?, ?> quantity, double unit) {
    return quantity.siDouble() / unit;
  }
}
