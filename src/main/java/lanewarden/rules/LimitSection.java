package lanewarden.rules;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import lanewarden.bow.GrainsPerPound;
import lanewarden.metrology.DecisionRule;
import lanewarden.metrology.Deviation;
import lanewarden.quantity.Energy;
import lanewarden.quantity.FigureTold;
import lanewarden.quantity.QuantityException;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.written.Section;
import lanewarden.written.TomlTold;
import lanewarden.written.ValueRefused;

/** The limits in a division's section of the file; for one thread. */
final class LimitSection {

  private static final int MOST_FACTOR = 10;

  private static final String INSTRUMENT = "instrument accuracy";

  private static final List<String> LIMIT_KEYS =
      List.of(
          "bound",
          "tolerance",
          "accuracy",
          "factor",
          "round-limit",
          "acceptance",
          "guard",
          "only-below");

  private static final Map<String, DecisionRule> ACCEPTANCES = Guard.words();

  private static final Map<String, Side> SIDES = Worded.words(Side.values());

  private final Section section;

  LimitSection(Section section) {
    this.section = section;
  }

  /** Whether the section sets any limit on the shot. */
  boolean limits() {
    return section.has("energy") || !saysNone();
  }

  private boolean saysNone() {
    return section.is("limit", "none");
  }

  /** The speed limit, or empty where there is none or a fault was noted. */
  Optional<SpeedLimit> speed() {
    if (saysNone()) {
      for (String key : LIMIT_KEYS) {
        section.leftOut(key, Sentence.of(BookTold.NO_SPEED_LIMIT));
      }
      return Optional.empty();
    }
    Optional<Speed> limit =
        section.value(
            "limit", Sentence.of(BookTold.LIMIT), text -> Plausible.LIMIT.of(Speed.parse(text)));
    Optional<Side> side = section.optionalChoice("bound", SIDES);
    Optional<Tolerance> tolerance = tolerance();
    Optional<Rounding> rounding = rounding("round-limit");
    Optional<GrainsPerPound> onlyBelow = arrow("only-below");
    Optional<Guard> guard = guard(limit);
    if (limit.isEmpty() || tolerance.isEmpty() || rounding.isEmpty() || guard.isEmpty()) {
      return Optional.empty();
    }
    boolean unitOfTolerance =
        sameUnit(toleranceKey(tolerance.get()), tolerance.get().speed(), limit.get());
    boolean unitOfStep = sameUnit("round-limit", rounding.get().step(), limit.get());
    if (!unitOfTolerance || !unitOfStep) {
      return Optional.empty();
    }
    return Optional.of(
        new SpeedLimit(
            limit.get(),
            side.orElse(Side.AT_MOST),
            tolerance.get(),
            rounding.get(),
            guard.get(),
            onlyBelow));
  }

  /** The guard band, none where the rule does not say; empty with a fault where it is wrong. */
  private Optional<Guard> guard(Optional<Speed> limit) {
    Optional<DecisionRule> rule = section.optionalChoice("acceptance", ACCEPTANCES);
    if (section.has("acceptance") && rule.isEmpty()) {
      return Optional.empty();
    }
    if (rule.isEmpty() || rule.get() == DecisionRule.SIMPLE_ACCEPTANCE) {
      section.leftOut("guard", Sentence.of(BookTold.GUARDED_ONLY));
      return Optional.of(Guard.none());
    }
    if (section.has("energy")) {
      section.fault(
          "acceptance",
          Sentence.of(TomlTold.LEFT_OUT, Sentence.of(BookTold.ABOUT_SPEED)),
          Sentence.of(BookTold.TOGETHER, "acceptance", "energy"),
          Sentence.of(BookTold.OUT_OR_OWN_DIVISION));
      section.optionalText("guard");
      return Optional.empty();
    }
    Optional<Deviation> band =
        section.value("guard", Sentence.of(BookTold.GUARD), LimitSection::band);
    Optional<Speed> fixed =
        band.flatMap(
            b -> b instanceof Deviation.Fixed f ? Optional.of(f.speed()) : Optional.empty());
    if (band.isEmpty() || limit.isEmpty() || !sameUnit("guard", fixed, limit.get())) {
      return Optional.empty();
    }
    Guard guard = new Guard(rule.get(), band.get());
    if (guard.width(limit.get()).isMoreThan(Plausible.widestGuard(limit.get()))) {
      section.fault(
          "guard",
          Sentence.of(BookTold.TENTH),
          Sentence.verbatim("\"" + band.get() + "\""),
          Sentence.of(BookTold.NARROWER));
      return Optional.empty();
    }
    return Optional.of(guard);
  }

  private static Deviation band(String text) {
    return Plausible.guard(Deviation.parse(text));
  }

  /** An arrow mass per draw weight that may be missing. */
  Optional<GrainsPerPound> arrow(String key) {
    return section.optionalValue(
        key,
        Sentence.of(FigureTold.PER_POUND, "6 gr/lb"),
        text -> Plausible.ARROW.of(GrainsPerPound.parse(text)));
  }

  /** The kinetic energy limit, or empty where there is none or a fault was noted. */
  Optional<EnergyLimit> energy() {
    Optional<Energy> limit =
        section.optionalValue(
            "energy",
            Sentence.of(BookTold.ENERGY, "165 J"),
            text -> Plausible.ENERGY.of(Energy.parse(text)));
    if (!section.has("energy")) {
      section.leftOut("energy-bound", Sentence.of(BookTold.NO_ENERGY_LIMIT));
      return Optional.empty();
    }
    Optional<Side> side = section.optionalChoice("energy-bound", SIDES);
    return limit.map(energy -> new EnergyLimit(energy, side.orElse(Side.AT_MOST)));
  }

  private Optional<Tolerance> tolerance() {
    boolean instrument = section.is("tolerance", INSTRUMENT);
    if (!instrument) {
      section.leftOut("accuracy", Sentence.of(BookTold.ONLY_USER, "tolerance", INSTRUMENT));
      section.leftOut("factor", Sentence.of(BookTold.ONLY_USER, "tolerance", INSTRUMENT));
      return section.value("tolerance", Sentence.of(BookTold.TOLERANCE), LimitSection::tolerance);
    }
    Optional<Tolerance> accuracy =
        section.value("accuracy", Sentence.of(BookTold.ACCURACY), LimitSection::accuracy);
    OptionalInt factor = section.whole("factor", 1, MOST_FACTOR);
    return accuracy.isEmpty() || factor.isEmpty()
        ? Optional.empty()
        : Optional.of(new Tolerance.InstrumentAccuracy(accuracy.get(), factor.getAsInt()));
  }

  private static Tolerance tolerance(String text) {
    return text.strip().equals("none")
        ? new Tolerance.None()
        : Plausible.tolerance(shareOrSpeed(text));
  }

  private static Tolerance accuracy(String text) {
    return Plausible.accuracy(shareOrSpeed(text));
  }

  private static Tolerance shareOrSpeed(String text) {
    try {
      return Tolerance.shareOrSpeed(text);
    } catch (QuantityException e) {
      // what the key may be is said by the caller, in full; only the mend is the quantity's
      throw new ValueRefused(e.mend(), e);
    }
  }

  private static String toleranceKey(Tolerance tolerance) {
    return tolerance instanceof Tolerance.InstrumentAccuracy ? "accuracy" : "tolerance";
  }

  /** A rounding, none where the key is missing; empty with a fault where it is wrong. */
  Optional<Rounding> rounding(String key) {
    return section.has(key)
        ? section.optionalValue(key, Sentence.of(BookTold.ROUNDING), LimitSection::readRounding)
        : Optional.of(new Rounding.None());
  }

  private static Rounding readRounding(String text) {
    Rounding rounding;
    try {
      rounding = Rounding.parse(text);
    } catch (QuantityException e) {
      throw new ValueRefused(e.mend(), e);
    }
    rounding.step().ifPresent(Plausible.STEP::of);
    return rounding;
  }

  /** Whether a speed under a key, if there is one, has the limit's unit; else a fault is noted. */
  private boolean sameUnit(String key, Optional<Speed> speed, Speed limit) {
    if (speed.isEmpty() || speed.get().unit() == limit.unit()) {
      return true;
    }
    String unit = limit.unit().symbol();
    section.fault(
        key,
        Sentence.of(BookTold.UNIT_OF_LIMIT, unit),
        Sentence.verbatim("\"" + speed.get() + "\""),
        Sentence.of(
            key.equals("round-limit") ? BookTold.IN_UNIT : BookTold.IN_UNIT_OR_SHARE, unit));
    return false;
  }
}
