package lanewarden.audit.printing;

import java.nio.file.Path;

/** A file that no printer took; says what, why, what to do and a code. The file is still there. */
public final class PrintRefused extends Exception {
  private static final long serialVersionUID = 1L;

  private final String what;
  private final String why;

  PrintRefused(Path file, String why) {
    super(file + " was not printed. " + why);
    this.what = file.getFileName() + " was not printed.";
    this.why = why;
  }

  /** The same for every occurrence of its cause. */
  public String code() {
    return "NO-PRINTER";
  }

  /** What happened. */
  public String what() {
    return what;
  }

  /** Why it happened. */
  public String why() {
    return why;
  }

  /** What to do. */
  public String remedy() {
    return "Connect a printer and set it up in the system, or print the PDF elsewhere.";
  }
}
