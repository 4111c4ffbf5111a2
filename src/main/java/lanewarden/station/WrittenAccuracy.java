package lanewarden.station;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.bow.Drag;
import lanewarden.chronograph.ShortTime;
import lanewarden.journal.Place;
import lanewarden.metrology.Alignment;
import lanewarden.metrology.Coverage;
import lanewarden.metrology.ErrorSource;
import lanewarden.metrology.ReadingUncertainty;
import lanewarden.quantity.Length;
import lanewarden.quantity.LengthUnit;
import lanewarden.quantity.Mass;
import lanewarden.quantity.MassUnit;
import lanewarden.quantity.Percent;
import lanewarden.quantity.QuantityException;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import lanewarden.written.Section;

/**
 * Reads the table {@code [accuracy]} of the station's settings: what is known of the instrument's
 * errors.
 *
 * <p>Each amount that is a "±" has a key beside it, ending in {@code _covers}, that says what it
 * means; an amount without one would be a guess of this program.
 */
final class WrittenAccuracy {
  static final String TABLE = "accuracy";
  static final String SPACING = "spacing";
  static final String SPACING_ERROR = "spacing_error";
  static final String CLOCK_RATE = "clock_rate";
  static final String GATE_JITTER = "gate_jitter";
  static final String CLOCK_TICK = "clock_tick";
  static final String DISPLAY_STEP = "display_step";
  static final String STATED = "stated";
  static final String ALIGNMENT = "alignment";
  static final String DISTANCE_ERROR = "distance_error";
  static final String COVERS = "_covers";

  /** What takes the spacing of the gates to make a speed of it. */
  private static final List<String> OVER_THE_SPACING =
      List.of(SPACING_ERROR, GATE_JITTER, CLOCK_TICK);

  /** What a statement for the whole instrument covers already. */
  private static final List<String> OF_GATES_AND_CLOCK =
      List.of(SPACING, SPACING_ERROR, CLOCK_RATE, GATE_JITTER, CLOCK_TICK);

  /**
   * Lighter than most that are shot, since a light arrow slows most: what is counted for the
   * distance is rather too much. Common practice: 5 gr/lbf at 60 lbf.
   */
  private static final Mass LIGHT_ARROW = Mass.of("300", MassUnit.GRAIN);

  private static final Length NEAREST_GATES = Length.of("1", LengthUnit.CENTIMETRE);
  private static final Length FARTHEST_GATES = Length.of("20", LengthUnit.METRE);
  private static final Percent MOST_RATE = Percent.parse("10 %");
  private static final Speed MOST_STEP = Speed.of("30", SpeedUnit.FEET_PER_SECOND);
  private static final Duration LONGEST = Duration.ofMillis(1);

  private static final String LENGTH = "a length above zero, such as \"0.3 mm\"";
  private static final String SHARE = "a share above zero, such as \"0.01 %\"";
  private static final String TIME = "a time such as \"0.5 µs\"";
  private static final String STEP = "a speed above zero, such as \"0.1 ft/s\"";
  private static final String ACCURACY = "a share or a speed above zero, such as \"0.5 %\"";
  private static final String ANGLE = "an angle above zero, such as \"1.5°\"";
  private static final String MEANING =
      "what the ± means, \"limits\" or a coverage factor such as \"k = 2\"";
  private static final Pattern DEGREES = Pattern.compile("([0-9]{1,2}(?:\\.[0-9]{1,4})?)\\s*°");

  private final Section section;
  private final List<ErrorSource> sources = new ArrayList<>();

  private WrittenAccuracy(Section section) {
    this.section = section;
  }

  /**
   * What the settings say of the instrument's errors; empty if they have no such table, or nothing
   * right in it.
   *
   * @param place empty if the settings have none
   */
  static Optional<ReadingUncertainty> read(Section root, Optional<Place> place) {
    Optional<Section> table = root.has(TABLE) ? root.section(TABLE) : Optional.empty();
    if (table.isEmpty()) {
      return Optional.empty();
    }
    WrittenAccuracy written = new WrittenAccuracy(table.get());
    written.read(place);
    // Whatever stands in it and is not known has a fault of its own
    if (table.get().isEmpty()) {
      root.fault(
          TABLE,
          "at least one thing known of the instrument's errors",
          "none",
          "add display_step or what the maker states, or take the section out");
    }
    return written.sources.isEmpty()
        ? Optional.empty()
        : Optional.of(new ReadingUncertainty(written.sources));
  }

  private void read(Optional<Place> place) {
    if (section.has(STATED)) {
      OF_GATES_AND_CLOCK.forEach(
          key -> {
            section.leftOut(key, STATED + " covers it");
            section.leftOut(key + COVERS, STATED + " covers it");
          });
    } else {
      gatesAndClock();
    }
    covered(
        STATED,
        ACCURACY,
        text -> above(Bounds.deviation(text), d -> d.siAt(BigDecimal.ONE), text, ACCURACY),
        ErrorSource.StatedAccuracy::new);
    section
        .optionalValue(
            DISPLAY_STEP,
            STEP,
            text ->
                Bounds.upTo(MOST_STEP, above(Speed.parse(text), Speed::value, text, STEP), text))
        .ifPresent(step -> sources.add(new ErrorSource.DisplayStep(step)));
    section
        .optionalValue(ALIGNMENT, ANGLE, WrittenAccuracy::angle)
        .ifPresent(angle -> sources.add(new ErrorSource.CrookedFlight(angle)));
    distance(place);
    section.closed();
  }

  private void gatesAndClock() {
    covered(
        CLOCK_RATE,
        SHARE,
        text ->
            Bounds.upTo(MOST_RATE, above(Percent.parse(text), Percent::value, text, SHARE), text),
        ErrorSource.ClockRate::new);
    if (OVER_THE_SPACING.stream().noneMatch(section::has)) {
      section.leftOut(SPACING, "none of " + String.join(", ", OVER_THE_SPACING) + " needs it");
      OVER_THE_SPACING.forEach(key -> section.leftOut(key + COVERS, "there is no " + key));
      return;
    }
    Optional<Length> spacing =
        section.value(
            SPACING,
            LENGTH,
            text -> Bounds.between(NEAREST_GATES, FARTHEST_GATES, length(text), text));
    if (spacing.isPresent()) {
      overTheSpacing(spacing.get());
    } else {
      OVER_THE_SPACING.forEach(key -> section.has(key + COVERS));
    }
  }

  private void overTheSpacing(Length spacing) {
    covered(
        SPACING_ERROR,
        LENGTH,
        text -> lessThan(spacing, SPACING, text),
        (error, covers) -> new ErrorSource.Spacing(spacing, error, covers));
    covered(
        GATE_JITTER,
        TIME,
        WrittenAccuracy::time,
        (jitter, covers) -> new ErrorSource.GateJitter(spacing, jitter, covers));
    section
        .optionalValue(CLOCK_TICK, TIME, WrittenAccuracy::time)
        .ifPresent(tick -> sources.add(new ErrorSource.ClockTick(spacing, tick)));
  }

  private void distance(Optional<Place> place) {
    if (section.has(DISTANCE_ERROR) && place.isEmpty()) {
      section.has(DISTANCE_ERROR + COVERS);
      section.fault(
          DISTANCE_ERROR,
          "a section [place] beside it, which says how the arrow slows on its way",
          "none that can be read",
          "add [place] with the distance, or take " + DISTANCE_ERROR + " out");
      return;
    }
    covered(
        DISTANCE_ERROR,
        LENGTH,
        text -> lessThan(place.orElseThrow().distance(), "the distance", text),
        (error, covers) ->
            new ErrorSource.Distance(
                error, drag(place.orElseThrow(), LIGHT_ARROW).perMetre(), covers));
  }

  /** How an arrow of this mass slows at this place. */
  static Drag drag(Place place, Mass arrow) {
    return Drag.of(
        place.airDensity().doubleValue(),
        place.dragCoefficient().doubleValue(),
        place.shaftDiameter(),
        arrow);
  }

  private <T> void covered(
      String key,
      String expected,
      Function<String, T> parser,
      BiFunction<T, Coverage, ErrorSource> source) {
    if (!section.has(key)) {
      section.leftOut(key + COVERS, "there is no " + key);
      return;
    }
    Optional<T> amount = section.optionalValue(key, expected, parser);
    Optional<Coverage> covers = section.value(key + COVERS, MEANING, Coverage::parse);
    amount.ifPresent(a -> covers.ifPresent(c -> sources.add(source.apply(a, c))));
  }

  private static Length length(String text) {
    return above(Length.parse(text), Length::value, text, LENGTH);
  }

  /** An error as large as what it is the error of would leave no measurement at all. */
  private static Length lessThan(Length whole, String name, String text) {
    Length error = length(text);
    if (error.si().compareTo(whole.si()) >= 0) {
      throw new QuantityException(
          "a length less than " + name + ", " + whole,
          "\"" + text + "\"",
          "check both figures and their units: it is how far " + name + " may be off");
    }
    return error;
  }

  private static <T> T above(T value, Function<T, BigDecimal> size, String text, String expected) {
    if (size.apply(value).signum() == 0) {
      throw new QuantityException(
          expected, "\"" + text + "\"", "write how large it can be, or take the line out");
    }
    return value;
  }

  private static Duration time(String text) {
    BigDecimal nanos = ShortTime.seconds(text, TIME).movePointRight(9).stripTrailingZeros();
    if (nanos.scale() > 0) {
      throw new QuantityException(
          "a time of whole nanoseconds", "\"" + text + "\"", "round it up to a whole one");
    }
    Duration time = Duration.ofNanos(nanos.longValueExact());
    if (time.compareTo(LONGEST) > 0) {
      throw new QuantityException(
          "at most 1 ms", "\"" + text + "\"", "check the figure, its decimal point and its unit");
    }
    return time;
  }

  private static Alignment angle(String text) {
    Matcher written = DEGREES.matcher(text.strip());
    double degrees = written.matches() ? Double.parseDouble(written.group(1)) : 0;
    if (degrees == 0 || degrees > 45) {
      throw new QuantityException(
          ANGLE, "\"" + text + "\"", "write the largest angle in degrees, up to 45°");
    }
    return new Alignment(degrees);
  }
}
