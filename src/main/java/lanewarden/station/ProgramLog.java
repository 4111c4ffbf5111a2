package lanewarden.station;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.logging.ErrorManager;
import java.util.logging.FileHandler;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The program's log, in the user's folder: when the program and an event began and ended, what was
 * unexpected, and what the libraries warn of. A few files of bounded size; the oldest goes when a
 * new one begins. Never a name, a bib, a passphrase or a reading.
 *
 * <p>Nothing hangs on it: where it cannot be written, everything else works, and that is told once.
 *
 * <p>Any thread may call.
 */
public final class ProgramLog implements AutoCloseable {
  /** The largest file, in bytes; one line may go beyond it. */
  static final int LARGEST = 256 << 10;

  /** How many files there are at most of one program that runs. */
  static final int FILES = 4;

  private static final String OWN = "lanewarden";
  private static final String ENDING = ".log";

  /** What this program says itself goes nowhere but into the log: it is told on a screen too. */
  private static final Logger LOGGER = Logger.getLogger(OWN);

  static {
    LOGGER.setUseParentHandlers(false);
  }

  private final Optional<Path> folder;
  private final List<Handler> before;
  private final AtomicReference<@Nullable Inlet> inlet = new AtomicReference<>();
  private @Nullable Trouble trouble;
  private boolean told;

  private ProgramLog(Optional<Path> folder, List<Handler> before) {
    this.folder = folder;
    this.before = before;
  }

  /** One into which nothing is written. */
  public static ProgramLog none() {
    return new ProgramLog(Optional.empty(), List.of());
  }

  /**
   * Opens the log of a user; everything that this program or a library of it logs goes there from
   * now on, and nowhere else. Where it cannot be written, {@link #untold} says why.
   *
   * @param home the user's own folder, in whose place a tilde is written
   */
  public static ProgramLog open(UserFolder user, Path home) {
    return open(user, home, LARGEST);
  }

  static ProgramLog open(UserFolder user, Path home, int largest) {
    Logger root = Logger.getLogger("");
    ProgramLog log = new ProgramLog(Optional.of(user.log()), List.of(root.getHandlers()));
    try {
      Path place = Files.createDirectories(user.log().toAbsolutePath());
      FileHandler files = new FileHandler(pattern(place), largest, FILES, true);
      files.setFormatter(new LogLine(home));
      files.setEncoding(StandardCharsets.UTF_8.name());
      files.setErrorManager(log.new Failure());
      log.begin(root, files);
    } catch (IOException e) {
      log.fail(e);
    }
    return log;
  }

  /** Programs that run at the same time have files of their own. */
  private static String pattern(Path folder) {
    return folder.toString().replace("%", "%%") + "/" + OWN + "-%u.%g" + ENDING;
  }

  private void begin(Logger root, FileHandler files) {
    Inlet opened = new Inlet(files);
    inlet.set(opened);
    before.forEach(root::removeHandler);
    root.addHandler(opened);
    LOGGER.addHandler(opened);
  }

  /**
   * Lets warnings and worse of the libraries in, and everything of this program. The system empties
   * and closes all handlers it knows when the program is told to end, which may be before the event
   * is closed; so the file is not known to it.
   */
  private static final class Inlet extends Handler {
    private final FileHandler files;

    Inlet(FileHandler files) {
      this.files = files;
    }

    @Override
    public void publish(LogRecord record) {
      boolean ours = String.valueOf(record.getLoggerName()).startsWith(OWN);
      if (ours || record.getLevel().intValue() >= Level.WARNING.intValue()) {
        files.publish(record);
      }
    }

    @Override
    public void flush() {
      files.flush();
    }

    @Override
    public void close() {
      // The log closes the file itself
    }
  }

  /** Takes note that the log could not be written. */
  private final class Failure extends ErrorManager {
    @Override
    public synchronized void error(String message, Exception failed, int code) {
      fail(failed);
    }
  }

  private synchronized void fail(@Nullable Exception failed) {
    if (trouble == null) {
      Trouble cause =
          Trouble.of(failed instanceof IOException io ? io : new IOException("no reason is told"));
      trouble =
          new Trouble(
              "The program's log is not written.",
              cause.what() + " " + cause.why(),
              "Nothing hangs on it, the work goes on. To have one, let this user write in "
                  + folder.map(Path::toString).orElse("the user's folder")
                  + ", then start the program again.",
              "LOG-UNWRITTEN",
              Trouble.Kind.ENVIRONMENT);
    }
  }

  /** Why the log is not written, if it is not. */
  public synchronized Optional<Trouble> trouble() {
    return Optional.ofNullable(trouble);
  }

  /** The same, the first time that somebody asks. */
  public synchronized Optional<Trouble> untold() {
    Optional<Trouble> now = told ? Optional.empty() : trouble();
    told |= now.isPresent();
    return now;
  }

  /** The folder of the log, if there is to be one. */
  Optional<Path> folder() {
    return folder;
  }

  /** Its files, the one written last first. */
  List<Path> files() throws IOException {
    if (folder.isEmpty() || !Files.isDirectory(folder.get())) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(folder.get())) {
      List<Path> found =
          new ArrayList<>(
              all.filter(f -> String.valueOf(f.getFileName()).endsWith(ENDING)).toList());
      found.sort(
          Comparator.comparing((Path file) -> file.toFile().lastModified())
              .reversed()
              .thenComparing(Comparator.naturalOrder()));
      return found;
    }
  }

  /**
   * The program begins.
   *
   * @param program its name and version
   * @param command what it was started for
   */
  public void programBegins(String program, String command) {
    note("begins: " + program + ", " + command + ", " + Computer.inWords());
  }

  /** The program ends. */
  public void programEnds(int exitCode) {
    note("ends with exit code " + exitCode);
  }

  /** An event was opened; its ledger's head tells which. */
  void eventOpened(String head) {
    note("event opened, ledger head " + head);
  }

  /** An event was closed. */
  void eventClosed(String head) {
    note("event closed, ledger head " + head);
  }

  private void note(String words) {
    LogRecord record = new LogRecord(Level.INFO, words);
    record.setLoggerName(OWN);
    Inlet open = inlet.get();
    if (open != null) {
      open.publish(record);
    }
  }

  /**
   * Something that this program did not expect.
   *
   * @param code as it is told to the user
   */
  static void unexpected(String code, Throwable thrown) {
    LOGGER.log(Level.SEVERE, code, thrown);
  }

  /** Closes the file; what is logged from now on goes where it went before. */
  @Override
  public void close() {
    Inlet open = inlet.getAndSet(null);
    if (open == null) {
      return;
    }
    Logger root = Logger.getLogger("");
    LOGGER.removeHandler(open);
    root.removeHandler(open);
    before.forEach(root::addHandler);
    open.files.close();
  }
}
