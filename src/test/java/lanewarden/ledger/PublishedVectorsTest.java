package lanewarden.ledger;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.security.KeyFactory;
import java.security.Signature;
import java.security.spec.X509EncodedKeySpec;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Map;
import org.jose4j.jwa.AlgorithmConstraints;
import org.jose4j.jwa.AlgorithmConstraints.ConstraintType;
import org.jose4j.jwe.JsonWebEncryption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values from published standards; the source stands beside each. */
class PublishedVectorsTest {
  private static final HexFormat HEX = HexFormat.of();

  /** DER wrapping of a raw Ed25519 public key, RFC 8410 section 4, from memory. */
  private static final String PUBLIC_KEY_DER = "302a300506032b6570032100";

  // RFC 8032 7.1, TEST 1, TEST 2, TEST 3: secret key, public key, message, signature.
  @ParameterizedTest
  @CsvSource({
    "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60,"
        + "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a,'',"
        + "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
    "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb,"
        + "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c,72,"
        + "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00",
    "c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7,"
        + "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025,af82,"
        + "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a"
  })
  void signsAndVerifiesAsRfc8032(String secret, String open, String message, String signature)
      throws Exception {
    SigningKey key = SigningKey.ofSeed(HEX.parseHex(secret));
    byte[] text = HEX.parseHex(message);
    assertEquals(open, HEX.formatHex(key.publicKey().raw()));
    assertEquals(signature, HEX.formatHex(key.sign(text)));
    assertTrue(key.publicKey().verifies(text, HEX.parseHex(signature)));
    assertTrue(jdkVerifies(key.publicKey(), text, HEX.parseHex(signature)));
  }

  // RFC 8037 appendix A.1, A.2, A.3: the JWK, its public half, its thumbprint.
  private static final String D = "nWGxne_9WmC6hEr0kuwsxERJxWl7MmkZcDusAxyuf2A";
  private static final String X = "11qYAYKxCrfVS_7TyWQHOg7hcvPapiMlrwIaaPcHURo";
  private static final String THUMBPRINT = "kPrK_qmxVWaYVA9wwBF6Iuo3vVzz7TxHCTwXBygrS4k";

  @Test
  void hasTheThumbprintOfRfc8037() {
    SigningKey key = SigningKey.ofSeed(Base64Url.decode(D).orElseThrow());
    assertEquals(X, key.publicKey().x());
    assertEquals(THUMBPRINT, key.thumbprint());
    assertEquals(
        "{\"crv\":\"Ed25519\",\"kty\":\"OKP\",\"x\":\"" + X + "\"}", key.publicKey().jwk());
  }

  // RFC 8037 appendix A.4: protected header {"alg":"EdDSA"}, payload "Example of Ed25519 signing".
  @Test
  void signsTheSigningInputOfRfc8037() {
    SigningKey key = SigningKey.ofSeed(Base64Url.decode(D).orElseThrow());
    String input = "eyJhbGciOiJFZERTQSJ9.RXhhbXBsZSBvZiBFZDI1NTE5IHNpZ25pbmc";
    assertEquals(
        input,
        Base64Url.encode("{\"alg\":\"EdDSA\"}".getBytes(StandardCharsets.US_ASCII))
            + "."
            + Base64Url.encode("Example of Ed25519 signing".getBytes(StandardCharsets.US_ASCII)));
    assertEquals(
        "hgyY0il_MGCjP0JzlnLWG1PPOt7-09PGcvMg3AIbQR6dWbhijcNR4ki4iylGjg5BhVsPt9g7sVvpAr_MuM0KAg",
        Base64Url.encode(key.sign(input.getBytes(StandardCharsets.US_ASCII))));
  }

  // RFC 7638 3.1: an RSA key's required members and thumbprint.
  @Test
  void hasTheThumbprintOfRfc7638() {
    String n =
        "0vx7agoebGcQSuuPiLJXZptN9nndrQmbXEps2aiAFbWhM78LhWx4cbbfAAtVT86zwu1RK7aPFFxuhDR1L6tSoc_BJECPebWKRXjBZCiFV4n3oknjhMs"
            + "tn64tZ_2W-5JsGY4Hc5n9yBXArwl93lqt7_RN5w6Cf0h4QyQ5v-65YGjQR0_FDW2QvzqY368QQMicAtaSqzs8KJZgnYb9c7d0zgdAZHzu6qMQvRL5hajrn1n91CbOpbI"
            + "SD08qNLyrdkt-bFTWhAI4vMQFh6WeZu0fM4lFd2NcRwr3XPksINHaQ-G_xBniIqbw0Ls1jF44-csFCur-kEgU8awapJzKnqDKgw";
    assertEquals(
        "NzbLsXh8uDCcd-6MNwXF4W_7noWXFZAfHkxZsRGC9Xs",
        Thumbprint.of(Map.of("kty", "RSA", "n", n, "e", "AQAB")));
  }

  // FIPS 180-4 (example "abc", NIST's example values for SHA-256).
  @Test
  void hashesAsFips180() {
    assertEquals(
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
        Sha256.of("abc".getBytes(StandardCharsets.US_ASCII)).hex());
  }

  // RFC 3339 5.8: a leap second is valid text.
  @Test
  void readsALeapSecondAsRfc3339() {
    assertEquals(
        Instant.parse("1991-01-01T00:00:00.000Z"),
        Timestamp.read("1990-12-31T23:59:60.000Z").orElseThrow());
  }

  @ParameterizedTest
  @CsvSource({
    "2026-05-01T12:00:60.000Z",
    "2026-02-30T12:00:00.000Z",
    "2026-05-01T24:00:00.000Z",
    "2026-05-01 12:00:00.000Z",
    "2026-05-01T12:00:00.000z",
    "2026-05-01T12:00:00.00Z",
    "2026-05-01T12:00:00,000Z"
  })
  void refusesTimesThatThisFormatDoesNotWrite(String text) {
    assertTrue(Timestamp.read(text).isEmpty());
  }

  // RFC 7520 5.3: PBES2-HS512+A256KW with A128CBC-HS256; the password holds two en dashes (U+2013).
  @Test
  void unlocksThePassphraseSealedKeysOfRfc7520() throws Exception {
    JsonWebEncryption jwe =
        SealedKey.prepared("entrap_o\u2013peter_long\u2013credit_tun".toCharArray());
    jwe.setContentEncryptionAlgorithmConstraints(
        new AlgorithmConstraints(ConstraintType.PERMIT, "A128CBC-HS256"));
    jwe.setCompactSerialization(
        "eyJhbGciOiJQQkVTMi1IUzUxMitBMjU2S1ciLCJwMnMiOiI4UTFTemluYXNSM3hjaFl6NlpaY0hBIiwicDJjIjo4MTky"
            + "LCJjdHkiOiJqd2stc2V0K2pzb24iLCJlbmMiOiJBMTI4Q0JDLUhTMjU2In0."
            + "d3qNhUWfqheyPp4H8sjOWsDYajoej4c5Je6rlUtFPWdgtURtmeDV1g."
            + "VBiCzVHNoLiR3F4V82uoTQ."
            + "23i-Tb1AV4n0WKVSSgcQrdg6GRqsUKxjruHXYsTHAJLZ2nsnGIX86vMXqIi6IRsfywCRFzLxEcZBRnTvG3nhzPk0GDD7"
            + "FMyXhUHpDjEYCNA_XOmzg8yZR9oyjo6lTF6si4q9FZ2EhzgFQCLO_6h5EVg3vR75_hkBsnuoqoM3dwejXBtIodN84PeqMb"
            + "6asmas_dpSsz7H10fC5ni9xIz424givB1YLldF6exVmL93R3fOoOJbmk2GBQZL_SEGllv2cQsBgeprARsaQ7Bq99tT80co"
            + "H8ItBjgV08AtzXFFsx9qKvC982KLKdPQMTlVJKkqtV4Ru5LEVpBZXBnZrtViSOgyg6AiuwaS-rCrcD_ePOGSuxvgtrokAK"
            + "YPqmXUeRdjFJwafkYEkiuDCV9vWGAi1DH2xTafhJwcmywIyzi4BqRpmdn_N-zl5tuJYyuvKhjKv6ihbsV_k1hJGPGAxJ6w"
            + "UpmwC4PTQ2izEm0TuSE8oMKdTw8V3kobXZ77ulMwDs4p."
            + "0HlwodAhOCILG5SQ2LQ9dg");
    assertTrue(
        jwe.getPlaintextString()
            .startsWith(
                "{\"keys\":[{\"kty\":\"oct\",\"kid\":\"77c7e2b8-6e13-45cf-8672-617b5b45243a\""));
  }

  @Test
  void agreesWithTheJdkOnSignaturesOfItsOwn() throws Exception {
    SigningKey key = SigningKey.generate(new java.security.SecureRandom());
    for (int length : new int[] {0, 1, 63, 64, 65, 1000}) {
      byte[] message = new byte[length];
      byte[] signature = key.sign(message);
      assertTrue(jdkVerifies(key.publicKey(), message, signature));
      signature[length % 64] ^= 1;
      assertFalse(key.publicKey().verifies(message, signature));
      assertFalse(jdkVerifies(key.publicKey(), message, signature));
    }
  }

  @Test
  void readsEachValueFromOneTextOnly() {
    // 0xFF is "_w"; "_x", "_y" and "_z" differ only in bits that base64 does not use.
    assertArrayEquals(new byte[] {(byte) 0xff}, Base64Url.decode("_w").orElseThrow());
    for (String text : new String[] {"_x", "_w==", "_w=", "_", "+w", "/w", "_w\n", "_\u00f8"}) {
      assertTrue(Base64Url.decode(text).isEmpty(), text);
    }
  }

  private static boolean jdkVerifies(VerifyingKey key, byte[] message, byte[] signature)
      throws Exception {
    byte[] der = HEX.parseHex(PUBLIC_KEY_DER + HEX.formatHex(key.raw()));
    Signature verifier = Signature.getInstance("Ed25519", "SunEC");
    verifier.initVerify(
        KeyFactory.getInstance("Ed25519", "SunEC").generatePublic(new X509EncodedKeySpec(der)));
    verifier.update(message);
    try {
      return verifier.verify(signature);
    } catch (java.security.SignatureException refused) {
      return false;
    }
  }
}
