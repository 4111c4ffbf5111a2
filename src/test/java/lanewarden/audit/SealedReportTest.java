package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import lanewarden.audit.findings.Finding;
import lanewarden.audit.press.Conformance;
import lanewarden.audit.seal.Seal;
import lanewarden.audit.seal.TimeStampAuthority;
import lanewarden.journal.Fact;
import lanewarden.journal.FrameFact;
import lanewarden.ledger.SealKey;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.bouncycastle.asn1.pkcs.PKCSObjectIdentifiers;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cms.CMSException;
import org.bouncycastle.cms.CMSProcessableByteArray;
import org.bouncycastle.cms.CMSSignedData;
import org.bouncycastle.cms.SignerInformation;
import org.bouncycastle.cms.jcajce.JcaSimpleSignerInfoVerifierBuilder;
import org.bouncycastle.tsp.TimeStampToken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The seal of a report, checked by BouncyCastle, by poppler's {@code pdfsig} and by OpenSSL's
 * {@code ts} where they are installed.
 */
class SealedReportTest {
  private static final SealKey KEY =
      SealKey.generate(
          "Report seal", "Range East", Instant.parse("2026-05-01T00:00:00Z"), new SecureRandom());

  @TempDir Path folder;

  private Path ledger(boolean stated, boolean byOrganizer) throws Exception {
    Path file = folder.resolve("event.ledger");
    try (ScriptedLedger ledger = ScriptedLedger.with(file, ScriptedLedger.RULES)) {
      Fact adopted =
          new FrameFact.ReportSealAdopted(
              Base64.getEncoder().encodeToString(KEY.certificateBytes()));
      if (stated && byOrganizer) {
        ledger.signAsOrganizer(adopted);
      } else if (stated) {
        ledger.say(adopted);
      }
      ledger.check("101", "Marta Olesund", "OC", "299.8 ft/s", "300.1 ft/s", "300.1 ft/s");
    }
    return file;
  }

  private AuditReport.Written write(Path ledger, Path pdf, TimeStampAuthority authority)
      throws Exception {
    return PrintedReport.report()
        .write(
            ledger,
            pdf,
            new ReportEdition(true, Optional.of(new Seal(KEY)), Optional.ofNullable(authority)),
            step -> {});
  }

  /** The signature's CMS over the bytes that it covers. */
  private static CMSSignedData signature(byte[] pdf) throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDSignature signature = document.getLastSignatureDictionary();
      int[] range = signature.getByteRange();
      assertEquals(0, range[0]);
      assertEquals(pdf.length, range[2] + range[3], "it covers the file to its end");
      return new CMSSignedData(
          new CMSProcessableByteArray(signature.getSignedContent(pdf)),
          // Zeros fill the room that the signature left.
          new ByteArrayInputStream(signature.getContents(pdf)));
    }
  }

  private static SignerInformation signer(CMSSignedData cms) {
    return cms.getSignerInfos().iterator().next();
  }

  private static boolean isValid(byte[] pdf) throws Exception {
    try {
      return signer(signature(pdf))
          .verify(new JcaSimpleSignerInfoVerifierBuilder().build(KEY.certificate()));
    } catch (CMSException digestDiffers) {
      return false;
    }
  }

  @Test
  void bouncyCastleFindsTheSignatureValidAndEveryChangedByte() throws Exception {
    Path pdf = folder.resolve("report.pdf");
    write(ledger(true, true), pdf, null);
    byte[] bytes = Files.readAllBytes(pdf);
    assertTrue(isValid(bytes));
    int[] range;
    try (PDDocument document = Loader.loadPDF(bytes)) {
      range = document.getLastSignatureDictionary().getByteRange();
    }
    CMSSignedData cms = signature(bytes);
    int tried = 0;
    for (int at = 7; at < range[1]; at += Math.max(1, range[1] / 400)) {
      byte[] covered = covered(bytes, range);
      covered[at] ^= 1;
      assertFalse(verifies(cms, covered), "byte " + at);
      tried++;
    }
    assertTrue(tried > 300);
  }

  private static byte[] covered(byte[] pdf, int[] range) {
    byte[] covered = new byte[range[1] + range[3]];
    System.arraycopy(pdf, range[0], covered, 0, range[1]);
    System.arraycopy(pdf, range[2], covered, range[1], range[3]);
    return covered;
  }

  private static boolean verifies(CMSSignedData cms, byte[] covered) throws Exception {
    CMSSignedData over = new CMSSignedData(new CMSProcessableByteArray(covered), cms.getEncoded());
    try {
      return signer(over).verify(new JcaSimpleSignerInfoVerifierBuilder().build(KEY.certificate()));
    } catch (CMSException digestDiffers) {
      return false;
    }
  }

  @Test
  void namesItsCertificateAsCadesWantsAndClaimsNoTimeInside() throws Exception {
    Path pdf = folder.resolve("report.pdf");
    write(ledger(true, true), pdf, null);
    SignerInformation signer = signer(signature(Files.readAllBytes(pdf)));
    var signed = signer.getSignedAttributes();
    assertTrue(signed.get(PKCSObjectIdentifiers.id_aa_signingCertificateV2) != null);
    assertTrue(signed.get(PKCSObjectIdentifiers.pkcs_9_at_signingTime) == null);
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PDSignature signature = document.getLastSignatureDictionary();
      assertEquals("ETSI.CAdES.detached", signature.getSubFilter());
      assertEquals(PrintedReport.MADE, signature.getSignDate().toInstant());
    }
  }

  @Test
  void staysPdfA3aAndPdfUa1() throws Exception {
    Path pdf = folder.resolve("report.pdf");
    write(ledger(true, true), pdf, null);
    assertEquals(List.of(), Conformance.faults(pdf));
  }

  @Test
  void pdfsigSaysValidAndFindsAChangedByte() throws Exception {
    assumeTrue(Shell.has("pdfsig"), "pdfsig (poppler-utils) is not installed");
    Path pdf = folder.resolve("report.pdf");
    write(ledger(true, true), pdf, null);
    String words = Shell.run("pdfsig", pdf.toString());
    assertTrue(words.contains("Signature is Valid"), words);
    assertTrue(words.contains("Total document signed"), words);
    byte[] bytes = Files.readAllBytes(pdf);
    bytes[bytes.length / 2] ^= 1;
    Path changed = Files.write(folder.resolve("changed.pdf"), bytes);
    words = Shell.run("pdfsig", changed.toString());
    assertFalse(words.contains("Signature is Valid"), words);
  }

  @Test
  void saysWhichEntryStatesTheSeal() throws Exception {
    Path pdf = folder.resolve("report.pdf");
    write(ledger(true, true), pdf, null);
    String text = PrintedReport.textOf(pdf);
    assertTrue(text.contains("● This report is sealed."), text);
    assertTrue(text.contains("in entry 7 of the ledger"), text);
    assertTrue(text.contains(new Seal(KEY).fingerprint()), text);
    assertTrue(text.contains("No time-stamp: nobody but the station’s own clock"), text);
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aSealThatTheOrganizerDidNotStateIsAStrangers(boolean byAnOfficial) throws Exception {
    Path pdf = folder.resolve("report.pdf");
    AuditSummary summary = write(ledger(byAnOfficial, false), pdf, null).summary();
    assertTrue(PrintedReport.textOf(pdf).contains("▲ This report is sealed by a stranger."));
    assertEquals(
        byAnOfficial ? List.of(Finding.Kind.SEAL) : List.of(),
        summary.contradictions().stream().map(Finding::kind).toList());
  }

  @Test
  void anUnsealedReportSaysSo() throws Exception {
    assertTrue(PrintedReport.of(ledger(true, true)).says("○ This report is not sealed."));
  }

  @Test
  void aTimeStampOfAnAuthorityStandsInTheSignature() throws Exception {
    Path pdf = folder.resolve("report.pdf");
    try (StampingOffice office = new StampingOffice()) {
      AuditReport.Written written = write(ledger(true, true), pdf, authority(office.url("/stamp")));
      assertEquals(Optional.empty(), written.withoutTimeStamp());
      SignerInformation signer = signer(signature(Files.readAllBytes(pdf)));
      TimeStampToken token = token(signer);
      token.validate(new JcaSimpleSignerInfoVerifierBuilder().build(office.certificate()));
      assertEquals(StampingOffice.STAMPED, token.getTimeStampInfo().getGenTime().toInstant());
      assertEquals(List.of(), Conformance.faults(pdf));
      assertTrue(
          PrintedReport.textOf(pdf)
              .replace(" ", "")
              .contains("Withatime-stamp(RFC3161)of" + office.url("/stamp")));
      assertTrue(isValid(Files.readAllBytes(pdf)));
      opensslAgrees(token, signer.getSignature(), office.certificate());
    }
  }

  private static TimeStampToken token(SignerInformation signer) throws Exception {
    return new TimeStampToken(
        new CMSSignedData(
            signer
                .getUnsignedAttributes()
                .get(PKCSObjectIdentifiers.id_aa_signatureTimeStampToken)
                .getAttributeValues()[0]
                .toASN1Primitive()
                .getEncoded()));
  }

  private void opensslAgrees(
      TimeStampToken token, byte[] stamped, X509CertificateHolder certificate) throws Exception {
    assumeTrue(Shell.has("openssl"), "openssl is not installed");
    Path data = Files.write(folder.resolve("signature"), stamped);
    Path answer = Files.write(folder.resolve("token"), token.getEncoded());
    Path trusted =
        Files.writeString(
            folder.resolve("office.pem"),
            "-----BEGIN CERTIFICATE-----\n"
                + Base64.getMimeEncoder(64, new byte[] {'\n'})
                    .encodeToString(certificate.getEncoded())
                + "\n-----END CERTIFICATE-----\n");
    String words =
        Shell.run(
            "openssl",
            "ts",
            "-verify",
            "-data",
            data.toString(),
            "-in",
            answer.toString(),
            "-token_in",
            "-CAfile",
            trusted.toString());
    assertTrue(words.contains("Verification: OK"), words);
    Files.write(data, new byte[] {1});
    words =
        Shell.run(
            "openssl",
            "ts",
            "-verify",
            "-data",
            data.toString(),
            "-in",
            answer.toString(),
            "-token_in",
            "-CAfile",
            trusted.toString());
    assertFalse(words.contains("Verification: OK"), words);
  }

  private static TimeStampAuthority authority(String url) {
    return new TimeStampAuthority(url, new SecureRandom());
  }

  @ParameterizedTest
  @ValueSource(strings = {"/broken", "/other", "gone"})
  void withoutAnAnswerTheReportIsSealedAndSaysThatItHasNoTimeStamp(String path) throws Exception {
    Path pdf = folder.resolve("report.pdf");
    String url;
    try (StampingOffice office = new StampingOffice()) {
      url = office.url(path.equals("gone") ? "/stamp" : path);
      if (!path.equals("gone")) {
        String why =
            write(ledger(true, true), pdf, authority(url)).withoutTimeStamp().orElseThrow();
        assertEquals(1, office.served());
        assertTrue(
            why.contains(path.equals("/broken") ? "HTTP status 500" : "its answer is not in order"),
            why);
      }
    }
    if (path.equals("gone")) {
      String why = write(ledger(true, true), pdf, authority(url)).withoutTimeStamp().orElseThrow();
      assertTrue(why.contains("it could not be reached"), why);
    }
    assertTrue(isValid(Files.readAllBytes(pdf)));
    assertTrue(PrintedReport.textOf(pdf).contains("No time-stamp: the authority"));
    assertTrue(
        signer(signature(Files.readAllBytes(pdf))).getUnsignedAttributes() == null,
        "nothing unsigned hangs on it");
  }

  @Test
  void onlyAWebAddressIsAnAuthority() {
    for (String url : List.of("ftp://stamps.example", "stamps.example", "http://", "file:///x")) {
      assertThrows(IllegalArgumentException.class, () -> authority(url), url);
    }
  }
}
