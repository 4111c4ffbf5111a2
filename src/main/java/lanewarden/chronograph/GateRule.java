package lanewarden.chronograph;

import java.math.BigDecimal;
import lanewarden.quantity.Length;
import lanewarden.quantity.Percent;
import org.jspecify.annotations.Nullable;

/**
 * The way between two gates that follow each other.
 *
 * @param spacing its length, more than zero
 * @param agree the most by which another speed of the same line may differ from the speed over this
 *     way, as a share of it; null if the line says no other
 */
record GateRule(Length spacing, @Nullable Percent agree) {
  /** An arrow that took so many seconds from gate to gate. */
  Passage in(BigDecimal seconds) {
    return new Passage(spacing.si(), seconds);
  }
}
