package lanewarden.station;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Optional;
import lanewarden.ledger.KeyFile;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.SigningKey;

/**
 * A key file that remembers wrong passphrases: after five in a row it takes none for half a minute,
 * and for twice as long after each further one, up to a quarter of an hour.
 *
 * <p>The count lies in a file beside the key, so that starting the program again does not reset it.
 * It holds up whoever sits down at the table, no more: who owns the computer can delete that file,
 * or copy the key and guess elsewhere. Where the folder may only be read, as on a protected stick,
 * nothing is remembered.
 *
 * @param file the key file
 * @param clock for the time between tries
 */
record KeyLock(Path file, Clock clock) {
  private static final int FREE = 5;
  private static final Duration FIRST_WAIT = Duration.ofSeconds(30);
  private static final int MOST_DOUBLINGS = 5;
  private static final Duration LONGEST_WAIT = Duration.ofMinutes(15);
  private static final String BESIDE = ".wrong";

  /** How many wrong passphrases in a row, and when the last was typed. */
  private record Tries(int wrong, Instant last) {
    Duration waitAt(Instant now) {
      if (wrong < FREE) {
        return Duration.ZERO;
      }
      Duration whole = FIRST_WAIT.multipliedBy(1L << Math.min(wrong - FREE, MOST_DOUBLINGS));
      Duration wait = whole.compareTo(LONGEST_WAIT) > 0 ? LONGEST_WAIT : whole;
      // A clock that was set back must not lengthen the wait
      Duration passed = Duration.between(last, now);
      return passed.isNegative() ? wait : wait.minus(passed);
    }
  }

  /**
   * Opens the key and wipes the passphrase.
   *
   * @throws StationException {@code KEY-WAIT} before the wait is over; as {@link KeyFile#open} else
   */
  SigningKey open(char[] passphrase) throws StationException {
    Instant now = clock.instant();
    try {
      Tries before = read(now);
      Duration wait = before.waitAt(now);
      if (!wait.isNegative() && !wait.isZero()) {
        if (before.last().isAfter(now)) {
          write(new Tries(before.wrong(), now));
        }
        throw waiting(before, wait);
      }
      // Before the try, so that a program ended in the middle of it has not tried for nothing
      write(new Tries(before.wrong() + 1, now));
      SigningKey key = tried(before, passphrase);
      Files.deleteIfExists(beside());
      return key;
    } catch (IOException e) {
      throw StationException.of(e);
    } finally {
      Arrays.fill(passphrase, '\0');
    }
  }

  private SigningKey tried(Tries before, char[] passphrase) throws StationException, IOException {
    try {
      return KeyFile.open(file, passphrase);
    } catch (LedgerException e) {
      if (!e.code().equals("KEY-PASSPHRASE")) {
        write(before);
        throw StationException.of(e);
      }
      throw wrong(e, before.wrong() + 1);
    }
  }

  /** From the fifth on it is said at once that the next try has to wait. */
  private StationException wrong(LedgerException e, int wrong) {
    Instant now = clock.instant();
    Duration wait = new Tries(wrong, now).waitAt(now);
    Trouble plain = Trouble.of(e);
    if (wait.isZero()) {
      return StationException.stuck(plain);
    }
    return StationException.stuck(
        new Trouble(
            plain.what(),
            plain.why()
                + " It was wrong "
                + wrong
                + " times in a row, so none is tried for "
                + wait.toSeconds()
                + " s.",
            plain.remedy(),
            plain.code(),
            plain.kind(),
            Optional.of(wait)));
  }

  private StationException waiting(Tries before, Duration wait) {
    long seconds = wait.plusMillis(999).toSeconds();
    return StationException.stuck(
        new Trouble(
            "The key stays locked.",
            "The passphrase was wrong "
                + before.wrong()
                + " times in a row; none is tried for another "
                + seconds
                + " s.",
            "Wait, then type it with care; or have another official sign in, or the organizer"
                + " replace this key.",
            "KEY-WAIT",
            Trouble.Kind.USAGE,
            Optional.of(wait)));
  }

  private Path beside() {
    return file.resolveSibling(file.getFileName() + BESIDE);
  }

  private Tries read(Instant now) throws IOException {
    if (!Files.exists(beside())) {
      return new Tries(0, now);
    }
    String[] words = Files.readString(beside()).strip().split(" ", 2);
    try {
      return new Tries(Integer.parseInt(words[0]), Instant.parse(words[words.length - 1]));
    } catch (NumberFormatException | DateTimeException damaged) {
      // Whatever happened to the file, it was there because a passphrase was wrong
      return new Tries(FREE, now);
    }
  }

  private void write(Tries tries) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null || !Files.isWritable(folder)) {
      return;
    }
    String text = tries.wrong() + " " + tries.last().truncatedTo(ChronoUnit.SECONDS) + "\n";
    Files.write(beside(), text.getBytes(StandardCharsets.US_ASCII));
  }
}
