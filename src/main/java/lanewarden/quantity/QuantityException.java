package lanewarden.quantity;

/**
 * A text or number that is not the quantity it should be: what was expected, found, and the mend.
 */
public final class QuantityException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String expected;
  private final String found;
  private final String mend;

  /**
   * @param expected what a right value looks like
   * @param found what stood there instead
   * @param mend what to write
   */
  public QuantityException(String expected, String found, String mend) {
    super("expected " + expected + ", found " + found + "; mend: " + mend);
    this.expected = expected;
    this.found = found;
    this.mend = mend;
  }

  /** What a right value looks like. */
  public String expected() {
    return expected;
  }

  /** What stood there instead. */
  public String found() {
    return found;
  }

  /** What to write. */
  public String mend() {
    return mend;
  }
}
