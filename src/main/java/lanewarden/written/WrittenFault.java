package lanewarden.written;

import java.util.List;
import java.util.stream.Collectors;
import lanewarden.quantity.Sentence;
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
    Sentence expected,
    Sentence found,
    Sentence mend) {

  /** Writes control characters out. */
  public WrittenFault {
    expected = shown(expected);
    found = shown(found);
    mend = shown(mend);
  }

  /** A fault that is about no key. */
  public WrittenFault(
      String file, int line, int column, Sentence expected, Sentence found, Sentence mend) {
    this(file, line, column, null, expected, found, mend);
  }

  /** A fault that is about no key, of which only the English is known. */
  public WrittenFault(
      String file, int line, int column, String expected, String found, String mend) {
    this(
        file,
        line,
        column,
        Sentence.verbatim(expected),
        Sentence.verbatim(found),
        Sentence.verbatim(mend));
  }

  private static Sentence shown(Sentence sentence) {
    return new Sentence(sentence.form(), shown(sentence.figures()));
  }

  private static List<Object> shown(List<?> figures) {
    return figures.stream().map(WrittenFault::shown).collect(Collectors.toList());
  }

  private static Object shown(Object figure) {
    if (figure instanceof Sentence sentence) {
      return shown(sentence);
    }
    if (figure instanceof Sentence.Row row) {
      return new Sentence.Row(row.between(), shown(row.figures()));
    }
    return figure instanceof String text ? WrittenText.shown(text) : figure;
  }

  /** All of it: the file's name, the place in it, what was expected and found, and the mend. */
  public Sentence whole() {
    String name = WrittenText.shown(file);
    return place == null
        ? Sentence.of(FaultTold.AT, name, line, column, expected, found, mend)
        : Sentence.of(
            FaultTold.AT_KEY, name, line, column, place.toString(), expected, found, mend);
  }

  /** All but the file's name, where it is plain which file is meant. */
  public Sentence withinFile() {
    Sentence told =
        place == null
            ? Sentence.of(FaultTold.EXPECTED, expected, found, ended())
            : Sentence.of(FaultTold.EXPECTED_KEY, place.toString(), expected, found, ended());
    return line == 0 ? told : Sentence.of(FaultTold.ON_LINE, line, told);
  }

  /** The mend at the end of a sentence. */
  private Sentence ended() {
    return mend.toString().endsWith("?") ? mend : Sentence.of(FaultTold.MENDED, mend);
  }

  /** {@code file:line:column: expected …, found …; mend: …}. */
  @Override
  public String toString() {
    return whole().toString();
  }
}
