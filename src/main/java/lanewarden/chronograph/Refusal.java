package lanewarden.chronograph;

import java.time.Instant;

/**
 * Bytes that did not become a reading, kept to be shown and logged.
 *
 * @param raw the bytes as received; of an endless line, its first part
 * @param reason why, as a closed set
 * @param words what happened and what to do, for people
 * @param source where the bytes came from
 * @param instrument the instrument's name
 * @param at when they were refused
 */
public record Refusal(
    RawBytes raw, Reason reason, String words, Source source, String instrument, Instant at) {}
