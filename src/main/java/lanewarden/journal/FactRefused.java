package lanewarden.journal;

/** An entry whose body is not what its kind demands. */
public final class FactRefused extends Exception {
  private static final long serialVersionUID = 1L;

  private final long sequence;

  FactRefused(long sequence, String kind, Throwable cause) {
    super(
        "entry " + sequence + " of kind " + kind + " cannot be read: " + cause.getMessage(), cause);
    this.sequence = sequence;
  }

  /** The entry's place in the chain. */
  public long sequence() {
    return sequence;
  }
}
