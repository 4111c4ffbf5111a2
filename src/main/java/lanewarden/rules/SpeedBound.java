package lanewarden.rules;

import lanewarden.quantity.MeanSpeed;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;

/**
 * The fastest speed a rule lets pass, with the limit and tolerance it comes from.
 *
 * <p>Its unit, the one the limit is written in, governs: a reading in another unit is compared by
 * exact magnitude and converted only to be shown.
 *
 * @param speed the limit with its tolerance, rounded as the rule says
 */
record SpeedBound(SpeedLimit clause, Speed speed) implements Bound {

  static SpeedBound of(SpeedLimit clause) {
    return new SpeedBound(clause, clause.allowed());
  }

  @Override
  public boolean admits(Speed reading) {
    return clause.side().keeps(reading.compareTo(speed));
  }

  @Override
  public boolean admits(MeanSpeed mean) {
    return clause.side().keeps(mean.compareTo(speed));
  }

  @Override
  public Sentence show(Speed reading) {
    return Wording.reading(reading, speed);
  }

  @Override
  public Sentence show(MeanSpeed mean) {
    return Sentence.of(
        Because.SHOWN,
        Wording.plain(
            Wording.rounded(
                decimals -> mean.to(speed.unit(), decimals), speed, mean.compareTo(speed))));
  }

  @Override
  public Speed fastest() {
    return speed;
  }

  @Override
  public Speed tolerated() {
    return clause.rounded();
  }

  @Override
  public Sentence inWords() {
    return clause.inWords();
  }
}
