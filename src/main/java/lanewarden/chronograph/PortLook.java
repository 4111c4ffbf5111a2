package lanewarden.chronograph;

/**
 * How a serial port is at this moment: opened as a profile says, and closed again at once. Nothing
 * is read from it.
 *
 * @param state whether it could be opened
 * @param words in a sentence; of a port that could not be opened with the code that {@code
 *     serial-format.md} lists
 */
public record PortLook(State state, String words) {

  /** Whether a port could be opened. */
  public enum State {
    /** It is there and can be read. */
    READABLE,
    /** It is there, and a program has it: the open line of its event, or another. */
    IN_USE,
    /** It is not there, or cannot be read. */
    UNREADABLE
  }

  /**
   * Looks at a port.
   *
   * @param port its path or system name
   */
  public static PortLook at(String port, SentenceProfile profile) {
    try {
      PortLink.open(port, profile.port()).close();
      return new PortLook(
          State.READABLE, "The port " + port + " is there and opens with " + profile.port() + ".");
    } catch (PortFault e) {
      PortTrouble trouble = e.trouble();
      return new PortLook(
          trouble.kind() == PortTrouble.Kind.BUSY ? State.IN_USE : State.UNREADABLE,
          trouble.words());
    }
  }
}
