package lanewarden.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import lanewarden.quantity.SpeedUnit;
import org.junit.jupiter.api.Test;

/** The control charts of the station's instrument, from the shots that were signed. */
class InstrumentChartTest extends LineTest {
  private static final double FOOT = 0.3048;

  private void plan(String table) throws Exception {
    line.close();
    Files.writeString(
        line.folder.path().resolve(EventFolder.SETTINGS),
        "[verification]\nshots = 2\nmost_spread = \"5 ft/s\"\n" + table,
        StandardOpenOption.APPEND);
    line = PracticeLine.open(line.folder).onDuty();
  }

  private void verify(String... speeds) throws Exception {
    line.station.proving().begin();
    line.shoot(speeds);
  }

  private Optional<InstrumentChart> chart() {
    return line.station.view().verification().chart();
  }

  @Test
  void oneShotDrawsNothing() throws Exception {
    plan("most_bias = \"0.5 %\"\nreference = \"check bow\"\nspeed = \"300 ft/s\"\n");
    verify("301 ft/s");
    assertEquals(Optional.empty(), chart());
  }

  @Test
  void shotsOfAllVerificationsStandInOrderAgainstLimitsFromTheirOwnScatter() throws Exception {
    plan("most_bias = \"0.5 %\"\nreference = \"check bow\"\nspeed = \"300 ft/s\"\n");
    verify("300 ft/s", "301 ft/s");
    verify("300 ft/s", "303 ft/s");
    InstrumentChart chart = chart().orElseThrow();
    // NIST/SEMATECH 6.3.2.2: differences 0 1 0 3 ft/s, mean 1, moving ranges 1 1 3, sigma MR/1.128
    assertEquals(FOOT, chart.centre().doubleValue(), 1e-9);
    assertEquals(3 * FOOT, chart.singles().get(3).value(), 1e-9);
    assertEquals((1 + 3 * (5.0 / 3) / 1.128) * FOOT, chart.singles().get(0).upper(), 1e-9);
    // 6.3.2.4: 0.3 × 0 + 0.7 × 1, then 0.3 × 1 + 0.7 × 0.7
    assertEquals(0.7 * FOOT, chart.averages().get(0).value(), 1e-9);
    assertEquals(0.79 * FOOT, chart.averages().get(1).value(), 1e-9);
    assertEquals(SpeedUnit.FEET_PER_SECOND, chart.unit());
    assertEquals(1.5 * FOOT, chart.mostBias().doubleValue(), 1e-12);
  }

  @Test
  void aShotThatWaitsForItsReferenceIsNotDrawnYet() throws Exception {
    plan("most_bias = \"5 ft/s\"\nreference = \"second instrument\"\n");
    verify("300 ft/s");
    line.station.proving().reference("91.2 m/s");
    line.shoot("301 ft/s");
    assertEquals(Optional.empty(), chart());
    line.station.proving().reference("91.4 m/s");
    InstrumentChart chart = chart().orElseThrow();
    assertEquals(SpeedUnit.METRES_PER_SECOND, chart.unit());
    assertEquals(300 * FOOT - 91.2, chart.singles().get(0).value(), 1e-9);
  }

  @Test
  void shotsOfAVerificationThatWasBrokenOffAreLeftOutAndCounted() throws Exception {
    plan("most_bias = \"5 ft/s\"\nreference = \"check bow\"\nspeed = \"300 ft/s\"\n");
    verify("250 ft/s");
    line.station.proving().breakOff("the bow string slipped");
    verify("300 ft/s", "301 ft/s");
    InstrumentChart chart = chart().orElseThrow();
    assertEquals(2, chart.singles().size());
    assertEquals(1, chart.brokenOff());
    assertTrue(chart.singles().stream().noneMatch(p -> p.value() < 0));
  }
}
