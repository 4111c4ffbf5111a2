package lanewarden.quantity;

/**
 * A text or number that is not the quantity it should be: what was expected, found, and the mend.
 */
public final class QuantityException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final transient Sentence expected;
  private final transient Sentence found;
  private final transient Sentence mend;

  /**
   * @param expected what a right value looks like
   * @param found what stood there instead
   * @param mend what to write
   */
  public QuantityException(Sentence expected, Sentence found, Sentence mend) {
    super("expected " + expected + ", found " + found + "; mend: " + mend);
    this.expected = expected;
    this.found = found;
    this.mend = mend;
  }

  /** One where what stood there is no words. */
  public QuantityException(Sentence expected, String found, Sentence mend) {
    this(expected, Sentence.verbatim(found), mend);
  }

  /** One of which only the English is known. */
  public QuantityException(String expected, String found, String mend) {
    this(Sentence.verbatim(expected), found, Sentence.verbatim(mend));
  }

  /** What a right value looks like. */
  public Sentence expected() {
    return expected;
  }

  /** What stood there instead. */
  public Sentence found() {
    return found;
  }

  /** What to write. */
  public Sentence mend() {
    return mend;
  }
}
