package lanewarden.chronograph;

/** What the framer cut out of the stream of bytes: every byte is in one frame, in order. */
sealed interface Frame {
  /** The bytes, terminator included where there is one. */
  RawBytes bytes();

  /**
   * A line with its terminator.
   *
   * @param joinedMidway true if bytes before the first may be missing: the line counts only if it
   *     proves itself whole
   */
  record Line(RawBytes bytes, boolean joinedMidway) implements Frame {}

  /**
   * A line without its end.
   *
   * @param words what cut it off
   */
  record Torn(RawBytes bytes, String words) implements Frame {}

  /**
   * Bytes of a line longer than any line may be.
   *
   * @param words which part of it these are
   */
  record Overlong(RawBytes bytes, String words) implements Frame {}
}
