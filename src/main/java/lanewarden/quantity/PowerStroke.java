package lanewarden.quantity;

import java.math.BigDecimal;

/**
 * How far the string of a bow pushes the arrow: draw length less 1¾ in and brace height, since a
 * draw length is the draw to the pivot point of the grip and 1¾ in more (AMO FP-3, 2000). Exact.
 *
 * @param drawLength pivot-point draw plus 1¾ in
 * @param braceHeight from the grip's pivot point to the string at rest
 */
public record PowerStroke(Length drawLength, Length braceHeight) {
  /** From the pivot point of the grip to the mark where a draw length ends. */
  public static final Length BEHIND_PIVOT = Length.of("1.75", LengthUnit.INCH);

  /** Whether the string pushes the arrow at all, with these figures. */
  public boolean isSome() {
    return metres().signum() > 0;
  }

  private BigDecimal metres() {
    return drawLength.si().subtract(BEHIND_PIVOT.si()).subtract(braceHeight.si());
  }

  /**
   * The way itself, in metres, exact.
   *
   * @throws QuantityException if it is negative
   */
  public Length length() {
    return Length.of(metres(), LengthUnit.METRE);
  }

  /** What figures that leave none are told in a file. */
  public static final Sentence DEMANDED = Sentence.of(FigureTold.STROKE, BEHIND_PIVOT);

  /** The two figures themselves, beside {@link #DEMANDED}. */
  public Sentence figures() {
    return Sentence.of(FigureTold.STROKE_FIGURES, braceHeight, drawLength);
  }

  /** What the figures leave, as a clause for a fault: whether there is a power stroke, and why. */
  public String inWords() {
    return "a draw length of "
        + drawLength
        + ", less "
        + BEHIND_PIVOT
        + " and a brace height of "
        + braceHeight
        + ", leaves "
        + (isSome() ? "a" : "no")
        + " power stroke";
  }
}
