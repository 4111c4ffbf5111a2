package lanewarden.chronograph;

/**
 * Something that is wrong with a profile, or with how the instrument is set.
 *
 * @param key the part of the profile to look at, for example {@code [port] baud}
 * @param words what was seen, why it does not fit, and what to change
 */
public record Finding(String key, String words) {}
