package lanewarden.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanewarden.bow.DrawScaling;
import lanewarden.metrology.Belief;
import lanewarden.metrology.Interval;
import lanewarden.quantity.Force;
import lanewarden.quantity.Sentence;
import lanewarden.rules.Overrun;
import lanewarden.rules.SetUp;
import lanewarden.rules.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * What a lower draw weight does for a check that is over.
 *
 * @param option the lower draw weight in words; empty where the rule does not admit it
 * @param note why none is in words; empty where one is
 */
record LowerDraw(Optional<Sentence> option, Optional<Sentence> note) {
  private static final int SHOWN = 1;

  /**
   * @param figure that decides in the next check with the bow as it is set now, m/s
   */
  static LowerDraw of(Overrun over, Belief figure, double confidence) {
    Interval share = DrawScaling.PRACTICE.shareFor(figure, over.limit(), confidence);
    Force now = over.setUp().drawWeight();
    if (now == null) {
      return new LowerDraw(Optional.of(inHundredths(share)), Optional.empty());
    }
    Force enough = times(now, share.low(), RoundingMode.FLOOR);
    Optional<Force> free = unlimitedAt(over).filter(at -> at.compareTo(enough) >= 0);
    Force least = free.orElse(enough);
    if (over.rule().judge(with(over.setUp(), least), Set.of(), List.of())
        instanceof Verdict.NotAdmitted barred) {
      return new LowerDraw(
          Optional.empty(), Optional.of(Sentence.of(Advised.TOO_LOW, barred.clause())));
    }
    return new LowerDraw(
        Optional.of(
            free.map(at -> Sentence.of(Advised.LOW_AND_FREE, at))
                .orElseGet(() -> inForce(now, share, enough))),
        Optional.empty());
  }

  private static Sentence inForce(Force now, Interval share, Force enough) {
    BigDecimal most = plain(now.value().subtract(enough.value()));
    BigDecimal least =
        plain(
            now.value()
                .subtract(times(now, Math.min(1, share.high()), RoundingMode.CEILING).value()));
    String unit = now.unit().symbol();
    return least.signum() > 0
        ? Sentence.of(Advised.LOWER, least, most, unit)
        : Sentence.of(Advised.LOWER_UP_TO, most, unit);
  }

  private static Sentence inHundredths(Interval share) {
    BigDecimal least = BigDecimal.valueOf(100 * (1 - share.high())).setScale(0, RoundingMode.FLOOR);
    BigDecimal most = BigDecimal.valueOf(100 * (1 - share.low())).setScale(0, RoundingMode.CEILING);
    return least.signum() > 0
        ? Sentence.of(Advised.LOWER_SHARE, least, most)
        : Sentence.of(Advised.LOWER_SHARE_UP_TO, most);
  }

  /** Without zeros that say nothing, and not written as a power of ten. */
  private static BigDecimal plain(BigDecimal force) {
    BigDecimal stripped = force.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }

  private static Force times(Force force, double share, RoundingMode way) {
    return Force.of(
        force.value().multiply(BigDecimal.valueOf(share)).setScale(SHOWN, way), force.unit());
  }

  /** The draw weight at which no limit applies to the arrow, where setting the bow changes that. */
  private static Optional<Force> unlimitedAt(Overrun over) {
    return over.rule()
        .unlimitedUpTo(over.setUp())
        .filter(lower -> over.rule().fastest(with(over.setUp(), lower)).isEmpty());
  }

  private static SetUp with(SetUp setUp, @Nullable Force drawWeight) {
    return new SetUp(
        setUp.arrowMass(),
        drawWeight,
        setUp.certifiedDrawWeight(),
        setUp.drawLength(),
        setUp.braceHeight());
  }
}
