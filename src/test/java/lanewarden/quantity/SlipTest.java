package lanewarden.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlipTest {

  private static QuantityException refused(Function<String, ?> parser, String text) {
    return assertThrows(QuantityException.class, () -> parser.apply(text));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "-300 ft/s | leave the minus sign out",
        "91,5 m/s | write a decimal point instead of the comma",
        "1e400 ft/s | write the number out in digits, without an exponent",
        "300 FPS | write \"300 ft/s\"",
        "300 ft/s. | write \"300 ft/s\"",
        "300 kph | use one of ft/s, m/s",
        "fast | write digits with a decimal point, then the unit"
      })
  void aSpeedNearlyRightHasTheMendThatFitsIt(String written, String mend) {
    assertEquals(mend, refused(Speed::parse, written).mend().toString());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3 percent | write a number, then the percent sign",
        "-3 % | leave the minus sign out",
        "3,5 % | write a decimal point instead of the comma"
      })
  void aPercentageNearlyRightHasTheMendThatFitsIt(String written, String mend) {
    assertEquals(mend, refused(Percent::parse, written).mend().toString());
  }

  @Test
  void theExampleIsOfTheQuantityThatWasAskedFor() {
    assertEquals(
        "a force such as \"60 lbf\"", refused(Force::parse, "60 kg").expected().toString());
    assertEquals(
        "an energy such as \"165 J\"", refused(Energy::parse, "300 ft/s").expected().toString());
    assertEquals("a mass such as \"350 gr\"", refused(Mass::parse, "12 oz").expected().toString());
    assertEquals("write \"60 lbf\"", refused(Force::parse, "60 lbs").mend().toString());
  }
}
