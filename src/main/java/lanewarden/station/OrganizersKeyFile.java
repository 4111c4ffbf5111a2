package lanewarden.station;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.Optional;
import lanewarden.ledger.KeyFile;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.SigningKey;

/**
 * The organizer's key, in its place in an event's folder or wherever the organizer keeps it.
 *
 * @param folder the event's
 * @param thumbprint of the key on which the event's ledger rests, where the ledger is at hand;
 *     without it only the ledger itself refuses another key
 * @param clock for the waits after wrong passphrases
 */
record OrganizersKeyFile(EventFolder folder, Optional<String> thumbprint, Clock clock) {

  /** Where it rests: its place in the folder, the file named, or its file in the folder named. */
  Path at(Optional<Path> named) {
    Path place = named.orElseGet(folder::organizerKey);
    return Files.isDirectory(place) ? place.resolve(KeyCabinet.ORGANIZER_KEY) : place;
  }

  /**
   * Opens it. Another key than the organizer's is refused before its passphrase is tried.
   *
   * @param named where it rests, a file or the folder around it; empty for its place in the folder
   * @param passphrase is wiped
   * @throws StationException if it is not there or no key, it is not the organizer's, or the
   *     passphrase is wrong
   */
  SigningKey open(Optional<Path> named, char[] passphrase) throws StationException {
    Path file = at(named);
    try {
      requireThere(file);
      requireOrganizers(file);
      return new KeyLock(file, clock).open(passphrase);
    } finally {
      Arrays.fill(passphrase, '\0');
    }
  }

  private static void requireThere(Path file) throws StationException {
    if (!Files.isRegularFile(file)) {
      throw StationException.misstep(
          "ORGANIZER-KEY-MISSING",
          "Nothing was signed.",
          "The organizer's key is not at " + file + ".",
          "Bring it back to its place for this one act, or say where it is.");
    }
  }

  private void requireOrganizers(Path file) throws StationException {
    if (thumbprint.isEmpty()) {
      return;
    }
    try {
      String found = KeyFile.label(file).thumbprint();
      if (!found.equals(thumbprint.get())) {
        throw notOrganizers("Nothing was signed.");
      }
    } catch (LedgerException e) {
      throw StationException.of(e);
    }
  }

  /**
   * Another key stands where the organizer's should.
   *
   * @param what what it kept from happening
   */
  static StationException notOrganizers(String what) {
    return StationException.misstep(
        "NOT-ORGANIZER",
        what,
        "This key is not the organizer's of this event.",
        "Take the organizer's key that was made with this event.");
  }
}
