package lanewarden.station;

import java.nio.file.Path;
import java.util.Optional;

/**
 * The check-in line that is open in this program, one at most, so that whoever ends the program can
 * leave it in order.
 *
 * <p>Any thread may call; the calls wait for one another.
 */
public final class CurrentLine {
  private static final double AS_ARCHERS = 1;
  private static final double FOR_THE_HURRIED = 0.5;

  private final Surroundings here;
  private Optional<CheckInLine> open = Optional.empty();
  private boolean over;

  /**
   * @param here is given to each line
   */
  public CurrentLine(Surroundings here) {
    this.here = here;
  }

  /** What each line is given. */
  public Surroundings here() {
    return here;
  }

  /**
   * Opens the line of an event.
   *
   * @param terms hold for this opening alone
   * @throws StationException if it cannot be opened; then none is open
   */
  public Station open(EventFolder folder, OpeningTerms terms) throws StationException {
    if (!folder.isMade()) {
      throw StationException.misstep(
          "NO-EVENT",
          "No event was opened.",
          folder.path() + " holds none: " + EventFolder.LEDGER + " is not in it.",
          "Choose the folder that was named when the event was made, or make a new event.");
    }
    return open(folder, terms, AS_ARCHERS);
  }

  /**
   * Opens the line of the invented event, made anew in this folder if anybody was called in it.
   *
   * @param terms hold for this opening alone
   * @throws StationException if it cannot be made or opened; then none is open
   */
  public Practice practise(Path folder, OpeningTerms terms) throws StationException {
    DemoEvent there = DemoEvent.in(folder, here);
    DemoEvent fresh = there.isBegun(here) ? DemoEvent.anew(folder, here) : there;
    return new Practice(open(fresh.folder(), terms, FOR_THE_HURRIED), fresh.folder());
  }

  private Station open(EventFolder folder, OpeningTerms terms, double usual)
      throws StationException {
    terms.requireUseAt(folder);
    return open(folder, terms.port(), terms.pace().orElse(usual));
  }

  /**
   * A line on which nothing counts.
   *
   * @param station its station
   * @param folder where it keeps what is shot
   */
  public record Practice(Station station, EventFolder folder) {}

  /**
   * Opens the line of an event.
   *
   * @param port a serial port instead of what the settings say
   * @param pace of the archers of a rehearsal: 1 as captured, 0 without waiting
   * @throws StationException if it cannot be opened; then none is open
   */
  public synchronized Station open(EventFolder folder, Optional<String> port, double pace)
      throws StationException {
    if (over || open.isPresent()) {
      throw new IllegalStateException("a line is open, or the program ends");
    }
    CheckInLine line = CheckInLine.open(folder, port, pace, here);
    open = Optional.of(line);
    return line.station();
  }

  /** The station of the line that is open, if one is. */
  public synchronized Optional<Station> station() {
    return open.map(CheckInLine::station);
  }

  /** Leaves the line that is open, if one is; another may be opened then. */
  public synchronized void leave() throws StationException {
    Optional<CheckInLine> left = open;
    open = Optional.empty();
    if (left.isPresent()) {
      left.get().leave();
    }
  }

  /** Leaves the line that is open, if one is; none is opened any more. */
  public synchronized void end() throws StationException {
    over = true;
    leave();
  }
}
