package lanewarden.rules;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import lanewarden.bow.Arrow;
import lanewarden.quantity.Energy;
import lanewarden.quantity.EnergyUnit;
import lanewarden.quantity.MeanSpeed;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * The most kinetic energy a rule lets pass, for one arrow: ½mv² is compared, exactly.
 *
 * @param arrow as weighed
 * @param unit in which the fastest speed is shown
 */
record EnergyBound(EnergyLimit clause, Arrow arrow, SpeedUnit unit) implements Bound {

  private static final BigDecimal HALF = new BigDecimal("0.5");
  private static final int SHOWN = 2;

  @Override
  public boolean admits(Speed reading) {
    return clause.side().keeps(arrow.kineticEnergyAt(reading).compareTo(clause.limit()));
  }

  @Override
  public boolean admits(MeanSpeed mean) {
    // ½m·mean² against E, multiplied out: ½m·sum² against E·count², so that nothing is divided
    return clause.side().keeps(compare(mean));
  }

  private int compare(MeanSpeed mean) {
    BigDecimal count = BigDecimal.valueOf(mean.count());
    BigDecimal energy = arrow.mass().si().multiply(mean.sumSi().pow(2)).multiply(HALF);
    return energy.compareTo(clause.limit().si().multiply(count.pow(2)));
  }

  @Override
  public Sentence show(Speed reading) {
    Energy exact = arrow.kineticEnergyAt(reading);
    return Sentence.of(
        Because.BESIDE,
        reading,
        Wording.plain(
            Wording.rounded(
                decimals -> exact.to(clause.limit().unit(), decimals),
                clause.limit(),
                exact.compareTo(clause.limit()))));
  }

  @Override
  public Sentence show(MeanSpeed mean) {
    Energy shown =
        Wording.rounded(decimals -> energy(mean, decimals), clause.limit(), compare(mean));
    return Sentence.of(
        Because.BESIDE, Wording.plain(mean.to(unit, Wording.DECIMALS)), Wording.plain(shown));
  }

  private Energy energy(MeanSpeed mean, int decimals) {
    BigDecimal count = BigDecimal.valueOf(mean.count()).pow(2);
    BigDecimal timesCount = arrow.mass().si().multiply(mean.sumSi().pow(2)).multiply(HALF);
    EnergyUnit shown = clause.limit().unit();
    return Energy.of(
        timesCount.divide(count.multiply(shown.inSi()), decimals, RoundingMode.HALF_EVEN), shown);
  }

  @Override
  public Speed fastest() {
    BigDecimal metresPerSecond =
        clause
            .limit()
            .si()
            .divide(HALF.multiply(arrow.mass().si()), MathContext.DECIMAL128)
            .sqrt(MathContext.DECIMAL128);
    return Speed.of(metresPerSecond.divide(unit.inSi(), SHOWN, RoundingMode.DOWN), unit);
  }

  @Override
  public Sentence inWords() {
    return Sentence.of(Because.FOR_ARROW, clause.inWords(), arrow.mass());
  }
}
