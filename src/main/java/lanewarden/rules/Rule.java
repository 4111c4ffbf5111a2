package lanewarden.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lanewarden.bow.Arrow;
import lanewarden.bow.GrainsPerPound;
import lanewarden.quantity.EnergyUnit;
import lanewarden.quantity.Force;
import lanewarden.quantity.Mass;
import lanewarden.quantity.MeanSpeed;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * Everything a division demands of bow, arrow and shot.
 *
 * @param speed the speed limit, if there is one
 * @param energy the kinetic energy limit, if there is one
 * @param equipment what is asked of bow and arrow before a shot is taken
 * @param shooting how it is measured; empty where there is no limit, or where it is not measured
 * @param aftermath what comes after a verdict
 * @param conditions what the official ticks before a verdict is given, in the rule's own words
 */
public record Rule(
    Optional<SpeedLimit> speed,
    Optional<EnergyLimit> energy,
    EquipmentRule equipment,
    Optional<Shooting> shooting,
    Aftermath aftermath,
    List<String> conditions) {

  /**
   * @throws IllegalArgumentException if the parts contradict each other
   */
  public Rule {
    conditions = List.copyOf(conditions);
    if (shooting.isPresent() && speed.isEmpty() && energy.isEmpty()) {
      throw new IllegalArgumentException("shots are measured, but against no limit");
    }
    if (!aftermath.bands().isEmpty() && (speed.isEmpty() || energy.isPresent())) {
      throw new IllegalArgumentException("bands are counted from a speed limit and nothing else");
    }
  }

  /** Whether there is anything that can be checked at the line. */
  public boolean checksAnything() {
    return shooting.isPresent() || equipment.asksAnything();
  }

  /**
   * The verdict on one check. All arithmetic is exact.
   *
   * <p>Bow and arrow are asked first: what breaks a clause is not admitted, whatever it shoots. To
   * void a reading that was taken earlier, judge the list anew with {@link Shot.Voided} in its
   * place.
   *
   * @param setUp what is known of bow and arrow
   * @param ticked the conditions the official ticked
   * @param taken the shots in the order taken, void ones included
   */
  public Verdict judge(SetUp setUp, Set<String> ticked, List<Shot> taken) {
    Optional<Verdict> barred = equipment.broken(setUp);
    if (barred.isPresent()) {
      return barred.get();
    }
    List<String> missing = missing(setUp);
    if (!missing.isEmpty()) {
      return new Verdict.NotDecided(new Missing.SetUpFigures(missing));
    }
    Optional<Bound> bound = bound(setUp);
    if (bound.isEmpty()) {
      return new Verdict.Within(withoutLimit(setUp));
    }
    if (shooting.isEmpty()) {
      return new Verdict.NotDecided(new Missing.Measurement());
    }
    Verdict verdict =
        shooting
            .get()
            .judge(Screening.possible(setUp, taken), bound.get(), new Bands(aftermath.bands()));
    List<Doubt> open = doubts(setUp, taken).stream().filter(Doubt::isOpen).toList();
    if (verdict.ends() && !open.isEmpty()) {
      return new Verdict.NotDecided(new Missing.OddReadings(open));
    }
    List<String> unticked = conditions.stream().filter(c -> !ticked.contains(c)).toList();
    return unticked.isEmpty() || verdict instanceof Verdict.NotDecided
        ? verdict
        : new Verdict.NotDecided(new Missing.Conditions(unticked));
  }

  /**
   * The readings that may be no measurement of an arrow, with what speaks against each. One that
   * the bow cannot give is judged as a void shot; for the others a verdict waits until an official
   * has let them count or declared them void. Shots go on meanwhile, as far as the rule asks for
   * them: they may tell which of two readings is the odd one.
   */
  public List<Doubt> doubts(SetUp setUp, List<Shot> taken) {
    return shooting.map(how -> how.screening().doubts(setUp, taken)).orElse(List.of());
  }

  /** What an organizer is to know of readings that nobody is asked about; mostly nothing. */
  Optional<Sentence> remark() {
    return shooting.flatMap(how -> how.screening().remark(how.plan().counted(), unit()));
  }

  /**
   * The figure on which a verdict rests, readings raised and rounded as the rule says. Where it
   * fell before all were in, the figure that it can become which is nearest to the limit. Empty
   * where no reading decided.
   *
   * @param verdict of {@link #judge} on these shots
   */
  public Optional<MeanSpeed> decidingFigure(Verdict verdict, SetUp setUp, List<Shot> taken) {
    List<Shot> possible = Screening.possible(setUp, taken);
    if (verdict instanceof Verdict.Within) {
      return shooting.flatMap(how -> how.figure(possible).most());
    }
    return verdict instanceof Verdict.Over
        ? shooting.flatMap(how -> how.figure(possible).least())
        : Optional.empty();
  }

  /** Every figure that some clause asks for and nobody stated, each once. */
  private List<String> missing(SetUp setUp) {
    return Stream.concat(equipment.missing(setUp).stream(), missingForLimit(setUp).stream())
        .distinct()
        .toList();
  }

  private List<String> missingForLimit(SetUp setUp) {
    Optional<GrainsPerPound> onlyBelow = speed.flatMap(SpeedLimit::onlyBelow);
    boolean needsArrow = energy.isPresent() || onlyBelow.isPresent();
    List<String> missing = new ArrayList<>();
    if (needsArrow && setUp.arrowMass() == null) {
      missing.add(SetUp.ARROW_MASS);
    }
    if (onlyBelow.isPresent()) {
      missing.addAll(equipment.counts().missing(setUp));
    }
    return missing;
  }

  /** The tighter of the limits that apply to this set-up, whose figures are known. */
  private Optional<Bound> bound(SetUp setUp) {
    Optional<SpeedBound> fast = speed.filter(limit -> applies(limit, setUp)).map(SpeedBound::of);
    Mass mass = setUp.arrowMass();
    if (energy.isEmpty() || mass == null) {
      return fast.map(bound -> bound);
    }
    EnergyBound heavy = new EnergyBound(energy.get(), new Arrow(mass), unit());
    return Optional.of(
        fast.filter(bound -> isTighter(bound, heavy)).<Bound>map(b -> b).orElse(heavy));
  }

  private static boolean isTighter(SpeedBound fast, EnergyBound heavy) {
    int side = heavy.arrow().kineticEnergyAt(fast.speed()).compareTo(heavy.clause().limit());
    return side < 0 || (side == 0 && heavy.clause().side() == Side.AT_MOST);
  }

  private boolean applies(SpeedLimit limit, SetUp setUp) {
    Optional<Force> draw = equipment.counts().of(setUp);
    Mass mass = setUp.arrowMass();
    return limit.onlyBelow().isEmpty()
        || draw.isEmpty()
        || mass == null
        || !limit.onlyBelow().get().isReachedBy(mass, draw.get());
  }

  private Sentence withoutLimit(SetUp setUp) {
    Optional<GrainsPerPound> onlyBelow = speed.flatMap(SpeedLimit::onlyBelow);
    Mass arrow = setUp.arrowMass();
    if (onlyBelow.isEmpty() || arrow == null) {
      List<Sentence> figures = equipment.figures(setUp);
      return figures.isEmpty()
          ? Sentence.of(Because.NOTHING_LIMITED)
          : Sentence.of(Because.AS_ASKED, new Sentence.Row(", ", figures));
    }
    return Sentence.of(
        Because.HEAVY_ENOUGH, arrow, onlyBelow.get(), equipment.counts().of(setUp).orElseThrow());
  }

  /** The unit in which speeds are typed and shown where none is written. */
  public SpeedUnit unit() {
    return speed
        .map(limit -> limit.limit().unit())
        .or(
            () ->
                energy.map(
                    limit ->
                        limit.limit().unit() == EnergyUnit.JOULE
                            ? SpeedUnit.METRES_PER_SECOND
                            : SpeedUnit.FEET_PER_SECOND))
        .orElse(SpeedUnit.FEET_PER_SECOND);
  }

  /**
   * The fastest speed that keeps the limit for this set-up, for screens: exact for a speed limit,
   * rounded down for an energy limit. Empty where no limit applies or a figure is missing.
   */
  public Optional<Speed> fastest(SetUp setUp) {
    return missingForLimit(setUp).isEmpty() ? bound(setUp).map(Bound::fastest) : Optional.empty();
  }

  /**
   * The fastest true speed that the rule tolerates for this set-up, whatever guard band stands
   * about it. Empty where no limit applies or a figure is missing.
   */
  public Optional<Speed> tolerated(SetUp setUp) {
    return missingForLimit(setUp).isEmpty() ? bound(setUp).map(Bound::tolerated) : Optional.empty();
  }

  /**
   * The least arrow, to a tenth of a grain, to which the speed limit does not apply with the draw
   * weight of this set-up; empty where it applies to every arrow, or no draw weight is known.
   */
  public Optional<Mass> unlimitedFrom(SetUp setUp) {
    return speed
        .flatMap(SpeedLimit::onlyBelow)
        .flatMap(ratio -> equipment.counts().of(setUp).map(ratio::leastArrow));
  }

  /**
   * The most draw weight, to a tenth of a pound-force, at which the speed limit does not apply to
   * the arrow of this set-up; empty where it applies to every arrow, or no arrow mass is known.
   */
  public Optional<Force> unlimitedUpTo(SetUp setUp) {
    return speed
        .flatMap(SpeedLimit::onlyBelow)
        .flatMap(ratio -> Optional.ofNullable(setUp.arrowMass()).map(ratio::mostDraw));
  }

  /** Whether this reading alone, rounded as the rule says, is over the limit of this set-up. */
  public boolean exceeds(Speed reading, SetUp setUp) {
    if (!missingForLimit(setUp).isEmpty()) {
      return false;
    }
    Speed judged = shooting.map(how -> how.treatment().of(reading)).orElse(reading);
    return bound(setUp).filter(bound -> !bound.admits(judged)).isPresent();
  }

  /** The limit that governs this set-up in words; empty where none applies or one is unknown. */
  public Optional<Sentence> limitInWords(SetUp setUp) {
    return missingForLimit(setUp).isEmpty() ? bound(setUp).map(Bound::inWords) : Optional.empty();
  }

  /** The figures of bow and arrow that some clause asks for, as the screens name them. */
  public List<String> figuresAsked() {
    return missing(SetUp.unknown());
  }

  /**
   * Every clause in plain sentences, made from the rule itself.
   *
   * @param checked whether anybody is: else nothing is ticked, and nothing follows
   */
  List<Sentence> sentences(boolean checked) {
    List<Sentence> sentences = new ArrayList<>();
    sentences.add(limitSentence());
    energy.ifPresent(
        limit ->
            sentences.add(
                Sentence.of(
                    limit.side() == Side.BELOW ? Demand.ENERGY_BELOW : Demand.ENERGY_AT_MOST,
                    limit.limit())));
    sentences.addAll(equipment.sentences());
    shooting.ifPresent(how -> sentences.addAll(how.sentences(!aftermath.bands().isEmpty())));
    if (checked && checksAnything()) {
      sentences.addAll(aftermath.sentences());
    }
    if (checked && !conditions.isEmpty()) {
      sentences.add(
          Sentence.of(
              someAreUnlimited() ? Demand.TICKED_UNLESS_UNLIMITED : Demand.TICKED,
              new Sentence.Row("; ", conditions)));
    }
    return sentences;
  }

  /** Whether some arrows have no limit at all: they pass without a shot, and without a tick. */
  private boolean someAreUnlimited() {
    return energy.isEmpty() && speed.flatMap(SpeedLimit::onlyBelow).isPresent();
  }

  private Sentence limitSentence() {
    if (speed.isEmpty()) {
      return Sentence.of(
          energy.isPresent() || equipment.asksAnything() ? Demand.NO_LIMIT : Demand.NOTHING);
    }
    SpeedLimit limit = speed.get();
    Sentence sentence =
        Sentence.of(
            limit.side() == Side.BELOW ? Demand.BELOW : Demand.AT_MOST,
            limit.tolerance().inWords(limit.limit()));
    if (!(limit.tolerance() instanceof Tolerance.None) && limit.rounding().isNone()) {
      sentence = Sentence.of(Because.BESIDE, sentence, Wording.plain(limit.rounded()));
    }
    sentence = limit.rounding().after(sentence, limit.rounded());
    Sentence whole = limit.guard().after(sentence, Wording.plain(limit.allowed()));
    return limit
        .onlyBelow()
        .map(
            ratio -> Sentence.of(Demand.TO_LIGHT_ARROWS, whole, ratio, equipment.counts().phrase()))
        .orElseGet(() -> Sentence.of(Demand.ALWAYS, whole));
  }

  /** The whole rule in one English text, as for those who are checked. */
  public String inWords() {
    return Sentence.joined(sentences(true));
  }
}
