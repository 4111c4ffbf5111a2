package lanewarden.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.stream.Stream;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import systems.uom.common.USCustomary;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Every factor against JSR-385 (Indriya and its systems of units). */
class UnitReferenceTest {

  static Stream<Arguments> units() {
    Unit<?> pound = USCustomary.POUND;
    Unit<?> foot = USCustomary.FOOT;
    Unit<?> poundForce = pound.multiply(Units.METRE).divide(Units.SECOND.pow(2)).multiply(9.80665);
    return Stream.of(
        Arguments.of(SpeedUnit.FEET_PER_SECOND, foot.divide(Units.SECOND), Units.METRE_PER_SECOND),
        Arguments.of(SpeedUnit.METRES_PER_SECOND, Units.METRE_PER_SECOND, Units.METRE_PER_SECOND),
        Arguments.of(MassUnit.GRAIN, pound.divide(7000), Units.KILOGRAM),
        Arguments.of(MassUnit.GRAM, Units.GRAM, Units.KILOGRAM),
        Arguments.of(MassUnit.KILOGRAM, Units.KILOGRAM, Units.KILOGRAM),
        Arguments.of(MassUnit.POUND, pound, Units.KILOGRAM),
        Arguments.of(ForceUnit.NEWTON, Units.NEWTON, Units.NEWTON),
        Arguments.of(ForceUnit.POUND_FORCE, poundForce, Units.NEWTON),
        Arguments.of(LengthUnit.METRE, Units.METRE, Units.METRE),
        Arguments.of(LengthUnit.MILLIMETRE, Units.METRE.divide(1000), Units.METRE),
        Arguments.of(LengthUnit.INCH, USCustomary.INCH, Units.METRE),
        Arguments.of(LengthUnit.FOOT, foot, Units.METRE),
        Arguments.of(LengthUnit.YARD, USCustomary.YARD, Units.METRE),
        Arguments.of(EnergyUnit.JOULE, Units.JOULE, Units.JOULE),
        Arguments.of(EnergyUnit.FOOT_POUND, poundForce.multiply(foot), Units.JOULE),
        Arguments.of(
            MomentumUnit.KILOGRAM_METRE_PER_SECOND,
            Units.NEWTON.multiply(Units.SECOND),
            Units.NEWTON.multiply(Units.SECOND)),
        Arguments.of(
            MomentumUnit.SLUG_FOOT_PER_SECOND,
            poundForce.multiply(Units.SECOND),
            Units.NEWTON.multiply(Units.SECOND)));
  }

  @ParameterizedTest
  @MethodSource("units")
  @SuppressWarnings({"unchecked", "rawtypes"})
  void factorAgreesWithTheReference(lanewarden.quantity.Unit ours, Unit theirs, Unit si) {
    Number reference = Quantities.getQuantity(new BigDecimal("1"), theirs).to(si).getValue();
    double expected = reference.doubleValue();
    assertEquals(expected, ours.inSi().doubleValue(), Math.abs(expected) * 1e-15);
  }

  /** SI definitions (exact): pound 0.45359237 kg, so a grain is a seven-thousandth of it. */
  @Test
  void sevenThousandGrainsAreOnePoundExactly() {
    assertEquals(0, Mass.of("7000", MassUnit.GRAIN).compareTo(Mass.of("1", MassUnit.POUND)));
  }

  /** SI definitions (exact): lbf is the pound times standard gravity 9.80665 m/s². */
  @Test
  void poundForceIsPoundTimesStandardGravityExactly() {
    assertEquals(
        0,
        MassUnit.POUND
            .inSi()
            .multiply(new BigDecimal("9.80665"))
            .compareTo(ForceUnit.POUND_FORCE.inSi()));
    assertEquals(
        0,
        ForceUnit.POUND_FORCE
            .inSi()
            .multiply(LengthUnit.FOOT.inSi())
            .compareTo(EnergyUnit.FOOT_POUND.inSi()));
    assertEquals(
        0, ForceUnit.POUND_FORCE.inSi().compareTo(MomentumUnit.SLUG_FOOT_PER_SECOND.inSi()));
  }
}
