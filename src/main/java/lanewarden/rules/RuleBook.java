package lanewarden.rules;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import lanewarden.written.Fingerprint;
import lanewarden.written.WrittenRefused;

/** The rules of one event, read from one TOML file, with the file's own text and hash. */
public final class RuleBook {
  private final String event;
  private final String edition;
  private final List<Division> divisions;
  private final String text;
  private final String sha256;

  RuleBook(String event, String edition, List<Division> divisions, byte[] utf8) {
    this.event = event;
    this.edition = edition;
    this.divisions = List.copyOf(divisions);
    this.text = new String(utf8, StandardCharsets.UTF_8);
    this.sha256 = Fingerprint.sha256(utf8);
  }

  /**
   * Reads a rule book.
   *
   * @param fileName for the faults; nothing is opened
   * @param utf8 the file's bytes
   * @throws WrittenRefused if anything is wrong, with every fault; nothing is half-read
   */
  public static RuleBook read(String fileName, byte[] utf8) throws WrittenRefused {
    return RuleBookPage.read(fileName, utf8);
  }

  /** The event's name. */
  public String event() {
    return event;
  }

  /** Which edition of the event's rules this is, as its organizer numbers them. */
  public String edition() {
    return edition;
  }

  /** In the order of the file; at least one. */
  public List<Division> divisions() {
    return divisions;
  }

  /** The division with exactly this code. */
  public Optional<Division> division(String code) {
    return divisions.stream().filter(division -> division.code().equals(code)).findFirst();
  }

  /** The file's whole text: its UTF-8 bytes are the file's. */
  public String text() {
    return text;
  }

  /** SHA-256 of the file's bytes in 64 hexadecimal digits. */
  public String sha256() {
    return sha256;
  }
}
