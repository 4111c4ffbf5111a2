package lanewarden.station;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import lanewarden.journal.Fact;
import lanewarden.journal.InstrumentVerification;
import lanewarden.journal.Occasion;
import lanewarden.metrology.Deviation;
import lanewarden.quantity.Speed;
import lanewarden.written.Section;

/**
 * When and how the station's instrument is verified, as the table {@code [verification]} of {@code
 * station.toml} says.
 *
 * @param beforeOpening whether before the first competitor after each opening of the line
 * @param every how many competitors may be called between two verifications; empty for any number
 * @param atEnd whether before the line closes
 * @param shots how many are taken, 2 to 20: one shot shows no spread
 * @param mostBias the limit of the mean of station minus reference, either way
 * @param mostSpread the limit of the standard deviation of these differences
 * @param bow the speed of the bow kept for the purpose; empty where a second instrument measures
 *     each shot
 */
public record VerificationPlan(
    boolean beforeOpening,
    OptionalInt every,
    boolean atEnd,
    int shots,
    Deviation mostBias,
    Deviation mostSpread,
    Optional<Speed> bow) {

  static final String TABLE = "verification";

  private static final int USUAL_SHOTS = 3;
  private static final int MOST_SHOTS = 20;
  private static final int MOST_BETWEEN = 10_000;
  private static final String BOW = "check bow";
  private static final String SECOND = "second instrument";
  private static final String LIMIT = "a percentage or a speed, such as \"0.5 %\" or \"1 ft/s\"";

  private enum Reference {
    BOW,
    SECOND
  }

  private static final Map<String, Reference> REFERENCES =
      new TreeMap<>(Map.of(BOW, Reference.BOW, SECOND, Reference.SECOND));

  /** Reads the table; empty if anything in it is wrong, which is then noted on its page. */
  static Optional<VerificationPlan> read(Section table) {
    boolean beforeOpening = table.flag("before_opening");
    OptionalInt every = table.optionalWhole("every", 1, MOST_BETWEEN);
    boolean atEnd = table.flag("at_end");
    int shots = table.optionalWhole("shots", 2, MOST_SHOTS).orElse(USUAL_SHOTS);
    Optional<Deviation> bias = table.value("most_bias", LIMIT, Bounds::deviation);
    Optional<Deviation> spread = table.value("most_spread", LIMIT, Bounds::deviation);
    Optional<Reference> reference = table.choice("reference", REFERENCES);
    Optional<Speed> bow = Optional.empty();
    if (reference.equals(Optional.of(Reference.SECOND))) {
      table.leftOut("speed", "the second instrument gives the speed of each shot");
    } else {
      bow = table.value("speed", "the speed of the check bow", Speed::parse);
    }
    table.closed();
    boolean whole =
        bias.isPresent()
            && spread.isPresent()
            && reference.isPresent()
            && (reference.get() == Reference.SECOND || bow.isPresent());
    return whole
        ? Optional.of(
            new VerificationPlan(beforeOpening, every, atEnd, shots, bias.get(), spread.get(), bow))
        : Optional.empty();
  }

  /** The table's text: {@link #read} gives an equal plan back. */
  String toToml() {
    return "[verification]\n"
        + "# Shots through the instrument and a reference; out of limits, the line is held.\n"
        + ("before_opening = " + beforeOpening + "\n")
        + (every.isPresent() ? "every = " + every.getAsInt() + "\n" : "")
        + ("at_end = " + atEnd + "\n")
        + ("shots = " + shots + "\n")
        + ("most_bias = \"" + mostBias + "\"\n")
        + ("most_spread = \"" + mostSpread + "\"\n")
        + ("reference = \"" + reference() + "\"\n")
        + bow.map(speed -> "speed = \"" + speed + "\"\n").orElse("");
  }

  /**
   * Whether it would let pass more than a verification did that found the instrument out: either
   * limit is wider at the speed of that one's first reference.
   */
  boolean isLooserThan(InstrumentVerification before) {
    return before.shots().stream()
        .flatMap(shot -> Optional.ofNullable(shot.reference()).stream())
        .findFirst()
        .filter(
            at ->
                isMore(mostBias, before.began().mostBias(), at)
                    || isMore(mostSpread, before.began().mostSpread(), at))
        .isPresent();
  }

  private static boolean isMore(Deviation limit, String than, Speed at) {
    return limit.siAt(at.si()).compareTo(Deviation.parse(than).siAt(at.si())) > 0;
  }

  private String reference() {
    return bow.isPresent() ? BOW : SECOND;
  }

  /** When, as it is signed at the opening. */
  Fact.VerificationPlanned planned() {
    return new Fact.VerificationPlanned(
        beforeOpening, every.isPresent() ? every.getAsInt() : null, atEnd);
  }

  /** How, as it is signed when a verification begins. */
  Fact.VerificationBegan began(Occasion occasion) {
    return new Fact.VerificationBegan(
        occasion.word(),
        reference(),
        shots,
        mostBias.toString(),
        mostSpread.toString(),
        bow.orElse(null));
  }
}
