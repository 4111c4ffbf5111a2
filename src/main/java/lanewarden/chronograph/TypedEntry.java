package lanewarden.chronograph;

import java.time.Clock;
import lanewarden.quantity.SpeedUnit;

/** A reading typed by the official, always marked as typed. */
@SuppressWarnings("DoNotCallSuggester")
public final class TypedEntry {
  /** For speeds in the given range. */
  public TypedEntry(SpeedRange plausible, Clock clock) {}

  /** Reads what was typed: heard or refused. */
  public Signal read(String text, SpeedUnit unitIfNone) {
    throw new UnsupportedOperationException();
  }
}
