package lanewarden.rules;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import lanewarden.bow.GrainsPerPound;
import lanewarden.quantity.Force;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Sentence;
import lanewarden.written.Section;
import lanewarden.written.Section.Item;
import lanewarden.written.ValueRefused;
import lanewarden.written.WrittenText;

/** What a division demands, in its section of the file; for one thread. */
final class DivisionSection {

  private static final int LONGEST_CONDITION = 80;

  private final Section section;
  private final LimitSection limits;
  private final ShootingSection shots;

  DivisionSection(Section section) {
    this.section = section;
    this.limits = new LimitSection(section);
    this.shots = new ShootingSection(section, limits);
  }

  /** The rule, or empty with the faults noted on the page. */
  Optional<Rule> rule() {
    boolean unmeasured = section.is("who", Who.NOT_MEASURED.word());
    boolean limited = limits.limits();
    // known whatever else is wrong: beside a faulty acceptance nothing else asks for it
    section.has("guard");
    Optional<SpeedLimit> speed = limits.speed();
    Optional<EnergyLimit> energy = limits.energy();
    Optional<EquipmentRule> equipment = equipment();
    boolean measured = limited && (!unmeasured || shots.isWritten());
    Optional<Shooting> shooting = measured ? shots.shooting() : Optional.empty();
    if (!limited) {
      shots.leaveOut(Sentence.of(BookTold.NO_LIMIT));
    }
    boolean asks = equipment.map(EquipmentRule::asksAnything).orElse(true);
    AftermathSection after = new AftermathSection(section);
    // whose shots are written out although nobody takes them may say what would follow, too
    Optional<Aftermath> aftermath =
        measured || (asks && !unmeasured)
            ? after.aftermath(!unmeasured, speed, shooting)
            : Optional.of(after.none());
    List<String> conditions = conditions(measured);
    requireSomebodyLimited(speed, equipment);
    boolean complete =
        (speed.isPresent() || section.is("limit", "none"))
            && (energy.isPresent() || !section.has("energy"))
            && (shooting.isPresent() || !measured);
    if (!complete || equipment.isEmpty() || aftermath.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Rule(speed, energy, equipment.get(), shooting, aftermath.get(), conditions));
  }

  /** A limit for light arrows alone must apply to some that are admitted. */
  private void requireSomebodyLimited(
      Optional<SpeedLimit> speed, Optional<EquipmentRule> equipment) {
    Optional<GrainsPerPound> below = speed.flatMap(SpeedLimit::onlyBelow);
    Optional<GrainsPerPound> least = equipment.flatMap(EquipmentRule::leastArrow);
    if (below.isPresent() && least.isPresent() && below.get().compareTo(least.get()) <= 0) {
      section.fault(
          "only-below",
          Sentence.of(BookTold.MORE_THAN_LEAST_ARROW, least.get()),
          Sentence.verbatim("\"" + below.get() + "\""),
          Sentence.of(BookTold.RAISE_OR_LOWER, "least-arrow"));
    }
  }

  private Optional<EquipmentRule> equipment() {
    Optional<GrainsPerPound> leastArrow = limits.arrow("least-arrow");
    Optional<Force> least = drawWeight("least-draw-weight");
    Optional<Force> most = drawWeight("most-draw-weight");
    Optional<DrawWeight> counts =
        section.optionalChoice("draw-weight", Worded.words(DrawWeight.values()));
    boolean asked =
        section.has("least-arrow")
            || section.has("least-draw-weight")
            || section.has("most-draw-weight")
            || section.has("only-below");
    if (!asked) {
      section.leftOut("draw-weight", Sentence.of(BookTold.NO_DRAW_WEIGHT));
    }
    if (least.isPresent() && most.isPresent() && least.get().isMoreThan(most.get())) {
      section.fault(
          "most-draw-weight",
          Sentence.of(BookTold.AT_LEAST_DRAW, least.get()),
          Sentence.verbatim("\"" + most.get() + "\""),
          Sentence.of(BookTold.RAISE_OR_LOWER, "least-draw-weight"));
      return Optional.empty();
    }
    return Optional.of(
        new EquipmentRule(leastArrow, least, most, counts.orElse(DrawWeight.AS_SET)));
  }

  private Optional<Force> drawWeight(String key) {
    return section.optionalValue(
        key,
        Sentence.of(BookTold.DRAW_WEIGHT, "60 lbf"),
        text -> Plausible.DRAW_WEIGHT.of(Force.parse(text)));
  }

  private List<String> conditions(boolean measured) {
    if (!measured) {
      section.leftOut("conditions", Sentence.of(BookTold.NO_SHOT));
      return List.of();
    }
    List<Item<String>> conditions =
        section.optionalItems(
            "conditions",
            Sentence.of(BookTold.NAME, LONGEST_CONDITION),
            DivisionSection::condition);
    requireDifferent(section, "conditions", conditions, Function.identity());
    return conditions.stream().map(Item::value).toList();
  }

  /** No item of a list stands twice; else a fault is noted. */
  static <T> void requireDifferent(
      Section section, String key, List<Item<T>> items, Function<T, String> words) {
    Set<String> seen = new HashSet<>();
    items.stream()
        .filter(item -> !seen.add(words.apply(item.value()).toLowerCase(Locale.ROOT)))
        .findFirst()
        .ifPresent(
            twice ->
                section.fault(
                    key,
                    twice.number(),
                    Sentence.of(BookTold.OTHER_TEXT),
                    Sentence.of(BookTold.SECOND_TIME, words.apply(twice.value())),
                    Sentence.of(BookTold.SECOND_OUT)));
  }

  private static String condition(String text) {
    String condition = text.strip();
    if (condition.length() > LONGEST_CONDITION || !WrittenText.isPlain(condition)) {
      throw new ValueRefused(Sentence.of(BookTold.FEWER_WORDS_ON_A_LINE));
    }
    return condition;
  }

  /** Who is checked, or empty with the faults noted on the page. */
  Optional<Coverage> coverage() {
    Optional<Who> who = section.optionalChoice("who", Worded.words(Who.values()));
    if (!section.is("who", Who.RANDOM_SHARE.word())) {
      section.leftOut("share", Sentence.of(BookTold.ONLY_USER, "who", Who.RANDOM_SHARE.word()));
      return section.has("who")
          ? who.map(w -> new Coverage(w, null))
          : Optional.of(Coverage.everyone());
    }
    Optional<Percent> share =
        section.value("share", Sentence.of(BookTold.SHARE), DivisionSection::share);
    return share.map(percent -> new Coverage(Who.RANDOM_SHARE, percent));
  }

  private static Percent share(String text) {
    Percent share = Percent.parse(text);
    if (share.value().signum() == 0 || share.fraction().compareTo(BigDecimal.ONE) > 0) {
      throw new ValueRefused(Sentence.of(BookTold.SHARE_DRAWN));
    }
    return share;
  }

  /** Where the rule comes from, or empty with the faults noted on the page. */
  Origin origin() {
    return new Origin(
        RuleBookPage.optionalLine(section, "body").orElse(null),
        RuleBookPage.optionalLine(section, "source").orElse(null),
        RuleBookPage.optionalLine(section, "edition").orElse(null),
        section.optionalDate("effective").orElse(null));
  }
}
