package lanewarden.station;

import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.logging.Formatter;
import java.util.logging.LogRecord;
import org.jspecify.annotations.Nullable;

/**
 * One line of the program's log: the time as RFC 3339 writes it, in UTC with milliseconds, how
 * grave it is, who says so, and the words.
 *
 * <p>Of an exception only its kind and where it came from are written, never its message: that may
 * quote what somebody typed.
 */
final class LogLine extends Formatter {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSX", Locale.ROOT)
          .withZone(ZoneOffset.UTC);
  private static final String WORKING = "[\\p{Cc}\\u2028\\u2029]+";
  private static final int LONGEST = 6000;
  private static final int DEEPEST = 40;
  private static final int MOST_CAUSES = 8;

  private final String home;

  /**
   * @param home the user's own folder, which often is called as the user is; a tilde stands for it
   */
  LogLine(Path home) {
    this.home = home.toString();
  }

  @Override
  public String format(LogRecord record) {
    String line =
        String.join(
            " ",
            TIME.format(record.getInstant()),
            record.getLevel().getName(),
            String.valueOf(record.getLoggerName()),
            plain(formatMessage(record) + thrown(record.getThrown())));
    return (line.length() > LONGEST ? line.substring(0, LONGEST) + " …" : line) + "\n";
  }

  private String plain(String words) {
    String lines = words.replaceAll(WORKING, " ");
    return home.length() > 1 ? lines.replace(home, "~") : lines;
  }

  private static String thrown(@Nullable Throwable outermost) {
    StringBuilder told = new StringBuilder();
    Throwable thrown = outermost;
    for (int causes = 0; thrown != null && causes < MOST_CAUSES; causes++) {
      told.append(causes == 0 ? " | " : " | caused by ").append(thrown.getClass().getName());
      StackTraceElement[] frames = thrown.getStackTrace();
      for (int i = 0; i < Math.min(frames.length, DEEPEST); i++) {
        told.append(i == 0 ? " at " : " < ").append(frame(frames[i]));
      }
      thrown = thrown.getCause();
    }
    return told.toString();
  }

  private static String frame(StackTraceElement at) {
    return at.getClassName() + "." + at.getMethodName() + ":" + at.getLineNumber();
  }
}
