package lanewarden.kiosk;

import java.util.concurrent.CancellationException;

/** A program that is told to end before its window toolkit is up; run by a test on its own. */
final class EndingProbe {

  private EndingProbe() {}

  /** Says what becomes of the toolkit then. */
  public static void main(String[] arguments) {
    Runtime.getRuntime().addShutdownHook(new Thread(EndingProbe::start));
    System.exit(0);
  }

  private static void start() {
    try {
      new EarlyStart().toolkit();
      System.out.println("started");
    } catch (NoDisplayException e) {
      System.out.println("no display: " + e.getMessage());
    } catch (CancellationException e) {
      System.out.println("not started any more");
    }
  }
}
