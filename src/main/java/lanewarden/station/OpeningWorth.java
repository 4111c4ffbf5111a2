package lanewarden.station;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.Place;

/**
 * What an opening of the line says of its instrument beside its settings: where it stands, and what
 * makes its readings uncertain. Both are worked out from the settings, so they can be worked out
 * anew; settings, place and budget came into the ledger together, so without settings nothing gives
 * either. The words of the budget have been the same since; a version that words it otherwise must
 * know these too.
 */
final class OpeningWorth {
  private OpeningWorth() {}

  /**
   * What speaks against the place that was signed.
   *
   * @param given the opening that the settings amount to; empty where none were signed
   */
  static Optional<String> place(Optional<Fact.StationOpened> given, Fact.StationOpened signed) {
    Optional<Place> computed = given.map(Fact.StationOpened::place);
    Optional<Place> stated = Optional.ofNullable(signed.place());
    return computed.equals(stated)
        ? Optional.empty()
        : Optional.of(
            "the settings give it "
                + computed.map(OpeningWorth::inWords).orElse("no place")
                + ", signed is "
                + stated.map(OpeningWorth::inWords).orElse("none"));
  }

  private static String inWords(Place place) {
    return "a place "
        + place.distance()
        + " from the bow (shafts "
        + place.shaftDiameter()
        + ", drag coefficient "
        + place.dragCoefficient().toPlainString()
        + ", air "
        + place.airDensity().toPlainString()
        + " kg/m³)";
  }

  /** What speaks against the budget that was signed. */
  static Optional<String> budget(Optional<Fact.StationOpened> given, Fact.StationOpened signed) {
    Optional<List<String>> computed = given.map(Fact.StationOpened::budget);
    Optional<List<String>> stated = Optional.ofNullable(signed.budget());
    return Objects.equals(computed, stated)
        ? Optional.empty()
        : Optional.of(
            "the settings give it "
                + computed.map(OpeningWorth::inWords).orElse("no budget of its accuracy")
                + ", signed is "
                + stated.map(OpeningWorth::inWords).orElse("none"));
  }

  private static String inWords(List<String> budget) {
    return "the budget “" + String.join("” “", budget) + "”";
  }
}
