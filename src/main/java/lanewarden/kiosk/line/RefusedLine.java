package lanewarden.kiosk.line;

import lanewarden.journal.Fact;
import lanewarden.station.LineBytes;

/**
 * A line that did not become a reading, as the screen shows it.
 *
 * @param reason in a word or two, as signed
 * @param words in a sentence, as signed
 * @param bytes as received, escaped
 * @param source where they came from
 */
public record RefusedLine(String reason, String words, String bytes, String source) {

  static RefusedLine of(Fact.LineRefused line) {
    return new RefusedLine(
        line.reason(), line.words(), LineBytes.escaped(line.raw()), line.source());
  }
}
