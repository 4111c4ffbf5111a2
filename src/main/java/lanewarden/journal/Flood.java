package lanewarden.journal;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Refused lines that came too fast to be written one by one: an entry stands for many. */
public final class Flood {
  /** The reason of an entry that stands for lines that were only counted. */
  public static final String REASON = "flood";

  private static final Pattern COUNTED = Pattern.compile("(\\d{1,15}) further lines?\\b.*");

  private Flood() {}

  /** How many lines an entry stands for: of a flood as many as its words say, else one. */
  public static long lines(Fact.LineRefused entry) {
    Matcher counted = COUNTED.matcher(entry.words());
    return entry.reason().equals(REASON) && counted.matches()
        ? Long.parseLong(counted.group(1))
        : 1;
  }
}
