package lanewarden.bench;

import java.nio.charset.StandardCharsets;
import java.util.List;
import lanewarden.written.Fingerprint;
import lanewarden.written.WrittenRefused;

/**
 * A practice day: several set-ups and their shots, read from one CSV file (RFC 4180) with a header
 * line, a line a shot.
 */
public final class Practice {
  /** The most set-ups of a file: more make pairs that nobody reads. */
  public static final int MOST_SET_UPS = 24;

  private final String file;
  private final List<Series> series;
  private final String text;
  private final String sha256;

  Practice(String file, List<Series> series, byte[] utf8) {
    this.file = file;
    this.series = List.copyOf(series);
    this.text = new String(utf8, StandardCharsets.UTF_8);
    this.sha256 = Fingerprint.sha256(utf8);
  }

  /**
   * Reads a practice file.
   *
   * <p>Every line has {@code bow}, {@code arrow} and {@code speed}; {@code arrow-mass} once for
   * each arrow. Once for each bow, where known: {@code draw-weight}, {@code draw-length}, {@code
   * brace-height}, and {@code rated-speed} with {@code rated-draw-weight}, {@code
   * rated-draw-length} and {@code rated-arrow-mass}. {@code misread} is {@code yes} for a reading
   * to leave out, {@code no} for one that counts however far it lies from the others; {@code
   * remark} is free. Figures carry their unit.
   *
   * @param file its name, for the faults; nothing is opened
   * @param utf8 the file's bytes, with or without a byte-order mark
   * @throws WrittenRefused if anything is wrong, with every fault; nothing is half-read
   */
  public static Practice read(String file, byte[] utf8) throws WrittenRefused {
    return PracticePage.read(file, utf8);
  }

  /** Its name as given. */
  public String file() {
    return file;
  }

  /** The set-ups in the order of the file; at least one. */
  public List<Series> series() {
    return series;
  }

  /** The file's whole text: its UTF-8 bytes are the file's. */
  public String text() {
    return text;
  }

  /** The file's bytes. */
  public byte[] utf8() {
    return utf8(text);
  }

  static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** SHA-256 of the file's bytes in 64 hexadecimal digits. */
  public String sha256() {
    return sha256;
  }
}
