package lanewarden.quantity;

import java.math.BigDecimal;
import java.util.List;

/** Units of mass; the SI unit is the kilogram. */
public enum MassUnit implements Unit {
  /** Grain, exactly 64.79891 mg. */
  GRAIN("0.00006479891", "gr", "grain", "grains"),
  /** Gram. */
  GRAM("0.001", "g"),
  /** Kilogram. */
  KILOGRAM("1", "kg"),
  /** Avoirdupois pound, exactly 0.45359237 kg. */
  POUND("0.45359237", "lb");

  private final BigDecimal inSi;
  private final List<String> spellings;

  MassUnit(String inSi, String... spellings) {
    this.inSi = new BigDecimal(inSi);
    this.spellings = List.of(spellings);
  }

  @Override
  public BigDecimal inSi() {
    return inSi;
  }

  @Override
  public List<String> spellings() {
    return spellings;
  }
}
