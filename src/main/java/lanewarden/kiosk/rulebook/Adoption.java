package lanewarden.kiosk.rulebook;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import lanewarden.station.Trouble;

/** How the event's rule book comes into force: the organizer signs it. */
public interface Adoption {

  /** The event's rule book: no other file can come into force. */
  Path ruleBook();

  /**
   * Has it signed, off the screen's thread; both answers come on it. The one that it is done brings
   * what the organizer is to know of it, though it hindered nothing.
   *
   * @param passphrase of the organizer's key; is wiped
   * @param reason in the organizer's words
   */
  void adopt(
      char[] passphrase, String reason, Consumer<Optional<Trouble>> done, Consumer<Trouble> missed);
}
