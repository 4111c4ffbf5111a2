package lanewarden.ledger;

import java.util.List;
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
  private final transient List<Entry> standing;

  LedgerException(String code, String what, String why, String remedy, @Nullable Throwable cause) {
    this(code, what, why, remedy, cause, List.of());
  }

  private LedgerException(
      String code,
      String what,
      String why,
      String remedy,
      @Nullable Throwable cause,
      List<Entry> standing) {
    super(what + " " + why + " " + remedy + " [" + code + "]", cause);
    this.standing = List.copyOf(standing);
    this.code = code;
    this.what = what;
    this.why = why;
    this.remedy = remedy;
  }

  LedgerException(String code, String what, String why, String remedy) {
    this(code, what, why, remedy, null);
  }

  /** Entries that stand in the file although the disk did not confirm them. */
  static LedgerException unconfirmed(List<Entry> standing, LedgerException fault) {
    return new LedgerException(
        "LEDGER-UNCONFIRMED",
        "The entry stands in the ledger, but the disk did not confirm it.",
        fault.why,
        "Look at what the screen shows before going on; do not write it a second time.",
        fault,
        standing);
  }

  /**
   * The entries that stand in the ledger all the same, of those that were being appended; empty for
   * every code but {@code LEDGER-UNCONFIRMED}. They must not be written again.
   */
  public List<Entry> standing() {
    return standing;
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
