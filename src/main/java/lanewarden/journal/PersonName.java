package lanewarden.journal;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The name of an official, as two names are compared: the same if their letters and digits are, in
 * whatever case and however set apart, and whatever stands between them that nobody can see.
 *
 * <p>Letters of one script that look like another's are different letters here.
 *
 * @param written as somebody wrote it
 */
public record PersonName(String written) {
  /**
   * What shows nothing: every format character (general category Cf, with those that came after
   * Java 17), and the other code points that Unicode says to leave out where they cannot be shown
   * (Default_Ignorable_Code_Point, UAX 44), which Java's patterns do not know by that name.
   */
  private static final Pattern UNSEEN =
      Pattern.compile(
          "[\\p{Cf}\\u034f\\u0890\\u0891\\u115f\\u1160\\u17b4\\u17b5\\u180b-\\u180f\\u2065\\u3164\\ufe00-\\ufe0f"
              + "\\uffa0\\ufff0-\\ufff8\\x{13430}-\\x{1343f}\\x{e0000}-\\x{e0fff}]");

  /** Letters, marks and digits in one way of writing them, with a blank between the words. */
  public String plain() {
    // First of all: between a letter and its accent, such a character keeps the two apart
    String seen = UNSEEN.matcher(written).replaceAll("");
    return Normalizer.normalize(seen, Normalizer.Form.NFKC)
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^\\p{L}\\p{M}\\p{N}]+", " ")
        .strip();
  }

  /** The first character that shows nothing, as {@code U+200B}; empty where all can be seen. */
  public Optional<String> unseen() {
    Matcher found = UNSEEN.matcher(written);
    return found.find()
        ? Optional.of(String.format(Locale.ROOT, "U+%04X", found.group().codePointAt(0)))
        : Optional.empty();
  }
}
