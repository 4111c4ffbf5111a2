package lanewarden.ledger;

/**
 * An official whose key the organizer enrolled: the name, the key, and the entry that says so.
 *
 * @param name as the organizer wrote it
 * @param key the official's public key
 * @param sequence the entry that enrolled the key; only later entries may be signed with it
 */
public record Enrolled(String name, VerifyingKey key, long sequence) {

  /** RFC 7638 thumbprint of the official's key. */
  public String thumbprint() {
    return key.thumbprint();
  }
}
