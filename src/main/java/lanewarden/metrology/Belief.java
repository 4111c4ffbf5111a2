package lanewarden.metrology;

/** What is believed of a figure that nobody knows. */
@FunctionalInterface
public interface Belief {

  /** The probability that it is at most {@code bound}, which is in the figure's unit. */
  double chanceUpTo(double bound);
}
