package lanewarden.command;

import java.util.Optional;
import lanewarden.station.EventFolder;
import lanewarden.station.Station;

/** The way to the kiosk, which this room does not know. */
@FunctionalInterface
public interface Screens {

  /**
   * Shows the screens of a station until the last window is closed.
   *
   * @param hint shown at sign-in, as the demo's passphrase is
   * @throws NoDisplay if no window can be opened; then nothing was changed
   */
  void show(Station station, EventFolder folder, Optional<String> hint) throws NoDisplay;
}
