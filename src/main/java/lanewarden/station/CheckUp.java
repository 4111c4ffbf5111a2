package lanewarden.station;

import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.ledger.Head;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.Verification;
import lanewarden.station.SelfCheck.Point;
import lanewarden.station.SelfCheck.State;
import lanewarden.station.SelfCheck.Subject;

/**
 * Looks a station over: whether a day can begin with it, and what to mend before.
 *
 * <p>It only reads, and does so beside an open line without keeping it waiting; a port is opened
 * for a moment, unless the line has it. It verifies the whole ledger: call it off the screen's
 * thread.
 */
public final class CheckUp {
  private final Surroundings here;
  private final ZoneId zone;

  /**
   * @param zone in which the clock is told
   */
  public CheckUp(Surroundings here, ZoneId zone) {
    this.here = here;
    this.zone = zone;
  }

  /**
   * Looks an event's station over.
   *
   * @param open its line, if it is open in this program
   * @throws StationException if there is no such folder
   */
  public SelfCheck of(EventFolder folder, Optional<Station> open) throws StationException {
    if (!Files.isDirectory(folder.path())) {
      throw StationException.of(new NotDirectoryException(folder.path().toString()));
    }
    LedgerMeaning meaning = new LedgerMeaning();
    Optional<Verification> ledger = Optional.empty();
    Optional<Trouble> unread = Optional.empty();
    try {
      ledger = Optional.of(Verification.of(folder.ledger(), List.of(), meaning::take));
    } catch (LedgerException e) {
      unread = Optional.of(Trouble.of(e));
    }
    List<Point> points = new ArrayList<>();
    points.add(ComputerPoints.clock(here.clock().instant(), meaning.last(), zone));
    points.add(ComputerPoints.disk(folder.path()));
    points.add(ComputerPoints.log(here.log()));
    points.addAll(InstrumentPoints.of(folder, open));
    unread.ifPresent(t -> points.add(Point.unread(Subject.LEDGER, "The ledger", t)));
    ledger.ifPresent(found -> points.add(ledger(found, meaning)));
    points.add(KeyPoints.organizer(folder));
    ledger.ifPresent(found -> points.addAll(resting(folder, found, meaning)));
    return new SelfCheck(points, ledger.map(found -> holding(found, meaning)));
  }

  /**
   * What can be handed to whoever keeps the program.
   *
   * @param check as it was shown
   */
  public SupportBundle bundle(EventFolder folder, SelfCheck check) throws StationException {
    return SupportBundle.of(folder, check, here);
  }

  private static Point ledger(Verification found, LedgerMeaning meaning) {
    String entries = PaperPoints.counted(found.entries(), "entry", "entries");
    String head = found.head().map(Head::shortForm).map(h -> ", head " + h).orElse("");
    if (found.sound() && meaning.fault().isEmpty()) {
      return Point.good(
          Subject.LEDGER,
          entries
              + head
              + ": every signature and every link holds. Compare the head with the one"
              + " on paper.",
          "");
    }
    int faults = found.faults().size() + (found.sound() ? 1 : 0);
    return new Point(
        Subject.LEDGER,
        State.WRONG,
        entries + head + ": " + PaperPoints.counted(faults, "fault", "faults") + ".",
        found.faults().stream()
            .findFirst()
            .map(fault -> fault.words())
            .or(() -> meaning.fault().map(LedgerInspection.Fault::words))
            .orElse(""),
        "Keep the file as it is for evidence, verify it to see all of them, and go on with a copy"
            + " that is sound, or another station.");
  }

  private static List<Point> resting(
      EventFolder folder, Verification found, LedgerMeaning meaning) {
    PaperPoints papers = new PaperPoints(folder, meaning.standing());
    List<Point> points = new ArrayList<>(KeyPoints.officials(folder, found.signers()));
    points.add(papers.ruleBook());
    points.add(papers.roster());
    points.add(papers.verification(settings(folder)));
    return points;
  }

  /** Settings that cannot be read have a point of their own. */
  private static Optional<StationSettings> settings(EventFolder folder) {
    try {
      return Optional.of(folder.settings());
    } catch (StationException told) {
      return Optional.empty();
    }
  }

  private static SelfCheck.Holding holding(Verification found, LedgerMeaning meaning) {
    return new SelfCheck.Holding(
        found.entries(),
        found.head().map(Head::shortForm).orElse("none"),
        meaning.kinds().entrySet().stream()
            .map(kind -> kind.getKey() + ": " + kind.getValue())
            .toList());
  }
}
