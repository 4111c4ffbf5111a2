package lanewarden.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import lanewarden.bow.ArrowScaling;
import lanewarden.metrology.Belief;
import lanewarden.metrology.Interval;
import lanewarden.metrology.Mixture;
import lanewarden.quantity.Mass;
import lanewarden.quantity.MassUnit;
import lanewarden.quantity.Sentence;
import lanewarden.rules.EnergyLimit;
import lanewarden.rules.Overrun;
import lanewarden.rules.SetUp;

/**
 * What a heavier arrow does for a check that is over.
 *
 * <p>Of speed and energy limit the tighter one governs, and with one arrow there is one speed: so
 * it keeps both as likely as it keeps the one it keeps less likely. A heavier arrow is slower and
 * takes more energy along. The least one that is slow enough is therefore the best there is, and
 * where it breaks the energy limit, none helps.
 *
 * @param option the heavier arrow in words; empty where none helps
 * @param note why, or what else is to be known; empty where nothing is
 */
record HeavierArrow(Optional<Sentence> option, Optional<Sentence> note) {

  /** No arrow is so many times heavier than another of the same bow. */
  private static final int FAR = 10;

  /** What is enough less often than this is not called perhaps enough. */
  private static final double HOPELESS = 0.01;

  /**
   * @param figure that decides in the next check with this arrow, m/s
   */
  static HeavierArrow of(Overrun over, Belief figure, double confidence) {
    if (!over.isOfSpeed()) {
      return none(Advised.AGAINST_ENERGY);
    }
    Interval needed =
        ArrowScaling.PRACTICE.arrowFor(figure, over.arrow(), over.limit(), confidence);
    BigDecimal more = grains(needed.high() - over.arrow().siDouble(), RoundingMode.CEILING);
    Mass slow = Mass.of(whole(now(over.arrow()).add(more)), MassUnit.GRAIN);
    Optional<Mass> free = over.rule().unlimitedFrom(over.setUp());
    boolean escapes = free.filter(from -> from.isAtMost(slow)).isPresent();
    if (chance(over, figure, escapes ? free.orElseThrow() : slow) < confidence) {
      return none(Advised.TOO_MUCH_ENERGY);
    }
    Optional<Mass> most = most(over, figure, confidence);
    if (escapes) {
      return new HeavierArrow(free.map(from -> escape(from, most)), Optional.empty());
    }
    return new HeavierArrow(
        Optional.of(words(over, figure, needed, most)),
        free.filter(from -> chance(over, figure, from) >= confidence)
            .map(from -> Sentence.of(Advised.FREE_FROM, from)));
  }

  private static HeavierArrow none(Advised why) {
    return new HeavierArrow(Optional.empty(), Optional.of(Sentence.of(why)));
  }

  private static Sentence escape(Mass from, Optional<Mass> most) {
    return most.map(up -> Sentence.of(Advised.FREE_BUT, from, tooHeavy(up)))
        .orElseGet(() -> Sentence.of(Advised.FREE, from));
  }

  private static Sentence tooHeavy(Mass most) {
    return Sentence.of(Advised.TOO_HEAVY, most);
  }

  /** How likely an arrow of this mass keeps every limit that applies to it. */
  private static double chance(Overrun over, Belief figure, Mass arrow) {
    SetUp setUp = over.setUp();
    SetUp changed =
        new SetUp(
            arrow,
            setUp.drawWeight(),
            setUp.certifiedDrawWeight(),
            setUp.drawLength(),
            setUp.braceHeight());
    return over.rule()
        .fastest(changed)
        .map(
            limit ->
                ArrowScaling.PRACTICE.chance(
                    figure, over.arrow(), arrow.siDouble(), limit.siDouble()))
        .orElse(1.0);
  }

  /** The heaviest arrow that keeps the energy limit; empty where every one does, or none is set. */
  private static Optional<Mass> most(Overrun over, Belief figure, double confidence) {
    double from = over.arrow().siDouble();
    double far = FAR * from;
    return over.rule()
        .energy()
        .map(
            clause ->
                Mixture.least(
                    arrow -> -energyChance(over, clause, figure, arrow), -confidence, from, far))
        .filter(arrow -> arrow < far)
        .map(arrow -> Mass.of(grains(arrow, RoundingMode.FLOOR), MassUnit.GRAIN));
  }

  private static double energyChance(
      Overrun over, EnergyLimit clause, Belief figure, double arrow) {
    return ArrowScaling.PRACTICE.chance(
        figure, over.arrow(), arrow, Math.sqrt(2 * clause.limit().siDouble() / arrow));
  }

  /** Rounded so that the greater one is enough, and the smaller one not hopeless. */
  private static Sentence words(
      Overrun over, Belief figure, Interval needed, Optional<Mass> heaviest) {
    Mass arrow = over.arrow();
    BigDecimal now = now(arrow);
    BigDecimal floor = grains(needed.low() - arrow.siDouble(), RoundingMode.FLOOR);
    Mass lower = Mass.of(now.add(floor), MassUnit.GRAIN);
    BigDecimal least =
        chance(over, figure, lower) < HOPELESS
            ? grains(needed.low() - arrow.siDouble(), RoundingMode.CEILING)
            : floor;
    BigDecimal most = grains(needed.high() - arrow.siDouble(), RoundingMode.CEILING);
    String from = least.toPlainString();
    String to = most.toPlainString();
    String heavy = whole(now.add(most));
    if (least.signum() > 0) {
      String light = whole(now.add(least));
      return heaviest
          .map(up -> Sentence.of(Advised.HEAVIER_BUT, from, to, light, heavy, tooHeavy(up)))
          .orElseGet(() -> Sentence.of(Advised.HEAVIER, from, to, light, heavy));
    }
    return heaviest
        .map(up -> Sentence.of(Advised.HEAVIER_UP_TO_BUT, to, heavy, tooHeavy(up)))
        .orElseGet(() -> Sentence.of(Advised.HEAVIER_UP_TO, to, heavy));
  }

  private static BigDecimal now(Mass arrow) {
    return arrow.si().divide(MassUnit.GRAIN.inSi(), 1, RoundingMode.HALF_EVEN);
  }

  private static String whole(BigDecimal grains) {
    return grains.setScale(0, RoundingMode.CEILING).toPlainString();
  }

  private static BigDecimal grains(double kilograms, RoundingMode way) {
    return BigDecimal.valueOf(kilograms).divide(MassUnit.GRAIN.inSi(), 0, way);
  }
}
