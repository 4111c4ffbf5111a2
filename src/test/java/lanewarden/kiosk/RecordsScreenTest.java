package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import javafx.scene.control.ListView;
import javafx.scene.control.PasswordField;
import javafx.scene.control.ProgressBar;
import javafx.scene.input.KeyCode;
import lanewarden.audit.press.Progress;
import lanewarden.kiosk.audit.ReportMaker;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reports made by keys alone, while the line goes on. */
class RecordsScreenTest {
  @TempDir Path temp;

  /** What the screen tells line by line. */
  static String told(Booth booth) throws Exception {
    return Booth.call(
        () ->
            ((ListView<?>) booth.front.official().lookup("#errand-told"))
                .getItems().stream().map(String::valueOf).reduce("", (a, b) -> a + "\n" + b));
  }

  /** Answers a form: each with Enter behind it. */
  static void answer(Booth booth, String... answers) throws Exception {
    for (String answer : answers) {
      booth.type(answer);
      booth.press(KeyCode.ENTER);
    }
  }

  /** Chooses an option of each question by its number, and goes on to the next question. */
  static void choose(Booth booth, String... numbers) throws Exception {
    for (String number : numbers) {
      booth.type(number);
      booth.press(KeyCode.TAB);
    }
  }

  private static Path file(Booth booth, String start, String end) {
    return booth
        .folder
        .path()
        .resolve(start + booth.station.view().head().shortForm() + end)
        .toAbsolutePath();
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document);
    }
  }

  private static List<PDSignature> signatures(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return document.getSignatureDictionaries();
    }
  }

  @Test
  void wholeReportIsNamedAfterTheLedgersHeadAndSaysThatNothingWasFound() throws Exception {
    try (Booth booth = new Booth(temp)) {
      booth.press(KeyCode.F8);
      booth.press(KeyCode.F8);
      answer(booth, "1");

      Path pdf = file(booth, "audit-", ".pdf");
      assertEquals("Made: " + pdf.getFileName(), booth.text("errand-words"));
      assertTrue(told(booth).contains("File: " + pdf), told(booth));
      assertTrue(told(booth).contains("Faults: none found"), told(booth));
      assertTrue(told(booth).contains("Findings: none"), told(booth));
      assertTrue(signatures(pdf).isEmpty());
    }
  }

  @Test
  void reportIsToldWithTheOutcomesThatCount() throws Exception {
    try (Booth booth = new Booth(temp)) {
      booth.signIn();
      booth.scan("103");
      booth.shoot("299.1 ft/s", "299.0 ft/s", "299.2 ft/s");
      booth.press(KeyCode.ENTER);
      booth.scan("104");
      booth.press(KeyCode.F8);
      booth.press(KeyCode.F8);
      answer(booth, "1");
      assertTrue(
          told(booth)
              .contains("Outcomes that count: WITHIN 1, OVER 0, NOT DECIDED 0, NOT ADMITTED 0"),
          told(booth));
      assertTrue(told(booth).contains("Checks without a verdict: 1. In question: 0"), told(booth));
    }
  }

  /** The form of a report that is to be sealed. */
  private static void openSealForm(Booth booth) throws Exception {
    booth.press(KeyCode.F8);
    booth.press(KeyCode.F8);
    choose(booth, "1");
    answer(booth, "2");
    assertTrue(booth.shows("seal-panel"), booth.text("form-trouble"));
  }

  @Test
  void sealedReportTakesTheOrganizersPassphraseAndNoOther() throws Exception {
    try (Booth booth = new Booth(temp)) {
      openSealForm(booth);
      answer(booth, "a very long elm");

      Path pdf = file(booth, "audit-", "-sealed.pdf");
      assertTrue(booth.text("form-trouble").contains("KEY-PASSPHRASE"));
      assertEquals("", booth.fieldText("form-organizer"), "a wrong passphrase does not stay");
      assertTrue(
          Booth.call(
              () -> booth.front.official().lookup("#form-organizer") instanceof PasswordField));
      assertFalse(Files.exists(pdf));

      answer(booth, BoothEvent.ORGANIZER_PASSPHRASE);
      assertFalse(booth.shows("seal-panel"), booth.text("form-trouble"));
      assertEquals(1, signatures(pdf).size(), booth.text("errand-trouble"));
      assertTrue(told(booth).contains("Certificate of the seal"), told(booth));
    }
  }

  @Test
  void keyOfTheSealThatGoesMissingWhileItsFormIsOpenIsThenAskedForThere() throws Exception {
    try (Booth booth = new Booth(temp)) {
      openSealForm(booth);
      assertFalse(booth.shows("form-seal-key"), "it is in its place");
      Path away = Files.move(booth.folder.reportSeal(), temp.resolve("away.seal"));
      answer(booth, BoothEvent.ORGANIZER_PASSPHRASE);
      assertFalse(booth.text("form-trouble").isEmpty());
      assertEquals(away.toString(), chosen(booth, away));
      booth.focusField("form-organizer");
      answer(booth, BoothEvent.ORGANIZER_PASSPHRASE);
      assertFalse(booth.shows("seal-panel"), booth.text("form-trouble"));
      assertEquals(1, signatures(file(booth, "audit-", "-sealed.pdf")).size());
    }
  }

  /** Chooses the key of the seal with the system's chooser. */
  private static String chosen(Booth booth, Path away) throws Exception {
    booth.windows.chosen.add(away);
    booth.touch("choose-seal-key");
    return booth.fieldText("form-seal-key");
  }

  @Test
  void authorityThatGivesNoTimeStampIsToldBesideTheSealedReport() throws Exception {
    try (Booth booth = new Booth(temp)) {
      // Port 9 is the discard service (RFC 863), where nobody listens here
      Files.writeString(
          booth.folder.path().resolve("station.toml"),
          "[time_stamp]\nurl = \"http://127.0.0.1:9/\"\n",
          StandardOpenOption.APPEND);
      booth.press(KeyCode.F8);
      booth.press(KeyCode.F8);
      choose(booth, "1");
      answer(booth, "2", BoothEvent.ORGANIZER_PASSPHRASE);

      assertTrue(booth.text("errand-trouble").contains("TIME-STAMP-MISSING"));
      assertEquals(1, signatures(file(booth, "audit-", "-sealed.pdf")).size());
    }
  }

  @Test
  void editionForEverybodyHasTheBibAndNoName() throws Exception {
    try (Booth booth = new Booth(temp)) {
      booth.signIn();
      booth.scan("103");
      String name = booth.check().opened().name();
      booth.shoot("299.1 ft/s", "299.0 ft/s", "299.2 ft/s");
      booth.press(KeyCode.F8);
      booth.press(KeyCode.F8);
      choose(booth, "2", "1");
      answer(booth, "2");

      String everybody = text(file(booth, "public-", ".pdf"));
      assertTrue(everybody.contains("103"));
      assertFalse(everybody.contains(name), name);
      assertTrue(Files.exists(file(booth, "entries-", "").resolve("verify.html")), told(booth));

      booth.press(KeyCode.F8);
      answer(booth, "1");
      assertTrue(text(file(booth, "audit-", ".pdf")).contains(name), "the whole one has it");
    }
  }

  @Test
  void entriesAndTheirPageGoIntoTheFolderThatIsNamed() throws Exception {
    try (Booth booth = new Booth(temp)) {
      Path folder = temp.resolve("for the club");
      booth.press(KeyCode.F8);
      booth.press(KeyCode.F8);
      booth.type("1");
      booth.focusField("form-folder");
      answer(booth, folder.toString());

      assertTrue(Files.exists(folder.resolve("verify.html")), booth.text("errand-trouble"));
      assertTrue(Files.exists(folder.resolve("entries.jsonl")));
      assertTrue(told(booth).contains(folder.toString()), told(booth));
      assertTrue(Files.exists(file(booth, "audit-", ".pdf")));
      assertFalse(Files.exists(file(booth, "entries-", "")), "only where it was wanted");
    }
  }

  @Test
  void folderThatIsTakenOrIsTheReportItselfIsRefusedBeforeAnythingIsMade() throws Exception {
    try (Booth booth = new Booth(temp)) {
      Path taken = Files.createDirectory(temp.resolve("taken"));
      booth.press(KeyCode.F8);
      booth.press(KeyCode.F8);
      booth.type("1");
      booth.focusField("form-folder");
      answer(booth, taken.toString());
      assertTrue(booth.text("form-trouble").contains("FILE-EXISTS"), booth.text("form-trouble"));
      assertEquals(taken.toString(), booth.fieldText("form-folder"), "what was typed stays");

      Path both = temp.resolve("both");
      booth.focusField("form-folder");
      booth.type(both.toString());
      booth.focusField("form-place");
      answer(booth, both.toString());
      assertTrue(booth.text("form-trouble").contains(both.toString()), booth.text("form-trouble"));
      assertFalse(Files.exists(both));
      assertFalse(Files.exists(file(booth, "audit-", ".pdf")));
    }
  }

  @Test
  void fileThatIsThereIsNeverWrittenOver() throws Exception {
    try (Booth booth = new Booth(temp)) {
      Path kept = Files.writeString(temp.resolve("kept.pdf"), "kept");
      booth.press(KeyCode.F8);
      booth.press(KeyCode.F8);
      booth.type("1");
      booth.focusField("form-place");
      answer(booth, kept.toString());

      assertTrue(booth.text("form-trouble").contains("FILE-EXISTS"), booth.text("form-trouble"));
      assertEquals(kept.toString(), booth.fieldText("form-place"), "what was typed stays");
      assertEquals("kept", Files.readString(kept));
    }
  }

  @Test
  void enterSaysWhichQuestionIsStillOpenAndHowItIsAnswered() throws Exception {
    try (Booth booth = new Booth(temp)) {
      booth.press(KeyCode.F8);
      booth.press(KeyCode.F8);
      assertFalse(booth.shows("form-open"));
      booth.press(KeyCode.ENTER);
      assertTrue(booth.shows("report-panel"), "nothing is made without an answer");
      assertEquals(
          "Still to answer: Which. Press the number of an answer, or ← and →.",
          booth.text("form-open"));
      booth.press(KeyCode.RIGHT);
      assertFalse(booth.shows("form-open"));
      booth.press(KeyCode.ENTER);
      assertFalse(booth.shows("report-panel"), "the plain answers of the others are there");
      assertTrue(booth.text("errand-words").startsWith("Made: "), booth.text("errand-words"));
    }
  }

  @Test
  void progressIsShownWhileTheLineGoesOn() throws Exception {
    CountDownLatch half = new CountDownLatch(1);
    CountDownLatch goOn = new CountDownLatch(1);
    ReportMaker slow =
        (ledger, pdf, edition, progress) -> {
          progress.accept(new Progress("Checks", 2, 4));
          half.countDown();
          goOn.await();
          return Booth.REPORTS.make(ledger, pdf, edition, progress);
        };
    try (Booth booth = new Booth(temp, 1280, 800, slow)) {
      booth.signIn();
      booth.press(KeyCode.F8);
      booth.press(KeyCode.F8);
      booth.type("1");
      booth.pressWithoutWaiting(KeyCode.ENTER);
      half.await();
      double shown =
          Booth.call(
              () ->
                  ((ProgressBar) booth.front.official().lookup("#errand-progress")).getProgress());
      boolean barred = Booth.call(() -> booth.front.official().lookup("#errand-f3").isDisabled());
      booth.pressWithoutWaiting(KeyCode.ESCAPE);
      boolean atLine = booth.shows("line");
      booth.station.call("103");
      goOn.countDown();
      booth.settle();

      assertEquals(0.5, shown);
      assertTrue(barred, "one errand at a time");
      assertTrue(atLine);
      assertEquals("103", booth.check().opened().bib());
      booth.press(KeyCode.F8);
      assertTrue(booth.text("errand-words").startsWith("Made"), booth.text("errand-words"));
    }
  }

  @Test
  void reportThatFailsSaysWhyAndCanBeTriedAgain() throws Exception {
    ReportMaker failing =
        (ledger, pdf, edition, progress) -> {
          throw new IOException("disk full");
        };
    try (Booth booth = new Booth(temp, 1280, 800, failing)) {
      booth.press(KeyCode.F8);
      booth.press(KeyCode.F8);
      answer(booth, "1");

      assertEquals("Not done", booth.text("errand-words"));
      assertTrue(booth.text("errand-trouble").contains("disk full"));
      assertFalse(Booth.call(() -> booth.front.official().lookup("#errand-f8").isDisabled()));
    }
  }

  @Test
  void exportForEverybodyIsTheTableOfChecksWithoutNames() throws Exception {
    try (Booth booth = new Booth(temp)) {
      booth.signIn();
      booth.scan("103");
      String name = booth.check().opened().name();
      booth.shoot("299.1 ft/s", "299.0 ft/s", "299.2 ft/s");
      booth.press(KeyCode.F8);
      booth.press(KeyCode.F4);
      booth.type("2");
      booth.focusField("form-place");
      answer(booth, temp.resolve("for all").toString());

      assertEquals("Exported: for all", booth.text("errand-words"), booth.text("form-trouble"));
      try (Stream<Path> inside = Files.list(temp.resolve("for all"))) {
        List<Path> files = inside.sorted().toList();
        assertEquals(
            List.of("checks.csv"), files.stream().map(f -> f.getFileName().toString()).toList());
        for (Path file : files) {
          assertFalse(Files.readString(file).contains(name), file.toString());
        }
      }
    }
  }
}
