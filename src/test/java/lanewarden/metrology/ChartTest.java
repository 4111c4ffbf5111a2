package lanewarden.metrology;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Both control charts, against the NIST/SEMATECH e-Handbook. */
class ChartTest {
  private static final List<Double> VALUES =
      List.of(
          52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8,
          51.2, 52.6, 52.4, 53.6, 52.1);
  private static final List<Double> AVERAGES =
      List.of(
          50.60, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36, 49.52,
          50.05, 49.38, 49.92, 50.73, 51.23, 51.94, 51.99);
  private static final EwmaChart EWMA = new EwmaChart(50, 2.0539, 0.3, 3);

  /** 6.3.2.4: the averages to two decimals, UCL 52.5884, LCL 47.4115 (printed cut). */
  @Test
  void averagesOfTheHandbook() {
    List<ChartPoint> points = EWMA.pointsAgainstAsymptote(VALUES);
    for (int i = 0; i < VALUES.size(); i++) {
      assertEquals(AVERAGES.get(i), points.get(i).value(), 0.0051, "value " + (i + 1));
      assertEquals(i + 1, points.get(i).number());
      assertEquals(52.5884, points.get(i).upper(), 1e-4);
      assertEquals(47.4115, points.get(i).lower(), 1e-4);
      assertFalse(points.get(i).isOutside());
    }
  }

  /** Own algebra: the first average is λ of one value, and the limits open to the asymptote. */
  @Test
  void exactLimitsOpen() {
    List<ChartPoint> points = EWMA.points(VALUES);
    assertEquals(50 + 3 * 0.3 * 2.0539, points.get(0).upper(), 1e-9);
    double variance = 0;
    double before = 0;
    for (ChartPoint point : points) {
      variance = 0.7 * 0.7 * variance + 0.3 * 0.3 * 2.0539 * 2.0539;
      assertEquals(50 + 3 * Math.sqrt(variance), point.upper(), 1e-9);
      assertEquals(100, point.upper() + point.lower(), 1e-9);
      assertTrue(point.upper() > before);
      before = point.upper();
    }
    assertEquals(50 + EWMA.asymptoticHalfWidth(), before, 1e-5);
  }

  @Test
  void smallLastingDriftIsSeenByTheAverageFirst() {
    List<Double> drift = Stream.generate(() -> 53.0).limit(12).toList();
    assertTrue(EWMA.points(drift).get(11).isOutside());
    assertTrue(
        new IndividualsChart(50, 2.0539 * 1.128)
            .points(drift).stream().noneMatch(ChartPoint::isOutside));
  }

  @Test
  void weightOfOneIsTheValuesThemselves() {
    List<ChartPoint> points = new EwmaChart(50, 1, 1, 3).points(VALUES);
    for (int i = 0; i < VALUES.size(); i++) {
      assertEquals(VALUES.get(i), points.get(i).value(), 1e-12);
      assertEquals(VALUES.get(i) > 53 || VALUES.get(i) < 47, points.get(i).isOutside());
    }
  }

  /** 6.3.2.2: mean 50.81, moving range 1.8778, UCL 55.8041, LCL 45.8159. */
  @Test
  void individualsOfTheHandbook() {
    List<Double> values = VALUES.subList(10, 20);
    IndividualsChart chart = IndividualsChart.of(values);
    assertEquals(50.81, chart.centre(), 1e-9);
    assertEquals(1.8778, chart.movingRange(), 5e-5);
    assertEquals(55.8041, chart.upper(), 1e-4);
    assertEquals(45.8159, chart.lower(), 1e-4);
    assertEquals(2.66 * chart.movingRange(), chart.upper() - chart.centre(), 0.001);
    assertTrue(chart.points(values).stream().noneMatch(ChartPoint::isOutside));
    assertTrue(chart.points(List.of(55.81)).get(0).isOutside());
    assertTrue(chart.points(List.of(45.81)).get(0).isOutside());
  }

  @Test
  void equalValuesAreInsideTheirOwnLimits() {
    List<Double> alike = List.of(0.1 + 0.2, 0.3, 0.3);
    assertTrue(
        IndividualsChart.of(List.of(0.3, 0.3)).points(alike).stream()
            .noneMatch(ChartPoint::isOutside));
    assertTrue(
        new EwmaChart(0.3, 0, 0.3, 3).points(alike).stream().noneMatch(ChartPoint::isOutside));
    assertTrue(new EwmaChart(0.3, 0, 0.3, 3).points(List.of(0.31)).get(0).isOutside());
  }

  @Test
  void refusesWhatMakesNoSense() {
    assertThrows(IllegalArgumentException.class, () -> IndividualsChart.of(List.of(1.0)));
    assertThrows(IllegalArgumentException.class, () -> new IndividualsChart(1, -1));
    assertThrows(IllegalArgumentException.class, () -> new IndividualsChart(Double.NaN, 1));
    assertThrows(IllegalArgumentException.class, () -> new EwmaChart(0, 1, 0, 3));
    assertThrows(IllegalArgumentException.class, () -> new EwmaChart(0, 1, 1.1, 3));
    assertThrows(IllegalArgumentException.class, () -> new EwmaChart(0, -1, 0.3, 3));
    assertThrows(IllegalArgumentException.class, () -> new EwmaChart(0, 1, 0.3, 0));
    assertThrows(IllegalArgumentException.class, () -> new EwmaChart(Double.NaN, 1, 0.3, 3));
    assertThrows(IllegalArgumentException.class, () -> EWMA.halfWidthAt(0));
  }
}
