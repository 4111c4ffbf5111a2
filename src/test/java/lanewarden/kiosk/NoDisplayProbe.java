package lanewarden.kiosk;

/** Starts the toolkit in a process that has no display, and says in one line what came of it. */
public final class NoDisplayProbe {
  private NoDisplayProbe() {}

  /** Takes no arguments. */
  public static void main(String[] args) {
    try {
      Toolkit.start().leave();
      System.out.println("a display");
    } catch (NoDisplayException e) {
      System.out.println("no display: " + e.getMessage());
    }
  }
}
