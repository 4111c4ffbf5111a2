package lanewarden.ledger;

import java.util.Optional;

/**
 * An official whose key the organizer suspended.
 *
 * @param official as enrolled before
 * @param reason in the organizer's words
 * @param sequence the entry that suspends the key; no later entry may be signed with it until the
 *     organizer enrols it again
 */
public record Suspension(Enrolled official, String reason, long sequence) {

  /**
   * The thumbprint of the key that an entry suspends, if it suspends one; whether the organizer
   * signed it, and whether the key might sign at all, is not looked at.
   */
  public static Optional<String> of(Entry entry) {
    return entry.kind().equals(KeyNotice.SUSPENDED)
        ? KeyNotice.key(entry.payload()).map(VerifyingKey::thumbprint)
        : Optional.empty();
  }
}
