package lanewarden.ledger;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.nimbusds.jose.JWEObject;
import com.nimbusds.jose.crypto.PasswordBasedDecrypter;
import com.nimbusds.jose.jwk.OctetKeyPair;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeyFileTest {
  private static final String PASSPHRASE = "caf\u00e9 \u2013 nock, draw, loose";

  @TempDir Path folder;
  Path file;
  SigningKey key;

  @BeforeEach
  void prepare() throws LedgerException {
    file = folder.resolve("ash.key");
    key = SigningKey.generate(new SecureRandom());
    KeyFile.seal(file, key, "Official Ash", PASSPHRASE.toCharArray(), new SecureRandom());
  }

  @Test
  void opensWithItsPassphrase() throws LedgerException {
    SigningKey opened = KeyFile.open(file, PASSPHRASE.toCharArray());
    byte[] message = {1, 2, 3};
    assertEquals(key.thumbprint(), opened.thumbprint());
    assertArrayEquals(key.sign(message), opened.sign(message));
  }

  @Test
  void saysThatThePassphraseIsWrong() {
    for (String wrong :
        List.of("", "cafe", PASSPHRASE + " ", PASSPHRASE.toUpperCase(java.util.Locale.ROOT))) {
      LedgerException refused =
          assertThrows(LedgerException.class, () -> KeyFile.open(file, wrong.toCharArray()));
      assertEquals("KEY-PASSPHRASE", refused.code(), wrong);
    }
  }

  @Test
  void wipesThePassphrase() throws LedgerException {
    char[] typed = PASSPHRASE.toCharArray();
    KeyFile.open(file, typed);
    assertEquals("\0".repeat(typed.length), new String(typed));
    char[] wrong = "wrong".toCharArray();
    assertThrows(LedgerException.class, () -> KeyFile.open(file, wrong));
    assertEquals("\0".repeat(5), new String(wrong));
    char[] chosen = PASSPHRASE.toCharArray();
    KeyFile.seal(folder.resolve("b.key"), key, "Birch", chosen, new SecureRandom());
    assertEquals("\0".repeat(typed.length), new String(chosen));
  }

  @Test
  void neverOverwritesAKey() throws Exception {
    byte[] before = Files.readAllBytes(file);
    char[] chosen = "other".toCharArray();
    LedgerException refused =
        assertThrows(
            LedgerException.class,
            () -> KeyFile.seal(file, key, "Birch", chosen, new SecureRandom()));
    assertEquals("KEY-EXISTS", refused.code());
    assertEquals("\0".repeat(5), new String(chosen));
    assertArrayEquals(before, Files.readAllBytes(file));
  }

  @Test
  void opensWithTheNewPassphraseOnlyOnceItIsSealedAgain() throws Exception {
    char[] fresh = "another one".toCharArray();
    KeyFile.reseal(file, KeyFile.open(file, PASSPHRASE.toCharArray()), fresh, new SecureRandom());
    assertEquals("\0".repeat(11), new String(fresh));
    assertEquals(key.thumbprint(), KeyFile.open(file, "another one".toCharArray()).thumbprint());
    assertEquals(new KeyLabel("Official Ash", key.thumbprint()), KeyFile.label(file));
    assertEquals(
        "KEY-PASSPHRASE",
        assertThrows(LedgerException.class, () -> KeyFile.open(file, PASSPHRASE.toCharArray()))
            .code());
    leavesNothingBesideTheKey();
  }

  @Test
  void staysAsItWasWhenTheNewOneCannotBeWrittenOrIsForAnotherKey() throws Exception {
    byte[] before = Files.readAllBytes(file);
    SigningKey stranger = SigningKey.generate(new SecureRandom());
    assertEquals(
        "KEY-DAMAGED",
        assertThrows(
                LedgerException.class,
                () -> KeyFile.reseal(file, stranger, "x".toCharArray(), new SecureRandom()))
            .code());
    assertThrows(
        IllegalArgumentException.class,
        () -> KeyFile.reseal(file, key, new char[0], new SecureRandom()));
    assertArrayEquals(before, Files.readAllBytes(file));
    leavesNothingBesideTheKey();
  }

  /** Whatever is killed between writing the draft and moving it leaves the old key whole. */
  @Test
  void opensAsBeforeBesideAHalfWrittenDraft() throws Exception {
    Files.writeString(folder.resolve(".key123.part"), "eyJ");
    assertEquals(key.thumbprint(), KeyFile.open(file, PASSPHRASE.toCharArray()).thumbprint());
  }

  @Test
  void showsItsOwnerWithoutThePassphrase() throws LedgerException {
    assertEquals(new KeyLabel("Official Ash", key.thumbprint()), KeyFile.label(file));
  }

  @Test
  void holdsNoPrivatePartInTheOpen() throws Exception {
    assertFalse(Files.readString(file).contains(Base64Url.encode(key.seed())));
    assertFalse(key.toString().contains(Base64Url.encode(key.seed())));
  }

  @Test
  void isReadableByItsOwnerOnlyWhereTheFileSystemCanSaySo() throws Exception {
    Assumptions.assumeTrue(
        Files.getFileStore(file).supportsFileAttributeView("posix"),
        "not run: this file system has no POSIX rights");
    assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
  }

  @Test
  void leavesNothingBesideTheKey() throws Exception {
    try (var files = Files.list(folder)) {
      assertEquals(List.of(file), files.toList());
    }
  }

  @Test
  void saysThatTheFileIsMissing() {
    LedgerException refused =
        assertThrows(
            LedgerException.class,
            () -> KeyFile.open(folder.resolve("none.key"), PASSPHRASE.toCharArray()));
    assertEquals("KEY-MISSING", refused.code());
  }

  @Test
  void refusesAFileThatIsNoKey() throws Exception {
    for (String text : List.of("", "hello", "a.b.c.d.e", "e30.e30.e30.e30.e30", "[]")) {
      Files.writeString(file, text);
      LedgerException refused =
          assertThrows(
              LedgerException.class, () -> KeyFile.open(file, PASSPHRASE.toCharArray()), text);
      assertEquals("KEY-DAMAGED", refused.code());
    }
  }

  /** Altered bytes cannot be told from a wrong passphrase, except where the form breaks. */
  @Test
  void refusesAnAlteredFile() throws Exception {
    String whole = Files.readString(file).strip();
    for (int dot = whole.indexOf('.'); dot > 0; dot = whole.indexOf('.', dot + 1)) {
      char[] altered = whole.toCharArray();
      altered[dot + 3] = altered[dot + 3] == 'A' ? 'B' : 'A';
      Files.writeString(file, new String(altered));
      LedgerException refused =
          assertThrows(LedgerException.class, () -> KeyFile.open(file, PASSPHRASE.toCharArray()));
      assertTrue(List.of("KEY-PASSPHRASE", "KEY-DAMAGED").contains(refused.code()));
    }
  }

  @Test
  void refusesALabelThatNamesAnotherKey() throws Exception {
    String whole = Files.readString(file).strip();
    String header = "{\"kid\":\"" + "A".repeat(43) + "\",\"owner\":\"Ash\"}";
    Files.writeString(
        file,
        Base64Url.encode(header.getBytes(java.nio.charset.StandardCharsets.UTF_8))
            + whole.substring(whole.indexOf('.')));
    assertEquals(
        "KEY-DAMAGED",
        assertThrows(LedgerException.class, () -> KeyFile.open(file, PASSPHRASE.toCharArray()))
            .code());
  }

  @Test
  void isReadByAnIndependentLibrary() throws Exception {
    JWEObject jwe = JWEObject.parse(Files.readString(file).strip());
    assertEquals("PBES2-HS512+A256KW", jwe.getHeader().getAlgorithm().getName());
    assertEquals(210_000, jwe.getHeader().getPBES2Count());
    jwe.decrypt(new PasswordBasedDecrypter(PASSPHRASE));
    OctetKeyPair pair = OctetKeyPair.parse(jwe.getPayload().toString());
    assertEquals(key.thumbprint(), pair.computeThumbprint().toString());
    assertArrayEquals(key.seed(), pair.getDecodedD());
  }
}
