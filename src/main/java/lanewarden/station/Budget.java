package lanewarden.station;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import lanewarden.metrology.ReadingUncertainty;
import lanewarden.metrology.UncertaintyBudget;
import lanewarden.quantity.QuantityException;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * What makes a reading of one speed uncertain, and by how much, in the unit of that speed. The
 * figures are rounded to four decimals for the eye.
 *
 * @param at the speed
 * @param influences each of them, in the order of the settings' keys
 * @param standard combined standard uncertainty
 * @param degrees effective degrees of freedom, whole; empty where there are infinitely many
 * @param factor coverage factor at {@link #LEVEL}, to two decimals
 * @param expanded uncertainty at that level
 */
public record Budget(
    Speed at,
    List<Influence> influences,
    Speed standard,
    OptionalLong degrees,
    BigDecimal factor,
    Speed expanded) {

  /** The coverage probability of the expanded uncertainty. */
  public static final double LEVEL = 0.95;

  private static final int DECIMALS = 4;
  private static final int FACTOR_DECIMALS = 2;

  /**
   * One influence.
   *
   * @param standard its standard uncertainty
   * @param degrees of freedom; empty where there are infinitely many
   * @param words where the figure comes from
   */
  public record Influence(String name, Speed standard, OptionalLong degrees, String words) {}

  static Budget of(ReadingUncertainty uncertainty, Speed at) {
    UncertaintyBudget budget = uncertainty.at(at);
    return new Budget(
        at,
        budget.influences().stream()
            .map(
                i ->
                    new Influence(
                        i.name(), shown(i.standard(), at.unit()), degrees(i.degrees()), i.words()))
            .toList(),
        shown(budget.combined(), at.unit()),
        degrees(budget.wholeDegrees()),
        BigDecimal.valueOf(budget.coverageFactor(LEVEL))
            .setScale(FACTOR_DECIMALS, RoundingMode.HALF_EVEN),
        shown(budget.expanded(LEVEL), at.unit()));
  }

  /**
   * A speed to work it out at, as it was typed.
   *
   * @throws StationException if it is none, has no unit or is zero
   */
  public static Speed speed(String typed) throws StationException {
    try {
      Speed read = Speed.parse(typed);
      if (read.value().signum() > 0) {
        return read;
      }
    } catch (QuantityException e) {
      throw noSpeed(
          "The speed must be " + e.expected() + ", not " + e.found() + ".", e.mend().toString());
    }
    throw noSpeed("The speed is zero.", "give the speed of an arrow");
  }

  private static StationException noSpeed(String why, String mend) {
    return StationException.misstep(
        "SPEED", "Nothing was worked out.", why, "Mend it: " + mend + ".");
  }

  /**
   * The budget that the settings at a path amount to.
   *
   * @param settings a {@code station.toml}, or the event folder that holds it
   * @throws StationException if the file cannot be read, or says nothing of accuracy
   */
  public static Budget of(Path settings, Speed at) throws StationException {
    return of(
        EventFolder.settingsAt(settings)
            .accuracy()
            .orElseThrow(
                () ->
                    StationException.misstep(
                        "NO-ACCURACY",
                        "Nothing was worked out.",
                        settings + " says nothing of the instrument's accuracy.",
                        "Add a section [accuracy]; config/station.toml shows every key.")),
        at);
  }

  /** Rounded to four decimals: finer than any display. */
  static Speed shown(double metresPerSecond, SpeedUnit unit) {
    return Speed.ofSi(metresPerSecond, SpeedUnit.METRES_PER_SECOND).to(unit, DECIMALS);
  }

  private static OptionalLong degrees(double degrees) {
    return Double.isInfinite(degrees)
        ? OptionalLong.empty()
        : OptionalLong.of((long) Math.floor(degrees));
  }

  /** A line for each influence, and one for what they amount to. */
  public List<String> inWords() {
    List<String> lines = new ArrayList<>();
    influences.forEach(i -> lines.add(i.name() + ": " + i.standard() + "; " + i.words()));
    lines.add(total());
    return lines;
  }

  /** What they amount to, in a line. */
  public String total() {
    return String.format(
        Locale.ROOT,
        "combined: standard uncertainty %s at %s; expanded %s at %.0f %% (k = %s, %s degrees of freedom)",
        standard,
        at,
        expanded,
        100 * LEVEL,
        factor.toPlainString(),
        inWords(degrees));
  }

  /** Degrees of freedom for people. */
  public static String inWords(OptionalLong degrees) {
    return degrees.isPresent() ? String.valueOf(degrees.getAsLong()) : "infinite";
  }
}
