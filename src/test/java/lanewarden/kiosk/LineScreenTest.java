package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import lanewarden.journal.Outcome;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The line from the call to the next competitor, worked by keys and a reader alone. */
class LineScreenTest {
  @TempDir Path temp;
  private Booth booth;

  @BeforeEach
  void openAndSignIn() throws Exception {
    booth = new Booth(temp);
    booth.signIn();
  }

  @AfterEach
  void close() {
    booth.close();
  }

  @Test
  void scannedBibCallsTheCompetitorUnderTheRuleInWords() throws Exception {
    booth.scan("101");

    assertEquals("101", booth.text("bib"));
    assertEquals("Ilse Marrowby", booth.text("name"));
    assertTrue(booth.text("rule").startsWith("At most 300 ft/s plus 3 % (309 ft/s)."));
    assertEquals("At least 3 more readings", booth.text("outcome-words"));
  }

  @Test
  void beforeTheFirstShotTheWayToAnotherDivisionIsToldAndLeadsThere() throws Exception {
    booth.scan("101");
    assertEquals("Wrong division? F1, then F5", booth.text("division-wrong"));
    booth.press(KeyCode.F1);
    booth.press(KeyCode.F5);
    assertTrue(booth.shows("correct-panel"));
    booth.press(KeyCode.ESCAPE);
    booth.press(KeyCode.ESCAPE);
    booth.shoot("300.1 ft/s");
    assertEquals("", booth.text("division-wrong"));
  }

  @Test
  void aReadingInDoubtIsToldWithTheKeyThatDeclaresItVoidWhereThatWouldTakeIt() throws Exception {
    Path rules = booth.folder.path().resolve("rule-book.toml");
    Files.writeString(
        rules,
        Files.readString(rules).replaceFirst("rechecks = 1", "rechecks = 1\njump = \"20 ft/s\"\n"));
    booth
        .station
        .proceedings()
        .adoptRuleBook(
            Optional.empty(), BoothEvent.ORGANIZER_PASSPHRASE.toCharArray(), "a jump is looked at");
    booth.settle();
    booth.scan("101");
    booth.shoot("300.1 ft/s", "340.0 ft/s");
    assertTrue(
        booth.text("doubt-words").endsWith("declare it void (F3)."), booth.text("doubt-words"));
    // F3 would take the third now
    booth.shoot("341.0 ft/s");
    List<String> told = booth.text("doubt-words").lines().toList();
    assertTrue(told.get(0).endsWith("press its card below to declare it void."), told.toString());
    assertTrue(told.get(1).endsWith("declare it void (F3)."), told.toString());
  }

  @Test
  void readingOnTheWireIsTheLargestThingOnTheScreen() throws Exception {
    booth.scan("101");
    booth.shoot("300.1 ft/s");

    assertEquals("300.1", booth.text("reading"));
    assertTrue(Booth.call(() -> height("reading") > 2 * height("outcome")));
  }

  private double height(String id) {
    Node node = booth.front.official().lookup("#" + id);
    return ((javafx.scene.control.Label) node).getFont().getSize();
  }

  @Test
  void outcomeIsAWordAndAShape() throws Exception {
    booth.scan("101");
    booth.shoot("312.0 ft/s", "313.1 ft/s", "311.9 ft/s");

    assertEquals("OVER", booth.text("outcome"));
    assertTrue(
        Booth.call(() -> booth.front.official().lookup(".outcome .mark.sign-over").isVisible()));
  }

  @Test
  void enterSendsADecidedCompetitorOffAndTheCautionsAppear() throws Exception {
    booth.scan("101");
    booth.shoot("299.8 ft/s", "300.1 ft/s", "300.1 ft/s");
    assertEquals("WITHIN", booth.text("outcome"));
    booth.press(KeyCode.ENTER);

    assertTrue(booth.shows("cautions"));
    assertTrue(booth.station.view().check().isEmpty());
    assertEquals("1 of 6 checked\n1 within, 0 not within", booth.text("progress"));
  }

  @Test
  void nextScannedBibSendsTheDecidedCompetitorOffToo() throws Exception {
    booth.scan("101");
    booth.shoot("299.8 ft/s", "300.1 ft/s", "300.1 ft/s");
    booth.scan("102");

    assertEquals("102", booth.text("bib"));
  }

  @Test
  void secondLineEndOfAReaderDoesNothing() throws Exception {
    booth.scan("101");
    booth.press(KeyCode.ENTER);

    assertEquals("101", booth.text("bib"));
    assertFalse(booth.shows("notice"));
  }

  @Test
  void matchesAreListedWhileTypingAndPickedWithTheArrowKeys() throws Exception {
    booth.type("il");
    booth.press(KeyCode.DOWN);
    booth.press(KeyCode.DOWN);
    booth.press(KeyCode.ENTER);

    assertEquals("Ilka Brandvold", booth.text("name"));
  }

  @Test
  void unknownBibIsToldAndTheNextScanTakesItsPlace() throws Exception {
    booth.scan("999");
    assertTrue(booth.text("notice").contains("NO-SUCH-COMPETITOR"));
    assertEquals("999", booth.text("call-field"));
    booth.scan("103");

    assertEquals("103", booth.text("bib"));
    assertFalse(booth.shows("notice"));
  }

  @Test
  void whoEntersLateIsPutOnTheRosterAndCalledWithoutAnotherScan() throws Exception {
    booth.scan("999");
    assertTrue(booth.shows("enter-late"));
    booth.press(KeyCode.INSERT);
    assertEquals("999", booth.fieldText("form-bib"));
    booth.type("Dara Finch");
    booth.press(KeyCode.ENTER);
    booth.type("1");
    booth.press(KeyCode.ENTER);

    assertEquals("999", booth.text("bib"));
    assertEquals("Dara Finch", booth.text("name"));
    assertFalse(booth.shows("enter-late"));
  }

  @Test
  void lastReadingIsDeclaredVoidForAReasonPickedByItsNumber() throws Exception {
    booth.scan("101");
    booth.shoot("330.0 ft/s");
    booth.press(KeyCode.F3);
    booth.type("1");
    booth.press(KeyCode.ENTER);

    assertFalse(booth.shows("entry-panel"));
    assertEquals("void", booth.text("reading-beside"));
    assertEquals("The bow was not at full draw", booth.check().shots().get(0).voided().reason());
  }

  @Test
  void voidWithoutAReasonIsRefusedInThePanel() throws Exception {
    booth.scan("101");
    booth.shoot("330.0 ft/s");
    booth.press(KeyCode.F3);
    booth.press(KeyCode.ENTER);

    assertTrue(booth.shows("entry-panel"));
    assertTrue(booth.check().shots().get(0).stands());
  }

  @Test
  void typedReadingIsMarkedAsTyped() throws Exception {
    booth.scan("205");
    booth.press(KeyCode.F2);
    booth.type("63.2");
    booth.press(KeyCode.ENTER);

    assertEquals("63.2", booth.text("reading"));
    assertEquals("typed", booth.check().shots().get(0).reading().source());
  }

  @Test
  void escapeLeavesAPanelWithNothingDone() throws Exception {
    booth.scan("205");
    booth.press(KeyCode.F2);
    booth.type("63.2");
    booth.press(KeyCode.ESCAPE);

    assertFalse(booth.shows("entry-panel"));
    assertEquals(0, booth.station.view().check().orElseThrow().check().shots().size());
  }

  @Test
  void keysOfTheLineAreDeadUnderAPanel() throws Exception {
    booth.scan("205");
    booth.press(KeyCode.F2);
    booth.press(KeyCode.F9);

    assertEquals("", booth.text("entry-field"));
    assertTrue(booth.station.view().official().isPresent());
  }

  @Test
  void checkEndsWithAReason() throws Exception {
    booth.scan("205");
    booth.press(KeyCode.F4);
    booth.type("limb cracked");
    booth.press(KeyCode.ENTER);

    assertTrue(booth.text("clear-title").contains("Ready to call"));
    assertTrue(booth.station.view().check().isEmpty());
  }

  @Test
  void competitorWhoJustFailedIsCheckedAgainByOneKey() throws Exception {
    booth.scan("101");
    booth.shoot("312.0 ft/s", "313.1 ft/s", "311.9 ft/s");
    booth.press(KeyCode.ENTER);
    booth.press(KeyCode.F5);

    assertEquals("101", booth.text("bib"));
    assertEquals(2, booth.check().opened().attempt());
  }

  @Test
  void refusedLineIsShownWithItsReasonAndBytes() throws Exception {
    booth.scan("101");
    booth.instrument.pause(Duration.ofSeconds(1));
    booth.emit("$PLWT,00001,0304.1,F,006578,A*00\\r\\n");

    assertTrue(booth.text("refused-words").startsWith("Line refused, wrong checksum"));
    assertEquals("$PLWT,00001,0304.1,F,006578,A*00\\r\\n", booth.text("refused-bytes"));
    assertEquals("–", booth.text("reading"));
  }

  @Test
  void lostLinkShowsAtOnceInWordsAndComesBack() throws Exception {
    booth.scan("101");
    booth.instrument.unplug();
    booth.settle();
    assertEquals("Instrument lost", booth.text("link-words"));
    assertTrue(booth.text("link-remedy").contains("Plug it in again"));
    booth.instrument.replug();
    booth.settle();

    assertEquals("Instrument listening", booth.text("link-words"));
    assertFalse(booth.shows("link-remedy"));
  }

  @Test
  void boardShowsTheSameReadingLimitAndWord() throws Exception {
    booth.scan("101");
    booth.shoot("299.8 ft/s", "300.1 ft/s", "300.1 ft/s");

    assertEquals(booth.text("reading"), booth.boardText("board-value"));
    assertEquals(booth.text("limit"), booth.boardText("board-limit"));
    assertEquals(booth.text("outcome"), booth.boardText("board-word"));
    assertEquals("Ilse Marrowby", booth.boardText("board-name"));
  }

  @Test
  void ledgerHeadOnTheScreenIsTheLedgersOwn() throws Exception {
    booth.scan("101");

    assertEquals("Ledger " + booth.station.view().head().shortForm(), booth.text("ledger-head"));
  }

  @Test
  void signingOutIsAskedForAndLeadsBackToSigningIn() throws Exception {
    booth.press(KeyCode.F9);
    assertTrue(booth.station.view().official().isPresent());
    booth.press(KeyCode.ENTER);

    assertTrue(booth.shows("sign-in-screen"));
    assertTrue(booth.station.view().official().isEmpty());
  }

  @Test
  void closingTheLineIsRefusedWhileACheckRuns() throws Exception {
    booth.scan("101");
    booth.press(KeyCode.F12);
    booth.press(KeyCode.ENTER);

    assertTrue(booth.shows("entry-panel"));
    assertTrue(booth.station.view().official().isPresent());
  }

  @Test
  void readerIsHeardAlsoWhileAButtonHasTheFocus() throws Exception {
    Booth.call(
        () -> {
          booth.front.official().lookup(".act-bar .key-button").requestFocus();
          return true;
        });
    booth.type("1");
    booth.type("02");
    booth.press(KeyCode.ENTER);

    assertEquals("102", booth.text("bib"));
  }

  @Test
  void boardIsTurnedFromTheListOfAllWays() throws Exception {
    booth.press(KeyCode.INSERT);
    booth.press(KeyCode.PAGE_UP);

    assertTrue(booth.windows.boardTurned);
  }

  @Test
  void keysPressedInTheBoardsWindowWorkTheLine() throws Exception {
    booth.typeIntoBoard("104");
    booth.press(KeyCode.ENTER);

    assertEquals("104", booth.text("bib"));
  }

  @Test
  void unexpectedFaultIsShownWithItsCodeAndTheLineIsOneKeyAway() throws Exception {
    booth.scan("101");
    Booth.call(
        () -> {
          booth.front.fault(new IllegalStateException("out of nowhere"));
          return true;
        });
    assertTrue(booth.shows("fault-panel"));
    assertEquals("Code BUG-IllegalStateException", booth.text("fault-code"));
    booth.press(KeyCode.ESCAPE);
    booth.shoot("300.1 ft/s");

    assertEquals("300.1", booth.text("reading"));
  }

  @Test
  void checkStaysAtTheLineWhenTheOfficialChanges() throws Exception {
    booth.scan("101");
    booth.shoot("299.8 ft/s");
    booth.press(KeyCode.F9);
    booth.press(KeyCode.ENTER);
    booth.signIn();

    assertEquals("299.8", booth.text("reading"));
    assertTrue(booth.station.view().check().orElseThrow().outcome().isEmpty());
  }

  @Test
  void overOnTheScreenIsOverInTheLedger() throws Exception {
    booth.scan("206");
    booth.shoot("230.0 ft/s", "231.0 ft/s");

    assertEquals(Outcome.OVER, booth.station.view().check().orElseThrow().outcome().orElseThrow());
    assertEquals("OVER", booth.text("outcome"));
  }

  @Test
  void theSpeedAtTheBowIsASmallLineWhereTheArrowWasWeighed() throws Exception {
    booth.scan("101");
    booth.shoot("300.1 ft/s");
    // 362 gr over 3 m: 300.1 ft/s * exp(3 * 1.77188e-3), own calculation
    assertEquals("at the bow about 301.7 ft/s", booth.text("at-bow"));
    assertEquals("300.1", booth.text("reading"));
  }
}
