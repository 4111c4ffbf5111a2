package lanewarden.chronograph;

/** A serial port cannot be opened, or went away. */
final class PortFault extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient PortTrouble trouble;

  PortFault(PortTrouble trouble) {
    super(trouble.words());
    this.trouble = trouble;
  }

  /** What is wrong, for the official. */
  PortTrouble trouble() {
    return trouble;
  }
}
