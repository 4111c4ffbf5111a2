package lanewarden.ledger;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.nimbusds.jose.jwk.ECKey;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.security.Signature;
import java.security.cert.CertificateException;
import java.time.Instant;
import org.bouncycastle.operator.ContentSigner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The seal's key, against the JDK's own X.509 and ECDSA and the independent JOSE library. */
class SealKeyTest {
  private static final Instant FROM = Instant.parse("2026-05-01T08:00:00Z");
  private static final SealKey KEY =
      SealKey.generate("Report seal", "Range East", FROM, new SecureRandom());

  @TempDir Path folder;

  private static char[] passphrase() {
    return "three quiet arrows".toCharArray();
  }

  @Test
  void theJdkAcceptsTheCertificateAndItsSignature() throws Exception {
    KEY.certificate().verify(KEY.certificate().getPublicKey());
    assertEquals(
        "CN=Range East,OU=Report seal", KEY.certificate().getSubjectX500Principal().getName());
    assertEquals(FROM, KEY.certificate().getNotBefore().toInstant());
    assertTrue(
        KEY.certificate().getNotAfter().toInstant().isAfter(Instant.parse("2125-01-01T00:00:00Z")));
    assertEquals(-1, KEY.certificate().getBasicConstraints(), "it can vouch for no other");
    assertArrayEquals(KEY.certificateBytes(), KEY.certificate().getEncoded());
  }

  @Test
  void theJdkAcceptsWhatItSignsAndNothingElse() throws Exception {
    byte[] message = "Brindlemere".getBytes(StandardCharsets.UTF_8);
    byte[] signed = sign(message);
    assertArrayEquals(signed, sign(message), "no randomness enters");
    assertTrue(verifies(message, signed));
    message[0] ^= 1;
    assertFalse(verifies(message, signed));
  }

  private static byte[] sign(byte[] message) throws Exception {
    ContentSigner signer = KEY.signer();
    signer.getOutputStream().write(message);
    return signer.getSignature();
  }

  private static boolean verifies(byte[] message, byte[] signed) throws Exception {
    Signature jdk = Signature.getInstance("SHA256withECDSA");
    jdk.initVerify(KEY.certificate());
    jdk.update(message);
    return jdk.verify(signed);
  }

  @Test
  void restsUnderItsPassphraseAndComesBack() throws Exception {
    Path file = folder.resolve("report.seal");
    KeyFile.seal(file, KEY, "Olga Root", passphrase(), new SecureRandom());
    assertEquals(new KeyLabel("Olga Root", KEY.thumbprint()), KeyFile.label(file));
    SealKey back = KeyFile.openSeal(file, passphrase());
    assertEquals(KEY.certificate(), back.certificate());
    assertEquals(KEY.thumbprint(), back.thumbprint());
    assertArrayEquals(sign(new byte[] {7}), signedBy(back));
    assertEquals(
        "KEY-PASSPHRASE",
        assertThrows(LedgerException.class, () -> KeyFile.openSeal(file, "something".toCharArray()))
            .code());
    assertEquals(
        "KEY-DAMAGED",
        assertThrows(LedgerException.class, () -> KeyFile.open(file, passphrase())).code(),
        "it signs no entry");
  }

  private static byte[] signedBy(SealKey key) throws Exception {
    ContentSigner signer = key.signer();
    signer.getOutputStream().write(7);
    return signer.getSignature();
  }

  @Test
  void anOfficialsKeySealsNoReport() throws Exception {
    Path file = folder.resolve("ada.key");
    SigningKey key = SigningKey.generate(new SecureRandom());
    KeyFile.seal(file, key, "Ada Holt", passphrase(), new SecureRandom());
    LedgerException refused =
        assertThrows(LedgerException.class, () -> KeyFile.openSeal(file, passphrase()));
    assertEquals("KEY-NO-SEAL", refused.code());
    assertTrue(refused.why().contains("Ada Holt"), refused.why());
    assertEquals(key.thumbprint(), KeyFile.open(file, passphrase()).thumbprint(), "it is sound");
  }

  @Test
  void aFolderIsSaidToBeOneAndNoKey() {
    LedgerException refused =
        assertThrows(LedgerException.class, () -> KeyFile.openSeal(folder, passphrase()));
    assertEquals("KEY-FOLDER", refused.code());
    assertEquals("It is a folder.", refused.why());
  }

  @Test
  void anotherJoseLibraryReadsTheJwkWithItsCertificate() throws Exception {
    ECKey read = ECKey.parse(new String(PrivateJwk.of(KEY), StandardCharsets.US_ASCII));
    assertEquals(KEY.thumbprint(), read.computeThumbprint().toString());
    assertTrue(read.isPrivate());
    assertEquals(KEY.certificate(), read.getParsedX509CertChain().get(0));
  }

  @Test
  void aCertificateOfAnotherKeyIsRefused() {
    assertThrows(
        CertificateException.class, () -> SealKey.of(BigInteger.TWO, KEY.certificateBytes()));
  }

  @Test
  void aNameTooLongForACertificateIsCutBetweenCharacters() {
    SealKey key = SealKey.generate("seal", "x".repeat(63) + "🎯🎯", FROM, new SecureRandom());
    assertEquals(
        "CN=" + "x".repeat(63) + ",OU=seal", key.certificate().getSubjectX500Principal().getName());
  }
}
