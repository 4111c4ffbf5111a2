package lanewarden.station;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.FactRefused;
import lanewarden.ledger.KeyFile;
import lanewarden.ledger.LedgerException;
import lanewarden.quantity.Sentence;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;

/**
 * Something that went wrong, in the one shape of every screen and terminal.
 *
 * @param what what happened
 * @param why why it happened
 * @param remedy what to do
 * @param code the same for every occurrence of its cause
 * @param kind whose fault it is, which decides the exit code
 * @param pause how long nothing can be done about it, where that is known
 * @param places each place in a file that was refused, or the text that was typed, with what is
 *     wrong there, as {@code why} and {@code remedy} tell it in English; none of other troubles
 */
public record Trouble(
    String what,
    String why,
    String remedy,
    String code,
    Kind kind,
    Optional<Duration> pause,
    List<Sentence> places) {

  /** Copies the list. */
  public Trouble {
    places = List.copyOf(places);
  }

  /** One that is about no place in a file and no text. */
  public Trouble(
      String what, String why, String remedy, String code, Kind kind, Optional<Duration> pause) {
    this(what, why, remedy, code, kind, pause, List.of());
  }

  /** One about which something can be done at once. */
  public Trouble(String what, String why, String remedy, String code, Kind kind) {
    this(what, why, remedy, code, kind, Optional.empty());
  }

  /** The code of the trouble that a phase which lies behind takes a reason. */
  public static final String PHASE_BACK = "PHASE-BACK";

  /** The code of the trouble that nobody on the roster was meant. */
  public static final String NO_SUCH_COMPETITOR = "NO-SUCH-COMPETITOR";

  /** The code of the trouble that the instrument must be verified first. */
  public static final String VERIFICATION_DUE = "VERIFICATION-DUE";

  /** Whose fault it is. */
  public enum Kind {
    /** Ours. */
    BUG,
    /** A wrong word, file or order of steps. */
    USAGE,
    /** Something failed its proof. */
    PROOF,
    /** Disk, port, permission. */
    ENVIRONMENT
  }

  /**
   * A sealed report for which the authority gave no time-stamp.
   *
   * @param answer what it said instead
   */
  public static Trouble noTimeStamp(String answer) {
    return new Trouble(
        "The report was written and sealed, but without a time-stamp.",
        "The answer was: " + answer + ".",
        "Look at the network and the address, then make the report again; or use it as it is: it"
            + " says that it has none.",
        "TIME-STAMP-MISSING",
        Kind.ENVIRONMENT);
  }

  /**
   * No report, because its time-stamp would be asked for at what is no address.
   *
   * @param why what is wrong with the address, in a sentence
   */
  public static Trouble noTimeStampAddress(String why) {
    return new Trouble(
        "The report was not written.",
        why,
        "Write the whole address.",
        "TIME-STAMP-ADDRESS",
        Kind.USAGE);
  }

  /** The trouble that an exception means; one that nobody expected is noted in the log. */
  public static Trouble of(Throwable thrown) {
    if (thrown instanceof StationException station) {
      return station.trouble();
    }
    if (thrown instanceof LedgerException ledger) {
      return new Trouble(
          ledger.what(), ledger.why(), ledger.remedy(), ledger.code(), kindOf(ledger.code()));
    }
    if (thrown instanceof WrittenRefused refused) {
      return new Trouble(
          refused.file() + " was refused.",
          String.valueOf(refused.getMessage()),
          "Mend every place listed, then try again. Nothing was taken from the file.",
          "FILE-REFUSED",
          Kind.USAGE,
          Optional.empty(),
          refused.faults().stream().map(WrittenFault::whole).toList());
    }
    if (thrown instanceof FactRefused refused) {
      return new Trouble(
          "The ledger holds an entry that this program cannot read.",
          String.valueOf(refused.getMessage()),
          "Run verify on the ledger. If it is sound, it was written by a newer version: use that.",
          "ENTRY-UNREADABLE",
          Kind.PROOF);
    }
    if (thrown instanceof UncheckedIOException && thrown.getCause() instanceof IOException io) {
      return ofFile(io);
    }
    return thrown instanceof IOException io ? ofFile(io) : unexpected(thrown);
  }

  private static Kind kindOf(String ledgerCode) {
    return switch (ledgerCode) {
      case "LEDGER-EMPTY",
          "LEDGER-FOREIGN",
          "LEDGER-UNSOUND",
          "LEDGER-CHANGED",
          "LEDGER-CUT",
          "LEDGER-DAMAGED",
          "KEY-DAMAGED" ->
          Kind.PROOF;
      case "LEDGER-MISSING",
          "LEDGER-NEWER",
          "LEDGER-EXPORTED",
          "LEDGER-EXISTS",
          "LEDGER-NOT-ENROLLED",
          "LEDGER-NOT-ORGANIZER",
          "LEDGER-ENROLLED",
          "KEY-MISSING",
          KeyFile.KEY_FOLDER,
          KeyFile.KEY_NO_SEAL,
          "KEY-EXISTS",
          "KEY-PASSPHRASE" ->
          Kind.USAGE;
      default -> Kind.ENVIRONMENT;
    };
  }

  private static Trouble ofFile(IOException io) {
    String file = io instanceof FileSystemException fs ? String.valueOf(fs.getFile()) : "a file";
    String what = "Could not use " + file + ".";
    if (io instanceof NoSuchFileException) {
      return new Trouble(
          what,
          reason(io, "There is no such file or folder."),
          "Check the path.",
          "FILE-MISSING",
          Kind.USAGE);
    }
    if (io instanceof FileAlreadyExistsException) {
      return new Trouble(
          what,
          reason(io, "It exists already."),
          "Choose another name.",
          "FILE-EXISTS",
          Kind.USAGE);
    }
    if (io instanceof NotDirectoryException) {
      return new Trouble(
          what, "It is not a folder.", "Name the event's folder.", "NOT-A-FOLDER", Kind.USAGE);
    }
    if (io instanceof AccessDeniedException) {
      return new Trouble(
          what,
          "Permission was denied.",
          "Give this user the right to it, or choose another place.",
          "FILE-DENIED",
          Kind.ENVIRONMENT);
    }
    if (isFull(io)) {
      return new Trouble(
          what,
          "The disk is full.",
          "Make room on it and try again, or choose a place on another disk.",
          "DISK-FULL",
          Kind.ENVIRONMENT);
    }
    return new Trouble(
        what,
        String.valueOf(io.getMessage()),
        "Check that the disk is not full, not read-only and still connected.",
        "FILE-FAULT",
        Kind.ENVIRONMENT);
  }

  /** The reason that a room of ours gave, if one did; the system gives none with these kinds. */
  private static String reason(IOException io, String otherwise) {
    return io instanceof FileSystemException fs && fs.getReason() != null
        ? fs.getReason()
        : otherwise;
  }

  /** As the systems word it, which is all that Java hands on of it. */
  static boolean isFull(IOException io) {
    String message = String.valueOf(io.getMessage());
    return message.contains("No space left") || message.contains("not enough space");
  }

  private static Trouble unexpected(Throwable thrown) {
    StringWriter details = new StringWriter();
    thrown.printStackTrace(new PrintWriter(details));
    String code = "BUG-" + thrown.getClass().getSimpleName();
    ProgramLog.unexpected(code, thrown);
    return new Trouble(
        "Something happened that this program did not expect.",
        details.toString(),
        "Go back to the line: everything signed is safe. Send these details to whoever keeps the program.",
        code,
        Kind.BUG);
  }

  /** One block of four lines for a terminal. */
  @Override
  public String toString() {
    return what + "\n  why: " + why + "\n  what to do: " + remedy + "\n  code: " + code;
  }
}
