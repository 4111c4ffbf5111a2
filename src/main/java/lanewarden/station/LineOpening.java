package lanewarden.station;

import java.util.Optional;

/**
 * The line of an event that is about to be opened in this program.
 *
 * @param line is open then
 * @param folder the event
 * @param port a serial port instead of what the settings say
 * @param pace of the archers of a rehearsal: 1 as captured, 0 without waiting
 */
public record LineOpening(
    CurrentLine line, EventFolder folder, Optional<String> port, double pace) {

  /**
   * Whether its readings will be invented, so that nothing counts.
   *
   * @throws StationException if the settings cannot be read
   */
  public boolean isTraining() throws StationException {
    return CheckInLine.isRehearsed(folder, port);
  }

  /**
   * Opens it, which takes as long as its ledger is long; called once, on any thread.
   *
   * @throws StationException if it cannot be opened; then none is open
   */
  public Station open() throws StationException {
    return line.open(folder, port, pace);
  }
}
