package lanewarden.audit.wording;

import lanewarden.journal.Correction;

/** The words of the journal for where a reading came from, as far as an audit tells them apart. */
public final class ReadingMark {
  /** An official's keyboard. */
  public static final String TYPED = Correction.TYPED;

  private static final String PORT = "serial port";

  private ReadingMark() {}

  /** Whether an instrument measured it, or an official stands for it. */
  public static boolean isMeasured(String source) {
    return source.equals(PORT) || source.equals(TYPED);
  }

  /** Whether the instrument itself sent it, be it simulated. */
  public static boolean isHeard(String source) {
    return !source.equals(TYPED);
  }
}
