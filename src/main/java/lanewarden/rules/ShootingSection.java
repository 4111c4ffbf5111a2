package lanewarden.rules;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import lanewarden.quantity.FigureTold;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.written.Section;
import lanewarden.written.TomlTold;

/** How a division is measured, in its section of the file; for one thread. */
final class ShootingSection {

  /** More shots, voids or re-checks than anyone takes at a check-in line. */
  static final int MOST = 50;

  private static final Speed SLOW = Speed.parse("0 ft/s");

  private static final List<String> KEYS =
      Stream.concat(
              Stream.of(
                  "decide",
                  "within",
                  "counted",
                  "shots",
                  "voids",
                  "spread",
                  "round-reading",
                  "bow-correction"),
              ScreeningSection.KEYS.stream())
          .toList();

  private enum Way implements Worded {
    MEAN("mean", needed -> new Decision.Mean()),
    HIGHEST("highest", needed -> new Decision.Highest()),
    MEDIAN("median", needed -> new Decision.Median()),
    WITHIN_COUNT(Decision.WithinCount.WORD, Decision.WithinCount::new),
    FIRST_WITHIN("first within", needed -> new Decision.FirstWithin());

    private final String word;
    private final IntFunction<Decision> decision;

    Way(String word, IntFunction<Decision> decision) {
      this.word = word;
      this.decision = decision;
    }

    @Override
    public String word() {
      return word;
    }

    private static Map<String, Way> words() {
      return Worded.words(values());
    }
  }

  private final Section section;
  private final LimitSection limits;

  ShootingSection(Section section, LimitSection limits) {
    this.section = section;
    this.limits = limits;
  }

  /** The words for the ways to decide. */
  static List<String> ways() {
    return List.copyOf(Way.words().keySet());
  }

  /** Whether anything of it is written. */
  boolean isWritten() {
    return KEYS.stream().filter(section::has).count() > 0;
  }

  /** Notes a fault for everything of it that is written, since nothing is measured. */
  void leaveOut(Sentence because) {
    KEYS.forEach(key -> section.leftOut(key, because));
  }

  /** How it is measured, or empty with the faults noted on the page. */
  Optional<Shooting> shooting() {
    OptionalInt counted = section.whole("counted", 1, MOST);
    Optional<Decision> decision = decision(counted);
    Optional<ShotPlan> plan = plan(counted, decision);
    Optional<Rounding> reading = limits.rounding("round-reading");
    Optional<Speed> spread =
        section.optionalValue(
            "spread",
            Sentence.of(FigureTold.SPEED, "2 ft/s"),
            text -> Plausible.SPREAD.of(Speed.parse(text)));
    Optional<Screening> screening = new ScreeningSection(section, counted).screening();
    Optional<Percent> toBow =
        section.optionalValue(
            "bow-correction",
            Sentence.of(FigureTold.PERCENTAGE, "0.5 %"),
            text -> Plausible.TO_BOW.of(Percent.parse(text)));
    boolean faultyCorrection = section.has("bow-correction") && toBow.isEmpty();
    boolean faultySpread = section.has("spread") && spread.isEmpty();
    if (spread.isPresent() && counted.isPresent() && counted.getAsInt() < 2) {
      section.fault(
          "spread",
          Sentence.of(TomlTold.LEFT_OUT, Sentence.of(BookTold.NO_SPREAD)),
          Sentence.of(BookTold.TOGETHER_AS, "spread", "counted", 1),
          Sentence.of(BookTold.OUT_OR_COUNT_MORE));
      faultySpread = true;
    }
    if (decision.isEmpty()
        || plan.isEmpty()
        || reading.isEmpty()
        || screening.isEmpty()
        || faultyCorrection
        || faultySpread) {
      return Optional.empty();
    }
    return Optional.of(
        new Shooting(
            plan.get(),
            decision.get(),
            new Treatment(toBow, reading.get()),
            spread,
            screening.get()));
  }

  private Optional<ShotPlan> plan(OptionalInt counted, Optional<Decision> decision) {
    OptionalInt allowed = section.whole("shots", 1, MOST);
    OptionalInt voids = section.whole("voids", 0, MOST);
    if (counted.isEmpty() || allowed.isEmpty() || voids.isEmpty()) {
      return Optional.empty();
    }
    if (counted.getAsInt() > allowed.getAsInt()) {
      section.fault(
          "shots",
          Sentence.of(BookTold.SHOTS_AT_LEAST, counted.getAsInt()),
          Sentence.verbatim(String.valueOf(allowed.getAsInt())),
          Sentence.of(BookTold.MORE_SHOTS));
      return Optional.empty();
    }
    int needed = decision.map(d -> fewestToPass(d, counted.getAsInt())).orElse(0);
    int most = allowed.getAsInt() - needed;
    if (voids.getAsInt() > most) {
      section.fault(
          "voids",
          allowed.getAsInt() == 1
              ? Sentence.of(BookTold.VOIDS_OF_ONE, most, needed)
              : Sentence.of(BookTold.VOIDS, most, needed, allowed.getAsInt()),
          Sentence.verbatim(String.valueOf(voids.getAsInt())),
          Sentence.of(BookTold.FORGIVE_FEWER));
      return Optional.empty();
    }
    return Optional.of(new ShotPlan(counted.getAsInt(), allowed.getAsInt(), voids.getAsInt()));
  }

  /** With how many readings, however slow, a check can be passed at the earliest. */
  private int fewestToPass(Decision decision, int counted) {
    int fewest = section.has("spread") ? counted : 1;
    while (fewest < counted
        && decision.figure(Collections.nCopies(fewest, SLOW), counted).most().isEmpty()) {
      fewest++;
    }
    return fewest;
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
          Sentence.of(TomlTold.LEFT_OUT, Sentence.of(BookTold.K_OF_N)),
          Sentence.of(BookTold.TOGETHER_AS, "within", "decide", "\"" + way.get().word + "\""),
          Sentence.of(BookTold.OUT_OR_K_OF_N));
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
          Sentence.of(BookTold.WITHIN_AT_MOST, counted.getAsInt()),
          Sentence.verbatim(String.valueOf(within.getAsInt())),
          Sentence.of(BookTold.ASK_FEWER));
      return Optional.empty();
    }
    return Optional.of(within.getAsInt());
  }
}
