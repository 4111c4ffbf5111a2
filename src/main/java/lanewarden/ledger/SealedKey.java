package lanewarden.ledger;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import javax.crypto.spec.SecretKeySpec;
import org.jose4j.jca.ProviderContext;
import org.jose4j.jwa.AlgorithmConstraints;
import org.jose4j.jwa.AlgorithmConstraints.ConstraintType;
import org.jose4j.jwe.ContentEncryptionAlgorithmIdentifiers;
import org.jose4j.jwe.JsonWebEncryption;
import org.jose4j.jwe.KeyManagementAlgorithmIdentifiers;
import org.jose4j.jwx.HeaderParameterNames;
import org.jose4j.lang.IntegrityException;
import org.jose4j.lang.JoseException;
import org.jspecify.annotations.Nullable;

/** The text of a key file: a compact JWE over a private JWK. */
final class SealedKey {
  /** PBKDF2 rounds: OWASP's advice for HMAC-SHA-512 (2023), quoted from memory. */
  static final int ROUNDS = 210_000;

  private static final String OWNER = "owner";
  private static final String KEY_ALGORITHM = KeyManagementAlgorithmIdentifiers.PBES2_HS512_A256KW;
  private static final String CONTENT_ALGORITHM = ContentEncryptionAlgorithmIdentifiers.AES_256_GCM;

  /** A char never takes more bytes in UTF-8. */
  private static final int MOST_UTF8_BYTES = 3;

  private SealedKey() {}

  /**
   * @param thumbprint of the key inside, for the label
   * @param privateJwk is wiped
   */
  static byte[] seal(
      String thumbprint, byte[] privateJwk, String owner, char[] passphrase, SecureRandom random) {
    if (owner.isBlank() || passphrase.length == 0) {
      throw new IllegalArgumentException("A key file needs an owner and a passphrase.");
    }
    JsonWebEncryption jwe = prepared(passphrase);
    ProviderContext context = new ProviderContext();
    context.setSecureRandom(random);
    jwe.setProviderContext(context);
    jwe.setAlgorithmHeaderValue(KEY_ALGORITHM);
    jwe.setEncryptionMethodHeaderParameter(CONTENT_ALGORITHM);
    jwe.setHeader(HeaderParameterNames.PBES2_ITERATION_COUNT, (Object) (long) ROUNDS);
    jwe.setContentTypeHeaderValue("jwk+json");
    jwe.setKeyIdHeaderValue(thumbprint);
    jwe.setHeader(OWNER, owner);
    jwe.setPlaintext(privateJwk);
    try {
      return (jwe.getCompactSerialization() + "\n").getBytes(StandardCharsets.US_ASCII);
    } catch (JoseException impossible) {
      throw new IllegalStateException("This Java cannot encrypt a key file.", impossible);
    } finally {
      Arrays.fill(privateJwk, (byte) 0);
    }
  }

  /** The private JWK inside, which the caller wipes. */
  static byte[] open(String text, char[] passphrase, Path file) throws LedgerException {
    KeyLabel label = label(text, file);
    JsonWebEncryption jwe = prepared(passphrase);
    try {
      jwe.setCompactSerialization(text);
      return jwe.getPlaintextBytes();
    } catch (IntegrityException doesNotUnwrap) {
      throw new LedgerException(
          "KEY-PASSPHRASE",
          "The key of " + label.owner() + " stays locked.",
          "The passphrase does not fit this key file (or the file was altered).",
          "Type it again; look for Caps Lock and the keyboard's language. If it never fits, take the"
              + " copy from the organizer's stick.",
          doesNotUnwrap);
    } catch (JoseException altered) {
      throw damaged(file, "its contents do not decrypt", altered);
    }
  }

  static KeyLabel label(String text, Path file) throws LedgerException {
    int dot = text.indexOf('.');
    byte[] header =
        Base64Url.decode(text.substring(0, Math.max(dot, 0)))
            .orElseThrow(() -> damaged(file, "it does not begin with a JWE header", null));
    try {
      Map<String, String> texts = texts(header);
      String owner = texts.get(OWNER);
      String thumbprint = texts.get("kid");
      if (owner == null || thumbprint == null) {
        throw damaged(file, "its header names no owner or no key", null);
      }
      return new KeyLabel(owner, thumbprint);
    } catch (IOException notJson) {
      throw damaged(file, "its header is not JSON", notJson);
    }
  }

  /**
   * The members of a JSON object that are texts; none where it is no object. Read member by member:
   * the sign-in list is wanted before anything else, and a tree of it would take far longer to
   * begin with than all keys take to read.
   */
  private static Map<String, String> texts(byte[] json) throws IOException {
    Map<String, String> texts = new HashMap<>();
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      if (parser.nextToken() == JsonToken.START_OBJECT) {
        while (parser.nextToken() != JsonToken.END_OBJECT) {
          String member = parser.currentName();
          if (parser.nextToken() == JsonToken.VALUE_STRING) {
            texts.put(member, parser.getText());
          } else {
            texts.remove(member);
            parser.skipChildren();
          }
        }
      }
    }
    return texts;
  }

  static LedgerException damaged(Path file, String why, @Nullable Throwable cause) {
    return new LedgerException(
        "KEY-DAMAGED",
        "The key file " + file + " cannot be used.",
        "It is no Lanewarden key file or it was altered: " + why + ".",
        "Take the copy from the organizer's stick, or have the organizer enrol a new key.",
        cause);
  }

  /** A JWE that takes only our algorithms, and this passphrase, which is wiped. */
  static JsonWebEncryption prepared(char[] passphrase) {
    JsonWebEncryption jwe = new JsonWebEncryption();
    // Only this one pair, whatever a file's header asks for.
    jwe.setAlgorithmConstraints(new AlgorithmConstraints(ConstraintType.PERMIT, KEY_ALGORITHM));
    jwe.setContentEncryptionAlgorithmConstraints(
        new AlgorithmConstraints(ConstraintType.PERMIT, CONTENT_ALGORITHM));
    ByteBuffer utf8 = ByteBuffer.allocate(passphrase.length * MOST_UTF8_BYTES);
    StandardCharsets.UTF_8
        .newEncoder()
        // Half a surrogate pair must not cut the passphrase short.
        .onMalformedInput(CodingErrorAction.REPLACE)
        .encode(CharBuffer.wrap(passphrase), utf8, true);
    byte[] secret = Arrays.copyOf(utf8.array(), utf8.position());
    // An empty passphrase cannot be a key; no file is sealed with it, so it is merely wrong.
    jwe.setKey(new SecretKeySpec(secret.length == 0 ? new byte[1] : secret, "PBKDF2"));
    Arrays.fill(secret, (byte) 0);
    Arrays.fill(utf8.array(), (byte) 0);
    Arrays.fill(passphrase, '\0');
    return jwe;
  }
}
