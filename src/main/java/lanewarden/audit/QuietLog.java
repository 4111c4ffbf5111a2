package lanewarden.audit;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLogger;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Keeps the setting library's chatter off the terminal: only its warnings and worse are passed on
 * to the program's log.
 */
final class QuietLog implements XRLogger {
  private final Logger log = Logger.getLogger(QuietLog.class.getPackageName());

  private static boolean matters(Level level) {
    return level.intValue() >= Level.WARNING.intValue();
  }

  @Override
  public void log(String where, Level level, String message) {
    if (matters(level)) {
      log.log(level, message);
    }
  }

  @Override
  public void log(String where, Level level, String message, Throwable thrown) {
    if (matters(level)) {
      log.log(level, message, thrown);
    }
  }

  @Override
  public void setLevel(String where, Level level) {
    // The level is fixed: warnings and worse.
  }

  @Override
  public boolean isLogLevelEnabled(Diagnostic diagnostic) {
    return matters(diagnostic.getLevel());
  }
}
