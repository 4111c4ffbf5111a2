package lanewarden.kiosk.desk;

import java.util.concurrent.Callable;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import lanewarden.kiosk.trouble.Causes;
import lanewarden.station.Trouble;

/**
 * The table beside the desk: files are read and written there, apart from the line's own work.
 *
 * @param work does it, off the screen's thread
 * @param screen runs tasks on the screen's thread
 */
public record SideTable(Executor work, Executor screen) {

  /**
   * Does something, and answers on the screen's thread through one of the two.
   *
   * @param answer takes what came of it
   * @param refused takes why it was not done
   */
  public <T> void ask(Callable<T> task, Consumer<T> answer, Consumer<Trouble> refused) {
    work.execute(
        () -> {
          try {
            T given = task.call();
            screen.execute(() -> answer.accept(given));
          } catch (Exception | Error e) {
            Trouble why = Causes.trouble(e);
            screen.execute(() -> refused.accept(why));
          }
        });
  }
}
