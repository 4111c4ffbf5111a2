package lanewarden.ledger;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * The RFC 3339 time of an entry: UTC, always to the millisecond, always 24 characters, such as
 * {@code 2026-05-01T08:00:00.000Z}.
 */
final class Timestamp {
  static final int LENGTH = 24;

  private static final String SHAPE = "dddd-dd-ddTdd:dd:dd.dddZ";

  private Timestamp() {}

  /** The text of an instant, cut (not rounded) to the millisecond: it never lies in the future. */
  static String write(Instant at) {
    LocalDateTime utc = LocalDateTime.ofInstant(at.truncatedTo(ChronoUnit.MILLIS), ZoneOffset.UTC);
    if (utc.getYear() < 0 || utc.getYear() > 9999) {
      throw new IllegalArgumentException("RFC 3339 writes the years 0000 to 9999, not " + at + ".");
    }
    StringBuilder text = new StringBuilder(LENGTH);
    digits(text, utc.getYear(), 4).append('-');
    digits(text, utc.getMonthValue(), 2).append('-');
    digits(text, utc.getDayOfMonth(), 2).append('T');
    digits(text, utc.getHour(), 2).append(':');
    digits(text, utc.getMinute(), 2).append(':');
    digits(text, utc.getSecond(), 2).append('.');
    return digits(text, utc.getNano() / 1_000_000, 3).append('Z').toString();
  }

  private static StringBuilder digits(StringBuilder text, int value, int width) {
    String plain = Integer.toString(value);
    return text.append("0".repeat(width - plain.length())).append(plain);
  }

  /**
   * The instant of such a text, or nothing when it is none.
   *
   * <p>RFC 3339 5.8 allows second 60 at a leap second. Java's time scale has none, so we never
   * write one; read, it becomes the first instant of the next minute.
   */
  static Optional<Instant> read(String text) {
    if (!hasShape(text)) {
      return Optional.empty();
    }
    int second = number(text, 17, 19);
    boolean leap = second == 60 && text.startsWith("23:59", 11);
    try {
      LocalDateTime utc =
          LocalDateTime.of(
              number(text, 0, 4),
              number(text, 5, 7),
              number(text, 8, 10),
              number(text, 11, 13),
              number(text, 14, 16),
              leap ? 59 : second,
              number(text, 20, 23) * 1_000_000);
      return Optional.of(utc.toInstant(ZoneOffset.UTC).plusSeconds(leap ? 1 : 0));
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }

  private static boolean hasShape(String text) {
    if (text.length() != LENGTH) {
      return false;
    }
    for (int i = 0; i < LENGTH; i++) {
      char wanted = SHAPE.charAt(i);
      char found = text.charAt(i);
      if (wanted == 'd' ? found < '0' || found > '9' : found != wanted) {
        return false;
      }
    }
    return true;
  }

  private static int number(String text, int from, int to) {
    return Integer.parseInt(text, from, to, 10);
  }
}
