package lanewarden.bow;

import lanewarden.quantity.Mass;

/**
 * What is supposed of a bow's virtual mass before anything is measured: rectangular, every value
 * from least to most alike likely and none beyond.
 *
 * @param most more than {@code least}
 */
public record VirtualMassRange(Mass least, Mass most) {
  /** A compound bow's, by a rule of thumb: 0 to 80 gr (common practice of the trade). */
  public static final VirtualMassRange COMPOUND =
      new VirtualMassRange(Mass.parse("0 gr"), Mass.parse("80 gr"));

  /**
   * @throws IllegalArgumentException if it is no range
   */
  public VirtualMassRange {
    if (!most.isMoreThan(least)) {
      throw new IllegalArgumentException("no range from " + least + " to " + most);
    }
  }

  /** For example {@code 0 gr to 80 gr}. */
  public String inWords() {
    return least + " to " + most;
  }
}
