package lanewarden.chronograph;

/** Where the bytes of a reading came from. */
public enum Source {
  /** A serial port. */
  SERIAL("serial port"),
  /** A capture played back. */
  REPLAY("replay"),
  /** The built-in simulator. */
  SIMULATED("simulator"),
  /** An official's keyboard. */
  TYPED("typed");

  private final String word;

  Source(String word) {
    this.word = word;
  }

  /** Whether no arrow flew, so that nothing counts. */
  public boolean isInvented() {
    return this == SIMULATED;
  }

  /** The word for people. */
  public String word() {
    return word;
  }
}
