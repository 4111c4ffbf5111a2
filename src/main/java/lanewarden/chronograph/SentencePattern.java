package lanewarden.chronograph;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;

/**
 * The form of an instrument's whole line: a regular expression whose named groups are its fields.
 *
 * <p>Matching takes bounded time whatever the pattern: a line that needs more than {@link
 * #PATIENCE} looks at its characters is taken as not matching.
 */
final class SentencePattern {
  /**
   * Looks at single characters before a match is given up; an ordinary line needs some hundreds.
   */
  static final int PATIENCE = 200_000;

  private static final int LONGEST = 1_000;
  private static final Pattern GROUP = Pattern.compile("\\(\\?<([a-zA-Z][a-zA-Z0-9]*)>");

  private final Pattern pattern;
  private final Set<String> groups;

  private SentencePattern(Pattern pattern, Set<String> groups) {
    this.pattern = pattern;
    this.groups = groups;
  }

  /**
   * Reads a pattern.
   *
   * @throws IllegalArgumentException if it does not compile; the message says where and why
   */
  static SentencePattern parse(String text) {
    if (text.length() > LONGEST) {
      throw new IllegalArgumentException("keep the pattern below " + LONGEST + " characters");
    }
    try {
      Pattern pattern = Pattern.compile(text);
      return new SentencePattern(pattern, groupsOf(pattern));
    } catch (PatternSyntaxException e) {
      String place =
          e.getIndex() < 0 ? "" : " at character " + (e.getIndex() + 1) + " of the pattern";
      throw new IllegalArgumentException("mend it" + place + ": " + e.getDescription(), e);
    }
  }

  private static Set<String> groupsOf(Pattern pattern) {
    Set<String> names = new LinkedHashSet<>();
    Matcher found = GROUP.matcher(pattern.pattern());
    while (found.find()) {
      names.add(found.group(1));
    }
    return names;
  }

  /** The names of the groups, in the order of the pattern. */
  Set<String> groups() {
    return groups;
  }

  /** The fields of the line, if the whole line has this form. */
  Optional<Fields> match(String line) {
    Matcher matcher = pattern.matcher(new Watched(line));
    try {
      return matcher.matches() ? Optional.of(new Fields(matcher, groups)) : Optional.empty();
    } catch (OutOfPatience e) {
      return Optional.empty();
    }
  }

  /**
   * How many characters of a line fit before the form can no longer be reached, whatever follows.
   * The whole length means that the line has the form, or is only the beginning of one that has.
   */
  int reach(String line) {
    int fits = 0;
    try {
      for (int end = 1; end <= line.length(); end++) {
        Matcher matcher = pattern.matcher(new Watched(line.substring(0, end)));
        if (!matcher.matches() && !matcher.hitEnd()) {
          return fits;
        }
        fits = end;
      }
    } catch (OutOfPatience e) {
      return fits;
    }
    return fits;
  }

  /** The fields of a line that has the form. */
  static final class Fields {
    private final Matcher matcher;
    private final Set<String> groups;

    private Fields(Matcher matcher, Set<String> groups) {
      this.matcher = matcher;
      this.groups = groups;
    }

    /** What stands in a field; empty if the line leaves it out or the form does not have it. */
    Optional<String> field(String group) {
      return groups.contains(group) ? Optional.ofNullable(matcher.group(group)) : Optional.empty();
    }
  }

  /** The line, counting how often it is looked at. */
  private static final class Watched implements CharSequence {
    private final String line;
    private int looks;

    Watched(String line) {
      this.line = line;
    }

    @Override
    public char charAt(int index) {
      looks++;
      if (looks > PATIENCE) {
        throw new OutOfPatience();
      }
      return line.charAt(index);
    }

    @Override
    public int length() {
      return line.length();
    }

    @Override
    public CharSequence subSequence(int start, int end) {
      return line.substring(start, end);
    }

    @Override
    public String toString() {
      return line;
    }
  }

  private static final class OutOfPatience extends RuntimeException {
    private static final long serialVersionUID = 1L;

    OutOfPatience() {
      super("the pattern is too slow for this line", null, false, false);
    }
  }
}
