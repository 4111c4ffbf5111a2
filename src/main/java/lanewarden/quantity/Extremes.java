package lanewarden.quantity;

/**
 * What no archer's figure goes beyond (common practice of the trade): whoever writes more took one
 * unit or one column for another.
 */
public final class Extremes {
  /** Heavier than any arrow: finds a draw weight in pounds that was written as an arrow mass. */
  public static final Mass HEAVIEST_ARROW = Mass.of("200", MassUnit.GRAM);

  /** Lighter than any arrow: finds grams that were typed where grains are taken. */
  public static final Mass LIGHTEST_ARROW = Mass.of("100", MassUnit.GRAIN);

  /** Longer than any archer draws: finds centimetres and inches taken for each other. */
  public static final Length LONGEST_DRAW = Length.of("40", LengthUnit.INCH);

  private Extremes() {}
}
