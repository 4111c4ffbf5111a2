package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.look.Language;
import lanewarden.station.EventFolder;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Verifying the instrument at the line, and what is seen while the line is held. */
class ProvingScreenTest {
  @TempDir static Path scratch;
  private static EventFolder event;

  @TempDir Path temp;
  private Booth booth;

  @BeforeAll
  static void makeEvent() throws Exception {
    event = verifying(scratch.resolve("made"));
  }

  /** An event whose instrument is verified before the opening and at the end. */
  static EventFolder verifying(Path path) throws Exception {
    EventFolder made = BoothEvent.event(path);
    Files.writeString(
        made.path().resolve("station.toml"),
        "[verification]\nbefore_opening = true\nat_end = true\nshots = 2\nmost_bias = \"1 ft/s\"\n"
            + "most_spread = \"1 ft/s\"\nreference = \"check bow\"\nspeed = \"296.4 ft/s\"\n",
        StandardOpenOption.APPEND);
    return made;
  }

  @BeforeEach
  void openAndSignIn() throws Exception {
    booth = Booth.on(event, temp, 1280, 800);
    booth.signIn();
  }

  @AfterEach
  void close() {
    booth.close();
  }

  private void verify(String... speeds) throws Exception {
    booth.press(KeyCode.END);
    booth.shoot(speeds);
    booth.press(KeyCode.ESCAPE);
  }

  @Test
  void beforeTheFirstCompetitorTheStripAsksForAVerification() throws Exception {
    assertEquals("VERIFY FIRST", booth.text("proving-word"));
    booth.scan("101");
    assertEquals("", booth.text("bib"));
    booth.press(KeyCode.END);
    assertTrue(booth.shows("verification-panel"));
    booth.shoot("296.0 ft/s");
    assertTrue(booth.text("verification-figures").startsWith("So far 1 shot: bias -0.400 ft/s"));
    booth.type("296.9");
    booth.press(KeyCode.ENTER);
    assertTrue(booth.text("verification-figures").startsWith("GOOD. 2 shots: bias +0.050 ft/s"));
    booth.press(KeyCode.ENTER);
    assertFalse(booth.shows("verification-panel"));
    assertEquals("Instrument verified", booth.text("proving-word"));
    booth.scan("101");
    assertEquals("101", booth.text("bib"));
  }

  /** What was signed of it stays English. */
  @Test
  void inGermanTheShotsOfAVerificationAreToldInGerman() throws Exception {
    booth.close();
    booth =
        Booth.in(Language.GERMAN, event, Files.createDirectory(temp.resolve("german")), 1280, 800);
    booth.signIn();
    booth.press(KeyCode.END);
    assertEquals("Prüfung des Messgeräts: zu Beginn", booth.text("verification-name"));
    booth.shoot("296.0 ft/s");
    assertEquals(
        "Bisher: 1 Schuss: mittlere Abweichung -0,400 ft/s (höchstens 1 ft/s), keine Streuung aus"
            + " einem Schuss: noch einmal schießen, am weitesten daneben Schuss 1 mit 0,400 ft/s",
        booth.text("verification-figures"));
    booth.shoot("296.9 ft/s");
    assertEquals(
        "GUT. 2 Schüsse: mittlere Abweichung +0,050 ft/s (höchstens 1 ft/s), Streuung 0,636 ft/s"
            + " (höchstens 1 ft/s), am weitesten daneben Schuss 2 mit 0,500 ft/s",
        booth.text("verification-figures"));
    booth.press(KeyCode.ENTER);
    assertTrue(booth.text("proving-words").startsWith("2 Schüsse: mittlere"));
  }

  @Test
  void outOfLimitsIsHeldOnTheLineAndOnTheBoard() throws Exception {
    verify("296.0 ft/s", "296.9 ft/s");
    booth.scan("101");
    booth.shoot("299.8 ft/s", "300.1 ft/s", "300.1 ft/s");
    assertEquals("", booth.boardText("board-held"));
    verify("299.0 ft/s", "299.1 ft/s");
    assertEquals("HELD", booth.text("proving-word"));
    String words = booth.text("proving-words");
    assertTrue(words.contains("1 check was decided, now in question"), words);
    assertTrue(words.endsWith("To be checked again: 101 Ilse Marrowby."), words);
    assertTrue(
        Booth.call(
            () -> booth.front.official().lookup(".proving-strip .mark.sign-held").isVisible()));
    assertEquals("HELD", booth.boardText("board-held"));
    assertEquals("Nobody is called yet", booth.text("clear-title"));
    assertEquals("", booth.text("left-last"), "a pass in question is not shown as one");
    booth.press(KeyCode.PAGE_DOWN);
    assertFalse(booth.shows("entry-panel"), "only a good verification lifts it");
    verify("296.0 ft/s", "296.9 ft/s");
    assertEquals("Instrument verified", booth.text("proving-word"));
    booth.scan("101");
    assertEquals("101", booth.text("bib"));
  }

  @Test
  void anOfficialHoldsTheLineAndLiftsTheHold() throws Exception {
    verify("296.0 ft/s", "296.9 ft/s");
    booth.scan("101");
    booth.shoot("299.8 ft/s", "300.1 ft/s", "300.1 ft/s");
    booth.press(KeyCode.PAGE_DOWN);
    booth.type("1");
    booth.press(KeyCode.ENTER);
    assertEquals("HELD", booth.text("proving-word"));
    assertEquals("IN QUESTION", booth.text("outcome"));
    booth.scan("102");
    assertEquals("101", booth.text("bib"));
    booth.press(KeyCode.ESCAPE);
    booth.press(KeyCode.PAGE_DOWN);
    booth.type("2");
    booth.press(KeyCode.ENTER);
    assertEquals("Instrument verified", booth.text("proving-word"));
    assertEquals("WITHIN", booth.text("outcome"));
  }

  /** An official can always hold the line, whether or not verifications are planned. */
  @Test
  void whereNoVerificationIsPlannedTheLineIsHeldAndTheHoldLiftedToo() throws Exception {
    booth.close();
    booth = new Booth(Files.createDirectory(temp.resolve("unplanned")));
    booth.signIn();
    assertFalse(booth.shows("proving"));
    assertTrue(booth.shows("hold-unplanned"));
    booth.press(KeyCode.PAGE_DOWN);
    booth.type("1");
    booth.press(KeyCode.ENTER);
    assertEquals("HELD", booth.text("proving-word"));
    assertFalse(booth.shows("hold-unplanned"), "the strip has the button now");
    booth.scan("101");
    assertEquals("", booth.text("bib"));
    booth.press(KeyCode.PAGE_DOWN);
    booth.type("2");
    booth.press(KeyCode.ENTER);
    assertFalse(booth.shows("proving"));
    assertTrue(booth.shows("hold-unplanned"));
    booth.scan("101");
    assertEquals("101", booth.text("bib"));
  }

  @Test
  void aVerificationIsBrokenOffWithAReason() throws Exception {
    booth.press(KeyCode.END);
    booth.press(KeyCode.ESCAPE);
    assertEquals("VERIFYING", booth.text("proving-word"));
    booth.press(KeyCode.END);
    booth.press(KeyCode.F4);
    booth.type("1");
    booth.press(KeyCode.ENTER);
    assertEquals("VERIFY FIRST", booth.text("proving-word"));
  }

  @Test
  void closingWithoutTheVerificationAtTheEndAsksForAReason() throws Exception {
    verify("296.0 ft/s", "296.9 ft/s");
    booth.scan("101");
    booth.shoot("299.8 ft/s", "300.1 ft/s", "300.1 ft/s");
    booth.press(KeyCode.F12);
    booth.press(KeyCode.ENTER);
    assertTrue(booth.shows("entry-panel"));
    booth.type("1");
    booth.press(KeyCode.ENTER);
    assertEquals(Optional.empty(), booth.station.view().official());
  }
}
