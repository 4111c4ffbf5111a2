package lanewarden.kiosk;

import java.util.concurrent.atomic.AtomicBoolean;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.stage.Stage;
import javafx.stage.Window;
import lanewarden.Main;

/**
 * What {@link StartBenchmark} starts: says {@value #SHOWN} once the first frame of a window is laid
 * out, and ends.
 *
 * <p>Without an argument that is an empty window of the toolkit; else the program's, started with
 * these arguments.
 */
public final class FirstFrame {
  static final String SHOWN = "first frame";

  private static final int LOOK_MILLIS = 2;

  private FirstFrame() {}

  /** Starts one of the two. */
  public static void main(String[] arguments) throws Exception {
    if (arguments.length == 0) {
      Platform.startup(FirstFrame::bare);
    } else {
      Thread watch = new Thread(FirstFrame::await, "first-frame");
      watch.setDaemon(true);
      watch.start();
      Main.main(arguments);
    }
  }

  private static void bare() {
    Stage stage = new Stage();
    stage.setScene(new Scene(new Label("Bare"), 1280, 800));
    stage.show();
    sayAtFrame(stage.getScene());
  }

  /** Looks for the window on the screen's thread, as soon as there is one. */
  private static void await() {
    AtomicBoolean found = new AtomicBoolean();
    while (!found.get()) {
      try {
        Thread.sleep(LOOK_MILLIS);
        Platform.runLater(
            () ->
                Window.getWindows().stream()
                    .filter(window -> !found.get() && window.isShowing())
                    .findFirst()
                    .ifPresent(
                        window -> {
                          found.set(true);
                          sayAtFrame(window.getScene());
                        }));
      } catch (IllegalStateException notStartedYet) {
        continue;
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return;
      }
    }
  }

  private static void sayAtFrame(Scene scene) {
    scene.addPostLayoutPulseListener(
        () -> {
          System.out.println(SHOWN);
          // Not on this thread, which what runs at the end may wait for
          new Thread(() -> System.exit(0), "first-frame-end").start();
        });
    Platform.requestNextPulse();
  }
}
