package lanewarden.rules;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import lanewarden.quantity.Percent;
import lanewarden.quantity.QuantityException;
import lanewarden.quantity.Speed;
import lanewarden.written.Section;

/** The speed rule in a division's section of the file; for one thread. */
final class RuleSection {

  /** More shots, voids or re-checks than anyone takes at a check-in line. */
  private static final int MOST = 50;

  private static final String TOLERANCE =
      "\"none\", a percentage such as \"3 %\" or a speed such as \"2 ft/s\"";

  private enum Way {
    MEAN("mean", needed -> new Decision.Mean()),
    HIGHEST("highest", needed -> new Decision.Highest()),
    MEDIAN("median", needed -> new Decision.Median()),
    WITHIN_COUNT("k of n", Decision.WithinCount::new),
    FIRST_WITHIN("first within", needed -> new Decision.FirstWithin());

    private final String word;
    private final IntFunction<Decision> decision;

    Way(String word, IntFunction<Decision> decision) {
      this.word = word;
      this.decision = decision;
    }

    static Map<String, Way> words() {
      Map<String, Way> words = new LinkedHashMap<>();
      for (Way way : values()) {
        words.put(way.word, way);
      }
      return words;
    }
  }

  private final Section section;

  RuleSection(Section section) {
    this.section = section;
  }

  /** The rule, or empty with the faults noted on the page. */
  Optional<SpeedRule> rule() {
    Optional<Speed> limit =
        section.value("limit", "a speed such as \"300 ft/s\"", RuleSection::limit);
    Optional<Tolerance> tolerance = section.value("tolerance", TOLERANCE, RuleSection::tolerance);
    boolean sameUnit = limit.isEmpty() || tolerance.isEmpty() || sameUnit(limit, tolerance);
    OptionalInt counted = section.whole("counted", 1, MOST);
    Optional<Decision> decision = decision(counted);
    Optional<ShotPlan> shots = shots(counted);
    OptionalInt rechecks = section.whole("rechecks", 0, MOST);
    if (!sameUnit
        || limit.isEmpty()
        || tolerance.isEmpty()
        || decision.isEmpty()
        || shots.isEmpty()
        || rechecks.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new SpeedRule(
            limit.get(), tolerance.get(), shots.get(), decision.get(), rechecks.getAsInt()));
  }

  private static Speed limit(String text) {
    Speed limit = Speed.parse(text);
    if (limit.value().signum() == 0) {
      throw new IllegalArgumentException("write a limit of more than zero");
    }
    return limit;
  }

  private static Tolerance tolerance(String text) {
    String written = text.strip();
    if (written.equals("none")) {
      return new Tolerance.None();
    }
    try {
      return written.endsWith("%")
          ? new Tolerance.Share(Percent.parse(written))
          : new Tolerance.Absolute(Speed.parse(written));
    } catch (QuantityException e) {
      // what the key may be is said by the caller, in full; only the mend is the quantity's
      throw new IllegalArgumentException(e.mend(), e);
    }
  }

  private boolean sameUnit(Optional<Speed> limit, Optional<Tolerance> tolerance) {
    String unit = limit.orElseThrow().unit().symbol();
    if (tolerance.orElseThrow() instanceof Tolerance.Absolute absolute
        && absolute.speed().unit() != limit.orElseThrow().unit()) {
      section.fault(
          "tolerance",
          "a speed in " + unit + ", the unit of the limit",
          "\"" + absolute.speed() + "\"",
          "write the tolerance in " + unit + " or as a percentage");
      return false;
    }
    return true;
  }

  private Optional<ShotPlan> shots(OptionalInt counted) {
    OptionalInt allowed = section.whole("shots", 1, MOST);
    OptionalInt voids = section.whole("voids", 0, MOST);
    if (counted.isEmpty() || allowed.isEmpty() || voids.isEmpty()) {
      return Optional.empty();
    }
    if (counted.getAsInt() > allowed.getAsInt()) {
      section.fault(
          "shots",
          "at least " + counted.getAsInt() + ", as many as are counted",
          String.valueOf(allowed.getAsInt()),
          "allow more shots or count fewer readings");
      return Optional.empty();
    }
    return Optional.of(new ShotPlan(counted.getAsInt(), allowed.getAsInt(), voids.getAsInt()));
  }

  private Optional<Decision> decision(OptionalInt counted) {
    Optional<Way> way = section.choice("decide", Way.words());
    boolean hasWithin = section.has("within");
    if (way.isPresent() && way.get() == Way.WITHIN_COUNT) {
      return within(counted).map(way.get().decision::apply);
    }
    if (way.isPresent() && hasWithin) {
      section.fault(
          "within",
          "left out: only \"k of n\" uses it",
          "within together with decide = \"" + way.get().word + "\"",
          "take the line out, or write decide = \"k of n\"");
      return Optional.empty();
    }
    return way.map(other -> other.decision.apply(0));
  }

  private Optional<Integer> within(OptionalInt counted) {
    OptionalInt within = section.whole("within", 1, MOST);
    if (within.isEmpty() || counted.isEmpty()) {
      return Optional.empty();
    }
    if (within.getAsInt() > counted.getAsInt()) {
      section.fault(
          "within",
          "at most " + counted.getAsInt() + ", as many as are counted",
          String.valueOf(within.getAsInt()),
          "ask for fewer within or count more readings");
      return Optional.empty();
    }
    return Optional.of(within.getAsInt());
  }
}
