package lanewarden.written;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lanewarden.quantity.Sentence;

/** The faults found so far in one CSV file; for one thread. */
public final class CsvFaults {
  private static final int LONGEST_SHOWN = 60;

  private final String file;
  private final List<WrittenFault> faults = new ArrayList<>();

  /**
   * @param file its name, for the faults
   */
  public CsvFaults(String file) {
    this.file = file;
  }

  /** Notes that a cell holds the wrong text. */
  public void wrong(CsvCell cell, Sentence expected, Sentence mend) {
    note(cell, expected, found(cell.text()), mend);
  }

  private static Sentence found(String text) {
    return text.isEmpty()
        ? Sentence.of(FileTold.NOTHING)
        : Sentence.verbatim("\"" + shortened(text) + "\"");
  }

  /** Notes any other fault at the place of a cell. */
  public void note(CsvCell at, Sentence expected, Sentence found, Sentence mend) {
    faults.add(new WrittenFault(file, at.line(), at.column(), expected, found, mend));
  }

  /** Notes any other fault where a text of the file stands. */
  void note(CsvCell at, Sentence expected, String found, Sentence mend) {
    note(at, expected, Sentence.verbatim(shortened(found)), mend);
  }

  private static String shortened(String text) {
    return text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "…" : text;
  }

  /** Whether nothing was found wrong so far. */
  public boolean none() {
    return faults.isEmpty();
  }

  /**
   * @throws WrittenRefused with every fault, in the order of the file, if there is one
   */
  public void refuseIfAny() throws WrittenRefused {
    if (!faults.isEmpty()) {
      faults.sort(
          Comparator.comparingInt(WrittenFault::line).thenComparingInt(WrittenFault::column));
      throw new WrittenRefused(file, faults);
    }
  }
}
