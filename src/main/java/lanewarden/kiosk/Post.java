package lanewarden.kiosk;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import lanewarden.kiosk.form.OrganizersKey;
import lanewarden.station.EventFolder;
import lanewarden.station.LineOpening;
import lanewarden.station.Station;
import lanewarden.station.StationException;

/**
 * A station that screens are made for, and what is known of it while it is still on its way.
 *
 * @param station is there once its ledger was verified
 * @param folder of its event
 * @param key the organizer's, wherever it is kept
 * @param training whether it is a real line
 * @param officials who has a key there, until the station itself can be asked
 */
record Post(
    CompletableFuture<Station> station,
    EventFolder folder,
    OrganizersKey key,
    Training training,
    List<String> officials) {

  /** Of a station that is there. */
  static Post of(Station station, EventFolder folder, Training training) {
    return new Post(
        CompletableFuture.completedFuture(station),
        folder,
        new OrganizersKey(folder),
        training,
        List.of());
  }

  /**
   * Of a station that is opened meanwhile: what can be told without its ledger.
   *
   * @param hint a line under the passphrase at sign-in
   * @throws StationException if the event's settings or keys cannot be read
   */
  static Post ahead(LineOpening opening, Optional<String> hint) throws StationException {
    return new Post(
        new CompletableFuture<>(),
        opening.folder(),
        new OrganizersKey(opening.folder()),
        new Training(opening.isTraining(), hint),
        opening.folder().officials());
  }
}
