package lanewarden.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import lanewarden.quantity.Length;
import org.junit.jupiter.api.Test;

class LinePapersTest {
  private static LinePapers papers(
      String instrument, String settings, List<String> budget, String distance) {
    Place place =
        new Place(
            Length.parse(distance),
            Length.parse("7 mm"),
            new BigDecimal("1.8"),
            new BigDecimal("1.2"));
    return new LinePapers(
        new Fact.StationOpened(instrument, "a = 1", "L", null, settings, budget, place));
  }

  @Test
  void placeAndUncertaintyAreToldWhateverElseChanged() {
    LinePapers before = papers("one", "b = 1", null, "3 m");
    assertEquals(
        List.of(
            "instrument: was “one”, is “two”",
            "settings, b: was 1, is 2",
            "place of the instrument is stated otherwise",
            "uncertainty of the instrument is stated, and was not before"),
        papers("two", "b = 2", List.of("step: 0.1 ft/s"), "4 m").changedFrom(before));
    assertEquals(
        List.of("place of the instrument is stated otherwise, though the settings are the same"),
        papers("one", "b = 1", null, "5 m").changedFrom(before));
    assertEquals(List.of(), papers("one", "b = 1", null, "3 m").changedFrom(before));
  }
}
