package lanewarden.kiosk.rulebook;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import lanewarden.kiosk.form.OrganizersKey;
import lanewarden.station.Trouble;

/** How the event's rule book comes into force: the organizer signs it. */
public interface Adoption {

  /** The event's rule book: no other file can come into force. */
  Path ruleBook();

  /** The key that signs it. */
  OrganizersKey key();

  /** Finds SHA-256 of the rule book in force, off the screen's thread; both answers come on it. */
  void inForce(Consumer<String> sha256, Consumer<Trouble> missed);

  /**
   * Has it signed, off the screen's thread; both answers come on it. The one that it is done brings
   * what the organizer is to know of it, though it hindered nothing.
   *
   * @param reason in the organizer's words
   */
  void adopt(
      OrganizersKey.Signature organizer,
      String reason,
      Consumer<Optional<Trouble>> done,
      Consumer<Trouble> missed);
}
