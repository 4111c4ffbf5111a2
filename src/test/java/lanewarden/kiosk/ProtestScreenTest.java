package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import lanewarden.audit.AuditReport;
import lanewarden.audit.ReportEdition;
import lanewarden.journal.Correction;
import lanewarden.journal.Outcome;
import lanewarden.journal.Protest;
import lanewarden.journal.ProtestFact;
import lanewarden.station.SignedPapers;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The docket worked by keys alone, from the protest to the slip. */
class ProtestScreenTest {
  @TempDir Path temp;
  private Booth booth;

  @BeforeEach
  void open() throws Exception {
    booth = new Booth(temp);
  }

  @AfterEach
  void close() {
    booth.close();
  }

  /** A check of 103, at most 300 ft/s, that is over; the archer has left the line. */
  private void shootOver() throws Exception {
    booth.signIn();
    booth.scan("103");
    booth.shoot("312.4 ft/s", "310.0 ft/s", "311.2 ft/s");
    booth.press(KeyCode.ENTER);
  }

  private void file() throws Exception {
    booth.press(KeyCode.F2);
    booth.type("1");
    booth.press(KeyCode.ENTER);
    booth.type("the team captain");
    booth.press(KeyCode.ENTER);
    booth.type("3");
    booth.press(KeyCode.ENTER);
  }

  /** Answers every question of a ruling but the passphrase. */
  private void answerRuling(String stands) throws Exception {
    booth.press(KeyCode.F4);
    booth.type("1");
    booth.press(KeyCode.ENTER);
    if (!stands.isEmpty()) {
      booth.type(stands);
      booth.press(KeyCode.ENTER);
    }
    booth.type("1");
    booth.press(KeyCode.ENTER);
    booth.type("1");
    booth.press(KeyCode.ENTER);
  }

  private long slipsOf(long check) throws Exception {
    try (Stream<Path> files = Files.list(booth.folder.path())) {
      return files
          .filter(f -> f.getFileName().toString().startsWith("slip-check-" + check + "-"))
          .count();
    }
  }

  private Protest protest() {
    return booth.station.view().docket().protests().get(0);
  }

  @Test
  void protestIsFiledShotAgainRuledOnAndPrintedThroughKeysAlone() throws Exception {
    shootOver();
    booth.press(KeyCode.F1);
    assertTrue(booth.shows("protest"));
    assertTrue(booth.text("dossier-who").startsWith("103 "), "the check that left last");

    file();
    assertFalse(booth.shows("file-panel"));
    assertEquals("the team captain", protest().fact().by());
    assertEquals("light or instrument disturbed", protest().fact().ground());
    long original = protest().fact().check();

    booth.press(KeyCode.F3);
    assertTrue(booth.shows("line"), "the recheck is shot at the line");
    assertEquals("recheck under protest " + protest().number(), booth.text("attempt"));
    // The lines of a capture, as the instrument sends them
    booth.shoot("299.1 ft/s", "299.4 ft/s", "299.0 ft/s");
    assertEquals(Optional.of(Outcome.WITHIN), booth.check().outcome());
    long recheck = booth.check().number();
    booth.press(KeyCode.ENTER);

    booth.press(KeyCode.F1);
    booth.type("103");
    booth.press(KeyCode.DOWN);
    answerRuling("2");
    assertTrue(booth.shows("rule-panel"));
    booth.type(Booth.PASSPHRASE);
    booth.press(KeyCode.ENTER);
    assertFalse(booth.shows("rule-panel"), booth.text("form-trouble"));
    ProtestFact.ProtestRuled ruling = protest().ruling().orElseThrow().fact();
    assertEquals(ProtestFact.Answer.UPHELD, ruling.ruling());
    assertEquals(recheck, ruling.stands());
    assertEquals(Booth.OFFICIAL, booth.station.view().official().orElseThrow(), "who is on duty");

    booth.press(KeyCode.F9);
    booth.press(KeyCode.F2);
    assertTrue(booth.text("slip-words").startsWith("Saved: "), booth.text("slip-words"));
    assertEquals(1, slipsOf(recheck), "the check that counts is meant unless another is chosen");
    booth.press(KeyCode.ESCAPE);
    booth.press(KeyCode.F9);
    booth.type("1");
    booth.press(KeyCode.F2);
    assertEquals(1, slipsOf(original));
    booth.press(KeyCode.ESCAPE);
    booth.press(KeyCode.ESCAPE);
    assertTrue(booth.shows("line"));
    assertTrue(
        booth
            .text("left-last-words")
            .endsWith("A judge has ruled since: check " + recheck + " counts."),
        booth.text("left-last-words"));
    assertEquals(
        List.of(),
        new AuditReport(Clock.systemUTC(), SignedPapers::of)
            .write(
                booth.folder.ledger(),
                temp.resolve("report.pdf"),
                ReportEdition.plain(),
                step -> {})
            .summary()
            .contradictions());
  }

  @Test
  void officialWhoSignedTheCheckIsRefusedAsJudgeInTheStationsWords() throws Exception {
    shootOver();
    booth.press(KeyCode.F9);
    booth.press(KeyCode.ENTER);
    // The judge is on duty, and shoots the next check
    booth.press(KeyCode.DOWN);
    booth.press(KeyCode.DOWN);
    booth.type(Booth.PASSPHRASE);
    booth.press(KeyCode.ENTER);
    assertEquals(BoothEvent.JUDGE, booth.station.view().official().orElseThrow());
    booth.scan("102");
    booth.shoot("300.1 ft/s", "299.0 ft/s", "299.9 ft/s");
    booth.press(KeyCode.F1);
    file();
    answerRuling("");
    booth.type(Booth.PASSPHRASE);
    booth.press(KeyCode.ENTER);

    assertTrue(booth.shows("rule-panel"));
    assertTrue(booth.text("form-trouble").contains("OWN-CHECK"), booth.text("form-trouble"));
    assertEquals("", booth.text("form-passphrase"), "a passphrase does not stay");
    assertTrue(protest().isOpen());
  }

  @Test
  void wrongPassphraseOfTheJudgeSignsNothingAndKeepsTheAnswers() throws Exception {
    shootOver();
    booth.press(KeyCode.F1);
    file();
    answerRuling("");
    booth.type("four grey geese");
    booth.press(KeyCode.ENTER);

    assertTrue(booth.text("form-trouble").contains("KEY-PASSPHRASE"));
    assertTrue(protest().isOpen());
    booth.type(Booth.PASSPHRASE);
    booth.press(KeyCode.ENTER);
    assertFalse(protest().isOpen());
  }

  @Test
  void mistypedReadingIsCorrectedAndTakesEffectWithASecondPerson() throws Exception {
    booth.signIn();
    booth.scan("103");
    for (String speed : List.of("310.2", "310.1", "310.0")) {
      booth.press(KeyCode.F2);
      booth.type(speed);
      booth.press(KeyCode.ENTER);
    }
    assertEquals(Optional.of(Outcome.OVER), booth.check().outcome());
    booth.press(KeyCode.F1);
    booth.press(KeyCode.F5);
    booth.type("3");
    booth.press(KeyCode.ENTER);
    booth.type("280.2");
    booth.press(KeyCode.ENTER);
    booth.type("3");
    booth.press(KeyCode.ENTER);

    Correction made = booth.station.view().docket().corrections().get(0);
    assertTrue(made.isOpen());
    assertEquals("280.2 ft/s", made.after());
    assertTrue(booth.text("protest-heading").contains("1 waiting"));
    booth.press(KeyCode.F8);
    booth.type("1");
    booth.press(KeyCode.ENTER);
    booth.type(Booth.PASSPHRASE);
    booth.press(KeyCode.ENTER);
    assertFalse(booth.station.view().docket().corrections().get(0).isOpen());
    assertEquals("280.2 ft/s", booth.check().shots().get(0).reading().speed().toString());
    assertEquals(Optional.of(Outcome.WITHIN), booth.check().outcome(), "its verdict is given anew");
  }

  @Test
  void readingThatComesInWhileAPanelIsOpenIsTakenAndTold() throws Exception {
    booth.signIn();
    booth.scan("103");
    booth.shoot("299.1 ft/s");
    booth.press(KeyCode.F1);
    booth.press(KeyCode.F5);
    assertTrue(booth.shows("correct-panel"));
    booth.shoot("299.4 ft/s", "299.0 ft/s");

    assertTrue(booth.shows("correct-panel"), "nothing moves under the fingers");
    assertEquals(3, booth.check().shots().size());
    assertTrue(booth.text("glance").contains("Shot 3: 299.0 ft/s"), booth.text("glance"));
    assertEquals("Came in meanwhile: 2 taken", booth.text("glance-news"));
    assertFalse(booth.check().isClosed(), "the archer is sent off by nobody but the official");
    booth.press(KeyCode.ESCAPE);
    booth.press(KeyCode.ESCAPE);
    assertTrue(booth.shows("line"));
    assertFalse(booth.shows("glance"));
    assertEquals(Optional.of(Outcome.WITHIN), booth.check().outcome());
  }

  @Test
  void panelOverTheLineTellsOfAReadingThatComesInMeanwhile() throws Exception {
    booth.signIn();
    booth.scan("103");
    booth.press(KeyCode.F4);
    assertFalse(booth.shows("glance"));
    booth.shoot("299.1 ft/s");

    assertEquals("Came in meanwhile: 1 taken", booth.text("glance-news"));
  }

  @Test
  void whileNobodyIsOnDutyWhoeverFilesSignsWithTheirOwnPassphrase() throws Exception {
    shootOver();
    booth.press(KeyCode.F9);
    booth.press(KeyCode.ENTER);
    booth.press(KeyCode.F1);
    booth.type("103");
    file();
    assertTrue(booth.shows("file-panel"), "two questions more");
    booth.type("2");
    booth.press(KeyCode.ENTER);
    booth.type(Booth.PASSPHRASE);
    booth.press(KeyCode.ENTER);

    assertFalse(booth.shows("file-panel"), booth.text("form-trouble"));
    assertTrue(protest().isOpen());
    assertEquals(Optional.empty(), booth.station.view().official());
    booth.press(KeyCode.F3);
    assertTrue(booth.text("protest-trouble").contains("NOBODY-ON-DUTY"));
    booth.press(KeyCode.ESCAPE);
    assertTrue(booth.shows("sign-in-screen"));
  }

  @Test
  void checkIsFoundByBibNameAndNumber() throws Exception {
    shootOver();
    long number = booth.station.records().search("103", 1).get(0).check().number();
    String name = booth.station.records().search("103", 1).get(0).check().opened().name();
    for (String typed : List.of("103", name.substring(1), String.valueOf(number))) {
      booth.press(KeyCode.F1);
      booth.type(typed);
      assertEquals("103 " + name, booth.text("dossier-who"), typed);
      booth.press(KeyCode.ESCAPE);
    }
  }

  @Test
  void measuredReadingsStandWithTheBytesAsTheyCame() throws Exception {
    shootOver();
    booth.press(KeyCode.F1);
    String raw =
        Booth.call(
            () ->
                booth.front.official().getRoot().lookupAll(".sheet-raw").stream()
                    .map(node -> ((Label) node).getText())
                    .findFirst()
                    .orElseThrow());

    assertTrue(raw.startsWith("$PLWT,"), raw);
    assertTrue(raw.endsWith("\\r\\n"), raw);
  }

  @Test
  void everyControlOfAFormSaysWhatItAsks() throws Exception {
    shootOver();
    booth.press(KeyCode.F1);
    booth.press(KeyCode.F2);
    List<String> silent =
        Booth.call(
            () ->
                booth.front.official().lookup("#file-panel").lookupAll("*").stream()
                    .filter(Node::isFocusTraversable)
                    .filter(n -> n.getAccessibleText() == null || n.getAccessibleText().isBlank())
                    .map(Node::toString)
                    .toList());

    assertEquals(List.of(), silent);
  }
}
