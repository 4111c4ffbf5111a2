package lanewarden.written;

import lanewarden.quantity.Sentence;

/** The sentences that tell a fault in a file whole. */
public enum FaultTold implements Sentence.Form {
  /** The file's name, line, column; what was expected and found; the mend. */
  AT("{0}:{1}:{2}: expected {3}, found {4}; mend: {5}"),
  /** The same with the key that it is about behind the column. */
  AT_KEY("{0}:{1}:{2}: expected {3} to be {4}, found {5}; mend: {6}"),
  ON_LINE("Line {0}: {1}"),
  EXPECTED("expected {0}, found {1}. Mend: {2}"),
  EXPECTED_KEY("expected {0} to be {1}, found {2}. Mend: {3}"),
  /** A mend that is no question, at the end of a sentence. */
  MENDED("{0}.");

  private final String english;

  FaultTold(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
