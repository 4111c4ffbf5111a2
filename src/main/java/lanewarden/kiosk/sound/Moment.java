package lanewarden.kiosk.sound;

import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import lanewarden.station.LineView;

/**
 * What of the line can be heard.
 *
 * @param check the number of the check at the line; 0 while there is none
 * @param readings those of that check
 * @param outcome of that check, if it is decided
 * @param verifying readings of every verification
 * @param refused the line refused last
 */
record Moment(
    long check,
    int readings,
    Optional<Outcome> outcome,
    int verifying,
    Optional<Fact.LineRefused> refused) {

  static Moment of(LineView view) {
    return new Moment(
        view.check().map(seen -> seen.check().number()).orElse(0L),
        view.check().map(seen -> seen.check().shots().size()).orElse(0),
        view.check().flatMap(seen -> seen.check().outcome()),
        view.verification().rounds().stream().mapToInt(round -> round.taken().size()).sum(),
        view.refused());
  }
}
