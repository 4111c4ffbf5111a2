package lanewarden.journal;

import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Refused lines that came too fast to be written one by one: an entry stands for many. */
public final class Flood {
  /** The reason of an entry that stands for lines that were only counted. */
  public static final String REASON = "flood";

  /** Lines that are written one by one within a second: more than any archer shoots. */
  public static final int MOST = 10;

  /** How long a flood is counted from the line that began it. */
  public static final Duration SECOND = Duration.ofSeconds(1);

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
