package lanewarden.bow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import lanewarden.quantity.EnergyUnit;
import lanewarden.quantity.Mass;
import lanewarden.quantity.MassUnit;
import lanewarden.quantity.MomentumUnit;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArrowTest {

  /** From m[gr]·v²[ft/s]/450436.68, exact SI constants; prints that use 450800 say 32.054. */
  @Test
  void energyOfFiveHundredGrainsAtOneHundredSeventyFeet() {
    assertEquals("32.0800", energy("500", "170").toPlainString());
  }

  /** From m[gr]·v/225218.34, exact SI constants; printed elsewhere rounded to .63. */
  @Test
  void momentumOfFourHundredEightyFiveGrainsAtTwoHundredNinetyTwoFeet() {
    Arrow arrow = new Arrow(Mass.of("485", MassUnit.GRAIN));
    Speed speed = Speed.of("292", SpeedUnit.FEET_PER_SECOND);
    assertEquals(
        "0.628812 slug·ft/s",
        arrow.momentumAt(speed).to(MomentumUnit.SLUG_FOOT_PER_SECOND, 6).toString());
  }

  /** Own arithmetic: 165 J lies between 370 and 371 ft/s for 400 gr. */
  @ParameterizedTest
  @CsvSource({"370, 164.8", "371, 165.7"})
  void energyAroundTheJouleLimit(String feetPerSecond, String joules) {
    Arrow arrow = new Arrow(Mass.of("400", MassUnit.GRAIN));
    Speed speed = Speed.of(feetPerSecond, SpeedUnit.FEET_PER_SECOND);
    assertEquals(joules + " J", arrow.kineticEnergyAt(speed).to(EnergyUnit.JOULE, 1).toString());
  }

  private static BigDecimal energy(String grains, String feetPerSecond) {
    return new Arrow(Mass.of(grains, MassUnit.GRAIN))
        .kineticEnergyAt(Speed.of(feetPerSecond, SpeedUnit.FEET_PER_SECOND))
        .to(EnergyUnit.FOOT_POUND, 4)
        .value()
        .setScale(4, RoundingMode.UNNECESSARY);
  }
}
