package lanewarden.rules;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import lanewarden.bow.GrainsPerPound;
import lanewarden.metrology.DecisionRule;
import lanewarden.metrology.Deviation;
import lanewarden.quantity.Energy;
import lanewarden.quantity.QuantityException;
import lanewarden.quantity.Speed;
import lanewarden.written.Section;

/** The limits in a division's section of the file; for one thread. */
final class LimitSection {

  private static final int MOST_FACTOR = 10;

  private static final String TOLERANCE =
      "\"none\", a percentage such as \"3 %\", a speed such as \"2 ft/s\" or \"instrument accuracy\"";
  private static final String ACCURACY =
      "a percentage of more than zero such as \"0.5 %\", or a speed";
  private static final String ROUNDING =
      "\"none\", \"down to 1 ft/s\" or \"nearest 1 ft/s\", with the step of your rule";
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
        section.leftOut(key, "limit = \"none\" sets no speed limit that it could belong to");
      }
      return Optional.empty();
    }
    Optional<Speed> limit =
        section.value(
            "limit",
            "a speed such as \"300 ft/s\", or \"none\"",
            text -> Plausible.LIMIT.of(Speed.parse(text)));
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
      section.leftOut("guard", "only guarded acceptance and guarded rejection use it");
      return Optional.of(Guard.none());
    }
    if (section.has("energy")) {
      section.fault(
          "acceptance",
          "left out: a guard band is set about a speed limit alone",
          "acceptance together with energy",
          "take it out, or write the energy limit as a division of its own");
      section.optionalText("guard");
      return Optional.empty();
    }
    Optional<Deviation> band =
        section.value(
            "guard",
            "a speed such as \"0.5 ft/s\" or a percentage such as \"0.2 %\"",
            LimitSection::band);
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
          "at most a tenth of the limit",
          "\"" + band.get() + "\"",
          "take a narrower one: it stands for the doubt about a reading");
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
        "an arrow mass per draw weight such as \"6 gr/lb\"",
        text -> Plausible.ARROW.of(GrainsPerPound.parse(text)));
  }

  /** The kinetic energy limit, or empty where there is none or a fault was noted. */
  Optional<EnergyLimit> energy() {
    Optional<Energy> limit =
        section.optionalValue(
            "energy",
            "a kinetic energy such as \"165 J\"",
            text -> Plausible.ENERGY.of(Energy.parse(text)));
    if (!section.has("energy")) {
      section.leftOut("energy-bound", "there is no energy limit that it could belong to");
      return Optional.empty();
    }
    Optional<Side> side = section.optionalChoice("energy-bound", SIDES);
    return limit.map(energy -> new EnergyLimit(energy, side.orElse(Side.AT_MOST)));
  }

  private Optional<Tolerance> tolerance() {
    boolean instrument = section.is("tolerance", INSTRUMENT);
    if (!instrument) {
      section.leftOut("accuracy", "only tolerance = \"" + INSTRUMENT + "\" uses it");
      section.leftOut("factor", "only tolerance = \"" + INSTRUMENT + "\" uses it");
      return section.value("tolerance", TOLERANCE, LimitSection::tolerance);
    }
    Optional<Tolerance> accuracy = section.value("accuracy", ACCURACY, LimitSection::accuracy);
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
      throw new IllegalArgumentException(e.mend(), e);
    }
  }

  private static String toleranceKey(Tolerance tolerance) {
    return tolerance instanceof Tolerance.InstrumentAccuracy ? "accuracy" : "tolerance";
  }

  /** A rounding, none where the key is missing; empty with a fault where it is wrong. */
  Optional<Rounding> rounding(String key) {
    return section.has(key)
        ? section.optionalValue(key, ROUNDING, LimitSection::readRounding)
        : Optional.of(new Rounding.None());
  }

  private static Rounding readRounding(String text) {
    Rounding rounding;
    try {
      rounding = Rounding.parse(text);
    } catch (QuantityException e) {
      throw new IllegalArgumentException(e.mend(), e);
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
        "a speed in " + unit + ", the unit of the limit",
        "\"" + speed.get() + "\"",
        "write it in " + unit + (key.equals("round-limit") ? "" : " or as a percentage"));
    return false;
  }
}
