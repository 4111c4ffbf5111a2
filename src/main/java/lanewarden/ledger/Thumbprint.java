package lanewarden.ledger;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.SortedMap;
import java.util.StringJoiner;
import java.util.TreeMap;

/** Computes RFC 7638 thumbprints: SHA-256 over a JWK's required members in lexical order. */
final class Thumbprint {
  private Thumbprint() {}

  /** The required members as JSON without any space, names in lexical order (RFC 7638, 3). */
  static String canonical(Map<String, String> requiredMembers) {
    SortedMap<String, String> ordered = new TreeMap<>(requiredMembers);
    StringJoiner json = new StringJoiner(",", "{", "}");
    ordered.forEach((name, value) -> json.add('"' + name + "\":\"" + value + '"'));
    return json.toString();
  }

  /** The thumbprint, base64url. Values must need no escape in JSON, as RFC 7638 3.3 advises. */
  static String of(Map<String, String> requiredMembers) {
    byte[] canonical = canonical(requiredMembers).getBytes(StandardCharsets.UTF_8);
    return Base64Url.encode(Sha256.digest().digest(canonical));
  }
}
