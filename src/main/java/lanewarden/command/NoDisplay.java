package lanewarden.command;

/** No window can be opened here. */
public final class NoDisplay extends Exception {
  private static final long serialVersionUID = 1L;

  /**
   * @param why in one line, for people
   */
  public NoDisplay(String why, Throwable cause) {
    super(why, cause);
  }

  /** What happened and why, the beginning of a sentence. */
  String inWords() {
    return "No display can be opened here (" + getMessage() + ")";
  }
}
