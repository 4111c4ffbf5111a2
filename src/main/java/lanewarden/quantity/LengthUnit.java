package lanewarden.quantity;

import java.math.BigDecimal;
import java.util.List;

/** Units of length; the SI unit is the metre. */
public enum LengthUnit implements Unit {
  /** Metre. */
  METRE("1", "m"),
  /** Centimetre. */
  CENTIMETRE("0.01", "cm"),
  /** Millimetre. */
  MILLIMETRE("0.001", "mm"),
  /** Inch, exactly 25.4 mm. */
  INCH("0.0254", "in"),
  /** International foot, exactly 0.3048 m. */
  FOOT("0.3048", "ft"),
  /** International yard, exactly 0.9144 m. */
  YARD("0.9144", "yd");

  private final BigDecimal inSi;
  private final List<String> spellings;

  LengthUnit(String inSi, String... spellings) {
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
