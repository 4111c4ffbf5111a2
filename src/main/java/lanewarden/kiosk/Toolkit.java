package lanewarden.kiosk;

import java.io.OutputStream;
import java.io.PrintStream;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import lanewarden.station.ProgramEnd;

/** The window toolkit, started once and left as it was found. */
final class Toolkit {
  /** JavaFX warns that it does not run from the module path, which is how it is meant here. */
  private static final String CHATTY = "javafx";

  private final boolean ours;

  private Toolkit(boolean ours) {
    this.ours = ours;
  }

  /**
   * Starts the toolkit, or joins one that runs.
   *
   * @throws NoDisplayException if it has no display, or a library of it is missing
   */
  static Toolkit start() throws NoDisplayException {
    Logger logger = Logger.getLogger(CHATTY);
    Level before = logger.getLevel();
    PrintStream talk = System.err;
    logger.setLevel(Level.SEVERE);
    // It prints stack traces of what it also throws
    System.setErr(new PrintStream(OutputStream.nullOutputStream(), true));
    try {
      hushAtTheEnd();
      CompletableFuture<Boolean> up = new CompletableFuture<>();
      Platform.startup(() -> up.complete(true));
      Platform.setImplicitExit(false);
      return new Toolkit(up.get());
    } catch (IllegalStateException e) {
      requireNoEnd(e);
      return joined(e);
    } catch (UnsupportedOperationException e) {
      throw new NoDisplayException(String.valueOf(e.getMessage()), e);
    } catch (RuntimeException | LinkageError | ExecutionException e) {
      requireNoEnd(e);
      throw new NoDisplayException("The window toolkit did not start: " + firstLine(e), e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new NoDisplayException("Starting the window toolkit was interrupted.", e);
    } finally {
      System.setErr(talk);
      logger.setLevel(before);
    }
  }

  /** Where the program ends while the toolkit starts there is a display, but no use of it. */
  private static void requireNoEnd(Throwable failed) {
    if (ProgramEnd.isBegun()) {
      CancellationException ended = new CancellationException("the program was told to end");
      ended.initCause(failed);
      throw ended;
    }
  }

  /**
   * The toolkit takes itself apart when the program is told to end, and prints what its own threads
   * then stumble over; what the program itself says goes another way.
   */
  private static void hushAtTheEnd() {
    Runtime.getRuntime()
        .addShutdownHook(
            new Thread(
                () -> System.setErr(new PrintStream(OutputStream.nullOutputStream(), true)),
                "toolkit-hush"));
  }

  /** The innermost cause says which library or display is missing; some go on for many lines. */
  private static String firstLine(Throwable thrown) {
    Throwable cause = thrown;
    while (cause.getCause() != null) {
      cause = cause.getCause();
    }
    return cause.toString().lines().findFirst().orElse("");
  }

  /** A toolkit that runs already refuses a second start; one that was ended refuses any use. */
  private static Toolkit joined(IllegalStateException refused) throws NoDisplayException {
    try {
      Platform.runLater(() -> {});
    } catch (IllegalStateException e) {
      e.addSuppressed(refused);
      throw new NoDisplayException("The window toolkit was ended before.", e);
    }
    return new Toolkit(false);
  }

  /** Ends the toolkit if it was started here, so that its thread does not keep the program up. */
  void leave() {
    if (ours) {
      Platform.exit();
    }
  }
}
