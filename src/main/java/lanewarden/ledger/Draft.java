package lanewarden.ledger;

import java.util.Optional;

/**
 * What is to become an entry: a kind and a body.
 *
 * <p>The body is one JSON object in UTF-8; its bytes are signed and stored exactly as given.
 * Immutable.
 */
public final class Draft {
  /** The longest body, in bytes: a rule book or a large roster fits many times over. */
  public static final int LONGEST_BODY = 4 << 20;

  private static final int LONGEST_KIND = 64;

  private final String kind;
  private final byte[] body;

  /**
   * Checks and takes a kind and a body.
   *
   * @throws IllegalArgumentException when the kind is not {@code [a-z][a-z-]*} (at most 64), or the
   *     body is not one JSON object in UTF-8 of at most {@link #LONGEST_BODY} bytes, or it repeats
   *     a name within one object
   */
  public Draft(String kind, byte[] body) {
    if (!isKind(kind)) {
      throw new IllegalArgumentException(
          "A kind is lower-case letters and dashes, at most 64; found \"" + kind + "\".");
    }
    this.kind = kind;
    this.body = body.clone();
    Optional<String> fault = new JsonObjectBytes().fault(this.body);
    if (fault.isPresent()) {
      throw new IllegalArgumentException(
          "An entry's body must be one JSON object in UTF-8, but " + fault.get() + ".");
    }
  }

  /** Written by hand rather than as a pattern: verification asks it for every entry. */
  static boolean isKind(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if ((c < 'a' || c > 'z') && (c != '-' || i == 0)) {
        return false;
      }
    }
    return !text.isEmpty() && text.length() <= LONGEST_KIND;
  }

  /** The entry's kind. */
  public String kind() {
    return kind;
  }

  /** The body's bytes. */
  public byte[] body() {
    return body.clone();
  }

  byte[] bodyBytes() {
    return body;
  }
}
