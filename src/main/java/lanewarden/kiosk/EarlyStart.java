package lanewarden.kiosk;

import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import javafx.application.Platform;
import lanewarden.kiosk.look.Typeface;

/**
 * The start of the window toolkit, which can begin before it is known what is to be shown; it takes
 * a good part of the time until the first frame. Any thread may call.
 */
public final class EarlyStart {
  private final FutureTask<Toolkit> start = new FutureTask<>(EarlyStart::started);

  private static Toolkit started() throws NoDisplayException {
    Toolkit toolkit = Toolkit.start();
    Platform.runLater(FirstScene::readStyles);
    aside("first-controls", EarlyStart::makeControls);
    return toolkit;
  }

  private static void makeControls() {
    Typeface.load();
    FirstScene.makeControls();
  }

  /** Begins it on a thread of its own; where there is no display, only {@link #toolkit} says so. */
  public void begin() {
    aside("toolkit-start", start);
  }

  private static void aside(String name, Runnable work) {
    Thread thread = new Thread(work, name);
    thread.setDaemon(true);
    thread.start();
  }

  /**
   * Waits for the toolkit, which is started now if nobody began.
   *
   * @throws NoDisplayException if it cannot be started
   * @throws CancellationException if the program was told to end before
   */
  Toolkit toolkit() throws NoDisplayException {
    start.run();
    try {
      return start.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof NoDisplayException none) {
        throw none;
      }
      if (e.getCause() instanceof CancellationException ended) {
        throw ended;
      }
      throw new IllegalStateException("the window toolkit was not started", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException("interrupted while the window toolkit started");
    }
  }
}
