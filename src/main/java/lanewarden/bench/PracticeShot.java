package lanewarden.bench;

import lanewarden.quantity.Speed;

/**
 * A shot of a practice day, as its file states it.
 *
 * @param speed as shown by the instrument, with as many decimals
 * @param word what the file says of it being a misread
 * @param remark or nothing
 * @param line of the file
 */
public record PracticeShot(Speed speed, Word word, String remark, int line) {

  /** What a person says of a reading that may be a misread. */
  public enum Word {
    /** Nothing: the tests decide. */
    NONE(""),
    /** It is one, and is left out. */
    MISREAD("yes"),
    /** It is none, however far it lies from the others. */
    GOOD("no");

    private final String written;

    Word(String written) {
      this.written = written;
    }

    /** As the file has it. */
    String written() {
      return written;
    }
  }
}
