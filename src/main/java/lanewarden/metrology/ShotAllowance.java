package lanewarden.metrology;

/**
 * How many shots a check has, and how often one brings no reading.
 *
 * @param allowed shots that may be taken, void ones included, one or more
 * @param voids void readings that are forgiven, zero or more: one more ends the check undecided
 * @param voidChance probability that a shot gives a void reading, at least 0 and less than 1,
 *     independent of all else
 */
public record ShotAllowance(int allowed, int voids, double voidChance) {
  /**
   * @throws IllegalArgumentException if a number makes no sense
   */
  public ShotAllowance {
    Figures.requireAtLeast(1, allowed, "the shots of a check");
    Figures.requireAtLeast(0, voids, "the voids forgiven");
    if (!(voidChance >= 0 && voidChance < 1)) {
      throw new IllegalArgumentException(
          "the probability of a void reading must be at least 0 and less than 1, not "
              + voidChance);
    }
  }

  /**
   * The probability that a check gets so many readings before its voids or shots run out.
   *
   * <p>The shot that brings the last of them is a reading, so with v voids before it the number of
   * orders is C(readings − 1 + v, v): the negative binomial distribution, cut off where one void
   * more is not forgiven or has no shot left.
   *
   * @param readings one or more
   */
  double brings(int readings) {
    int most = Math.min(voids, allowed - readings);
    double term = Math.pow(1 - voidChance, readings);
    double sum = 0;
    for (int v = 0; v <= most; v++) {
      sum += term;
      term *= voidChance * (readings + v) / (v + 1);
    }
    return sum;
  }
}
