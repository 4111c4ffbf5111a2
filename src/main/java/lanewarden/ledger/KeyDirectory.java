package lanewarden.ledger;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import lanewarden.ledger.Finding.Signature;

/**
 * Keys by thumbprint, whoever named them. Safe for any thread.
 *
 * <p>A thumbprint is a hash of its key, so a key found under it is the right one, no matter where
 * it was found. Whether its owner may sign is another question, and the {@link Roll}'s.
 */
final class KeyDirectory {
  private final Map<String, VerifyingKey> keys = new ConcurrentHashMap<>();

  void note(VerifyingKey key) {
    keys.putIfAbsent(key.thumbprint(), key);
  }

  private Optional<VerifyingKey> key(String thumbprint) {
    return Optional.ofNullable(keys.get(thumbprint));
  }

  /** Checks a signature, if its key was met yet. */
  Signature check(Jws parts) {
    return key(parts.signer())
        .map(key -> parts.verifies(key) ? Signature.GOOD : Signature.BAD)
        .orElse(Signature.UNCHECKED);
  }

  /** Checks the signature of an entry that was read before. */
  Signature check(Entry entry) {
    try {
      return check(Jws.read(entry.jwsBytes()));
    } catch (Malformed impossible) {
      throw new IllegalStateException("An entry's bytes were read before.", impossible);
    }
  }
}
