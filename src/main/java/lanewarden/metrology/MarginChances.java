package lanewarden.metrology;

/** How a check ends whose calibration error is known. */
@FunctionalInterface
interface MarginChances {

  /**
   * @param margin how far the threshold lies above the true speed plus calibration error, in
   *     standard deviations of one reading
   */
  Chances at(double margin);
}
