package lanewarden.ledger;

import java.nio.charset.StandardCharsets;

/** Walks through a payload's fixed members from left to right. One use, one thread. */
final class PayloadCursor {
  private final byte[] text;
  private int at;

  PayloadCursor(byte[] text) {
    this.text = text;
  }

  /** Steps over exactly this text. */
  PayloadCursor over(byte[] literal) throws Malformed {
    int end = at + literal.length;
    if (end > text.length || !regionMatches(literal)) {
      throw form();
    }
    at = end;
    return this;
  }

  private boolean regionMatches(byte[] literal) {
    for (int i = 0; i < literal.length; i++) {
      if (text[at + i] != literal[i]) {
        return false;
      }
    }
    return true;
  }

  /** The text up to the next such character, which stays; at most so many bytes. */
  String upTo(char end, int longest) throws Malformed {
    int start = at;
    int limit = Math.min(text.length, start + longest + 1);
    while (at < limit && text[at] != end) {
      at++;
    }
    if (at == limit) {
      throw form();
    }
    return new String(text, start, at - start, StandardCharsets.UTF_8);
  }

  /** Everything from here but the last byte, which must be the payload's closing brace. */
  byte[] rest() throws Malformed {
    int length = text.length - 1 - at;
    if (length < 0 || text[text.length - 1] != '}') {
      throw form();
    }
    byte[] rest = new byte[length];
    System.arraycopy(text, at, rest, 0, length);
    return rest;
  }

  static Malformed form() {
    return new Malformed(
        LedgerFault.Kind.BAD_PAYLOAD,
        "its members are not those of format version 1, in their order");
  }
}
