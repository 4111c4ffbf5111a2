package lanewarden.command;

import java.util.Optional;
import lanewarden.station.EventFolder;
import lanewarden.station.Station;
import lanewarden.station.StationException;

/** The way to the kiosk, which this room does not know. */
@FunctionalInterface
public interface Screens {

  /** Opens a station, which takes as long as its ledger is long. */
  @FunctionalInterface
  interface Opening {
    /** Called once, on any thread. */
    Station open() throws StationException;
  }

  /**
   * Opens a station, and shows its screens until the last window is closed.
   *
   * @param hint shown at sign-in, as the demo's passphrase is
   * @param full whether they fill the screen whole, and are left only with a passphrase
   * @throws NoDisplay if no window can be opened; the station may be open then
   * @throws StationException if the station cannot be opened
   */
  void show(Opening opening, EventFolder folder, Optional<String> hint, boolean full)
      throws NoDisplay, StationException;
}
