package lanewarden.audit.slip;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import lanewarden.ledger.PrintedHead;

/**
 * What the square code on a slip says: {@code lanewarden:1:STATION:CHECK:SEQ-HASH12}.
 *
 * <p>It names no person and states no outcome: whoever wants that asks the ledger.
 *
 * @param station whose ledger it is
 * @param check the entry that opened the check
 * @param head the ledger's last entry when the slip was printed
 */
record SlipText(String station, long check, PrintedHead head) {
  private static final String PROGRAM = "lanewarden";
  private static final String FORM = "1";
  private static final int PARTS = 5;
  private static final String NUMBER = "[1-9][0-9]{0,17}";

  /**
   * Reads what a scanner gave.
   *
   * @throws IllegalArgumentException when the text is of no slip
   */
  static SlipText parse(String text) {
    String[] parts = text.strip().split(":", -1);
    if (parts.length != PARTS
        || !parts[0].equals(PROGRAM)
        || !parts[1].equals(FORM)
        || !parts[3].matches(NUMBER)) {
      throw new IllegalArgumentException(
          "The text of a slip is lanewarden:1:STATION:CHECK:HEAD; found \"" + text.strip() + "\".");
    }
    return new SlipText(
        URLDecoder.decode(parts[2], StandardCharsets.UTF_8),
        Long.parseLong(parts[3]),
        PrintedHead.parse(parts[4]));
  }

  @Override
  public String toString() {
    // A colon or a foreign letter in a station's name must not break the code or swell it.
    return String.join(
        ":",
        PROGRAM,
        FORM,
        URLEncoder.encode(station, StandardCharsets.UTF_8),
        Long.toString(check),
        head.toString());
  }
}
