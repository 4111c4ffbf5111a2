package lanewarden.roster;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;

/** The faults found so far in one roster file; for one thread. */
final class Faults {
  private static final int LONGEST_SHOWN = 60;

  private final String file;
  private final List<WrittenFault> faults = new ArrayList<>();

  Faults(String file) {
    this.file = file;
  }

  /** Notes that a cell holds the wrong text. */
  void wrong(Cell cell, String expected, String mend) {
    String text = cell.text();
    String found = text.isEmpty() ? "nothing" : "\"" + shortened(text) + "\"";
    faults.add(new WrittenFault(file, cell.line(), cell.column(), expected, found, mend));
  }

  /** Notes any other fault at the place of a cell. */
  void note(Cell at, String expected, String found, String mend) {
    faults.add(new WrittenFault(file, at.line(), at.column(), expected, shortened(found), mend));
  }

  private static String shortened(String text) {
    return text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "…" : text;
  }

  boolean none() {
    return faults.isEmpty();
  }

  /**
   * @throws WrittenRefused with every fault, in the order of the file, if there is one
   */
  void refuseIfAny() throws WrittenRefused {
    if (!faults.isEmpty()) {
      faults.sort(
          Comparator.comparingInt(WrittenFault::line).thenComparingInt(WrittenFault::column));
      throw new WrittenRefused(file, faults);
    }
  }
}
