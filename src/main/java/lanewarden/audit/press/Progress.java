package lanewarden.audit.press;

/**
 * How far the making of a report is.
 *
 * @param step what is being done, in words for a person who waits
 * @param done how much of {@code total} is done; never goes back
 * @param total the whole; the same from the first word to the last
 */
public record Progress(String step, int done, int total) {}
