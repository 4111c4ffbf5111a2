package lanewarden.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.nimbusds.jose.JWSObject;
import com.nimbusds.jose.crypto.Ed25519Verifier;
import com.nimbusds.jose.jwk.OctetKeyPair;
import com.nimbusds.jose.util.Base64URL;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.sql.DriverManager;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A ledger is verified by readers that share no code with its writer. */
class IndependentReaderTest {
  private static final Path FORMAT_PAGE = Path.of("src/site/markdown/ledger-format.md");

  @TempDir Path folder;
  SampleLedger sample;
  List<String> stored = new ArrayList<>();

  @BeforeEach
  void prepare() throws Exception {
    sample = new SampleLedger(folder.resolve("event.ledger")).with(3);
    try (Ledger ledger = sample.open()) {
      ledger.append(
          sample.official,
          List.of(
              SampleLedger.draft(
                  "note",
                  "{ \"kind\":\"official-enrolled\",\n\"who\":\"Zo\u00eb \ud83c\udff9\" }")));
    }
    try (var connection = DriverManager.getConnection("jdbc:sqlite:" + sample.file);
        var statement = connection.createStatement();
        var rows = statement.executeQuery("SELECT jws FROM entry ORDER BY seq")) {
      while (rows.next()) {
        stored.add(rows.getString(1));
      }
    }
    assertEquals(6, stored.size());
  }

  /** nimbus-jose-jwt with Google Tink's Ed25519. */
  @Test
  void isVerifiedByAnotherJoseLibrary() throws Exception {
    Map<String, OctetKeyPair> keys = new HashMap<>();
    String previous = Base64URL.encode(new byte[32]).toString();
    for (String text : stored) {
      JWSObject jws = JWSObject.parse(text);
      Map<String, Object> payload = jws.getPayload().toJSONObject();
      note(keys, payload);
      OctetKeyPair key = keys.get(jws.getHeader().getKeyID());
      assertTrue(key != null && jws.verify(new Ed25519Verifier(key)), text);
      assertEquals(previous, payload.get("prev"));
      previous =
          Base64URL.encode(
                  MessageDigest.getInstance("SHA-256")
                      .digest(text.getBytes(StandardCharsets.US_ASCII)))
              .toString();
    }
  }

  @SuppressWarnings("unchecked")
  private static void note(Map<String, OctetKeyPair> keys, Map<String, Object> payload)
      throws Exception {
    Map<String, Object> body = (Map<String, Object>) payload.get("body");
    for (String member : List.of("organizer", "official")) {
      if (body != null && body.get(member) instanceof Map<?, ?> jwk) {
        OctetKeyPair key = OctetKeyPair.parse((Map<String, Object>) jwk);
        keys.put(key.computeThumbprint().toString(), key);
      }
    }
  }

  @Test
  void isVerifiedByTheScriptOfTheFormatPage() throws Exception {
    assumeOpenSsl();
    String head = Verification.of(sample.file).head().orElseThrow().shortForm();
    assertEquals(
        "sound: organizer " + sample.organizer.thumbprint() + " head " + head, script(stored));
  }

  @Test
  void isRefusedByTheScriptWhenAnEntryIsMissing() throws Exception {
    assumeOpenSsl();
    stored.remove(3);
    assertEquals("entry 4: sequence or link is broken", script(stored));
  }

  @Test
  void isRefusedByTheScriptWhenASignatureIsAltered() throws Exception {
    assumeOpenSsl();
    String last = stored.remove(5);
    int at = last.lastIndexOf('.') + 5;
    char other = last.charAt(at) == 'A' ? 'B' : 'A';
    stored.add(last.substring(0, at) + other + last.substring(at + 1));
    assertEquals("entry 6: its signature does not fit", script(stored));
  }

  @Test
  void isRefusedByTheScriptWhenAStrangerSigned() throws Exception {
    assumeOpenSsl();
    SigningKey stranger = SigningKey.generate(new java.security.SecureRandom());
    Head head = Verification.of(sample.file).head().orElseThrow();
    Entry forged = TamperedLedger.after(head, stranger, SampleLedger.reading(1));
    stored.add(new String(forged.jws(), StandardCharsets.US_ASCII));
    assertEquals("entry 7: its signer is not enrolled", script(stored));
  }

  @Test
  void isRefusedByTheScriptWhenASuspendedOfficialSignedButNotOnceEnrolledAgain() throws Exception {
    assumeOpenSsl();
    Head head = Verification.of(sample.file).head().orElseThrow();
    Head suspended = follow(head, sample.organizer, suspension());
    Head after = follow(suspended, sample.official, SampleLedger.reading(1));
    assertEquals("entry 8: its signer is not enrolled", script(stored));
    stored.remove(7);
    Head again =
        follow(
            suspended,
            sample.organizer,
            KeyNotice.enrolment(sample.official.publicKey(), "Ash", Role.OFFICIAL));
    Head last = follow(again, sample.official, SampleLedger.reading(1));
    assertEquals(
        "sound: organizer " + sample.organizer.thumbprint() + " head " + last.shortForm(),
        script(stored));
    assertEquals(9, last.sequence());
    assertEquals(8, after.sequence());
  }

  @Test
  void isRefusedByTheScriptWhenAnotherThanTheOrganizerSuspendsOrNobodyIsSuspended()
      throws Exception {
    assumeOpenSsl();
    Head head = Verification.of(sample.file).head().orElseThrow();
    follow(head, sample.official, suspension());
    assertEquals("entry 7: suspends, but is not the organizer's", script(stored));
    stored.remove(6);
    Head once = follow(head, sample.organizer, suspension());
    follow(once, sample.organizer, suspension());
    assertEquals("entry 8: suspends nobody who may sign", script(stored));
  }

  @Test
  void isRefusedByTheScriptWhenTheLedgerIsOpenedAgain() throws Exception {
    assumeOpenSsl();
    Head head = Verification.of(sample.file).head().orElseThrow();
    follow(head, sample.organizer, KeyNotice.opening(sample.organizer.publicKey()));
    assertEquals("entry 7: opens the ledger again", script(stored));
  }

  private Draft suspension() {
    return KeyNotice.suspension(sample.official.publicKey(), "left the event");
  }

  private Head follow(Head head, SigningKey signer, Draft draft) {
    Entry entry = TamperedLedger.after(head, signer, draft);
    stored.add(new String(entry.jws(), StandardCharsets.US_ASCII));
    return new Head(entry.sequence(), entry.hash());
  }

  private String script(List<String> entries) throws Exception {
    String page = Files.readString(FORMAT_PAGE);
    int start = page.indexOf("```sh\n") + "```sh\n".length();
    Path script = folder.resolve("check.sh");
    Files.writeString(script, page.substring(start, page.indexOf("\n```", start) + 1));
    Path input = folder.resolve("entries.txt");
    Files.writeString(input, String.join("\n", entries) + "\n");
    Process process =
        new ProcessBuilder("sh", script.toString())
            .redirectInput(input.toFile())
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(process.waitFor(60, TimeUnit.SECONDS));
    return said.strip();
  }

  private static void assumeOpenSsl() throws InterruptedException {
    try {
      Process process = new ProcessBuilder("openssl", "version").redirectErrorStream(true).start();
      String version = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      Assumptions.assumeTrue(
          process.waitFor() == 0 && version.startsWith("OpenSSL 3"),
          "not run: the script needs OpenSSL 3 on the path, found " + version.strip());
      Assumptions.assumeTrue(
          new ProcessBuilder("sh", "-c", "command -v sed od mktemp").start().waitFor() == 0,
          "not run: the script needs a POSIX shell with sed, od and mktemp");
    } catch (IOException none) {
      Assumptions.abort("not run: there is no openssl or no sh on the path");
    }
  }
}
