package lanewarden.chronograph;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Bytes that did not become a reading, kept to be shown and logged.
 *
 * @param raw the bytes as received; of an endless line, its first part
 * @param reason why, as a closed set
 * @param words what happened and what to do, for people
 * @param source where the bytes came from
 * @param instrument the instrument's name
 * @param at when they were refused
 * @param apart what two instruments in series measured, where they only do not agree: the first's
 *     reading with the second's beside it; else null
 */
public record Refusal(
    RawBytes raw,
    Reason reason,
    String words,
    Source source,
    String instrument,
    Instant at,
    @Nullable Reading apart) {
  /** Of bytes that are no measurement. */
  public Refusal(
      RawBytes raw, Reason reason, String words, Source source, String instrument, Instant at) {
    this(raw, reason, words, source, instrument, at, null);
  }
}
