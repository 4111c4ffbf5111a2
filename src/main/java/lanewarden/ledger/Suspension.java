package lanewarden.ledger;

/**
 * An official whose key the organizer suspended.
 *
 * @param official as enrolled before
 * @param reason in the organizer's words
 * @param sequence the entry that suspends the key; no later entry may be signed with it until the
 *     organizer enrols it again
 */
public record Suspension(Enrolled official, String reason, long sequence) {}
