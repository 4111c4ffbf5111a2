package lanewarden.station;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.journal.Place;
import lanewarden.quantity.Length;
import lanewarden.quantity.LengthUnit;
import lanewarden.quantity.QuantityException;
import lanewarden.written.Section;

/**
 * Reads and writes the table {@code [place]} of the station's settings: how far the instrument is
 * from the bow, and what slows the arrow on the way. Only the distance must be there.
 */
final class WrittenPlace {
  static final String TABLE = "place";

  /** Common practice: shafts of 5 to 9.3 mm. */
  private static final Length USUAL_SHAFT = Length.of("7", LengthUnit.MILLIMETRE);

  /** The middle of 1.56 to 2.05 (Ortiz et al. 2020, Proceedings 49(1) 56), see {@code bow.Drag}. */
  private static final BigDecimal USUAL_DRAG = new BigDecimal("1.8");

  /** Near sea level at 20 °C, kg/m³. */
  private static final BigDecimal USUAL_AIR = new BigDecimal("1.2");

  private static final Length FARTHEST = Length.of("100", LengthUnit.METRE);
  private static final Length THINNEST = Length.of("3", LengthUnit.MILLIMETRE);
  private static final Length THICKEST = Length.of("15", LengthUnit.MILLIMETRE);
  private static final BigDecimal LEAST_DRAG = new BigDecimal("0.1");
  private static final BigDecimal MOST_DRAG = new BigDecimal("10");

  /** Above 0.5 kg/m³ is all air that archers breathe: about 1.2 at the sea, 0.7 at 5,000 m. */
  private static final BigDecimal THIN_AIR = new BigDecimal("0.5");

  private static final BigDecimal THICK_AIR = new BigDecimal("1.5");

  private static final String DISTANCE = "a length above zero, such as \"3 m\"";
  private static final String DIAMETER = "a length above zero, such as \"7 mm\"";
  private static final String COEFFICIENT = "a number above zero, such as \"1.8\"";
  private static final String DENSITY = "a density such as \"1.2 kg/m³\"";
  private static final Pattern NUMBER = Pattern.compile("([0-9]{1,3}(?:\\.[0-9]{1,6})?)");
  private static final Pattern KILOGRAMS =
      Pattern.compile("([0-9]{1,3}(?:\\.[0-9]{1,6})?)\\s*kg/m(?:³|3|\\^3)");

  private WrittenPlace() {}

  /** Where the instrument stands; empty if the settings have no such table, or a faulty one. */
  static Optional<Place> read(Section root) {
    Optional<Section> table = root.has(TABLE) ? root.section(TABLE) : Optional.empty();
    return table.flatMap(WrittenPlace::place);
  }

  private static Optional<Place> place(Section section) {
    Optional<Length> distance =
        section.value(
            "distance", DISTANCE, text -> Bounds.upTo(FARTHEST, length(text, DISTANCE), text));
    Optional<Length> shaft =
        section.optionalValue(
            "shaft_diameter",
            DIAMETER,
            text -> Bounds.between(THINNEST, THICKEST, length(text, DIAMETER), text));
    Optional<BigDecimal> drag =
        section.optionalValue(
            "drag_coefficient",
            COEFFICIENT,
            text -> Bounds.between(LEAST_DRAG, MOST_DRAG, number(NUMBER, text, COEFFICIENT), text));
    Optional<BigDecimal> air =
        section.optionalValue(
            "air_density",
            DENSITY,
            text -> Bounds.between(THIN_AIR, THICK_AIR, number(KILOGRAMS, text, DENSITY), text));
    section.closed();
    return distance.map(
        d ->
            new Place(
                d, shaft.orElse(USUAL_SHAFT), drag.orElse(USUAL_DRAG), air.orElse(USUAL_AIR)));
  }

  private static Length length(String text, String expected) {
    Length length = Length.parse(text);
    if (length.value().signum() == 0) {
      throw new QuantityException(expected, "\"" + text + "\"", "measure it");
    }
    return length;
  }

  private static BigDecimal number(Pattern pattern, String text, String expected) {
    Matcher written = pattern.matcher(text.strip());
    BigDecimal number = written.matches() ? new BigDecimal(written.group(1)) : BigDecimal.ZERO;
    if (number.signum() == 0) {
      throw new QuantityException(
          expected, "\"" + text + "\"", "write digits with a decimal point, and the unit if any");
    }
    return number;
  }

  /** The table, so that {@link #read} gives an equal place back. */
  static String toToml(Place place) {
    return "\n["
        + TABLE
        + "]\ndistance = \""
        + place.distance()
        + "\"\nshaft_diameter = \""
        + place.shaftDiameter()
        + "\"\ndrag_coefficient = \""
        + place.dragCoefficient().toPlainString()
        + "\"\nair_density = \""
        + place.airDensity().toPlainString()
        + " kg/m³\"\n";
  }
}
