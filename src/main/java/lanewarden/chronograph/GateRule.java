package lanewarden.chronograph;

import java.math.BigDecimal;
import lanewarden.quantity.Length;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Speed;

/**
 * How the time between two gates must agree with the speed of the same line.
 *
 * @param spacing the way from one gate to the next
 * @param agree the most that speed × time may differ from the spacing, as a share of it
 */
record GateRule(Length spacing, Percent agree) {
  private static final int MICROSECONDS = 6;

  /** Whether an arrow of this speed takes this long, in microseconds, from gate to gate. Exact. */
  boolean agrees(Speed speed, BigDecimal micros) {
    BigDecimal way = speed.si().multiply(micros.movePointLeft(MICROSECONDS));
    BigDecimal most = spacing.si().multiply(agree.fraction());
    return way.subtract(spacing.si()).abs().compareTo(most) <= 0;
  }
}
