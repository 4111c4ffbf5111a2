package lanewarden.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Set;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import lanewarden.bow.Arrow;
import lanewarden.quantity.MassUnit;
import lanewarden.quantity.SpeedUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import systems.uom.common.USCustomary;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Verdicts on an energy limit against ½mv² as JSR-385 (Indriya and its systems) computes it. */
class EnergyReferenceTest {
  private static final Rule BELOW_165_JOULE =
      Cases.division(
              """
              limit = "none"
              energy = "165 J"
              energy-bound = "below"
              decide = "highest"
              counted = 1
              shots = 1
              voids = 0
              rechecks = 1
              """)
          .rule();

  /** A grain is a seven-thousandth of a pound. */
  private static double joules(double grains, double feetPerSecond) {
    Quantity<Mass> mass = Quantities.getQuantity(grains, USCustomary.POUND.divide(7000));
    Unit<Speed> feet = USCustomary.FOOT.divide(Units.SECOND).asType(Speed.class);
    Quantity<Speed> speed = Quantities.getQuantity(feetPerSecond, feet);
    Quantity<Energy> energy =
        mass.multiply(speed).multiply(speed).divide(2).asType(Energy.class).to(Units.JOULE);
    return energy.getValue().doubleValue();
  }

  private static Verdict verdict(String grains, String feetPerSecond) {
    SetUp arrow = new SetUp(lanewarden.quantity.Mass.of(grains, MassUnit.GRAIN), null, null);
    return BELOW_165_JOULE.judge(arrow, Set.of(), Cases.shots(feetPerSecond));
  }

  /** HDH-IAA 2022 (seen): kinetic energy below 165 J; the figures for 400 gr are own arithmetic. */
  @ParameterizedTest
  @CsvSource({"370, 164.8, within", "371, 165.7, over"})
  void crossbowClassBelow165Joule(String speed, double joules, String outcome) {
    double reference = joules(400, Double.parseDouble(speed));
    assertEquals(joules, reference, 0.05);
    assertEquals(outcome, reference < 165 ? "within" : "over");
    assertEquals(outcome, verdict("400", speed).word());
  }

  static IntStream grains() {
    return IntStream.iterate(250, mass -> mass <= 700, mass -> mass + 25);
  }

  @ParameterizedTest
  @MethodSource("grains")
  void everyVerdictIsThatOfTheReference(int grains) {
    for (int speed = 150; speed <= 500; speed++) {
      String outcome = joules(grains, speed) < 165 ? "within" : "over";
      assertEquals(outcome, verdict("" + grains, "" + speed).word(), grains + " gr, " + speed);
    }
  }

  @Test
  void energyItselfAgreesToTwelveDigits() {
    Arrow arrow = new Arrow(lanewarden.quantity.Mass.of("400", MassUnit.GRAIN));
    lanewarden.quantity.Speed speed =
        lanewarden.quantity.Speed.of(new BigDecimal("370"), SpeedUnit.FEET_PER_SECOND);
    double ours = arrow.kineticEnergyAt(speed).siDouble();
    assertTrue(Math.abs(ours / joules(400, 370) - 1) < 1e-12, () -> "ours " + ours);
  }
}
