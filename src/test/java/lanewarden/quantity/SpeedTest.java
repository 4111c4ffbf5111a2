package lanewarden.quantity;

import static lanewarden.quantity.SpeedUnit.FEET_PER_SECOND;
import static lanewarden.quantity.SpeedUnit.METRES_PER_SECOND;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpeedTest {

  @Test
  void threePercentOnTopIsExact() {
    Speed allowed = Speed.parse("280 ft/s").plus(Percent.parse("3 %"));
    assertEquals(0, allowed.compareTo(Speed.parse("288.4 ft/s")));
  }

  @Test
  void meanOfThreeIsExactWhereBinaryFloatingPointIsNot() {
    assertTrue((299.8 + 300.1 + 300.1) / 3 > 300.0, "the trap this guards against");
    MeanSpeed mean = MeanSpeed.of(feet("299.8", "300.1", "300.1"));
    assertEquals(0, mean.compareTo(Speed.parse("300 ft/s")));
    assertFalse(mean.isMoreThan(Speed.parse("300 ft/s")));
  }

  @Test
  void meanThatHasNoDecimalComparesExactly() {
    MeanSpeed mean = MeanSpeed.of(feet("312", "308", "306"));
    assertEquals("308.667 ft/s", mean.to(FEET_PER_SECOND, 3).toString());
    assertTrue(mean.compareTo(Speed.parse("308.667 ft/s")) < 0);
    assertTrue(mean.compareTo(Speed.parse("308.666666666666666666666 ft/s")) > 0);
  }

  @Test
  void meanOfNoSpeedsIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> MeanSpeed.of(List.of()));
  }

  /** Exact: 300 ft/s is 91.44 m/s and 280 ft/s is 85.344 m/s (SI definition of the foot). */
  @ParameterizedTest
  @CsvSource({"300 ft/s, 91.44 m/s", "280 ft/s, 85.344 m/s", "300.0 fps, 91.440 m/s"})
  void comparesAcrossUnitsExactly(String feet, String metres) {
    assertEquals(0, Speed.parse(feet).compareTo(Speed.parse(metres)));
    assertTrue(Speed.parse(feet).isAtMost(Speed.parse(metres)));
    assertFalse(Speed.parse(feet).isMoreThan(Speed.parse(metres)));
  }

  @Test
  void governingUnitDecidesThreeHundredPointOne() {
    assertTrue(Speed.parse("300.1 ft/s").isAtMost(Speed.parse("91.5 m/s")));
    assertTrue(Speed.parse("300.1 ft/s").isMoreThan(Speed.parse("300 ft/s")));
  }

  @Test
  void equalityIsOfTheWritingAndComparisonOfTheMagnitude() {
    assertNotEquals(Speed.parse("300.0 ft/s"), Speed.parse("300 ft/s"));
    assertEquals(0, Speed.parse("300.0 ft/s").compareTo(Speed.parse("300 ft/s")));
    assertEquals(Speed.parse("300 ft/s"), Speed.of("300", FEET_PER_SECOND));
    assertEquals(Speed.parse("300 ft/s").hashCode(), Speed.of("300", FEET_PER_SECOND).hashCode());
    assertNotEquals(Speed.parse("300 ft/s"), Speed.parse("300 m/s"));
    assertFalse(Speed.parse("3 m/s").equals((Object) Length.parse("3 m")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "fast",
        "-3 ft/s",
        "NaN ft/s",
        "Infinity",
        "3e2 ft/s",
        "300",
        "300 km/h",
        "300,1 ft/s",
        ".5 ft/s",
        "300. ft/s",
        "300 FT/S",
        "1 ft/s ft/s",
        "٣٠٠ ft/s",
        "99999999999999999999999999999999999999999999999999 ft/s"
      })
  void refusesWhatIsNoSpeed(String text) {
    QuantityException refused = assertThrows(QuantityException.class, () -> Speed.parse(text));
    assertFalse(refused.expected().toString().isBlank());
    assertFalse(refused.found().toString().isBlank());
    assertFalse(refused.mend().toString().isBlank());
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1})
  void refusesSenselessNumbers(double value) {
    assertThrows(QuantityException.class, () -> Speed.ofSi(value, METRES_PER_SECOND));
  }

  @Test
  void siValueIsOnlyGivenInTheSiUnit() {
    assertEquals("91.44 m/s", Speed.ofSi(91.44, METRES_PER_SECOND).toString());
    assertThrows(IllegalArgumentException.class, () -> Speed.ofSi(300, FEET_PER_SECOND));
  }

  @Test
  void refusesDigitsWithAUnitWhereOnlyDigitsBelong() {
    assertThrows(QuantityException.class, () -> Speed.of("300 m/s", FEET_PER_SECOND));
    assertThrows(QuantityException.class, () -> Speed.of("", FEET_PER_SECOND));
    assertThrows(QuantityException.class, () -> Speed.of(new BigDecimal("-0.1"), FEET_PER_SECOND));
  }

  @Test
  void takesTheUnitIfNoneOnlyWhereNoneIsWritten() {
    assertEquals("285.3 ft/s", Speed.parse("285.3", FEET_PER_SECOND).toString());
    assertEquals("90.1 m/s", Speed.parse("90.1 m/s", FEET_PER_SECOND).toString());
  }

  @Test
  void sumAcrossUnitsIsRefused() {
    assertEquals("302 ft/s", Speed.parse("300 ft/s").plus(Speed.parse("2 ft/s")).toString());
    assertThrows(
        IllegalArgumentException.class, () -> Speed.parse("300 ft/s").plus(Speed.parse("1 m/s")));
  }

  static Stream<String> randomWritings() {
    Random random = new Random(7);
    return Stream.generate(
            () ->
                BigDecimal.valueOf(random.nextInt(1_000_000), random.nextInt(5)).toPlainString()
                    + " "
                    + List.of("ft/s", "m/s").get(random.nextInt(2)))
        .limit(500);
  }

  @ParameterizedTest
  @MethodSource("randomWritings")
  void readsBackWhatItPrints(String written) {
    assertEquals(written, Speed.parse(written).toString());
    assertEquals(Speed.parse(written), Speed.parse(Speed.parse(written).toString()));
  }

  @Test
  void displayRoundsHalfToEven() {
    assertEquals("0.2 m/s", Speed.parse("0.25 m/s").to(METRES_PER_SECOND, 1).toString());
    assertEquals("300.20 ft/s", Speed.parse("91.5 m/s").to(FEET_PER_SECOND, 2).toString());
  }

  private static List<Speed> feet(String... digits) {
    return Stream.of(digits).map(d -> Speed.of(d, FEET_PER_SECOND)).toList();
  }
}
