package lanewarden.station;

/**
 * The end of a program that is told to end, by Ctrl-C or by the system, in the middle of whatever
 * it does. Any thread may ask.
 */
public final class ProgramEnd {

  private ProgramEnd() {}

  /**
   * Whether it has begun. What fails from then on for want of a toolkit, a thread or a window is no
   * fault of anything, and is told to nobody.
   */
  public static boolean isBegun() {
    Thread probe = new Thread(() -> {}, "probe");
    try {
      // The system refuses it from that moment on, which is all that it tells of it
      Runtime.getRuntime().addShutdownHook(probe);
      Runtime.getRuntime().removeShutdownHook(probe);
      return false;
    } catch (IllegalStateException e) {
      return true;
    }
  }
}
