package lanewarden.journal;

import java.util.Objects;
import lanewarden.quantity.Speed;

/**
 * What a second instrument in series measured of the same arrow: it confirms, and never decides.
 *
 * @param speed the value in the unit it was written in
 * @param raw the bytes as received, base64 (RFC 4648, 4)
 * @param instrument the second instrument's name
 */
public record SecondReading(Speed speed, String raw, String instrument) {
  /**
   * @throws NullPointerException if a body that was read lacks one of the three
   */
  public SecondReading {
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(raw, "raw");
    Objects.requireNonNull(instrument, "instrument");
  }
}
