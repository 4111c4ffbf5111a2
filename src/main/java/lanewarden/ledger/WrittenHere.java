package lanewarden.ledger;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * The ledgers that this program writes into at the moment; any thread.
 *
 * <p>Under POSIX a program loses every lock on a file as soon as it closes any descriptor of it. A
 * ledger that lost them looks unused: the next program that reads it deletes its log when it
 * closes, with what the writer goes on adding to it. So as long as a ledger is written here, it is
 * read through the database alone, which guards against that among its own connections.
 */
final class WrittenHere implements AutoCloseable {
  private static final Set<Path> FILES = new HashSet<>();

  private final Path file;

  private WrittenHere(Path file) {
    this.file = file;
  }

  /** Reads a file past the database. */
  @FunctionalInterface
  interface Reading<T> {
    T read() throws IOException;
  }

  /** From now on, until it is closed. Only who holds the writer's lock may call. */
  static WrittenHere begin(Path file) throws IOException {
    Path real = file.toRealPath();
    synchronized (FILES) {
      FILES.add(real);
    }
    return new WrittenHere(real);
  }

  /**
   * Reads a file past the database, unless it is written here; no writer begins meanwhile.
   *
   * @return what was read; empty for a ledger that is written here
   * @throws IOException if it cannot be read
   */
  static <T> Optional<T> orElse(Path file, Reading<T> reading) throws IOException {
    Path real = file.toRealPath();
    synchronized (FILES) {
      return FILES.contains(real) ? Optional.empty() : Optional.of(reading.read());
    }
  }

  /** Whether a file is written here. */
  static boolean is(Path file) {
    try {
      return orElse(file, () -> file).isEmpty();
    } catch (IOException gone) {
      return false;
    }
  }

  @Override
  public void close() {
    synchronized (FILES) {
      FILES.remove(file);
    }
  }
}
