package lanewarden.metrology;

/**
 * A check in which the mean decides: of n readings it scatters with 1/√n of one reading's
 * deviation.
 *
 * <p>A spread limit changes only how often there is a verdict: mean and range of a normal sample
 * are independent (the range does not change when all readings shift; Basu's theorem).
 *
 * @param root √n
 * @param verdict probability that all readings come and lie close enough together
 */
record MeanChances(double root, double verdict) implements MarginChances {

  static MeanChances of(int readings, ShotAllowance shots, double spread) {
    return new MeanChances(
        Math.sqrt(readings), shots.brings(readings) * SampleRange.atMost(spread, readings));
  }

  @Override
  public Chances at(double margin) {
    return new Chances(verdict * Bell.below(root * margin), verdict * Bell.above(root * margin));
  }
}
