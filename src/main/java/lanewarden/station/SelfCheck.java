package lanewarden.station;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a check-up of a station found, point by point, with remedies; immutable.
 *
 * @param points in the order in which a day would stumble over them
 * @param ledger what the ledger holds, if it can be read
 */
public record SelfCheck(List<Point> points, Optional<Holding> ledger) {

  /** What a point is about. */
  public enum Subject {
    /** The computer's clock. */
    CLOCK,
    /** Room on the event's disk, and the right to write there. */
    DISK,
    /** The program's log. */
    LOG,
    /** The instrument's port. */
    PORT,
    /** The ledger and its head. */
    LEDGER,
    /** Where the organizer's key lies. */
    ORGANIZER_KEY,
    /** Who can sign. */
    OFFICIALS,
    /** Who can rule on protests. */
    JUDGE,
    /** The rule book in force, and the file. */
    RULE_BOOK,
    /** The roster in force, and the file. */
    ROSTER,
    /** What the settings say of the instrument. */
    INSTRUMENT,
    /** Holds, and when the instrument is to be verified. */
    VERIFICATION;

    /** In small letters, for terminals and machines. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /** How a point stands. */
  public enum State {
    /** As it should be. */
    GOOD,
    /** The line can go on; somebody should look. */
    ATTENTION,
    /** Mend it before the line opens. */
    WRONG;

    /** In small letters, for terminals and machines. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * One point.
   *
   * @param found what there is: never a name, a path or anything that somebody typed
   * @param details more of it, which may quote files; blank if there is no more
   * @param remedy what to do; blank where nothing is to be done
   */
  public record Point(Subject subject, State state, String found, String details, String remedy) {

    static Point good(Subject subject, String found, String details) {
      return new Point(subject, State.GOOD, found, details, "");
    }

    /** Something that could not be read, with what the exception says of it. */
    static Point unread(Subject subject, String what, Trouble trouble) {
      return new Point(
          subject,
          State.WRONG,
          what + " cannot be used (" + trouble.code() + ").",
          trouble.what() + " " + trouble.why(),
          trouble.remedy());
    }
  }

  /**
   * What a ledger holds, without saying who.
   *
   * @param entries how many
   * @param head sequence and short hash of the last
   * @param kinds how many there are of each kind, a line each
   */
  public record Holding(long entries, String head, List<String> kinds) {

    /** Copies the list. */
    public Holding {
      kinds = List.copyOf(kinds);
    }
  }

  /** Copies the list. */
  public SelfCheck {
    points = List.copyOf(points);
  }

  /** How the point stands that stands worst. */
  public State worst() {
    return points.stream().map(Point::state).max(Comparator.naturalOrder()).orElse(State.GOOD);
  }

  /** How many points stand so. */
  public long count(State state) {
    return points.stream().filter(point -> point.state() == state).count();
  }
}
