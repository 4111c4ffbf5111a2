package lanewarden.station;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import lanewarden.quantity.Force;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Percent;
import lanewarden.quantity.QuantityException;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.rules.Rule;
import lanewarden.rules.SetUp;
import org.jspecify.annotations.Nullable;

/**
 * What is supposed of archers, bows and the instrument.
 *
 * @param arrows standard deviation of an archer's arrows from one to the next
 * @param reading standard uncertainty of the instrument that is new with each reading
 * @param calibration standard uncertainty of the instrument that all readings share
 * @param voids the share of shots that give no reading that stands, less than 100 %
 * @param excess how far over the limit an archer is who should fail, more than zero
 * @param arrow mass of the arrow, where a clause asks for it; empty for an ordinary one, or a
 *     lighter one where the limit applies to no other
 * @param draw draw weight as set, where a clause asks for it
 * @param certified draw weight as certified, where a clause asks for it
 */
public record Supposed(
    Speed arrows,
    Speed reading,
    Speed calibration,
    Percent voids,
    Speed excess,
    Optional<Mass> arrow,
    Force draw,
    Force certified) {

  private static final BigDecimal LIGHTER = new BigDecimal("0.9");

  private static final MathContext DOWN = new MathContext(3, RoundingMode.DOWN);

  /**
   * What was typed: all of it, or what is wrong with each.
   *
   * @param supposed empty if anything is wrong
   * @param faults what is wrong and how to mend it
   */
  public record Typed(Optional<Supposed> supposed, Map<Supposition, QuantityException> faults) {}

  /** Reads what was typed; only the arrow may be left blank. */
  public static Typed read(Function<Supposition, String> typed) {
    Reader reader = new Reader(typed);
    Optional<Speed> arrows = reader.read(Supposition.ARROWS, Speed::parse);
    Optional<Speed> reading = reader.read(Supposition.READING, Speed::parse);
    Optional<Speed> calibration = reader.read(Supposition.CALIBRATION, Speed::parse);
    Optional<Percent> voids = reader.read(Supposition.VOIDS, Supposed::share);
    Optional<Speed> excess = reader.read(Supposition.EXCESS, Supposed::excess);
    Optional<Optional<Mass>> arrow = reader.read(Supposition.ARROW, Supposed::arrow);
    Optional<Force> draw = reader.read(Supposition.DRAW, Force::parse);
    Optional<Force> certified = reader.read(Supposition.CERTIFIED, Force::parse);
    if (!reader.faults.isEmpty()) {
      return new Typed(Optional.empty(), reader.faults);
    }
    return new Typed(
        Optional.of(
            new Supposed(
                arrows.orElseThrow(),
                reading.orElseThrow(),
                calibration.orElseThrow(),
                voids.orElseThrow(),
                excess.orElseThrow(),
                arrow.orElseThrow(),
                draw.orElseThrow(),
                certified.orElseThrow())),
        Map.of());
  }

  private static final class Reader {
    private final Function<Supposition, String> typed;
    private final Map<Supposition, QuantityException> faults = new EnumMap<>(Supposition.class);

    Reader(Function<Supposition, String> typed) {
      this.typed = typed;
    }

    <T> Optional<T> read(Supposition one, Function<String, T> parser) {
      try {
        return Optional.of(parser.apply(typed.apply(one)));
      } catch (QuantityException e) {
        faults.put(one, e);
        return Optional.empty();
      }
    }
  }

  private static Percent share(String text) {
    Percent share = Percent.parse(text);
    if (share.fraction().compareTo(BigDecimal.ONE) >= 0) {
      throw new QuantityException(
          Sentence.of(FormTold.SHARE_BELOW), share.toString(), Sentence.of(FormTold.WRITE_BELOW));
    }
    return share;
  }

  private static Speed excess(String text) {
    Speed excess = Speed.parse(text);
    if (excess.value().signum() == 0) {
      throw new QuantityException(
          Sentence.of(FormTold.SPEED_MORE), excess.toString(), Sentence.of(FormTold.WRITE_MORE));
    }
    return excess;
  }

  private static Optional<Mass> arrow(String text) {
    return text.isBlank() ? Optional.empty() : Optional.of(TypedArrow.mass(text));
  }

  /** Bow and arrow under a rule. */
  SetUp setUp(Rule rule) {
    Mass ordinary = arrow.orElseGet(() -> Mass.parse(Supposition.Usual.ARROW));
    Optional<Mass> free = unlimitedFrom(rule);
    boolean tooHeavy = arrow.isEmpty() && free.filter(from -> from.isAtMost(ordinary)).isPresent();
    return bow(tooHeavy ? lighter(free.orElseThrow()) : ordinary);
  }

  /** The least arrow, to a tenth of a grain, to which the rule's speed limit no longer applies. */
  Optional<Mass> unlimitedFrom(Rule rule) {
    return rule.unlimitedFrom(bow(null));
  }

  private SetUp bow(@Nullable Mass arrowMass) {
    return new SetUp(arrowMass, draw, certified);
  }

  private static Mass lighter(Mass bound) {
    BigDecimal less = bound.value().multiply(LIGHTER).round(DOWN);
    return Mass.of(new BigDecimal(less.toPlainString()), bound.unit());
  }
}
