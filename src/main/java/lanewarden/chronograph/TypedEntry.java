package lanewarden.chronograph;

import java.math.BigDecimal;
import java.time.Clock;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * A reading typed by the official from the instrument's display, always marked as typed.
 *
 * <p>What is typed is checked like a line of an instrument: a number, with a decimal point and an
 * optional unit. A comma is refused, because 300,1 could mean either of two speeds. Holds no state.
 */
public final class TypedEntry {
  private static final String NAME = "Typed by the official";
  private static final int LONGEST = 40;
  private static final SentencePattern PATTERN =
      SentencePattern.parse(
          "(?<speed>[-+0-9.][-+0-9.eE]*|(?i:[-+]?(?:nan|n?inf|infinity)))\\s*(?<unit>[^\\s0-9].*)?");
  private static final Pattern BARE = Pattern.compile("[0-9]{1,12}(\\.[0-9]{1,12})?");

  /** As many decimals as two units a factor of three apart need. */
  private static final int DECIMALS = 1;

  private static final Map<String, SpeedUnit> UNITS =
      Map.of(
          "ft/s", SpeedUnit.FEET_PER_SECOND,
          "fps", SpeedUnit.FEET_PER_SECOND,
          "m/s", SpeedUnit.METRES_PER_SECOND);

  private final SpeedRange plausible;
  private final Clock clock;

  /**
   * @param plausible the speeds that may be an arrow at all
   * @param clock gives the time of readings
   */
  public TypedEntry(SpeedRange plausible, Clock clock) {
    this.plausible = plausible;
    this.clock = clock;
  }

  /**
   * Reads what was typed: {@link Signal.Heard}, or {@link Signal.Refused} with words for the
   * official. The raw bytes are the typed text in UTF-8.
   *
   * @param unitIfNone the unit where none was typed
   */
  public Signal read(String text, SpeedUnit unitIfNone) {
    String typed = text.strip();
    if (typed.length() > LONGEST) {
      return refused(
          text, Reason.OVERLONG, "That is too long for a speed. Type, for example, 300.1");
    }
    if (typed.contains(",")) {
      return refused(
          text, Reason.PATTERN, "Type the decimals after a point, not a comma: 300.1, not 300,1");
    }
    SentenceForm form =
        new SentenceForm(
            "", PATTERN, Checksum.NONE, unitIfNone, UNITS, Set.of(), plausible, GateTimes.NONE);
    Sentence.Outcome outcome = new Sentence(form).read(typed);
    if (outcome instanceof Sentence.Unfit unfit) {
      return refused(text, unfit.reason(), words(unfit, typed, unitIfNone));
    }
    Sentence.Said said = (Sentence.Said) outcome;
    return new Signal.Heard(
        new Reading(
            said.speed(), RawBytes.ofText(text), Source.TYPED, NAME, clock.instant(), null));
  }

  /** The same faults as on the wire, but said to the one who typed. */
  private String words(Sentence.Unfit unfit, String typed, SpeedUnit unitIfNone) {
    return switch (unfit.reason()) {
      case UNIT -> "That unit is not known. Type ft/s or m/s, or no unit.";
      case OUT_OF_RANGE ->
          BARE.matcher(typed).matches()
              ? implausibleWithoutUnit(typed, unitIfNone)
              : "No arrow flies at that speed (plausible: "
                  + plausible
                  + "). Look at the display again.";
      case NOT_A_NUMBER -> "That is no number. Type, for example, 300.1";
      default -> "That is no speed. Type a number with a decimal point, for example 300.1";
    };
  }

  /** A number that is plausible in another unit was most likely read off a display in that one. */
  private String implausibleWithoutUnit(String typed, SpeedUnit assumed) {
    BigDecimal number = new BigDecimal(typed);
    String mend =
        Arrays.stream(SpeedUnit.values())
            .map(unit -> Speed.of(number, unit))
            .filter(plausible::holds)
            .findFirst()
            .map(meant -> "If the display says " + meant + ", type: " + meant)
            .orElse("Look at the display again.");
    return "Without a unit, "
        + typed
        + " is read as "
        + Speed.of(number, assumed)
        + ", as the rule speaks; no arrow flies at that speed (plausible: "
        + plausible.in(assumed, DECIMALS)
        + "). "
        + mend;
  }

  private Signal refused(String text, Reason reason, String words) {
    return new Signal.Refused(
        new Refusal(RawBytes.ofText(text), reason, words, Source.TYPED, NAME, clock.instant()));
  }
}
