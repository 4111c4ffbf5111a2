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
import lanewarden.written.Section;
import lanewarden.written.Section.Item;
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
      shots.leaveOut("there is no limit to measure against");
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
          "more than " + least.get() + ", the least arrow: else nobody admitted has a speed limit",
          "\"" + below.get() + "\"",
          "raise it, or lower least-arrow");
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
      section.leftOut("draw-weight", "no clause of this division asks for a draw weight");
    }
    if (least.isPresent() && most.isPresent() && least.get().isMoreThan(most.get())) {
      section.fault(
          "most-draw-weight",
          "at least " + least.get() + ", the least draw weight",
          "\"" + most.get() + "\"",
          "raise it, or lower least-draw-weight");
      return Optional.empty();
    }
    return Optional.of(
        new EquipmentRule(leastArrow, least, most, counts.orElse(DrawWeight.AS_SET)));
  }

  private Optional<Force> drawWeight(String key) {
    return section.optionalValue(
        key,
        "a draw weight such as \"60 lbf\"",
        text -> Plausible.DRAW_WEIGHT.of(Force.parse(text)));
  }

  private List<String> conditions(boolean measured) {
    if (!measured) {
      section.leftOut("conditions", "no shot of this division is measured");
      return List.of();
    }
    List<Item<String>> conditions =
        section.optionalItems(
            "conditions",
            "a text of one line and at most " + LONGEST_CONDITION + " characters",
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
                    "another text than those before it, in small or capital letters",
                    "\"" + words.apply(twice.value()) + "\" a second time",
                    "take the second one out"));
  }

  private static String condition(String text) {
    String condition = text.strip();
    if (condition.length() > LONGEST_CONDITION || !WrittenText.isPlain(condition)) {
      throw new IllegalArgumentException("say it in fewer words, on one line");
    }
    return condition;
  }

  /** Who is checked, or empty with the faults noted on the page. */
  Optional<Coverage> coverage() {
    Optional<Who> who = section.optionalChoice("who", Worded.words(Who.values()));
    if (!section.is("who", Who.RANDOM_SHARE.word())) {
      section.leftOut("share", "only who = \"" + Who.RANDOM_SHARE.word() + "\" uses it");
      return section.has("who")
          ? who.map(w -> new Coverage(w, null))
          : Optional.of(Coverage.everyone());
    }
    Optional<Percent> share =
        section.value(
            "share",
            "a percentage of more than 0 and at most 100 such as \"20 %\"",
            DivisionSection::share);
    return share.map(percent -> new Coverage(Who.RANDOM_SHARE, percent));
  }

  private static Percent share(String text) {
    Percent share = Percent.parse(text);
    if (share.value().signum() == 0 || share.fraction().compareTo(BigDecimal.ONE) > 0) {
      throw new IllegalArgumentException("write how many percent of the division are drawn");
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
