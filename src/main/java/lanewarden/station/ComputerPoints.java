package lanewarden.station;

import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import lanewarden.station.SelfCheck.Point;
import lanewarden.station.SelfCheck.State;
import lanewarden.station.SelfCheck.Subject;

/** What a check-up finds about the computer: its clock, its disk, the program's log. */
final class ComputerPoints {

  /** A computer whose clock stopped begins in a year long before this program was written. */
  static final Instant EARLIEST = Instant.parse("2026-01-01T00:00:00Z");

  /** An event is made weeks before, not so long before. */
  static final Duration LONG_AGO = Duration.ofDays(180);

  /** A ledger of a full day is some 20 MB, and a report of it as much. */
  static final long TOO_LITTLE = 200_000_000;

  static final long SCARCE = 1_000_000_000;

  private static final DateTimeFormatter LOCAL =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

  private ComputerPoints() {}

  /**
   * The clock against the ledger.
   *
   * @param last when the last entry was signed, by the clock of then
   */
  static Point clock(Instant now, Optional<Instant> last, ZoneId zone) {
    Instant minute = now.truncatedTo(ChronoUnit.MINUTES);
    String shown = LOCAL.format(minute.atZone(zone)) + " here, " + minute + " in UTC";
    if (now.isBefore(EARLIEST)) {
      return clock(
          State.WRONG,
          "It says " + shown + ", which cannot be.",
          "Set date and time; a clock that forgets them wants a new battery.");
    }
    if (last.isPresent() && now.isBefore(last.get())) {
      return clock(
          State.WRONG,
          "It says " + shown + ", but the ledger has an entry of " + last.get() + ".",
          "Set the clock before anything is signed. If it is right now, it was wrong then: the"
              + " report will say so, and it is no fault of the readings.");
    }
    if (last.isPresent() && Duration.between(last.get(), now).compareTo(LONG_AGO) > 0) {
      return clock(
          State.ATTENTION,
          "It says " + shown + "; the ledger's last entry is of " + last.get() + ".",
          "Look whether the date is right, and whether this is the event you mean.");
    }
    return clock(State.GOOD, "It says " + shown + ": compare it with a watch.", "");
  }

  private static Point clock(State state, String found, String remedy) {
    return new Point(Subject.CLOCK, state, found, "", remedy);
  }

  /** The disk on which the event lies. */
  static Point disk(Path folder) {
    try {
      FileStore disk = Files.getFileStore(folder);
      return disk(disk.getUsableSpace(), Files.isWritable(folder) && !disk.isReadOnly());
    } catch (IOException e) {
      return Point.unread(Subject.DISK, "The event's disk", Trouble.of(e));
    }
  }

  static Point disk(long room, boolean writable) {
    String found = "There is room for " + room / 1_000_000 + " MB.";
    if (!writable) {
      return new Point(
          Subject.DISK,
          State.WRONG,
          "Nothing can be written into the event's folder.",
          "",
          "Give this user the right to write there, or copy the folder to another disk.");
    }
    if (room >= SCARCE) {
      return Point.good(Subject.DISK, found, "");
    }
    return new Point(
        Subject.DISK,
        room < TOO_LITTLE ? State.WRONG : State.ATTENTION,
        found,
        "",
        "Make room before the line opens: a day's ledger and its reports want some 100 MB, and"
            + " other programs fill disks too.");
  }

  /** The program's log. */
  static Point log(ProgramLog log) {
    Optional<Trouble> trouble = log.trouble();
    if (trouble.isPresent() || log.folder().isEmpty()) {
      return new Point(
          Subject.LOG,
          State.ATTENTION,
          "It is not written.",
          trouble.map(Trouble::why).orElse(""),
          trouble.map(Trouble::remedy).orElse("Nothing hangs on it: the work goes on."));
    }
    return Point.good(Subject.LOG, "It is written.", log.folder().get().toString());
  }
}
