package lanewarden.bench;

/**
 * A shot that does not count in a comparison.
 *
 * @param why a person said so, the bow cannot give it, or it lies far from the others
 */
public record LeftOut(PracticeShot shot, String why) {
  /** The reading, its line in the file, and why it does not count. */
  public String inWords() {
    return shot.speed() + " (line " + shot.line() + "): " + why;
  }
}
