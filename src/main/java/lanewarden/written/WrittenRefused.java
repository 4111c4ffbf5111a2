package lanewarden.written;

import java.util.List;
import java.util.stream.Collectors;

/** A written file that was refused whole, with every fault found in it. */
public final class WrittenRefused extends Exception {
  private static final long serialVersionUID = 1L;

  private final String file;
  private final transient List<WrittenFault> faults;

  /**
   * @param file the file's name as given
   * @param faults at least one
   */
  public WrittenRefused(String file, List<WrittenFault> faults) {
    super(faults.stream().map(WrittenFault::toString).collect(Collectors.joining("\n")));
    this.file = file;
    this.faults = List.copyOf(faults);
  }

  /** A refusal for one reason. */
  public static WrittenRefused because(WrittenFault fault) {
    return new WrittenRefused(fault.file(), List.of(fault));
  }

  /** The file's name as given. */
  public String file() {
    return file;
  }

  /** Every fault found, in the order of the file. */
  public List<WrittenFault> faults() {
    return faults;
  }
}
