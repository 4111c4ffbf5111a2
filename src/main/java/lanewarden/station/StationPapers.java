package lanewarden.station;

import java.util.Optional;
import lanewarden.chronograph.Reading;
import lanewarden.chronograph.SentenceProfile;
import lanewarden.chronograph.Source;
import lanewarden.journal.Fact;
import lanewarden.metrology.ReadingUncertainty;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.jspecify.annotations.Nullable;

/**
 * What a station stands on when its line opens: its settings, with the texts that go into the
 * ledger.
 *
 * @param settings as read
 * @param text of the settings, whole
 * @param profile of the instrument
 * @param second profile of the second instrument, where there is one
 */
record StationPapers(
    StationSettings settings,
    String text,
    SentenceProfile profile,
    Optional<SentenceProfile> second) {

  /** The speeds at which the budget goes into the ledger: about the limits that are common. */
  private static final Speed IN_FEET = Speed.of("300", SpeedUnit.FEET_PER_SECOND);

  private static final Speed IN_METRES = Speed.of("90", SpeedUnit.METRES_PER_SECOND);

  /** The opening of the line, to be signed. */
  Fact.StationOpened opening(String instrument, String program) {
    return new Fact.StationOpened(
        instrument,
        profile.text(),
        program,
        second.map(SentenceProfile::text).orElse(null),
        text,
        settings.accuracy().map(this::budget).map(Budget::inWords).orElse(null),
        settings.place().orElse(null));
  }

  private Budget budget(ReadingUncertainty known) {
    boolean feet = profile.plausible().most().unit() == SpeedUnit.FEET_PER_SECOND;
    return Budget.of(known, feet ? IN_FEET : IN_METRES);
  }

  /**
   * The standard uncertainty of a reading, in its unit; null where nothing is known of the
   * instrument, or where the official typed it: nobody knows off which instrument.
   */
  @Nullable Speed uncertainty(Reading reading) {
    return reading.source() == Source.TYPED
        ? null
        : settings
            .accuracy()
            .map(known -> known.at(reading.speed()).combined())
            .map(standard -> Budget.shown(standard, reading.speed().unit()))
            .orElse(null);
  }
}
