package lanewarden.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PercentTest {

  @Test
  void isAHundredthExactly() {
    assertEquals(new BigDecimal("0.005"), Percent.parse("0.5 %").fraction());
    assertEquals("0.5 %", Percent.parse("0.5%").toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"3", "-3 %", "%", "3 percent", "3 ft/s", "3,5 %", ""})
  void refusesWhatIsNoPercentage(String text) {
    assertThrows(QuantityException.class, () -> Percent.parse(text));
  }

  @Test
  void refusesANegativeShare() {
    assertThrows(QuantityException.class, () -> new Percent(new BigDecimal("-1")));
  }
}
