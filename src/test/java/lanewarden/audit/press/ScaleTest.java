package lanewarden.audit.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScaleTest {

  @ParameterizedTest
  @CsvSource({"277, 314", "300, 300", "0, 0.4", "57.9, 58.1", "10, 4000", "299.99, 300.01"})
  void holdsEveryValueWithFewRoundMarks(double least, double most) {
    Scale scale = Scale.over(least, most);
    assertTrue(scale.low() <= least && most <= scale.high(), scale.toString());
    assertTrue(scale.marks().size() >= 3 && scale.marks().size() <= 10, scale.toString());
  }

  @Test
  void marksAreWrittenWithoutNeedlessDecimals() {
    Scale scale = Scale.over(277, 314);
    assertEquals(
        List.of("270", "280", "290", "300", "310", "320"),
        scale.marks().stream().map(scale::written).toList());
  }

  @Test
  void aFineScaleKeepsTheDecimalsOfItsStep() {
    Scale scale = new Scale(57.5, 58.5, 0.5);
    assertEquals(
        List.of("57.5", "58.0", "58.5"), scale.marks().stream().map(scale::written).toList());
  }
}
