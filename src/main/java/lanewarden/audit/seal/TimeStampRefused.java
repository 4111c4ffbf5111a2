package lanewarden.audit.seal;

import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** No time-stamp was to be had; the message says from whom and why, as part of a sentence. */
public final class TimeStampRefused extends IOException {
  private static final long serialVersionUID = 1L;

  TimeStampRefused(String authority, String why, @Nullable Throwable cause) {
    super("the authority " + authority + " gave none: " + why, cause);
  }
}
