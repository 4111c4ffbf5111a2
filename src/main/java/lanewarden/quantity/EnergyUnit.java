package lanewarden.quantity;

import java.math.BigDecimal;
import java.util.List;

/** Units of energy; the SI unit is the joule. */
public enum EnergyUnit implements Unit {
  /** Joule. */
  JOULE("1", "J"),
  /** Foot pound-force, exactly 0.3048 m × 4.4482216152605 N. */
  FOOT_POUND("1.3558179483314004", "ft·lbf", "ft-lbf", "ft.lbf", "ft-lb");

  private final BigDecimal inSi;
  private final List<String> spellings;

  EnergyUnit(String inSi, String... spellings) {
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
