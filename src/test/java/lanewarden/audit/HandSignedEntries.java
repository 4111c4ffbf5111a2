package lanewarden.audit;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.MessageDigest;
import java.security.Signature;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;

/**
 * Exported entries signed with nothing but the JDK, as the format page tells: any kind, any key.
 */
final class HandSignedEntries {
  private static final int KEY_LENGTH = 32;
  private static final Base64.Encoder BASE64URL = Base64.getUrlEncoder().withoutPadding();

  private final List<String> lines = new ArrayList<>();
  private byte[] previous = new byte[KEY_LENGTH];

  /** A key of somebody. */
  record Signer(KeyPair pair, String jwk, String thumbprint) {
    static Signer make() throws GeneralSecurityException {
      KeyPair pair = KeyPairGenerator.getInstance("Ed25519").generateKeyPair();
      byte[] info = pair.getPublic().getEncoded();
      // The last 32 bytes of the SubjectPublicKeyInfo are the key itself (RFC 8410, section 4)
      byte[] x = Arrays.copyOfRange(info, info.length - KEY_LENGTH, info.length);
      String jwk =
          "{\"crv\":\"Ed25519\",\"kty\":\"OKP\",\"x\":\"" + BASE64URL.encodeToString(x) + "\"}";
      return new Signer(pair, jwk, BASE64URL.encodeToString(sha256(jwk)));
    }
  }

  private static byte[] sha256(String text) throws GeneralSecurityException {
    return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
  }

  private static String encoded(String text) {
    return BASE64URL.encodeToString(text.getBytes(StandardCharsets.UTF_8));
  }

  /** One more entry at the end. */
  HandSignedEntries sign(Signer signer, String kind, String body) throws GeneralSecurityException {
    String payload =
        "{\"v\":1,\"station\":\"North gate\",\"seq\":%d,\"prev\":\"%s\",\"at\":\"2026-05-01T08:00:00.000Z\",\"mono\":1.000000,\"kind\":\"%s\",\"body\":%s}"
            .formatted(lines.size() + 1, BASE64URL.encodeToString(previous), kind, body);
    String header = "{\"alg\":\"EdDSA\",\"kid\":\"" + signer.thumbprint() + "\"}";
    String input = encoded(header) + "." + encoded(payload);
    Signature signature = Signature.getInstance("Ed25519");
    signature.initSign(signer.pair().getPrivate());
    signature.update(input.getBytes(StandardCharsets.US_ASCII));
    String jws = input + "." + BASE64URL.encodeToString(signature.sign());
    previous = sha256(jws);
    lines.add("{\"jws\":\"" + jws + "\",\"entry\":" + payload.replace('\n', ' ') + "}");
    return this;
  }

  List<String> lines() {
    return List.copyOf(lines);
  }
}
