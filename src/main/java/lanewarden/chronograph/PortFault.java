package lanewarden.chronograph;

/** Why a serial port could not be opened, in words for the official. */
final class PortFault extends Exception {
  private static final long serialVersionUID = 1L;

  /** The ways in which a port fails. */
  enum Kind {
    /** There is no such port. */
    MISSING,
    /** Another program has it. */
    BUSY,
    /** This user may not open it. */
    NO_PERMISSION,
    /**
     * It is there and free, but cannot be set up: no serial port, or a setting it does not know.
     */
    UNUSABLE
  }

  private final Kind kind;

  PortFault(Kind kind, String words) {
    super(words);
    this.kind = kind;
  }

  Kind kind() {
    return kind;
  }

  /** What happened, why, and what to do. */
  String words() {
    return String.valueOf(getMessage());
  }
}
