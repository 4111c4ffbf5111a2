package lanewarden.metrology;

import java.math.BigDecimal;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * Whether two speeds that should be the same are: of two instruments in series, of the two halves
 * of a three-gate instrument, or of two shots of one arrow.
 *
 * <p>The second only confirms the first: the reading stays the first instrument's, never a mean of
 * both.
 *
 * @param tolerance the most they may differ; a share is of their mean, so that neither comes first
 */
public record PairAgreement(Deviation tolerance) {

  private static final BigDecimal TWO = BigDecimal.valueOf(2);

  /** Whether they differ by no more than the tolerance; exact, the same either way round. */
  public boolean agree(Speed one, Speed other) {
    // doubled on both sides, so that a mean of two needs no division
    BigDecimal sum = one.si().add(other.si());
    BigDecimal allowed =
        tolerance instanceof Deviation.Share
            ? tolerance.siAt(sum)
            : tolerance.siAt(sum).multiply(TWO);
    return one.si().subtract(other.si()).abs().multiply(TWO).compareTo(allowed) <= 0;
  }

  /** What was compared and how it came out, in the unit of the first. */
  public String inWords(Speed one, Speed other) {
    Speed apart =
        Speed.of(one.si().subtract(other.si()).abs(), SpeedUnit.METRES_PER_SECOND)
            .to(one.unit(), 2);
    return one
        + " and "
        + other
        + " are "
        + apart
        + " apart, "
        + (agree(one, other) ? "within" : "more than")
        + " the "
        + tolerance
        + " allowed";
  }
}
