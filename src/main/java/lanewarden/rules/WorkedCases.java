package lanewarden.rules;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import lanewarden.bow.GrainsPerPound;
import lanewarden.quantity.Force;
import lanewarden.quantity.ForceUnit;
import lanewarden.quantity.Mass;
import lanewarden.quantity.MassUnit;
import lanewarden.quantity.Speed;

/**
 * Cases worked out from a rule: inside its limit, at the edge and outside, in shots where it is
 * measured and in bow and arrow where it asks for those.
 */
final class WorkedCases {

  /** A draw weight and an arrow of ordinary size, where the rule says nothing nearer. */
  private static final Force ORDINARY_BOW = Force.of("50", ForceUnit.POUND_FORCE);

  private static final BigDecimal ORDINARY_ARROW = new BigDecimal("400");

  private static final BigDecimal MARGIN = new BigDecimal("0.97");
  private static final BigDecimal SLOWER = new BigDecimal("0.9");
  private static final BigDecimal HALF = new BigDecimal("0.5");
  private static final BigDecimal TENTH = new BigDecimal("0.1");
  private static final BigDecimal A_LITTLE = new BigDecimal("0.4");
  private static final BigDecimal CLEARLY = new BigDecimal("0.8");

  private final Rule rule;
  private final List<WorkedCase> cases = new ArrayList<>();

  private WorkedCases(Rule rule) {
    this.rule = rule;
  }

  /**
   * Three in shots, and one more for the last of several bands, for an energy limit that governs
   * heavier arrows only, and for every clause on bow and arrow; none where nothing is checked, nor
   * one whose verdict is not what its name says.
   */
  static List<WorkedCase> of(Rule rule) {
    WorkedCases worked = new WorkedCases(rule);
    SetUp setUp = worked.limited();
    if (rule.shooting().isPresent() && rule.fastest(setUp).isPresent()) {
      Shooting how = rule.shooting().get();
      Speed fastest = rule.fastest(setUp).get();
      worked.shots(how, setUp, fastest);
      worked.lastBand(how, setUp, fastest);
      worked.energyGoverns(how, setUp, fastest);
    }
    rule.speed().flatMap(SpeedLimit::onlyBelow).ifPresent(ratio -> worked.heavyArrow(ratio));
    worked.equipment();
    return worked.cases;
  }

  private void shots(Shooting how, SetUp setUp, Speed fastest) {
    BigDecimal edge = edge(how, setUp, fastest);
    BigDecimal round = edge.multiply(MARGIN).setScale(0, RoundingMode.HALF_UP);
    BigDecimal inside =
        round.compareTo(edge) < 0
            ? round
            : edge.multiply(MARGIN).setScale(edge.scale(), RoundingMode.DOWN);
    shots(Worked.INSIDE, how, setUp, fastest, WorkedCases::isWithin, List.of(inside));
    shots(Worked.EDGE, how, setUp, fastest, WorkedCases::isWithin, List.of(edge));
    outside(Worked.OUTSIDE, how, setUp, fastest);
  }

  private void outside(Worked name, Shooting how, SetUp setUp, Speed fastest) {
    BigDecimal next =
        edge(how, setUp, fastest).add(BigDecimal.ONE.movePointLeft(decimals(how, fastest)));
    shots(name, how, setUp, fastest, Verdict.Over.class::isInstance, List.of(next));
  }

  /** The fastest reading that keeps the limit by itself, whatever is done to it. */
  private BigDecimal edge(Shooting how, SetUp setUp, Speed fastest) {
    return fastest(reading -> !rule.exceeds(reading, setUp), fastest, decimals(how, fastest));
  }

  /**
   * The fastest reading of so many decimals of which something holds that holds of slower ones too.
   *
   * @param about a speed near it, in whose unit it is
   */
  private static BigDecimal fastest(Predicate<Speed> holds, Speed about, int decimals) {
    BigInteger slow = BigInteger.ZERO;
    BigInteger fast =
        about.value().setScale(decimals, RoundingMode.UP).unscaledValue().add(BigInteger.ONE);
    while (holds.test(reading(fast, about, decimals))) {
      fast = fast.shiftLeft(1);
    }
    while (fast.subtract(slow).compareTo(BigInteger.ONE) > 0) {
      BigInteger middle = slow.add(fast).shiftRight(1);
      if (holds.test(reading(middle, about, decimals))) {
        slow = middle;
      } else {
        fast = middle;
      }
    }
    return new BigDecimal(slow, decimals);
  }

  private static Speed reading(BigInteger steps, Speed about, int decimals) {
    return Speed.of(new BigDecimal(steps, decimals), about.unit());
  }

  /** One as instruments show, or as many as it takes to see the edge. */
  private static int decimals(Shooting how, Speed fastest) {
    BigDecimal shown =
        how.treatment().isNone()
            ? fastest.value()
            : how.treatment().rounding().step().map(Speed::value).orElse(BigDecimal.ONE);
    return Math.max(1, shown.stripTrailingZeros().scale());
  }

  /**
   * In the last of several bands, if any reading lies there; what is just outside is in the first.
   */
  private void lastBand(Shooting how, SetUp setUp, Speed allowed) {
    List<Band> bands = rule.aftermath().bands();
    int last = bands.size() - 1;
    if (last > 0) {
      Speed from = bands.get(last - 1).edge(allowed);
      Speed to = bands.get(last).edge(allowed);
      int decimals = decimals(how, allowed);
      BigDecimal middle =
          how.treatment().reading(from.value().add(to.value()).multiply(HALF), decimals);
      BigDecimal end =
          fastest(reading -> !how.treatment().of(reading).isMoreThan(to), allowed, decimals);
      shots(
          Worked.FURTHER_OUTSIDE,
          how,
          setUp,
          allowed,
          verdict ->
              verdict instanceof Verdict.Over over
                  && over.band().equals(Optional.of(bands.get(last))),
          List.of(middle, end));
    }
  }

  /** An arrow so heavy that the energy limit is the tighter one, where it is not so already. */
  private void energyGoverns(Shooting how, SetUp ordinary, Speed fastest) {
    Optional<Speed> allowed = rule.speed().map(SpeedLimit::allowed).filter(fastest::equals);
    if (rule.energy().isEmpty() || allowed.isEmpty()) {
      return;
    }
    BigDecimal speed = allowed.get().si().multiply(SLOWER);
    BigDecimal kilograms =
        rule.energy().get().limit().si().divide(speed.pow(2).multiply(HALF), MathContext.DECIMAL64);
    Mass arrow =
        Mass.of(kilograms.divide(MassUnit.GRAIN.inSi(), 0, RoundingMode.CEILING), MassUnit.GRAIN);
    SetUp heavy = new SetUp(arrow, ordinary.drawWeight(), ordinary.certifiedDrawWeight());
    rule.fastest(heavy).ifPresent(governed -> outside(Worked.OUTSIDE_HEAVY, how, heavy, governed));
  }

  /** Readings that make the deciding figure exactly this; some of the others lie elsewhere. */
  private static List<Speed> readings(Shooting how, BigDecimal figure, Speed like) {
    List<BigDecimal> readings = new ArrayList<>();
    int counted = how.plan().counted();
    // readings around a very slow limit would lie below zero
    boolean slow = figure.compareTo(BigDecimal.ONE) < 0;
    // where the official would be asked about readings that differ, a case tells nothing
    boolean apart = how.spread().isPresent() || how.screening().asks();
    boolean alike = apart || !how.treatment().rounding().isNone() || slow;
    if (how.decision() instanceof Decision.Mean || alike) {
      for (int i = 0; i < counted; i++) {
        boolean pair = !alike && i < counted - counted % 2;
        BigDecimal off = i % 2 == 0 ? A_LITTLE : A_LITTLE.negate();
        readings.add(pair ? figure.add(off) : figure);
      }
    } else {
      int place = place(how.decision(), counted);
      for (int i = counted; i > place; i--) {
        readings.add(figure.add(CLEARLY));
      }
      for (int i = 1; i < place; i++) {
        readings.add(figure.subtract(A_LITTLE));
      }
      if (how.decision() instanceof Decision.Median && counted % 2 == 0) {
        readings.remove(0);
        readings.add(figure);
      }
      readings.add(figure);
    }
    return readings.stream().map(value -> Speed.of(value, like.unit())).toList();
  }

  /** Which reading decides, counted from the slowest. */
  private static int place(Decision decision, int counted) {
    if (decision instanceof Decision.WithinCount some) {
      return some.needed();
    }
    if (decision instanceof Decision.FirstWithin) {
      return 1;
    }
    return decision instanceof Decision.Median ? (counted + 1) / 2 : counted;
  }

  /** An arrow that reaches the mass from which on there is no limit. */
  private void heavyArrow(GrainsPerPound ratio) {
    add(Worked.HEAVY_ARROW, setUp(ratio.leastArrow(bow()), bow()));
  }

  private void equipment() {
    EquipmentRule asked = rule.equipment();
    if (asked.leastArrow().isPresent()) {
      Mass least = asked.leastArrow().get().leastArrow(bow());
      add(Worked.LIGHTEST_ARROW, setUp(least, bow()));
      add(Worked.ARROW_TOO_LIGHT, setUp(grains(least, -1), bow()));
    }
    asked
        .leastDraw()
        .ifPresent(least -> add(Worked.BOW_TOO_WEAK, strong(least, BigDecimal.ONE.negate())));
    asked.mostDraw().ifPresent(most -> add(Worked.BOW_TOO_STRONG, strong(most, BigDecimal.ONE)));
  }

  private SetUp strong(Force draw, BigDecimal more) {
    BigDecimal value = draw.value().add(more).max(TENTH);
    return setUp(heavyEnough(), Force.of(value, draw.unit()));
  }

  /** The first of the figures with which the verdict is what the name says; else no case. */
  private void shots(
      Worked name,
      Shooting how,
      SetUp setUp,
      Speed like,
      Predicate<Verdict> isSo,
      List<BigDecimal> figures) {
    figures.stream()
        .map(figure -> worked(name, setUp, readings(how, figure, like)))
        .filter(worked -> isSo.test(worked.verdict()))
        .findFirst()
        .ifPresent(cases::add);
  }

  private static boolean isWithin(Verdict verdict) {
    return verdict instanceof Verdict.Within;
  }

  private void add(Worked name, SetUp setUp) {
    cases.add(worked(name, setUp, List.of()));
  }

  private WorkedCase worked(Worked name, SetUp setUp, List<Speed> readings) {
    List<Shot> shots = readings.stream().<Shot>map(Shot.Read::new).toList();
    Verdict verdict = rule.judge(setUp, new HashSet<>(rule.conditions()), shots);
    return new WorkedCase(name, setUp, readings, verdict);
  }

  /** A set-up that every clause admits and the limit applies to, as far as the rule leaves one. */
  private SetUp limited() {
    Optional<GrainsPerPound> onlyBelow = rule.speed().flatMap(SpeedLimit::onlyBelow);
    Mass arrow = onlyBelow.map(ratio -> grains(ratio.leastArrow(bow()), -1)).orElse(heavyEnough());
    return setUp(arrow, bow());
  }

  private Mass heavyEnough() {
    BigDecimal ordinary = ORDINARY_ARROW;
    Mass least =
        rule.equipment()
            .leastArrow()
            .map(ratio -> ratio.leastArrow(bow()))
            .orElse(Mass.of(ordinary, MassUnit.GRAIN));
    return least.value().compareTo(ordinary) > 0 ? least : Mass.of(ordinary, MassUnit.GRAIN);
  }

  private Force bow() {
    EquipmentRule asked = rule.equipment();
    Force bow = ORDINARY_BOW;
    if (asked.leastDraw().filter(least -> least.isMoreThan(bow)).isPresent()) {
      return asked.leastDraw().get();
    }
    return asked.mostDraw().filter(bow::isMoreThan).orElse(bow);
  }

  private static Mass grains(Mass mass, int more) {
    return Mass.of(mass.value().add(BigDecimal.valueOf(more)).max(TENTH), MassUnit.GRAIN);
  }

  /** Only figures that some clause asks for. */
  private SetUp setUp(Mass arrow, Force draw) {
    List<String> asked = rule.figuresAsked();
    boolean set = asked.contains(SetUp.DRAW_WEIGHT);
    boolean certified = asked.contains(SetUp.CERTIFIED_DRAW_WEIGHT);
    // where the greater counts, the certified one is made the lesser, to show it
    Force certificate = set ? Force.of(draw.value().subtract(TENTH), draw.unit()) : draw;
    return new SetUp(
        asked.contains(SetUp.ARROW_MASS) ? arrow : null,
        set ? draw : null,
        certified ? certificate : null);
  }
}
