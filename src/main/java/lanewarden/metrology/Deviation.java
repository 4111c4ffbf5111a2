package lanewarden.metrology;

import java.math.BigDecimal;
import lanewarden.quantity.Measure;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Speed;

/** How far a speed may be off: a share of it or a fixed speed, to either side. */
public sealed interface Deviation extends Measure {

  /** The deviation at a speed, m/s, exact. */
  BigDecimal siAt(BigDecimal metresPerSecond);

  /**
   * Reads a percentage or a speed with its unit, {@code 1 %} or {@code 2 ft/s}.
   *
   * @throws lanewarden.quantity.QuantityException if the text is neither
   */
  static Deviation parse(String text) {
    return text.strip().endsWith("%")
        ? new Share(Percent.parse(text))
        : new Fixed(Speed.parse(text));
  }

  /** A share of the speed. */
  record Share(Percent percent) implements Deviation {
    @Override
    public BigDecimal siAt(BigDecimal metresPerSecond) {
      return metresPerSecond.multiply(percent.fraction());
    }

    /** Reads back as an equal value. */
    @Override
    public String toString() {
      return percent.toString();
    }
  }

  /** The same at every speed. */
  record Fixed(Speed speed) implements Deviation {
    @Override
    public BigDecimal siAt(BigDecimal metresPerSecond) {
      return speed.si();
    }

    /** Reads back as an equal value. */
    @Override
    public String toString() {
      return speed.toString();
    }
  }
}
