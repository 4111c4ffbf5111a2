package lanewarden.bench;

import lanewarden.quantity.Sentence;

/**
 * A shot that does not count in a comparison.
 *
 * @param why a person said so, the bow cannot give it, or it lies far from the others
 */
public record LeftOut(PracticeShot shot, Sentence why) {
  /** The reading, its line in the file, and why it does not count. */
  public Sentence inWords() {
    return Sentence.of(Told.LEFT_OUT, shot.speed(), shot.line(), why);
  }
}
