package lanewarden.written;

import org.jspecify.annotations.Nullable;

/**
 * One thing wrong in a file that a person wrote.
 *
 * <p>What it says can be shown anywhere as it is: a control character that stands in the file is
 * written out as an escape, so that it cannot steer the terminal it is told on.
 *
 * @param file the file's name as given
 * @param line from 1; 0 where the whole file is meant
 * @param column from 1, in characters; 0 where the whole line or file is meant
 * @param place the key that it is about, where it is about one
 * @param expected what a right file has there
 * @param found what stands there
 * @param mend what to do about it
 */
public record WrittenFault(
    String file,
    int line,
    int column,
    @Nullable KeyPlace place,
    String expected,
    String found,
    String mend) {

  /** Writes control characters out. */
  public WrittenFault {
    expected = WrittenText.shown(expected);
    found = WrittenText.shown(found);
    mend = WrittenText.shown(mend);
  }

  /** A fault that is about no key. */
  public WrittenFault(
      String file, int line, int column, String expected, String found, String mend) {
    this(file, line, column, null, expected, found, mend);
  }

  /** {@code file:line:column: expected …, found …; mend: …}. */
  @Override
  public String toString() {
    return WrittenText.shown(file)
        + ":"
        + line
        + ":"
        + column
        + ": expected "
        + (place == null ? "" : place + " to be ")
        + expected
        + ", found "
        + found
        + "; mend: "
        + mend;
  }
}
