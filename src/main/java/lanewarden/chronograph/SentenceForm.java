package lanewarden.chronograph;

import java.util.Map;
import java.util.Set;
import lanewarden.quantity.SpeedUnit;
import org.jspecify.annotations.Nullable;

/**
 * How a line is written and what it may say.
 *
 * @param start what every line begins with; empty if nothing marks the start
 * @param pattern the form of the whole line
 * @param checksum what the field {@code checksum} is, over the field {@code covered}
 * @param unitIfNone the unit where the line has none; null if every line must have one
 * @param unitWords the instrument's words for units
 * @param goodStatus the words of the field {@code status} that mean a good measurement
 * @param plausible the speeds that may be an arrow
 * @param gates what the line says about when the arrow passed the gates
 */
record SentenceForm(
    String start,
    SentencePattern pattern,
    Checksum checksum,
    @Nullable SpeedUnit unitIfNone,
    Map<String, SpeedUnit> unitWords,
    Set<String> goodStatus,
    SpeedRange plausible,
    GateTimes gates) {
  /** Whether the line says a speed; else it follows from the gate times. */
  boolean saysSpeed() {
    return pattern.groups().contains("speed");
  }

  /** Whether a line that is read without a fault must have its first byte and its last. */
  boolean provesWhole() {
    return !start.isEmpty() && checksum != Checksum.NONE;
  }
}
