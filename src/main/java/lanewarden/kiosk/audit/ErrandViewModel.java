package lanewarden.kiosk.audit;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import lanewarden.audit.press.Progress;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.trouble.Causes;
import lanewarden.station.Trouble;

/** One errand at a time while the line goes on, and how it ended; used on the screen's thread. */
final class ErrandViewModel {

  /** Something that takes its time. */
  @FunctionalInterface
  interface Errand {
    /**
     * Runs off the screen's thread.
     *
     * @param progress told how far it is
     * @throws Exception whatever kept it from its end; the screen shows it
     */
    Ending run(Consumer<Progress> progress) throws Exception;
  }

  /** A progress that is not known, as progress bars understand it. */
  private static final double UNKNOWN = -1;

  private final Executor work;
  private final Executor screen;
  private final Texts texts;
  private final BooleanProperty busy = new SimpleBooleanProperty();
  private final DoubleProperty progress = new SimpleDoubleProperty(0);
  private boolean idle = true;
  private final StringProperty title;
  private final StringProperty words;
  private final ObjectProperty<Optional<Ending>> ending =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<Trouble>> trouble =
      new SimpleObjectProperty<>(Optional.empty());

  /**
   * @param work runs errands off the screen's thread and apart from the line's own work
   * @param screen runs tasks on the screen's thread
   */
  ErrandViewModel(Executor work, Executor screen, Texts texts) {
    this.work = work;
    this.screen = screen;
    this.texts = texts;
    this.title = new SimpleStringProperty(texts.of("records.idle.title"));
    this.words = new SimpleStringProperty(texts.of("records.idle.alone"));
  }

  /** Says that the line goes on, or does not, until something is done. */
  void tellOfLine(boolean goesOn) {
    if (idle) {
      words.set(texts.of(goesOn ? "records.idle" : "records.idle.alone"));
    }
  }

  /** Whether an errand is on its way. */
  BooleanProperty busy() {
    return busy;
  }

  /** How far it is, 0 to 1; negative if that is not known. */
  DoubleProperty progress() {
    return progress;
  }

  /** Which errand it is or was. */
  StringProperty title() {
    return title;
  }

  /** What is being done, or how it ended. */
  StringProperty words() {
    return words;
  }

  /** How it ended, if it came to its end. */
  ObjectProperty<Optional<Ending>> ending() {
    return ending;
  }

  /** What went wrong. */
  ObjectProperty<Optional<Trouble>> trouble() {
    return trouble;
  }

  /** Begins an errand, unless one is on its way. */
  void begin(String name, Errand errand) {
    if (busy.get()) {
      return;
    }
    show(name, texts.of("records.begun"), Optional.empty(), Optional.empty());
    busy.set(true);
    progress.set(UNKNOWN);
    work.execute(() -> work(name, errand));
  }

  private void work(String name, Errand errand) {
    try {
      Ending came = errand.run(step -> screen.execute(() -> tell(step)));
      screen.execute(() -> end(name, came));
    } catch (Exception | Error e) {
      Trouble missed = Causes.trouble(e);
      screen.execute(
          () -> {
            busy.set(false);
            progress.set(0);
            show(name, texts.of("records.missed"), Optional.empty(), Optional.of(missed));
          });
    }
  }

  private void tell(Progress step) {
    words.set(step.step());
    progress.set(Math.min(1.0, (double) step.done() / step.total()));
  }

  /** Shows how something ended that was done at once. */
  void end(String name, Ending came) {
    busy.set(false);
    progress.set(1);
    show(name, came.words(), Optional.of(came), came.trouble());
  }

  private void show(String name, String told, Optional<Ending> came, Optional<Trouble> missed) {
    idle = false;
    title.set(name);
    words.set(told);
    ending.set(came);
    trouble.set(missed);
  }

  /** What was told last, line by line. */
  List<Ending.Told> told() {
    return ending.get().map(Ending::told).orElse(List.of());
  }

  /**
   * Asks something that takes less long; nothing is shown of it.
   *
   * @param question runs off the screen's thread
   */
  <T> void ask(Callable<T> question, Consumer<T> answer, Consumer<Trouble> missed) {
    work.execute(
        () -> {
          try {
            T given = question.call();
            screen.execute(() -> answer.accept(given));
          } catch (Exception | Error e) {
            Trouble trouble = Causes.trouble(e);
            screen.execute(() -> missed.accept(trouble));
          }
        });
  }
}
