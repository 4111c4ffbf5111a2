package lanewarden.chronograph;

/** Ends the reading of a line that says no speed; never leaves the room. */
final class Misread extends Exception {
  private static final long serialVersionUID = 1L;

  private final Reason reason;

  /**
   * @param words what happened and what to do, for people
   */
  Misread(Reason reason, String words) {
    super(words, null, false, false);
    this.reason = reason;
  }

  Reason reason() {
    return reason;
  }

  String words() {
    return String.valueOf(getMessage());
  }
}
