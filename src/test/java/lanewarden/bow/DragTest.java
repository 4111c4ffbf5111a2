package lanewarden.bow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import lanewarden.quantity.Length;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.Test;

class DragTest {
  private static final Mass ARROW = Mass.parse("14.0 g");
  private static final Length SHAFT = Length.parse("5.24 mm");
  private static final Drag DRAG = Drag.of(1.2, 1.5, SHAFT, ARROW);

  /** Own computation: ρ 1.2, d 5.24 mm, m 14.0 g, C_D 1.5. */
  @Test
  void decayOnAMetre() {
    assertEquals(1.386331e-3, DRAG.perMetre(), 1e-9);
  }

  /** Own computation: the equation of motion m·dv/dt = −½ρ·C_D·A·v², in steps of 1 mm. */
  @Test
  void agreesWithTheEquationOfMotionStepByStep() {
    double v = 56.4;
    double area = Math.PI * 0.00524 * 0.00524 / 4;
    for (int i = 0; i < 60_000; i++) {
      double force = 0.5 * 1.2 * 1.5 * area * v * v;
      v -= force / 0.0140 / v * 0.001;
    }
    Speed after = DRAG.at(Length.parse("60 m"), Speed.parse("56.4 m/s"));
    assertEquals(v, after.siDouble(), 1e-4);
  }

  @Test
  void speedAtTheBowUndoesTheWay() {
    Length four = Length.parse("4 yd");
    Speed atBow = Speed.parse("300 ft/s");
    Speed reading = DRAG.at(four, atBow);
    assertTrue(atBow.isMoreThan(reading));
    assertEquals(atBow.siDouble(), DRAG.atBow(four, reading).orElseThrow().siDouble(), 1e-12);
    assertEquals(atBow.siDouble(), new Drag(0).at(four, atBow).siDouble(), 1e-12);
  }

  /** A shaft of 7 m for 7 mm: k = 1.2·1.8·π·49/(8·0.014), and exp(3k) is no number. */
  @Test
  void noSpeedAtTheBowFollowsFromAMisprint() {
    Speed reading = Speed.parse("280 ft/s");
    Drag tree = Drag.of(1.2, 1.8, Length.parse("7 m"), ARROW);
    assertEquals(Optional.empty(), tree.atBow(Length.parse("3 m"), reading));
    assertEquals(Optional.empty(), DRAG.atBow(Length.parse("3000 m"), reading));
    Drag beyondNumbers = Drag.of(1e300, 1e300, SHAFT, ARROW);
    assertEquals(Optional.empty(), beyondNumbers.atBow(Length.parse("3 m"), reading));
    // ln 2 / 0.1 per metre = 6.93 m: up to there the figures can be an arrow's
    assertTrue(new Drag(0.1).atBow(Length.parse("6.9 m"), reading).isPresent());
    assertTrue(new Drag(0.1).atBow(Length.parse("7 m"), reading).isEmpty());
  }

  @Test
  void refusesWhatMakesNoSense() {
    assertThrows(IllegalArgumentException.class, () -> new Drag(-1));
    assertThrows(IllegalArgumentException.class, () -> new Drag(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Drag.of(1.2, 1.5, SHAFT, Mass.parse("0 g")));
  }
}
