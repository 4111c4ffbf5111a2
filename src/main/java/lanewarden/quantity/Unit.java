package lanewarden.quantity;

import java.math.BigDecimal;
import java.util.List;

/**
 * A unit of measurement whose factor to the coherent SI unit is an exact decimal.
 *
 * <p>Units without an exact decimal factor (km/h, for one) are left out on purpose: with these
 * only, every quantity has an exact SI value and any two of one kind compare without rounding.
 */
public sealed interface Unit
    permits SpeedUnit, MassUnit, ForceUnit, LengthUnit, EnergyUnit, MomentumUnit {

  /** How many coherent SI units one of this unit is; exact. */
  BigDecimal inSi();

  /** The spellings accepted in writing; the first is the one printed. */
  List<String> spellings();

  /** The spelling that is printed, for example {@code ft/s}. */
  default String symbol() {
    return spellings().get(0);
  }
}
