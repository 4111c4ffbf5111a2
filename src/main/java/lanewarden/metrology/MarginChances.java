package lanewarden.metrology;

/** How a check ends whose calibration error is known. */
@FunctionalInterface
interface MarginChances {

  /**
   * @param margin how far the threshold lies above the true speed plus calibration error, in
   *     standard deviations of one reading
   */
  Chances at(double margin);

  /** Of a figure whose readings all come, and are not rounded. */
  static MarginChances of(DecidingFigure figure) {
    ShotAllowance all = new ShotAllowance(figure.readings(), 0, 0);
    if (figure instanceof DecidingFigure.Ranked ranked) {
      return new RankedChances(ranked, all);
    }
    return figure instanceof DecidingFigure.MiddlePair pair
        ? new MiddlePairChances(pair, all)
        : MeanChances.of(figure.readings(), all, Double.POSITIVE_INFINITY);
  }
}
