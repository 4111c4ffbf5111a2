package lanewarden.quantity;

import java.math.BigDecimal;
import java.util.List;

/** Units of momentum; the SI unit is the kilogram metre per second. */
public enum MomentumUnit implements Unit {
  /** Kilogram metre per second, the same as the newton second. */
  KILOGRAM_METRE_PER_SECOND("1", "kg·m/s"),
  /** Slug foot per second, the same as the pound-force second: exactly 4.4482216152605 N·s. */
  SLUG_FOOT_PER_SECOND("4.4482216152605", "slug·ft/s", "lbf·s");

  private final BigDecimal inSi;
  private final List<String> spellings;

  MomentumUnit(String inSi, String... spellings) {
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
