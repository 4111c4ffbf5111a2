package lanewarden.metrology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.stream.Stream;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.junit.jupiter.api.Test;

class SpreadTest {

  /**
   * NIST/SEMATECH e-Handbook 1.3.5.17: G = (largest − mean)/s = 2.4687 for these eight values
   * (printed cut, not rounded: 2.46876).
   */
  @Test
  void meanAndDeviationGiveThePublishedGrubbsStatistic() {
    Spread spread =
        Spread.of(
            metres("199.31", "199.53", "200.19", "200.82", "201.92", "201.95", "202.18", "245.57"));
    assertEquals(2.4687, (245.57 - spread.mean()) / spread.deviation(), 1e-4);
  }

  @Test
  void oneSpeedHasNoDeviation() {
    assertEquals(new Spread(1, 90, 0), Spread.of(metres("90")));
  }

  @Test
  void refusesNoSpeeds() {
    assertThrows(IllegalArgumentException.class, () -> Spread.of(List.of()));
  }

  private static List<Speed> metres(String... digits) {
    return Stream.of(digits).map(d -> Speed.of(d, SpeedUnit.METRES_PER_SECOND)).toList();
  }
}
