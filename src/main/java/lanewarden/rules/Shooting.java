package lanewarden.rules;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import lanewarden.metrology.DecidingFigure;
import lanewarden.quantity.MeanSpeed;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;

/**
 * How a division is measured: its shots, what is done to a reading, and how the readings decide.
 *
 * @param plan how many shots there are
 * @param decision how the counted readings decide
 * @param treatment what is done to each reading before it decides
 * @param spread the most that the fastest counted reading may exceed the slowest by; else the check
 *     ends undecided
 * @param screening which readings are not believed as they come
 */
public record Shooting(
    ShotPlan plan,
    Decision decision,
    Treatment treatment,
    Optional<Speed> spread,
    Screening screening) {

  /**
   * @throws IllegalArgumentException if the parts contradict each other
   */
  public Shooting {
    if (decision instanceof Decision.WithinCount k && k.needed() > plan.counted()) {
      throw new IllegalArgumentException(
          k.needed() + " of " + plan.counted() + " readings can never be within");
    }
    if (spread.isPresent() && plan.counted() < 2) {
      throw new IllegalArgumentException("a single reading has no spread");
    }
  }

  /**
   * The verdict on the shots of one check against a bound. All arithmetic is exact.
   *
   * <p>It falls at the first shot that leaves nothing open: when every completion by readings of
   * whatever speed has the same outcome, when one void too many was shot, or when the shots left
   * cannot bring a decision. Shots listed after that one do not change it, but for one thing: who
   * is over by the readings that stand stays over, and in the band they tell, even where voids or
   * shots were spent before the last of them. A reading voided late would otherwise hide those
   * taken after it.
   *
   * @param bands how far over with which consequence: an <em>over</em> falls when its band is
   *     settled too
   */
  Verdict judge(List<Shot> taken, Bound bound, Bands bands) {
    List<Speed> readings = new ArrayList<>();
    int used = 0;
    Verdict verdict = verdict(readings, used, bound, bands);
    for (Shot shot : taken) {
      if (verdict.ends()) {
        Verdict ended = verdict;
        return isSpent(ended, readings, bound, bands)
            ? overByWhatStands(taken, bound, bands).orElseGet(() -> afterAll(taken, ended, bound))
            : ended;
      }
      used++;
      if (shot instanceof Shot.Read read) {
        readings.add(treatment.of(read.speed()));
      }
      verdict = verdict(readings, used, bound, bands);
    }
    return verdict;
  }

  /** Whether the check ended because voids or shots were spent, not by its readings. */
  private boolean isSpent(Verdict ended, List<Speed> readings, Bound bound, Bands bands) {
    if (ended instanceof Verdict.NotDecided open) {
      return open.missing() instanceof Missing.VoidsSpent
          || open.missing() instanceof Missing.ShotsSpent;
    }
    return ended instanceof Verdict.Over && !isSettled(readings, bound, bands);
  }

  /** The fail that the readings bring as if no void stood between them; empty where they do not. */
  private Optional<Verdict> overByWhatStands(List<Shot> taken, Bound bound, Bands bands) {
    List<Speed> readings = new ArrayList<>();
    Optional<Verdict> over = Optional.empty();
    for (Shot shot : taken) {
      boolean open = over.isEmpty() || !isSettled(readings, bound, bands);
      if (open && shot instanceof Shot.Read read && readings.size() < plan.counted()) {
        readings.add(treatment.of(read.speed()));
        over = over(decide(readings, bound), readings, bound, bands);
      }
    }
    return over;
  }

  /** A check that ended undecided, with the count of all its shots, later ones too. */
  private Verdict afterAll(List<Shot> taken, Verdict ended, Bound bound) {
    List<Speed> standing = compared(taken);
    int missing = missing(decide(standing, bound), true);
    return ended instanceof Verdict.NotDecided && missing > 0
        ? spent(standing.size(), taken.size(), missing).orElse(ended)
        : ended;
  }

  /** The readings that stand as they are compared, as many as count. */
  private List<Speed> compared(List<Shot> taken) {
    return taken.stream()
        .filter(Shot.Read.class::isInstance)
        .map(shot -> treatment.of(((Shot.Read) shot).speed()))
        .limit(plan.counted())
        .toList();
  }

  private boolean isSettled(List<Speed> readings, Bound bound, Bands bands) {
    return !bands.any()
        || bands.isSettled(decision.figure(readings, plan.counted()), bound.fastest());
  }

  /** A fail with the least band that it can have; empty for every other verdict. */
  private Optional<Verdict> over(Verdict verdict, List<Speed> readings, Bound bound, Bands bands) {
    if (!(verdict instanceof Verdict.Over over) || !bands.any()) {
      return Optional.of(verdict).filter(Verdict.Over.class::isInstance);
    }
    MeanSpeed figure = decision.figure(readings, plan.counted()).atLeast();
    Sentence why =
        plan.counted() == 1
            ? over.why()
            : Sentence.of(
                Because.HOW_FAR_OVER, over.why(), decision.figureName(), bound.show(figure));
    return Optional.of(new Verdict.Over(why, bands.of(figure, bound.fastest())));
  }

  private Verdict verdict(List<Speed> readings, int used, Bound bound, Bands bands) {
    Verdict decided = decide(readings, bound);
    Verdict verdict = over(decided, readings, bound, bands).orElse(decided);
    boolean settled = !(verdict instanceof Verdict.Over) || isSettled(readings, bound, bands);
    int atLeast = missing(verdict, settled);
    if (atLeast == 0) {
      return verdict;
    }
    Optional<Verdict> spent = spent(readings.size(), used, atLeast);
    if (spent.isPresent()) {
      // who is over already does not get off by voids: only the band stays the least it can be
      return verdict instanceof Verdict.Over ? verdict : spent.get();
    }
    int fewest = bands.any() ? fewest(atLeast, readings, bound, bands) : atLeast;
    return Counting.moreReadings(Math.min(fewest, plan.allowed() - used));
  }

  /** The least number of further readings that can change anything; 0 where nothing is open. */
  private static int missing(Verdict verdict, boolean settled) {
    if (verdict instanceof Verdict.NotDecided open
        && open.missing() instanceof Missing.MoreReadings more) {
      return more.atLeast();
    }
    return settled ? 0 : 1;
  }

  /**
   * The fewest further readings that can decide with their band. If so many of any speeds can, so
   * many of one speed can, since only the place among those taken matters.
   */
  private int fewest(int atLeast, List<Speed> readings, Bound bound, Bands bands) {
    List<Speed> tried = new ArrayList<>(readings);
    tried.addAll(bands.telling(treatment.rounding(), bound.fastest()));
    int more = atLeast;
    while (more < plan.counted() - readings.size()
        && !anySettles(tried, more, readings, bound, bands)) {
      more++;
    }
    return more;
  }

  private boolean anySettles(
      List<Speed> tried, int more, List<Speed> readings, Bound bound, Bands bands) {
    for (Speed speed : tried) {
      List<Speed> longer = new ArrayList<>(readings);
      longer.addAll(Collections.nCopies(more, speed));
      Verdict verdict = decide(longer, bound);
      if (verdict instanceof Verdict.Within
          || (verdict instanceof Verdict.Over
              && bands.isSettled(decision.figure(longer, plan.counted()), bound.fastest()))) {
        return true;
      }
    }
    return false;
  }

  private Optional<Verdict> spent(int readings, int used, int atLeast) {
    int voided = used - readings;
    int left = plan.allowed() - used;
    if (voided > plan.voids()) {
      return Optional.of(new Verdict.NotDecided(new Missing.VoidsSpent(voided, plan.voids())));
    }
    if (atLeast > left) {
      return Optional.of(
          new Verdict.NotDecided(new Missing.ShotsSpent(left, plan.allowed(), atLeast)));
    }
    return Optional.empty();
  }

  private Verdict decide(List<Speed> readings, Bound bound) {
    Verdict verdict =
        spread
            .flatMap(most -> spreadVerdict(readings, most))
            .orElseGet(() -> limitVerdict(readings, bound));
    return treatment.isNone() ? verdict : withTreatment(verdict);
  }

  /** The reason shows treated readings: it must say so, or they seem to be none of those taken. */
  private Verdict withTreatment(Verdict verdict) {
    if (verdict instanceof Verdict.Within within) {
      return new Verdict.Within(treated(within.why()));
    }
    return verdict instanceof Verdict.Over over
        ? new Verdict.Over(treated(over.why()), over.band())
        : verdict;
  }

  private Sentence treated(Sentence why) {
    return Sentence.of(Because.TREATED, why, treatment.inWords());
  }

  private Verdict limitVerdict(List<Speed> readings, Bound bound) {
    if (plan.counted() > 1 || readings.isEmpty()) {
      return decision.on(readings, plan.counted(), bound);
    }
    // Of a single reading the mean, the median and the highest are all the same thing.
    Speed only = readings.get(0);
    return bound.verdict(bound.admits(only), Sentence.of(Because.READING, bound.show(only)));
  }

  /** Too wide a spread, or readings still to come that may make it so. */
  private Optional<Verdict> spreadVerdict(List<Speed> readings, Speed most) {
    if (!readings.isEmpty()) {
      Speed fastest = readings.stream().max(Speed::compareTo).orElseThrow();
      Speed slowest = readings.stream().min(Speed::compareTo).orElseThrow();
      if (fastest.si().subtract(slowest.si()).compareTo(most.si()) > 0) {
        return Optional.of(
            new Verdict.NotDecided(new Missing.SpreadTooWide(slowest, fastest, most)));
      }
    }
    return readings.size() < plan.counted()
        ? Optional.of(Counting.moreReadings(plan.counted() - readings.size()))
        : Optional.empty();
  }

  /** Between which bounds the figure that decides lies by these shots, as the rule takes them. */
  FigureRange figure(List<Shot> taken) {
    return decision.figure(compared(taken), plan.counted());
  }

  /**
   * Sentences for the official's screen.
   *
   * @param banded whether it matters how far over a reading is
   */
  List<Sentence> sentences(boolean banded) {
    List<Sentence> sentences = new ArrayList<>();
    sentences.add(decisionSentence(banded));
    if (banded && plan.counted() > 1) {
      sentences.add(Sentence.of(Demand.HOW_FAR_OVER, decision.figureName()));
    }
    if (!treatment.isNone()) {
      sentences.add(Sentence.of(Demand.EACH_FIRST, treatment.inWords()));
    }
    sentences.addAll(screening.sentences(atOnce(banded)));
    spread.ifPresent(most -> sentences.add(Sentence.of(Demand.SPREAD, plan.counted(), most)));
    sentences.add(plan.inWords());
    return sentences;
  }

  /** What a first reading must be to decide by itself; empty where it never does. */
  private Optional<Demand> atOnce(boolean banded) {
    if (spread.isPresent()) {
      return Optional.empty();
    }
    return decision
        .decidesByOne(plan.counted())
        .map(side -> banded && side == Demand.OVER ? Demand.OVER_FOR_CERTAIN : side);
  }

  /** The figure of the readings that decides. */
  public DecidingFigure deciding() {
    int counted = plan.counted();
    if (decision instanceof Decision.WithinCount some) {
      return DecidingFigure.withinCount(some.needed(), counted);
    }
    if (decision instanceof Decision.Highest) {
      return DecidingFigure.highest(counted);
    }
    if (decision instanceof Decision.Median) {
      return DecidingFigure.median(counted);
    }
    return decision instanceof Decision.FirstWithin
        ? DecidingFigure.firstWithin(counted)
        : DecidingFigure.mean(counted);
  }

  private Sentence decisionSentence(boolean banded) {
    if (plan.counted() == 1) {
      return Sentence.of(Demand.ONE_READING);
    }
    if (spread.isPresent()) {
      return decision.withAllIn(plan.counted());
    }
    return banded ? decision.inBands(plan.counted()) : decision.inWords(plan.counted());
  }
}
