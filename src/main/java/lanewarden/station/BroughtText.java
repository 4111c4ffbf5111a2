package lanewarden.station;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lanewarden.bench.Brought;
import lanewarden.bench.ShotScatter;
import lanewarden.bow.DrawCurve;
import lanewarden.bow.MeasuredArrow;
import lanewarden.bow.MeasuredBow;
import lanewarden.bow.VirtualMassRange;
import lanewarden.metrology.Estimate;
import lanewarden.metrology.Mixture;
import lanewarden.quantity.Force;
import lanewarden.quantity.ForceUnit;
import lanewarden.quantity.Length;
import lanewarden.quantity.LengthUnit;
import lanewarden.quantity.Mass;
import lanewarden.quantity.QuantityException;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import lanewarden.rules.SetUp;

/**
 * A set-up as an archer types it before the event; figures without a unit are in grains, ft/s, lbf
 * and inches.
 *
 * @param bowAndArrow the arrow's mass, and what is known of the bow
 * @param speed expected of it on average; blank where shots are given
 * @param uncertainty standard uncertainty of that speed
 * @param shots a mass, a colon and its readings, for example {@code 377.5 gr: 290 291 289 ft/s};
 *     masses may differ from the arrow's
 * @param curve the force-draw curve, for example {@code 7 in 0 lbf, 9 in 22 lbf, 28 in 60 lbf};
 *     blank where it was not measured
 */
public record BroughtText(
    SetUpText bowAndArrow, String speed, String uncertainty, List<String> shots, String curve) {
  private static final String CODE = "BROUGHT-UNREADABLE";
  private static final String NOT_RECKONED = "Nothing was reckoned for this set-up.";

  private static final Pattern SHOTS =
      Pattern.compile("([^:]+):\\s*([0-9., ]+?)\\s*([a-zA-Z]+/[a-zA-Z]+)?");

  private static final Pattern POINT =
      Pattern.compile("([0-9.]+\\s*[a-z]*)\\s+([0-9.]+\\s*[a-zA-Z#]*)");

  /** Copies the list. */
  public BroughtText {
    shots = List.copyOf(shots);
  }

  /**
   * What was typed.
   *
   * @throws StationException if a figure cannot be read, or there is no arrow mass or no speed
   */
  Brought read() throws StationException {
    SetUp setUp = bowAndArrow.stated(0, SetUp.unknown()).setUp();
    Mass arrow = setUp.arrowMass();
    if (arrow == null) {
      throw refused(
          "The arrow's mass is not given.", "Weigh the arrow; everything rests on its mass.");
    }
    if (speed.isBlank() == shots.isEmpty()) {
      throw refused(
          "Either a speed that is expected or shots are to be given, and not both.",
          "Give --speed \"290 ft/s\", or --shots \"350 gr: 290 291 289 ft/s\" for each arrow mass.");
    }
    try {
      Optional<DrawCurve> measured = curve.isBlank() ? Optional.empty() : Optional.of(drawn());
      if (shots.isEmpty()) {
        return new Brought(arrow, setUp, expected(), Optional.empty(), measured);
      }
      MeasuredBow bow =
          MeasuredBow.of(
              shots.stream().map(BroughtText::measured).toList(), VirtualMassRange.COMPOUND);
      return new Brought(arrow, setUp, bow.speedOf(arrow), Optional.of(bow), measured);
    } catch (QuantityException e) {
      throw refused(e);
    } catch (IllegalArgumentException e) {
      throw refused("The figures make no sense: " + e.getMessage() + ".", "Look at them again.");
    }
  }

  private Mixture expected() throws StationException {
    return Mixture.of(new Estimate(speed(speed).siDouble(), speed(uncertainty).siDouble()));
  }

  /**
   * A speed as an archer types it.
   *
   * @throws StationException if it is none
   */
  static Speed speed(String typed) throws StationException {
    try {
      return Speed.parse(typed, SpeedUnit.FEET_PER_SECOND);
    } catch (QuantityException e) {
      throw refused(e);
    }
  }

  private static MeasuredArrow measured(String written) {
    Matcher parts = SHOTS.matcher(written.strip());
    if (!parts.matches()) {
      throw new QuantityException(
          Sentence.of(FormTold.MASS_AND_READINGS),
          "\"" + written + "\"",
          Sentence.of(FormTold.MASS_FIRST));
    }
    SpeedUnit unit =
        parts.group(3) == null
            ? SpeedUnit.FEET_PER_SECOND
            : Speed.parse("1 " + parts.group(3)).unit();
    List<Speed> readings =
        Stream.of(parts.group(2).strip().split("[, ]+", -1))
            .map(digits -> Speed.of(digits, unit))
            .toList();
    return new MeasuredArrow(
        TypedArrow.mass(parts.group(1)), new ShotScatter(readings, Optional.empty()).mean());
  }

  private DrawCurve drawn() {
    List<DrawCurve.Point> points = new ArrayList<>();
    for (String point : curve.split(",", -1)) {
      Matcher parts = POINT.matcher(point.strip());
      if (!parts.matches()) {
        throw new QuantityException(
            Sentence.of(FormTold.DRAW_AND_FORCE),
            "\"" + point.strip() + "\"",
            Sentence.of(FormTold.EACH_POINT));
      }
      points.add(
          new DrawCurve.Point(
              Length.parse(parts.group(1), LengthUnit.INCH),
              Force.parse(parts.group(2), ForceUnit.POUND_FORCE)));
    }
    return new DrawCurve(points);
  }

  private static StationException refused(QuantityException fault) {
    return StationException.misstep(
        CODE,
        NOT_RECKONED,
        "Expected was " + fault.expected() + ", found " + fault.found() + ".",
        "For this figure: " + fault.mend() + ".",
        FormTold.expected(fault.expected(), fault.found(), fault.mend()));
  }

  private static StationException refused(String why, String remedy) {
    return StationException.misstep(CODE, NOT_RECKONED, why, remedy);
  }
}
