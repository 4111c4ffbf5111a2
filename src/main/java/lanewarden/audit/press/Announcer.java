package lanewarden.audit.press;

import java.util.function.Consumer;

/** Tells whoever waits how far the report is; never goes back. Owned by one thread. */
public final class Announcer {
  /** What the whole amounts to. */
  public static final int WHOLE = 100;

  private final Consumer<? super Progress> listener;
  private int done;

  /**
   * @param listener told on the thread that says it
   */
  public Announcer(Consumer<? super Progress> listener) {
    this.listener = listener;
  }

  /** Says what is being done now, at this point of the whole. */
  public void say(String step, int at) {
    done = Math.max(done, Math.min(at, WHOLE));
    listener.accept(new Progress(step, done, WHOLE));
  }

  /** Says what is being done now, this far between two points of the whole. */
  public void say(String step, int from, int to, long part, long parts) {
    say(step, from + (int) ((to - from) * part / Math.max(parts, 1)));
  }
}
