package lanewarden.audit.slip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import lanewarden.audit.PrintedReport;
import lanewarden.audit.ScriptedLedger;
import lanewarden.audit.press.Conformance;
import lanewarden.bench.Caution;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import lanewarden.journal.SetUpStated;
import lanewarden.ledger.PrintedHead;
import lanewarden.quantity.Force;
import lanewarden.quantity.Mass;
import lanewarden.rules.SetUp;
import lanewarden.station.SignedPapers;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SlipsTest {
  @TempDir Path folder;

  private ScriptedLedger ledger() throws Exception {
    return ScriptedLedger.with(folder.resolve("event.ledger"), ScriptedLedger.RULES);
  }

  private Path pdf() {
    return folder.resolve("slip.pdf");
  }

  private Slips.Written write(ScriptedLedger ledger, String which) throws Exception {
    return new Slips(Clock.fixed(PrintedReport.MADE, ZoneOffset.UTC), SignedPapers::of)
        .write(ledger.file(), which, pdf());
  }

  private static BufferedImage rendered(Path pdf) throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      assertEquals(1, document.getNumberOfPages());
      return new PDFRenderer(document).renderImageWithDPI(0, 200);
    }
  }

  @Test
  void saysWhatTheLedgerSays() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      ledger.call("101", "Marta Olesund", "OC");
      long clipped = ledger.read("512.0 ft/s");
      ledger.declareVoid(clipped, "clipped the frame");
      for (String speed : List.of("312 ft/s", "308 ft/s", "310 ft/s")) {
        ledger.read(speed);
      }
      ledger.verdict();
      ledger.close(null);
      Slips.Written slip = write(ledger, "101");
      String text = PrintedReport.textOf(pdf());
      for (String words :
          List.of(
              "Hollow Oak Three-Day: speed check",
              "Bib 101",
              "▲ over",
              "OC Open compound, attempt 1",
              "300 ft/s, allowed 309 ft/s",
              "512.0 ft/s void",
              "308 ft/s",
              "362 gr",
              ScriptedLedger.OFFICIAL,
              ledger.head().shortForm(),
              slip.text())) {
        assertTrue(text.contains(words), words + " in " + text);
      }
      assertEquals("over", slip.outcome());
      assertFalse(text.contains("Olesund"), "a slip on a bow names nobody");
      assertEquals(List.of(), Conformance.faults(pdf()));
    }
  }

  /** Apart from the verdict, on a page of its own; of an arrow that is only declared, nothing. */
  @Test
  void adviceForAnArcherWhoIsOverStandsBehindTheVerdict() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      ledger.call("101", "Marta Olesund", "OC");
      ledger.say(
          new SetUpStated(
              ledger.now().number(),
              Mass.parse("350 gr"),
              Force.parse("60 lbf"),
              null,
              null,
              null,
              List.of(SetUp.ARROW_MASS)));
      for (String speed : List.of("319 ft/s", "320 ft/s", "321 ft/s")) {
        ledger.read(speed);
      }
      ledger.verdict();
      ledger.close(null);
      write(ledger, "101");
      String text = PrintedReport.textOf(pdf());
      String behind = text.substring(text.indexOf("Advice for the archer"));
      assertTrue(behind.contains("No part of the verdict, and not signed"), behind);
      assertTrue(behind.contains("To come within: an arrow"), behind);
      for (Caution caution : Caution.values()) {
        assertTrue(behind.contains(caution.inWords()), caution.inWords() + " in " + behind);
      }
      try (PDDocument document = Loader.loadPDF(pdf().toFile())) {
        assertEquals(2, document.getNumberOfPages());
      }
      assertEquals(List.of(), Conformance.faults(pdf()));
    }
  }

  @Test
  void ofAnArrowThatWasOnlyDeclaredThereIsNoAdvice() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      ledger.check("101", "Marta Olesund", "OC", "319 ft/s", "320 ft/s", "321 ft/s");
      write(ledger, "101");
      assertFalse(PrintedReport.textOf(pdf()).contains("dvice"));
    }
  }

  @Test
  void itsCodeIsReadBackFromThePictureAndLeadsToTheCheck() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      ledger.check("101", "Marta Olesund", "OC", "299.8 ft/s", "300.1 ft/s", "300.1 ft/s");
      Slips.Written slip = write(ledger, "101");
      BufferedImage picture = rendered(pdf());
      assertEquals(Optional.of(slip.text()), SquareCode.read(picture));
      Path png = folder.resolve("slip.png");
      ImageIO.write(picture, "png", png.toFile());
      SlipSearch.Found found = SlipSearch.find(ledger.file(), png.toString(), SignedPapers::of);
      assertTrue(found.stands(), found.toString());
      assertEquals(slip.check(), found.check());
      assertEquals(Optional.of("101"), found.bib());
      // What comes after a slip takes nothing away from it
      ledger.check("102", "Jun Takemizu", "OC", "300 ft/s", "300 ft/s", "300 ft/s");
      assertTrue(SlipSearch.find(ledger.file(), slip.text(), SignedPapers::of).stands());
    }
  }

  @Test
  void aVerdictThatChangedSinceIsTold() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      ledger.call("101", "Marta Olesund", "OC");
      long first = ledger.read("330 ft/s");
      ledger.read("303 ft/s");
      ledger.read("303 ft/s");
      ledger.verdict();
      Slips.Written slip = write(ledger, "101");
      ledger.declareVoid(first, "clipped the frame");
      ledger.read("303 ft/s");
      ledger.verdict();
      SlipSearch.Found found = SlipSearch.find(ledger.file(), slip.text(), SignedPapers::of);
      assertFalse(found.stands());
      assertEquals(List.of(), found.troubles());
      assertTrue(found.printed().orElseThrow().startsWith("over"), found.toString());
      assertTrue(found.now().orElseThrow().startsWith("within"), found.toString());
    }
  }

  /** The code of a slip can be made by hand; of such a check no slip is printed. */
  @Test
  void aSlipOfACheckThatTheLedgerContradictsDoesNotStand() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      long check = ledger.call("101", "Marta Olesund", "OC");
      for (String speed : List.of("330 ft/s", "330 ft/s", "330 ft/s")) {
        ledger.read(speed);
      }
      ledger.verdict(Outcome.WITHIN, "mean 300 ft/s");
      String code = new SlipText("Range East", check, ledger.head().printed()).toString();
      SlipSearch.Found found = SlipSearch.find(ledger.file(), code, SignedPapers::of);
      assertFalse(found.stands());
      assertTrue(
          found
              .troubles()
              .get(0)
              .startsWith("The ledger contradicts itself about this very check: Check " + check),
          found.toString());
    }
  }

  @Test
  void aSlipOfAnotherLedgerIsTold() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      long check =
          ledger.check("101", "Marta Olesund", "OC", "299.8 ft/s", "300.1 ft/s", "300.1 ft/s");
      PrintedHead real = ledger.head().printed();
      PrintedHead other = new PrintedHead(real.sequence(), "0123456789ab");
      SlipSearch.Found found =
          SlipSearch.find(
              ledger.file(), new SlipText("Range East", check, other).toString(), SignedPapers::of);
      assertFalse(found.stands());
      assertEquals(1, found.troubles().size(), found.toString());
      found =
          SlipSearch.find(
              ledger.file(), new SlipText("Elsewhere", check, real).toString(), SignedPapers::of);
      assertTrue(found.troubles().get(0).contains("Elsewhere"), found.toString());
      found =
          SlipSearch.find(
              ledger.file(), new SlipText("Range East", 9999, real).toString(), SignedPapers::of);
      assertEquals(List.of("The ledger has no check 9999."), found.troubles());
      long later = ledger.check("102", "Jun Takemizu", "OC", "300 ft/s", "300 ft/s", "300 ft/s");
      found =
          SlipSearch.find(
              ledger.file(), new SlipText("Range East", later, real).toString(), SignedPapers::of);
      assertFalse(found.stands());
      assertEquals(
          List.of(
              "The slip cannot be genuine: at the head "
                  + real
                  + " that it bears, there was no check "
                  + later
                  + " yet."),
          found.troubles());
      real = ledger.head().printed();
      PrintedHead beyond = new PrintedHead(real.sequence() + 5, "0123456789ab");
      found =
          SlipSearch.find(
              ledger.file(),
              new SlipText("Range East", check, beyond).toString(),
              SignedPapers::of);
      assertFalse(found.troubles().isEmpty(), "entries that were cut off are missed");
    }
  }

  /** Signed as a pass against its own readings; the check before it is clean. */
  @Test
  void ofACheckThatTheLedgerContradictsThereIsNoSlipAndOfOthersThereIs() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      ledger.check("101", "Marta Olesund", "OC", "299.8 ft/s", "300.1 ft/s", "300.1 ft/s");
      long check = ledger.call("102", "Jun Takemizu", "OC");
      for (int i = 0; i < 3; i++) {
        ledger.read("310 ft/s");
      }
      ledger.verdict(Outcome.WITHIN, "mean 300 ft/s");
      ledger.close(null);
      assertEquals("within", write(ledger, "101").outcome());
      Files.delete(pdf());
      SlipRefused refused = assertThrows(SlipRefused.class, () -> write(ledger, "102"));
      assertEquals("SLIP-CONTRADICTED", refused.code());
      assertEquals(SlipRefused.Nature.PROOF, refused.nature());
      assertEquals("The slip of check " + check + " was not written.", refused.what());
      assertTrue(
          refused.why().contains("was signed as “within”, but the rule gives"), refused.why());
      assertFalse(Files.exists(pdf()));
    }
  }

  /** An official puts it in force, and the organizer brings the right one back. */
  @Test
  void aPassByARuleBookThatTheOrganizerDidNotSignHasNoSlip() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      ledger.check("101", "Marta Olesund", "OC", "299.8 ft/s", "300.1 ft/s", "300.1 ft/s");
      Fact.RuleBookAdopted loose =
          ScriptedLedger.ruleBook(ScriptedLedger.RULES.replace("300 ft/s", "350 ft/s"), "why");
      ledger.say(loose);
      ledger.check("102", "Jun Takemizu", "OC", "340 ft/s", "340 ft/s", "340 ft/s");
      ledger.adopt(ScriptedLedger.RULES, "back");
      ledger.check("103", "Ingeborg Hollin", "OC", "300 ft/s", "300 ft/s", "300 ft/s");
      assertEquals("within", write(ledger, "101").outcome());
      assertTrue(
          assertThrows(SlipRefused.class, () -> write(ledger, "102"))
              .why()
              .contains("put in force by another key than the organizer's"));
    }
  }

  @Test
  void aCheckIsFoundByItsNumberToo() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      ledger.check("101", "Marta Olesund", "OC", "312 ft/s", "312 ft/s", "312 ft/s");
      long first = ledger.standing().checksOf("101").get(0).number();
      ledger.check("101", "Marta Olesund", "OC", "300 ft/s", "300 ft/s", "300 ft/s");
      assertEquals("within", write(ledger, "101").outcome());
      assertEquals("over", write(ledger, String.valueOf(first)).outcome());
      assertEquals("SLIP-CHECK", assertThrows(SlipRefused.class, () -> write(ledger, "77")).code());
    }
  }

  @Test
  void aCheckWhoseNumberIsABibTooIsFoundAllTheSame() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      ledger.check("101", "Marta Olesund", "OC", "312 ft/s", "312 ft/s", "312 ft/s");
      String first = String.valueOf(ledger.standing().checksOf("101").get(0).number());
      ledger.check(first, "Ada Brink", "OC", "300 ft/s", "300 ft/s", "300 ft/s");
      assertEquals("within", write(ledger, first).outcome());
      assertEquals("over", write(ledger, "check " + first).outcome());
      assertEquals(
          "SLIP-CHECK", assertThrows(SlipRefused.class, () -> write(ledger, "check 101")).code());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "lanewarden:2:A:1:1-0123456789ab",
        "lanewarden:1:A:0:1-0123456789ab",
        "lanewarden:1:A:1:1-0123456789AB",
        "lanewarden:1:A:1",
        "lanewarden:1:%zz:1:1-0123456789ab",
        "https://elsewhere.example/"
      })
  void aTextOfNoSlipIsRefused(String text) throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      assertEquals(
          "SLIP-CODE",
          assertThrows(
                  SlipRefused.class, () -> SlipSearch.find(ledger.file(), text, SignedPapers::of))
              .code());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"Range East", "A:B", "Bogenplatz Süd 3 %", "+ +"})
  void aStationOfAnyNameComesBack(String station) {
    SlipText slip = new SlipText(station, 12, new PrintedHead(34, "0123456789ab"));
    assertEquals(slip, SlipText.parse(slip.toString()));
    assertTrue(slip.toString().matches("[ -~]+"), slip.toString());
  }
}
