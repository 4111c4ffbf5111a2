package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lanewarden.audit.press.Progress;
import lanewarden.journal.Check;
import lanewarden.journal.Outcome;
import lanewarden.quantity.Mass;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AuditReportTest {
  @TempDir Path folder;

  private ScriptedLedger ledger() throws Exception {
    return ScriptedLedger.with(folder.resolve("event.ledger"), ScriptedLedger.RULES);
  }

  @Test
  void namesEveryCheckAndEveryReading() throws Exception {
    try (ScriptedLedger ledger = DemoSizeLedger.make(folder.resolve("event.ledger"), 1, 11)) {
      PrintedReport report = PrintedReport.of(ledger.file());
      List<String> missing = new ArrayList<>();
      for (Check check : ledger.standing().checks()) {
        String row = check.opened().bib() + " " + check.opened().name();
        if (!report.says(row)) {
          missing.add(row);
        }
        check.shots().stream()
            .map(s -> s.reading().speed().toString())
            .filter(speed -> !report.says(speed))
            .forEach(missing::add);
        if (!report.says(check.verdict().orElseThrow().fact().reason())) {
          missing.add("reason of check " + check.number());
        }
      }
      assertEquals(List.of(), missing);
      assertEquals(ledger.standing().checks().size(), report.summary().checks());
      assertEquals(40, report.summary().competitors());
    }
  }

  @Test
  void printsHeadHashAndThumbprints() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      ledger.check("101", "Marta Olesund", "OC", "299.8 ft/s", "300.1 ft/s", "300.1 ft/s");
      PrintedReport report = PrintedReport.of(ledger.file());
      assertTrue(report.says(ledger.head().shortForm()));
      assertTrue(report.says(ledger.head().hash().hex()));
      assertTrue(report.says(ledger.standing().ruleBook().orElseThrow().sha256()));
      assertTrue(report.says(ledger.organizerThumbprint()));
      assertTrue(report.says(ScriptedLedger.OFFICIAL + " " + ledger.officialThumbprint()));
      assertEquals(ledger.head(), report.summary().head().orElseThrow());
    }
  }

  @Test
  void printsEventStationPeriodAndTheTimeItWasMade() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      PrintedReport report = PrintedReport.of(ledger.file());
      assertTrue(report.says("Hollow Oak Three-Day"));
      assertTrue(report.says("Range East"));
      assertTrue(report.says("2026-05-30 07:30:02 UTC to 2026-05-30 07:30:"));
      assertTrue(report.says("Report made 2026-05-30 16:00:00 UTC"));
    }
  }

  @Test
  void printsTheRuleInWordsAndTheWholeRuleBook() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      PrintedReport report = PrintedReport.of(ledger.file());
      assertTrue(report.says("At most 300 ft/s plus 3 % (309 ft/s)."));
      assertTrue(report.says("The mean of 3 readings decides."));
      ScriptedLedger.RULES.lines().forEach(line -> assertTrue(report.says(line.strip()), line));
    }
  }

  @Test
  void marksVoidAndTypedReadingsInWords() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      ledger.call("101", "Marta Olesund", "OC");
      long clipped = ledger.read("512.0 ft/s");
      ledger.declareVoid(clipped, "clipped the frame");
      ledger.take("299.0 ft/s", "typed");
      ledger.close("ran out of light");
      PrintedReport report = PrintedReport.of(ledger.file());
      assertTrue(report.says("512.0 ft/s void"));
      assertTrue(report.says("Shot 1 void: clipped the frame"));
      assertTrue(report.says("299.0 ft/s typed"));
      assertTrue(report.says("ended without verdict ran out of light"));
    }
  }

  @Test
  void printsTheKineticEnergyOfAWeighedArrow() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      // Own computation: 0.5 × 400 × 0.06479891 g × (300 × 0.3048 m/s)² = 108.36 J.
      ledger.call("101", "Marta Olesund", "OC", Mass.parse("400 gr"));
      ledger.read("300 ft/s");
      PrintedReport report = PrintedReport.of(ledger.file());
      assertTrue(report.says("400 gr 108.4 J (79.9 ft·lbf)"));
    }
  }

  @Test
  void saysWhoCameBackInsideAndWhoDidNot() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      ledger.check("101", "Marta Olesund", "OC", "312 ft/s", "308 ft/s", "310 ft/s");
      ledger.check("101", "Marta Olesund", "OC", "302 ft/s", "301 ft/s", "300 ft/s");
      ledger.check("102", "Jun Takemizu", "OC", "312 ft/s", "312 ft/s", "312 ft/s");
      PrintedReport report = PrintedReport.of(ledger.file());
      assertTrue(report.says("came back inside at attempt 2"));
      assertTrue(report.says("▲ did not come back inside"));
      assertEquals(2, report.summary().outcomes().get(Outcome.OVER));
      assertEquals(1, report.summary().outcomes().get(Outcome.WITHIN));
    }
  }

  @Test
  void printsMeanAndDeviationOfTheStandingReadingsInTheGoverningUnit() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      // Own computation: mean of 298, 300, 302 is 300; deviation is the root of 8/2, which is 2.
      ledger.check("101", "Marta Olesund", "OC", "298 ft/s", "300 ft/s", "302 ft/s");
      PrintedReport report = PrintedReport.of(ledger.file());
      assertTrue(report.says("300.00 ft/s 2.00 ft/s"));
    }
  }

  @Test
  void namesWithMarkupPrintAsTheyAre() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      String name = "<b>&\"'</b> {{event}} &amp; ]]>";
      ledger.call("<1>", name, "OC");
      long reading = ledger.read("300 ft/s");
      ledger.declareVoid(reading, "<script>alert(1)</script>");
      PrintedReport report = PrintedReport.of(ledger.file());
      assertTrue(report.says("<1> " + name));
      assertTrue(report.says("Shot 1 void: <script>alert(1)</script>"));
    }
  }

  @Test
  void everyPageCarriesEventHeadAndItsNumber() throws Exception {
    try (ScriptedLedger ledger = DemoSizeLedger.make(folder.resolve("event.ledger"), 1, 3)) {
      PrintedReport report = PrintedReport.of(ledger.file());
      try (PDDocument document = Loader.loadPDF(report.pdf().toFile())) {
        int pages = document.getNumberOfPages();
        assertTrue(pages > 5, "a real report, not " + pages + " pages");
        for (int page = 1; page <= pages; page++) {
          PDFTextStripper one = new PDFTextStripper();
          one.setStartPage(page);
          one.setEndPage(page);
          String text = one.getText(document);
          assertTrue(text.contains("Ledger head " + ledger.head().shortForm()), "page " + page);
          assertTrue(text.contains("Brindlemere Three-Day"), "page " + page);
          assertTrue(text.contains("Page " + page + " of " + pages), "page " + page);
        }
      }
    }
  }

  @Test
  void documentHasTitleLanguageBookmarksTagsAndEmbeddedFonts() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      PrintedReport report = PrintedReport.of(ledger.file());
      try (PDDocument document = Loader.loadPDF(report.pdf().toFile())) {
        assertEquals(
            "Speed check audit: Hollow Oak Three-Day",
            document.getDocumentInformation().getTitle());
        assertEquals(
            PrintedReport.MADE, document.getDocumentInformation().getCreationDate().toInstant());
        assertEquals("en", document.getDocumentCatalog().getLanguage());
        assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
        assertTrue(
            document.getDocumentCatalog().getDocumentOutline().children().iterator().hasNext());
        for (PDPage page : document.getPages()) {
          for (COSName font : page.getResources().getFontNames()) {
            assertTrue(page.getResources().getFont(font).isEmbedded(), font.getName());
          }
        }
      }
    }
  }

  @Test
  void aLedgerWithoutAnyCheckIsReportedToo() throws Exception {
    try (ScriptedLedger ledger = ScriptedLedger.bare(folder.resolve("event.ledger"))) {
      PrintedReport report = PrintedReport.of(ledger.file());
      assertTrue(report.says("The ledger holds no rule book"));
      assertTrue(report.says("No competitor was checked."));
      assertEquals(0, report.summary().checks());
      assertTrue(report.summary().sound());
    }
  }

  @Test
  void carriesTheCautionsAndTheLimitsOfASignature() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      PrintedReport report = PrintedReport.of(ledger.file());
      assertTrue(report.says("Never draw or release without a nocked arrow"));
      assertTrue(report.says("certified range officers have the last word"));
      assertTrue(report.says("It does not prove that a reading is right"));
      assertFalse(report.says("{{"), "a template tag was left standing");
    }
  }

  @Test
  void progressNeverGoesBackAndEndsComplete() throws Exception {
    try (ScriptedLedger ledger = DemoSizeLedger.make(folder.resolve("event.ledger"), 1, 5)) {
      List<Progress> progress = PrintedReport.of(ledger.file()).progress();
      int before = 0;
      for (Progress step : progress) {
        assertTrue(step.done() >= before && step.done() <= step.total(), step.toString());
        assertEquals(progress.get(0).total(), step.total());
        before = step.done();
      }
      Progress last = progress.get(progress.size() - 1);
      assertEquals(last.total(), last.done());
      assertTrue(progress.stream().anyMatch(p -> p.step().matches("Printing page 3 of \\d+")));
    }
  }
}
