package lanewarden.kiosk;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.atomic.AtomicReference;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import lanewarden.kiosk.look.Appearance;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Typeface;
import lanewarden.station.CurrentLine;
import lanewarden.station.LineOpening;
import lanewarden.station.RuleDraft;
import lanewarden.station.ScreenChoices;
import lanewarden.station.Station;
import lanewarden.station.StationException;
import lanewarden.station.Surroundings;
import lanewarden.station.UserFolder;
import org.jspecify.annotations.Nullable;

/** The front door of the screens. */
public final class Kiosk {
  private static final Logger LOG = Logger.getLogger(Kiosk.class.getName());

  private final Makers makers;
  private final Surroundings here;
  private final UserFolder user;
  private final EarlyStart early;

  /** What was opened. */
  interface Opened {
    /** Opens the window for a fault that nobody expected, from any thread. */
    void fault(Throwable thrown);

    /** Closes everything; on the screen's thread. */
    void leave();
  }

  /** What the first frame is told by, read while the toolkit starts. */
  private record Told(Post post, Appearance look) {}

  /** Opens windows on the screen's thread; {@code closed} runs when the last of them is closed. */
  @FunctionalInterface
  private interface Opening {
    Opened open(Workers workers, Appearance look, Runnable closed);
  }

  /** Threads for work, one for each kind, so that none waits for another. */
  private record Workers(
      ExecutorService desk, ExecutorService report, ExecutorService studio, ExecutorService sound) {
    static Workers hired() {
      return new Workers(
          Executors.newSingleThreadExecutor(named("kiosk-desk")),
          Executors.newSingleThreadExecutor(named("kiosk-report")),
          Executors.newSingleThreadExecutor(named("kiosk-studio")),
          Executors.newSingleThreadExecutor(named("kiosk-sound")));
    }

    void dismiss() {
      desk.shutdown();
      report.shutdown();
      studio.shutdown();
      sound.shutdown();
    }
  }

  /**
   * @param makers make what the official asks for on paper
   * @param here gives files that are kept their time, and keys their chance
   * @param user where the user's own things are kept
   * @param early the toolkit's start, begun or not
   */
  public Kiosk(Makers makers, Surroundings here, UserFolder user, EarlyStart early) {
    this.makers = makers;
    this.here = here;
    this.user = user;
    this.early = early;
  }

  /**
   * Shows the screens of a line, and returns when the official's window was closed. Somebody can
   * sign in at once: the line opens meanwhile, and whatever is asked of it waits for that. It stays
   * open; what is at the line stays there.
   *
   * @param signInHint a line under the passphrase, for a demonstration
   * @param full whether the screen is filled whole, and left only with a passphrase
   * @throws NoDisplayException if no window can be opened here; then nothing was shown or opened
   * @throws StationException if the line cannot be opened; then nothing is shown any more
   */
  public void show(LineOpening opening, Optional<String> signInHint, boolean full)
      throws NoDisplayException, StationException {
    Aside<Told> reading = Aside.begin(() -> new Told(Post.ahead(opening, signInHint), seen()));
    Toolkit toolkit = early.toolkit();
    Told told;
    try {
      told = reading.result();
    } catch (StationException | RuntimeException | Error e) {
      toolkit.leave();
      throw e;
    }
    AtomicReference<@Nullable Aside<Station>> aside = new AtomicReference<>();
    Post post = told.post();
    show(
        toolkit,
        told.look(),
        (workers, look, closed) -> {
          Windows windows = Windows.open(post, makers, threads(workers), look, closed);
          if (full) {
            windows.turnFull();
          }
          // Behind the first frame, which else would share the processor with it
          windows.whenShown(
              () -> aside.set(Aside.begin(() -> arrive(opening, post.station(), windows))));
          return windows;
        });
    Aside<Station> begun = aside.get();
    if (begun != null) {
      begun.result();
    }
  }

  private static Station arrive(
      LineOpening opening, CompletableFuture<Station> station, Windows windows)
      throws StationException {
    try {
      Station there = opening.open();
      station.complete(there);
      return there;
    } catch (StationException | RuntimeException | Error e) {
      station.completeExceptionally(e);
      Platform.runLater(windows::leave);
      throw e;
    }
  }

  private Front.Threads threads(Workers workers) {
    return new Front.Threads(
        workers.desk(),
        workers.report(),
        workers.studio(),
        workers.sound(),
        Platform::runLater,
        here);
  }

  /**
   * Shows the start screen, and whatever is opened from it, and returns when the start screen was
   * left.
   *
   * @param line opens lines; what is open when the program is told to end, its owner leaves
   * @param event is opened at once, if there is one
   * @throws NoDisplayException if no window can be opened here; then nothing was shown or started
   */
  public void start(CurrentLine line, Optional<Path> event) throws NoDisplayException {
    show(
        (workers, look, closed) -> {
          Entrance entrance = new Entrance(line, user, makers, threads(workers), look, closed);
          entrance.open(event);
          return entrance;
        });
  }

  /**
   * Shows the rule studio on a rule book, and returns when its window was closed.
   *
   * @throws NoDisplayException if no window can be opened here; then nothing was shown or started
   */
  public void studio(RuleDraft draft) throws NoDisplayException {
    show(
        (workers, look, closed) ->
            StudioWindow.open(
                draft,
                new Studio.Threads(
                    here.clock(), workers.desk(), workers.studio(), Platform::runLater),
                look,
                closed));
  }

  private void show(Opening opening) throws NoDisplayException {
    Appearance look = seen();
    show(early.toolkit(), look, opening);
  }

  private void show(Toolkit toolkit, Appearance look, Opening opening) {
    Workers workers = Workers.hired();
    Thread.UncaughtExceptionHandler before = Thread.getDefaultUncaughtExceptionHandler();
    CountDownLatch closed = new CountDownLatch(1);
    CompletableFuture<Opened> opened = new CompletableFuture<>();
    try {
      Platform.runLater(
          () -> {
            try {
              Typeface.load();
              keepWhatIsChosen(look, workers);
              Opened windows = opening.open(workers, look, closed::countDown);
              Thread.setDefaultUncaughtExceptionHandler((thread, thrown) -> windows.fault(thrown));
              opened.complete(windows);
            } catch (RuntimeException | Error e) {
              opened.completeExceptionally(e);
            }
          });
      opened.get();
      closed.await();
    } catch (ExecutionException e) {
      throw new IllegalStateException("the screens could not be made", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      Platform.runLater(
          () -> {
            // Queued behind the opening, so it is over by then
            if (!opened.isCompletedExceptionally()) {
              opened.join().leave();
            }
          });
    } finally {
      Thread.setDefaultUncaughtExceptionHandler(before);
      workers.dismiss();
      toolkit.leave();
    }
  }

  /** As it was chosen last, with the words of its language read. */
  private Appearance seen() {
    Appearance look = Appearance.of(user.screenChoices().read(), Locale.getDefault());
    Texts.in(look.language().get());
    return look;
  }

  private void keepWhatIsChosen(Appearance look, Workers workers) {
    ScreenChoices choices = user.screenChoices();
    look.whenChosen(
        () -> {
          ScreenChoices.Choice chosen = look.chosen();
          workers.studio().execute(() -> keep(choices, chosen));
        });
  }

  private static void keep(ScreenChoices choices, ScreenChoices.Choice chosen) {
    try {
      choices.write(chosen);
    } catch (StationException e) {
      // Chosen with a few keys the next time; nobody at the line is to be stopped for it
      LOG.log(Level.WARNING, "How the screens look was not kept for the next start.", e);
    }
  }

  private static ThreadFactory named(String name) {
    return task -> {
      Thread thread = new Thread(task, name);
      thread.setDaemon(true);
      return thread;
    };
  }
}
