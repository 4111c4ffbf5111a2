package lanewarden.audit.findings;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;

/** What our gate timer sends, and the papers of a line that it stands at. */
final class GateTimerPapers {
  /** A line as its profile describes it; the check digits worked out by hand. */
  static final String LINE = "$PLWT,00042,0300.1,F,006664,A*1C\r\n";

  /** The next line, by hand: another last digit of the number, and so of the checksum. */
  static final String NEXT = "$PLWT,00043,0300.1,F,006664,A*1D\r\n";

  static final String SETTINGS =
      """
      format = 1
      station = "Range East"
      profile = "gate-timer.toml"
      instrument = "serial"
      port = "/dev/ttyUSB0"
      """;

  /** Behind the settings: a second instrument in series. */
  static final String SECOND =
      """
      [second]
      profile = "plain-decimal.toml"
      instrument = "serial"
      port = "/dev/ttyUSB1"
      agree = "1 ft/s"
      within_ms = 300
      """;

  private GateTimerPapers() {}

  /** The text of a profile that the program brings along. */
  static String profile(String name) throws Exception {
    return Files.readString(Path.of("config/profiles/" + name + ".toml"));
  }

  static String base64(String line) {
    return Base64.getEncoder().encodeToString(line.getBytes(UTF_8));
  }
}
