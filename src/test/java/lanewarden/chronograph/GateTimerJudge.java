package lanewarden.chronograph;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * A second opinion on lines of our gate timer, for tests: reads them by the positions in the table
 * of {@code serial-format.md} and in whole numbers, and shares no code with the room.
 */
final class GateTimerJudge {
  private static final int LENGTH = 34;
  private static final String DIGIT = "0123456789";
  private static final String HEX = "0123456789ABCDEF";

  private GateTimerJudge() {}

  /**
   * The speed of a good line as hundredths of its unit and the unit's letter, such as {@code "30010
   * F"}; empty if the line is not good.
   *
   * @param line with its terminator
   */
  static Optional<String> speed(byte[] line) {
    String text = new String(line, StandardCharsets.ISO_8859_1);
    if (line.length != LENGTH || !text.startsWith("$PLWT,") || !text.endsWith("\r\n")) {
      return Optional.empty();
    }
    boolean laidOut =
        all(text, 6, 11, DIGIT)
            && at(text, ",", 11, 18, 20, 27)
            && all(text, 21, 27, DIGIT)
            && at(text, "*", 29)
            && all(text, 30, 32, HEX)
            && at(text, "A", 28);
    int covered = 0;
    for (int i = 1; i < 29; i++) {
      covered ^= line[i] & 0xFF;
    }
    if (!laidOut || covered != Integer.parseInt(text.substring(30, 32), 16)) {
      return Optional.empty();
    }
    return hundredths(text.substring(12, 18))
        .filter(speed -> plausible(speed, text.charAt(19), Long.parseLong(text, 21, 27, 10)))
        .map(speed -> speed + " " + text.charAt(19));
  }

  /** The sequence number of a good line. */
  static String sequence(byte[] line) {
    return new String(line, 6, 5, StandardCharsets.ISO_8859_1);
  }

  private static Optional<Long> hundredths(String speed) {
    String digits = speed.replace(".", "");
    boolean form = digits.length() == 5 && all(digits, 0, 5, DIGIT);
    if (form && speed.charAt(4) == '.') {
      return Optional.of(Long.parseLong(digits) * 10);
    }
    return form && speed.charAt(3) == '.' ? Optional.of(Long.parseLong(digits)) : Optional.empty();
  }

  /** In µm/s, µs and pm: 1 ft is 0.3048 m, the gates are 0.6096 m apart, they agree to 0.1 %. */
  private static boolean plausible(long hundredths, char unit, long micros) {
    if (unit != 'F' && unit != 'M') {
      return false;
    }
    long speed = hundredths * (unit == 'F' ? 3_048 : 10_000);
    long apart = 609_600_000_000L;
    return speed >= 60 * 304_800L
        && speed <= 500 * 304_800L
        && Math.abs(speed * micros - apart) <= apart / 1_000;
  }

  private static boolean all(String text, int from, int to, String allowed) {
    return text.substring(from, to).chars().allMatch(c -> allowed.indexOf(c) >= 0);
  }

  private static boolean at(String text, String wanted, int... places) {
    for (int place : places) {
      if (!text.startsWith(wanted, place)) {
        return false;
      }
    }
    return true;
  }
}
