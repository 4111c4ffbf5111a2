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

  /** Why, in one line. */
  public String why() {
    return String.valueOf(getMessage());
  }
}
