package lanewarden.quantity;

import java.util.Optional;
import java.util.regex.Pattern;

/** What is often written wrong in a number with its unit, and the mend for it. */
public enum Slip implements Sentence.Form {
  /** Nothing in a rule or on a scale is less than nothing. */
  MINUS("[-−].*", "leave the minus sign out"),
  /** A comma between the digits. */
  COMMA("[0-9]+,[0-9].*", "write a decimal point instead of the comma"),
  /** As calculators and spreadsheets write large and small numbers. */
  EXPONENT("[0-9.]+[eE][-+]?[0-9].*", "write the number out in digits, without an exponent");

  private final Pattern written;
  private final String mend;

  Slip(String written, String mend) {
    this.written = Pattern.compile(written, Pattern.DOTALL);
    this.mend = mend;
  }

  /** The mend for the first slip that the text shows; empty where it shows none. */
  public static Optional<Sentence> mendOf(String text) {
    String stripped = text.strip();
    for (Slip slip : values()) {
      if (slip.written.matcher(stripped).matches()) {
        return Optional.of(Sentence.of(slip));
      }
    }
    return Optional.empty();
  }

  /** The mend. */
  @Override
  public String english() {
    return mend;
  }
}
