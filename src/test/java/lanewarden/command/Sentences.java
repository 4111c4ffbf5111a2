package lanewarden.command;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Sentences as our gate timer sends them, see config/profiles/gate-timer.toml. */
final class Sentences {
  private static final BigDecimal MICROSECONDS_OVER_TWO_FEET = BigDecimal.valueOf(2_000_000);

  private Sentences() {}

  /** A whole sentence with its line end. */
  static String of(int number, String feetPerSecond) {
    BigDecimal speed = new BigDecimal(feetPerSecond);
    String body =
        String.format(
            Locale.ROOT,
            "PLWT,%05d,%06.1f,F,%06d,A",
            number,
            speed,
            MICROSECONDS_OVER_TWO_FEET.divide(speed, 0, RoundingMode.HALF_EVEN).intValue());
    int checksum = 0;
    for (byte one : body.getBytes(StandardCharsets.US_ASCII)) {
      checksum ^= one;
    }
    return String.format(Locale.ROOT, "$%s*%02X\r\n", body, checksum);
  }
}
