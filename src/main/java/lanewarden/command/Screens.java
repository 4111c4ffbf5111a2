package lanewarden.command;

import java.util.Optional;
import lanewarden.station.LineOpening;
import lanewarden.station.StationException;

/** The way to the kiosk, which this room does not know. */
@FunctionalInterface
public interface Screens {

  /**
   * Shows the screens of a line that opens meanwhile, until the last window is closed.
   *
   * @param hint shown at sign-in, as the demo's passphrase is
   * @param full whether they fill the screen whole, and are left only with a passphrase
   * @throws NoDisplay if no window can be opened; nothing was opened then
   * @throws StationException if the line cannot be opened
   */
  void show(LineOpening opening, Optional<String> hint, boolean full)
      throws NoDisplay, StationException;
}
