package lanewarden.written;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

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
  public void wrong(CsvCell cell, String expected, String mend) {
    String text = cell.text();
    String found = text.isEmpty() ? "nothing" : "\"" + shortened(text) + "\"";
    faults.add(new WrittenFault(file, cell.line(), cell.column(), expected, found, mend));
  }

  /** Notes any other fault at the place of a cell. */
  public void note(CsvCell at, String expected, String found, String mend) {
    faults.add(new WrittenFault(file, at.line(), at.column(), expected, shortened(found), mend));
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
