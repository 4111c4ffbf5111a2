package lanewarden.quantity;

import java.math.BigDecimal;
import java.util.List;

/** Units of force; the SI unit is the newton. */
public enum ForceUnit implements Unit {
  /** Pound-force, exactly 4.4482216152605 N; archers write it lb or #. */
  POUND_FORCE("4.4482216152605", "lbf", "lb", "#"),
  /** Newton. */
  NEWTON("1", "N");

  private final BigDecimal inSi;
  private final List<String> spellings;

  ForceUnit(String inSi, String... spellings) {
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
