package lanewarden.quantity;

import java.math.BigDecimal;
import java.util.List;

/** Units of speed; the SI unit is the metre per second. */
public enum SpeedUnit implements Unit {
  /** Foot per second, exactly 0.3048 m/s (international foot). */
  FEET_PER_SECOND("0.3048", "ft/s", "fps"),
  /** Metre per second. */
  METRES_PER_SECOND("1", "m/s");

  private final BigDecimal inSi;
  private final List<String> spellings;

  SpeedUnit(String inSi, String... spellings) {
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
