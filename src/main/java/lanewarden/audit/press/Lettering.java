package lanewarden.audit.press;

/**
 * How letters look; what stands inside an element has it from there.
 *
 * @param size in points
 * @param leading height of a line, as a multiple of the size
 * @param colour as 0xRRGGBB
 * @param struck whether a line goes through the letters
 * @param kept whether spaces and line ends stand as they were typed
 * @param right whether lines end at the right edge
 * @param bullet what stands before an item of a list
 */
record Lettering(
    Cut cut,
    float size,
    float leading,
    int colour,
    boolean struck,
    boolean kept,
    boolean right,
    String bullet) {

  /** Letters of which nothing is said. */
  static final Lettering PLAIN = new Lettering(Cut.TEXT, 9, 1.2f, 0, false, false, false, "•");

  /** The height of a line, in points. */
  float lineHeight() {
    return size * leading;
  }
}
