package lanewarden.ledger;

import org.jspecify.annotations.Nullable;

/**
 * A ledger or key file could not be used: what happened, why, what to do, and a code.
 *
 * <p>Every text is a sentence for the official at the table. After this exception nothing that was
 * being written may be taken for written; {@link Ledger#head()} says what is.
 */
public final class LedgerException extends Exception {
  private static final long serialVersionUID = 1L;

  private final String what;
  private final String why;
  private final String remedy;
  private final String code;

  LedgerException(String code, String what, String why, String remedy, @Nullable Throwable cause) {
    super(what + " " + why + " " + remedy + " [" + code + "]", cause);
    this.code = code;
    this.what = what;
    this.why = why;
    this.remedy = remedy;
  }

  LedgerException(String code, String what, String why, String remedy) {
    this(code, what, why, remedy, null);
  }

  /** What happened. */
  public String what() {
    return what;
  }

  /** Why it happened. */
  public String why() {
    return why;
  }

  /** What to do about it. */
  public String remedy() {
    return remedy;
  }

  /** The fault's code, such as {@code LEDGER-BUSY}: the same for every occurrence of its cause. */
  public String code() {
    return code;
  }
}
