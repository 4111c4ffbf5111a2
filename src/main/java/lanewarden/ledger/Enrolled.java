package lanewarden.ledger;

import java.util.Optional;

/**
 * An official whose key the organizer enrolled: the name, the key, and the entry that says so.
 *
 * @param name as the organizer wrote it
 * @param key the official's public key
 * @param sequence the entry that enrolled the key; only later entries may be signed with it
 * @param role what the organizer enrolled the official as
 */
public record Enrolled(String name, VerifyingKey key, long sequence, Role role) {

  /**
   * What an entry says, if it enrols somebody; whether the organizer signed it is not looked at.
   */
  public static Optional<Enrolled> of(Entry entry) {
    if (!entry.kind().equals(KeyNotice.ENROLLED)) {
      return Optional.empty();
    }
    Payload payload = entry.payload();
    return KeyNotice.key(payload)
        .flatMap(
            key ->
                KeyNotice.name(payload)
                    .map(
                        name ->
                            new Enrolled(name, key, entry.sequence(), KeyNotice.role(payload))));
  }

  /** RFC 7638 thumbprint of the official's key. */
  public String thumbprint() {
    return key.thumbprint();
  }

  /** Whether the official may rule on protests. */
  public boolean isJudge() {
    return role == Role.JUDGE;
  }
}
