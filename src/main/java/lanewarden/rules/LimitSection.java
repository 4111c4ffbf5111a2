package lanewarden.rules;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Stream;
import lanewarden.bow.GrainsPerPound;
import lanewarden.quantity.Energy;
import lanewarden.quantity.Percent;
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
      List.of("bound", "tolerance", "accuracy", "factor", "round-limit", "only-below");

  private static final Map<String, Side> SIDES = new LinkedHashMap<>();

  static {
    // in the order in which a fault lists them
    Stream.of(Side.values()).forEach(side -> SIDES.put(side.word(), side));
  }

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
        section.value("limit", "a speed such as \"300 ft/s\", or \"none\"", LimitSection::limit);
    Optional<Side> side = section.optionalChoice("bound", SIDES);
    Optional<Tolerance> tolerance = tolerance();
    Optional<Rounding> rounding = rounding("round-limit");
    Optional<GrainsPerPound> onlyBelow =
        section.optionalValue(
            "only-below",
            "an arrow mass per draw weight such as \"5 gr/lb\"",
            GrainsPerPound::parse);
    if (limit.isEmpty() || tolerance.isEmpty() || rounding.isEmpty()) {
      return Optional.empty();
    }
    boolean unitOfTolerance =
        sameUnit(toleranceKey(tolerance.get()), tolerance.get().speed(), limit.get());
    boolean unitOfStep = sameUnit("round-limit", rounding.get().step(), limit.get());
    if (!unitOfTolerance || !unitOfStep) {
      return Optional.empty();
    }
    if (rounding.get().of(tolerance.get().above(limit.get())).value().signum() == 0) {
      section.fault(
          "round-limit",
          "a step that leaves more than nothing of the limit",
          "\"" + rounding.get().written() + "\"",
          "take a smaller step");
      return Optional.empty();
    }
    return Optional.of(
        new SpeedLimit(
            limit.get(), side.orElse(Side.AT_MOST), tolerance.get(), rounding.get(), onlyBelow));
  }

  private static Speed limit(String text) {
    return positive(Speed.parse(text), Speed::value);
  }

  private static <Q> Q positive(Q quantity, Function<Q, BigDecimal> value) {
    if (value.apply(quantity).signum() == 0) {
      throw new IllegalArgumentException("write a limit of more than zero");
    }
    return quantity;
  }

  /** The kinetic energy limit, or empty where there is none or a fault was noted. */
  Optional<EnergyLimit> energy() {
    Optional<Energy> limit =
        section.optionalValue(
            "energy",
            "a kinetic energy such as \"165 J\"",
            text -> positive(Energy.parse(text), Energy::value));
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
    return text.strip().equals("none") ? new Tolerance.None() : shareOrSpeed(text);
  }

  private static Tolerance accuracy(String text) {
    Tolerance stated = shareOrSpeed(text);
    if (stated.isNothing()) {
      throw new IllegalArgumentException("write what the instrument's maker states");
    }
    return stated;
  }

  private static Tolerance shareOrSpeed(String text) {
    String written = text.strip();
    try {
      return written.endsWith("%")
          ? new Tolerance.Share(Percent.parse(written))
          : new Tolerance.Absolute(Speed.parse(written));
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
    try {
      return Rounding.parse(text);
    } catch (QuantityException e) {
      throw new IllegalArgumentException(e.mend(), e);
    }
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
