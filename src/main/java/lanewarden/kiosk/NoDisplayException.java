package lanewarden.kiosk;

/** No window can be opened on this machine; nothing was started that must be ended. */
public final class NoDisplayException extends Exception {
  private static final long serialVersionUID = 1L;

  NoDisplayException(String why, Throwable cause) {
    super(why, cause);
  }
}
