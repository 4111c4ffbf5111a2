package lanewarden.bow;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.quantity.FigureTold;
import lanewarden.quantity.Force;
import lanewarden.quantity.ForceUnit;
import lanewarden.quantity.Mass;
import lanewarden.quantity.MassUnit;
import lanewarden.quantity.Measure;
import lanewarden.quantity.QuantityException;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Slip;

/**
 * Arrow mass per draw weight: grains of arrow for each pound-force of draw.
 *
 * @param value grains for one pound-force, more than zero, as written
 */
public record GrainsPerPound(BigDecimal value) implements Comparable<GrainsPerPound>, Measure {

  private static final Pattern WRITTEN =
      Pattern.compile("([0-9]{1,4}(?:\\.[0-9]{1,12})?)\\s*gr/lbf?");

  /**
   * @throws QuantityException if {@code value} is not more than zero
   */
  public GrainsPerPound {
    if (value.signum() <= 0) {
      throw new QuantityException(
          Sentence.of(FigureTold.PER_POUND_MORE),
          value.toPlainString() + " gr/lb",
          Sentence.of(FigureTold.GRAINS_FOR_EACH));
    }
  }

  /**
   * Reads a number with its unit, {@code gr/lb}.
   *
   * @throws QuantityException if the text is anything else
   */
  public static GrainsPerPound parse(String text) {
    String stripped = text.strip();
    Matcher written = WRITTEN.matcher(stripped);
    if (!written.matches()) {
      throw new QuantityException(
          Sentence.of(FigureTold.PER_POUND, "5 gr/lb"),
          "\"" + (stripped.length() > 40 ? stripped.substring(0, 40) + "…" : stripped) + "\"",
          Slip.mendOf(stripped).orElse(Sentence.of(FigureTold.THEN_PER_POUND)));
    }
    return new GrainsPerPound(new BigDecimal(written.group(1)));
  }

  /** By size; 5 gr/lb and 5.0 gr/lb compare as equal. */
  @Override
  public int compareTo(GrainsPerPound other) {
    return value.compareTo(other.value);
  }

  /** Whether the arrow has at least this mass for the draw weight; exact in any units. */
  public boolean isReachedBy(Mass arrow, Force draw) {
    // grains / pounds >= value, cross-multiplied so that nothing is divided
    BigDecimal has = arrow.si().multiply(ForceUnit.POUND_FORCE.inSi());
    BigDecimal needs = value.multiply(MassUnit.GRAIN.inSi()).multiply(draw.si());
    return has.compareTo(needs) >= 0;
  }

  /** The least arrow for a draw weight, in grains, rounded up to the next tenth: for display. */
  public Mass leastArrow(Force draw) {
    BigDecimal grains =
        value.multiply(draw.si()).divide(ForceUnit.POUND_FORCE.inSi(), 1, RoundingMode.CEILING);
    return Mass.of(grains.stripTrailingZeros().toPlainString(), MassUnit.GRAIN);
  }

  /** The most draw weight for an arrow, in lbf, rounded down to the tenth before: for display. */
  public Force mostDraw(Mass arrow) {
    BigDecimal pounds =
        arrow
            .si()
            .divide(value.multiply(MassUnit.GRAIN.inSi()), 1, RoundingMode.FLOOR)
            .stripTrailingZeros();
    return Force.of(pounds.toPlainString(), ForceUnit.POUND_FORCE);
  }

  /** For example {@code 5 gr/lb}: reads back as an equal value. */
  @Override
  public String toString() {
    return value.toPlainString() + " gr/lb";
  }
}
