package lanewarden.ledger;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A head as a slip or report shows it: the sequence and the first 12 hex digits of the hash.
 *
 * <p>Twelve digits are 48 bits: plenty against accident and against a forger who has to match a
 * paper already handed out, short enough to be typed.
 */
public record PrintedHead(long sequence, String hashStart) {
  private static final Pattern FORM = Pattern.compile("([1-9][0-9]{0,17})-([0-9a-f]{12})");

  /** Checks both parts. */
  public PrintedHead {
    if (!FORM.matcher(sequence + "-" + hashStart).matches()) {
      throw refused(sequence + "-" + hashStart);
    }
  }

  /**
   * Reads a head typed from paper, such as {@code 1234-ab12cd34ef56}.
   *
   * @throws IllegalArgumentException when the text has another form
   */
  public static PrintedHead parse(String text) {
    Matcher form = FORM.matcher(text.strip());
    if (!form.matches()) {
      throw refused(text);
    }
    return new PrintedHead(Long.parseLong(form.group(1)), form.group(2));
  }

  private static IllegalArgumentException refused(String text) {
    return new IllegalArgumentException(
        "A printed head is a number, a dash and 12 hex digits, such as 1234-ab12cd34ef56; found \""
            + text
            + "\".");
  }

  boolean matches(Sha256 hash) {
    return hash.shortHex().equals(hashStart);
  }

  @Override
  public String toString() {
    return sequence + "-" + hashStart;
  }
}
