package lanewarden.chronograph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;

/**
 * What the bytes alone show of a profile's faults, and the lines they fall into.
 *
 * @param findings what is wrong with port and line
 * @param lines the whole lines, without their ends; empty if the bytes are no text
 */
record BytesTried(List<Finding> findings, List<String> lines) {
  private static final List<String> ENDS = List.of("\r\n", "\n\r", "\n", "\r", ";");

  /** Less than one byte in four may be damage; more is another setting. */
  private static final int MOST_STRANGE = 4;

  /** Of plain noise, one in four would still be strange without its highest bit. */
  private static final int ALMOST_NONE = 20;

  private static final int HIGH_BIT = 0x80;

  static BytesTried of(RawBytes bytes, SentenceProfile profile) {
    if (bytes.length() == 0) {
      return only(
          "[port]",
          "Nothing came. Check power and cable (the instrument's sending line to this receiving"
              + " one), whether the instrument is set to send, and flow: with rts/cts or xon/xoff it"
              + " may be waiting for a leave to send.");
    }
    if (WireWatch.strange(bytes) * MOST_STRANGE > bytes.length()) {
      return strange(bytes, profile.port());
    }
    List<Finding> findings = new ArrayList<>();
    String text = bytes.characters();
    String written = profile.line().terminator().characters();
    String end = end(text, written);
    if (end.isEmpty()) {
      return only(
          "[line] terminator",
          "No line ended: neither %s nor any other usual end of a line came in %d bytes. Shoot once more, or look up what ends a line."
              .formatted(shown(written), bytes.length()));
    }
    if (!end.equals(written)) {
      findings.add(
          new Finding(
              "[line] terminator",
              "Lines end with %s, not with %s. Write terminator = \"%s\"."
                  .formatted(shown(end), shown(written), shown(end))));
    }
    List<String> lines = lines(text, end);
    tooLong(lines, profile.line().longest(), findings);
    return new BytesTried(List.copyOf(findings), lines);
  }

  /** Whether there are lines to look at. */
  boolean readable() {
    return !lines.isEmpty();
  }

  private static BytesTried only(String key, String words) {
    return new BytesTried(List.of(new Finding(key, words)), List.of());
  }

  private static BytesTried strange(RawBytes bytes, PortSettings port) {
    byte[] lower = bytes.bytes();
    for (int i = 0; i < lower.length; i++) {
      lower[i] &= (byte) ~HIGH_BIT;
    }
    long percent = 100 * WireWatch.strange(bytes) / bytes.length();
    if (WireWatch.strange(RawBytes.of(lower)) * ALMOST_NONE <= bytes.length()) {
      return only(
          "[port] data_bits, parity",
          "%d of 100 bytes are characters only without their highest bit, which is then a parity bit. Write data_bits = 7 and parity = \"even\" or \"odd\", not %s."
              .formatted(percent, port));
    }
    return only(
        "[port] baud",
        "%d of 100 bytes are no characters: the instrument's baud rate is not %d (or its parity and bits are not those of %s). Look it up at the instrument; usual are 1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200."
            .formatted(percent, port.baud(), port));
  }

  /** What ends the lines: the written end unless a longer one holds it or it does not come. */
  private static String end(String text, String written) {
    List<String> candidates = new ArrayList<>(ENDS);
    candidates.removeIf(end -> !end.contains(written));
    candidates.sort(Comparator.comparing(String::length).reversed());
    int often = count(text, written);
    if (often > 0) {
      return candidates.stream()
          .filter(end -> count(text, end) == often)
          .findFirst()
          .orElse(written);
    }
    return ENDS.stream().filter(end -> count(text, end) > 0).findFirst().orElse("");
  }

  private static int count(String text, String end) {
    return text.split(Pattern.quote(end), -1).length - 1;
  }

  private static List<String> lines(String text, String end) {
    List<String> parts = Arrays.asList(text.split(Pattern.quote(end), -1));
    // The last part has no end
    return parts.subList(0, parts.size() - 1).stream().filter(line -> !line.isEmpty()).toList();
  }

  private static void tooLong(List<String> lines, int longest, List<Finding> findings) {
    int seen = lines.stream().mapToInt(String::length).max().orElse(0);
    if (seen > longest) {
      findings.add(
          new Finding(
              "[line] longest",
              "A line of %d bytes came, but longest is %d. Write longest = %d, if its lines are meant."
                  .formatted(seen, longest, seen)));
    }
  }

  private static String shown(String end) {
    return RawBytes.ofText(end).escaped();
  }
}
