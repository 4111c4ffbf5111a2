package lanewarden.bow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
import lanewarden.quantity.LengthUnit;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.junit.jupiter.api.Test;

class BowLimitTest {
  private static final BowLimit SIXTY =
      new BowLimit(Force.parse("60 lbf"), Length.parse("29 in"), Length.parse("7 in"));
  private static final Arrow LIGHT = new Arrow(Mass.parse("350 gr"));

  /** Common practice: 60 lbf, 29 in, 7 in, 350 gr: 390 ft/s cannot be, 301 is ordinary. */
  @Test
  void misreadIsToldFromAFastArrow() {
    assertTrue(SIXTY.isImpossible(Speed.parse("390 ft/s"), LIGHT));
    assertFalse(SIXTY.isImpossible(Speed.parse("301 ft/s"), LIGHT));
    assertEquals(
        "390 ft/s is impossible: 118 ft·lbf of 101 ft·lbf available",
        SIXTY.sentence(Speed.parse("390 ft/s"), LIGHT).toString());
    assertEquals(
        "301 ft/s is possible: 70 ft·lbf of 101 ft·lbf available",
        SIXTY.sentence(Speed.parse("301 ft/s"), LIGHT).toString());
  }

  /** Own arithmetic: 350 · 361² / 450436.68 = 101.263 ft·lbf of 101.25, shown as 101.2. */
  @Test
  void figuresAreShownAsFarAsTheyDiffer() {
    assertEquals(
        "361 ft/s is impossible: 101.3 ft·lbf of 101.2 ft·lbf available",
        SIXTY.sentence(Speed.parse("361 ft/s"), LIGHT).toString());
    assertEquals(
        "360 ft/s is possible: 100.7 ft·lbf of 101.2 ft·lbf available",
        SIXTY.sentence(Speed.parse("360 ft/s"), LIGHT).toString());
  }

  /** AMO FP-3 (2000): pivot-point draw 26¼ in is a draw length of 28 in. */
  @Test
  void powerStrokeBeginsAtThePivotPointDraw() {
    BowLimit bow = new BowLimit(Force.parse("60 lbf"), Length.parse("28 in"), Length.parse("0 in"));
    assertEquals("26.25 in", bow.powerStroke().to(LengthUnit.INCH, 2).toString());
    assertEquals("20.25 in", SIXTY.powerStroke().to(LengthUnit.INCH, 2).toString());
  }

  /** Own arithmetic: 60 lbf over 20.25 in is 101.25 ft·lbf. */
  @Test
  void mostEnergyIsForceTimesWay() {
    BigDecimal footPounds = new BigDecimal("101.25").multiply(new BigDecimal("1.3558179483314004"));
    assertEquals(0, footPounds.compareTo(SIXTY.mostEnergy().si()));
  }

  /** Own arithmetic: √(101.25 · 450436.68 / 350) = 360.977 ft/s, to a digit either side. */
  @Test
  void fastestIsWhereTheImpossibleBegins() {
    Speed fastest = SIXTY.fastest(LIGHT);
    assertEquals(360.977, fastest.to(SpeedUnit.FEET_PER_SECOND, 3).value().doubleValue(), 0.002);
    BigDecimal value = fastest.value().setScale(6, RoundingMode.FLOOR);
    assertFalse(SIXTY.isImpossible(Speed.of(value, SpeedUnit.METRES_PER_SECOND), LIGHT));
    assertTrue(
        SIXTY.isImpossible(
            Speed.of(value.add(new BigDecimal("0.000002")), SpeedUnit.METRES_PER_SECOND), LIGHT));
  }

  /** 200 N over 0.5 m is 100 J; an arrow of 20 g has exactly that at 100 m/s. */
  @Test
  void exactlyAllTheEnergyIsNotImpossible() {
    BowLimit bow =
        new BowLimit(Force.parse("200 N"), Length.parse("0.74445 m"), Length.parse("0.2 m"));
    Arrow arrow = new Arrow(Mass.parse("20 g"));
    assertEquals("0.5", bow.powerStroke().value().stripTrailingZeros().toPlainString());
    assertFalse(bow.isImpossible(Speed.parse("100 m/s"), arrow));
    assertTrue(bow.isImpossible(Speed.parse("100.0000000001 m/s"), arrow));
  }

  @Test
  void heavierArrowIsNeverFaster() {
    double before = Double.POSITIVE_INFINITY;
    for (int grains = 250; grains < 700; grains += 25) {
      double fastest = SIXTY.fastest(new Arrow(Mass.parse(grains + " gr"))).siDouble();
      assertTrue(fastest < before);
      before = fastest;
    }
  }

  @Test
  void refusesBowsThatCannotBe() {
    Length seven = Length.parse("7 in");
    Force sixty = Force.parse("60 lbf");
    assertThrows(
        IllegalArgumentException.class,
        () -> new BowLimit(Force.parse("0 lbf"), Length.parse("29 in"), seven));
    assertThrows(
        IllegalArgumentException.class, () -> new BowLimit(sixty, Length.parse("8.75 in"), seven));
    assertThrows(IllegalArgumentException.class, () -> new BowLimit(sixty, seven, seven));
    assertThrows(
        IllegalArgumentException.class, () -> SIXTY.fastest(new Arrow(Mass.parse("0 gr"))));
  }
}
