package lanewarden.written;

import lanewarden.quantity.Sentence;

/** A text in a file that is not the value it should be. */
public final class ValueRefused extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final transient Sentence mend;

  /**
   * @param mend what to write
   */
  public ValueRefused(Sentence mend) {
    super(mend.toString());
    this.mend = mend;
  }

  /** The same with what was behind it. */
  public ValueRefused(Sentence mend, Throwable cause) {
    super(mend.toString(), cause);
    this.mend = mend;
  }

  /** What to write. */
  public Sentence mend() {
    return mend;
  }
}
