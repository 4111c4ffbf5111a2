package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import lanewarden.bench.ComparisonSheet;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.TextSize;
import lanewarden.station.BroughtText;
import lanewarden.station.Outlook;
import lanewarden.station.PracticeDay;
import lanewarden.station.SetUpText;
import lanewarden.station.WrittenRules;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is done without an event, from the start screen, by keys alone. */
class ForecourtTest {
  private static final Path RULES = Path.of("demo-data", "rule-book.toml").toAbsolutePath();

  private static final Path SHOTS = Path.of("demo-data", "practice.csv").toAbsolutePath();

  private static final String GOOD = "$PLWT,00354,0268.8,F,007440,A*1B";

  @TempDir Path temp;
  private Doorstep door;

  @BeforeEach
  void open() throws Exception {
    door = new Doorstep(temp);
    door.press(KeyCode.INSERT);
  }

  @AfterEach
  void close() throws Exception {
    door.close();
  }

  private boolean shows(String id) throws Exception {
    Scene scene = door.scene();
    return Booth.call(
        () -> {
          Node node = scene.lookup("#" + id);
          return node != null && Booth.seen(node);
        });
  }

  private void fill(String field, String text) throws Exception {
    door.focus(field);
    door.type(text);
  }

  private void takeRules(Path file) throws Exception {
    door.press(KeyCode.F5);
    fill("form-rules", file.toString());
    door.press(KeyCode.ENTER);
  }

  @Test
  void escapeLeadsBackToTheStart() throws Exception {
    assertTrue(shows("ways-panel"));
    door.press(KeyCode.ESCAPE);
    assertFalse(shows("ways-panel"));
    assertTrue(shows("start"));
  }

  @Test
  void prospectsAreWhatTheRuleBookThatWasChosenSays() throws Exception {
    takeRules(RULES);
    assertTrue(shows("prospects"));
    WrittenRules rules = WrittenRules.read(RULES);
    assertEquals("By " + rules.event() + ", edition " + rules.edition(), door.text("prospects-by"));
    door.type("350");
    fill("prospect-speed", "300");
    fill("prospect-draw", "60");
    door.press(KeyCode.ENTER);

    Outlook outlook =
        Outlook.of(
            rules.divisions(),
            new BroughtText(new SetUpText("350", "60", ""), "300", "3", List.of(), ""),
            "2 ft/s");
    for (int i = 0; i < outlook.divisions().size(); i++) {
      String code = outlook.divisions().get(i).code();
      assertEquals(
          code
              + " · "
              + outlook.divisions().get(i).name()
              + ". "
              + outlook.prospects().get(i).inWords(),
          door.text("prospect-of-" + code.toLowerCase(Locale.ROOT)));
    }
    assertTrue(door.line.station().isEmpty());
    door.press(KeyCode.ESCAPE);
    assertTrue(shows("start"));
  }

  @Test
  void oneDivisionIsAskedAboutAloneAndOneThatIsNoneIsRefused() throws Exception {
    takeRules(RULES);
    List<String> codes = WrittenRules.read(RULES).divisions().stream().map(d -> d.code()).toList();
    door.type("350");
    fill("prospect-speed", "300");
    fill("prospect-division", codes.get(1).toLowerCase(Locale.ROOT));
    door.press(KeyCode.ENTER);
    assertFalse(shows("prospect-of-" + codes.get(0).toLowerCase(Locale.ROOT)));
    assertTrue(shows("prospect-of-" + codes.get(1).toLowerCase(Locale.ROOT)));

    fill("prospect-division", "x");
    door.press(KeyCode.ENTER);
    assertTrue(
        door.text("prospects-trouble").contains("NO-SUCH-DIVISION"),
        door.text("prospects-trouble"));
  }

  @Test
  void anEventsFolderIsARuleBookTooAndWhatWasTypedStaysForTheNext() throws Exception {
    takeRules(RULES);
    door.type("350");
    Path event = Files.createDirectory(temp.resolve("weekend"));
    Files.copy(Path.of("config", "rule-book.toml"), event.resolve("rule-book.toml"));
    door.press(KeyCode.F3);
    fill("form-rules", event.toString());
    door.press(KeyCode.ENTER);

    WrittenRules rules = WrittenRules.read(event);
    assertEquals("By " + rules.event() + ", edition " + rules.edition(), door.text("prospects-by"));
    assertEquals("350", door.text("prospect-arrow"));
  }

  @Test
  void fileThatIsNoneOrNoRuleBookIsRefusedAndTheOneBeforeStays() throws Exception {
    door.press(KeyCode.F5);
    fill("form-rules", temp.resolve("nowhere.toml").toString());
    door.press(KeyCode.ENTER);
    assertTrue(door.words("brought-rules").contains("nowhere.toml"), door.words("brought-rules"));
    door.press(KeyCode.ESCAPE);
    assertTrue(shows("start"));

    door.press(KeyCode.INSERT);
    takeRules(RULES);
    String by = door.text("prospects-by");
    door.press(KeyCode.F3);
    fill(
        "form-rules",
        Files.writeString(temp.resolve("half.toml"), "[event]\nname = 3\n").toString());
    door.press(KeyCode.ENTER);
    assertTrue(door.words("brought-rules").contains("half.toml:2"), door.words("brought-rules"));
    door.press(KeyCode.ESCAPE);
    assertEquals(by, door.text("prospects-by"));
  }

  private void compare(Path shots, String rules) throws Exception {
    door.press(KeyCode.F9);
    fill("form-shots", shots.toString());
    if (!rules.isEmpty()) {
      fill("form-rules", rules);
    }
    door.press(KeyCode.ENTER);
  }

  private void write(String which) throws Exception {
    door.press(KeyCode.F8);
    fill("form-copy", which);
    door.press(KeyCode.ENTER);
  }

  @Test
  void practiceFileIsComparedAndWrittenBesideItself() throws Exception {
    Path shots = Files.copy(SHOTS, temp.resolve("club evening.csv"));
    compare(shots, RULES.toString());
    assertTrue(shows("compared"));
    assertTrue(shows("setups-margins"));
    assertTrue(shows("setups-caution-0"));
    ComparisonSheet sheet = new ComparisonSheet(PracticeDay.compare(shots, Optional.of(RULES)));
    assertTrue(
        door.words("setups-told").contains(sheet.summary().toString()), door.words("setups-told"));

    write("1");
    assertEquals("Written: " + temp.resolve("club evening.pdf"), door.text("compared-done"));
    assertTrue(Files.size(temp.resolve("club evening.pdf")) > 10_000);
    write("2");
    assertEquals(
        1 + sheet.lines().size(),
        Files.readAllLines(temp.resolve("club evening-set-ups.csv")).size());
    assertTrue(door.line.station().isEmpty());
    door.press(KeyCode.ESCAPE);
    assertTrue(shows("start"));
  }

  @Test
  void withoutARuleBookNothingIsSaidOfLimits() throws Exception {
    compare(SHOTS, "");
    assertTrue(shows("setups-table"));
    assertFalse(shows("setups-margins"));
    assertEquals(SHOTS + ", without a rule book", door.text("compared-files"));
  }

  @Test
  void fileThatIsTakenIsNotWrittenOver() throws Exception {
    compare(SHOTS, "");
    Path taken = Files.writeString(temp.resolve("mine.csv"), "mine");
    door.press(KeyCode.F8);
    fill("form-copy", "2");
    fill("form-file", taken.toString());
    door.press(KeyCode.ENTER);
    assertTrue(door.words("write-panel").contains("FILE-EXISTS"), door.words("write-panel"));
    assertEquals("mine", Files.readString(taken));
  }

  @Test
  void faultyPracticeFileIsRefusedWithItsLinesAndTheOneBeforeStays() throws Exception {
    compare(SHOTS, "");
    door.press(KeyCode.F6);
    fill(
        "form-shots",
        Files.writeString(
                temp.resolve("half.csv"), "bow,arrow,arrow-mass,speed\nHeron,short,350 gr,fast\n")
            .toString());
    door.press(KeyCode.ENTER);
    assertTrue(door.words("practice-file").contains("half.csv:2"), door.words("practice-file"));
    door.press(KeyCode.ESCAPE);
    assertEquals(SHOTS + ", without a rule book", door.text("compared-files"));
  }

  private void play(String capture, String profile) throws Exception {
    door.press(KeyCode.F6);
    fill("form-capture", capture);
    fill("form-profile", profile);
    door.press(KeyCode.ENTER);
    for (int i = 0; i < 200 && !door.text("listen-turn").startsWith("Listen anew"); i++) {
      Thread.sleep(20);
      door.settle();
    }
  }

  @Test
  void captureIsPlayedThroughItsProfileAndTheTrialIsTold() throws Exception {
    Path one = Files.writeString(temp.resolve("one.capture"), "0 " + GOOD + "\\r\\n\n");
    play(one.toString(), "1");
    assertTrue(shows("wire-panel"));
    assertEquals("Listen anew", door.text("listen-turn"));
    assertTrue(door.text("wire-verdict").startsWith("FITS"), door.text("wire-verdict"));
    door.press(KeyCode.ESCAPE);
    assertTrue(shows("start"));
    assertFalse(shows("wire-panel"));

    door.press(KeyCode.INSERT);
    play("demo-data/gate-timer.capture", "plain-decimal.toml");
    assertTrue(door.text("wire-verdict").startsWith("DOES NOT FIT"), door.text("wire-verdict"));
    assertFalse(door.words("wire-findings").isBlank());
  }

  @Test
  void portThatIsMissingIsSaidWhileItIsWaitedForUntilSomebodyStops() throws Exception {
    door.press(KeyCode.DELETE);
    fill("form-port", temp.resolve("nothing").toString());
    fill("form-profile", "gate-timer.toml");
    door.press(KeyCode.ENTER);
    for (int i = 0; i < 200 && !door.words("wire-lines").contains("LOST"); i++) {
      Thread.sleep(20);
      door.settle();
    }
    assertTrue(door.words("wire-lines").contains("LOST"), door.words("wire-lines"));
    assertEquals("Stop listening", door.text("listen-turn"));
    door.press(KeyCode.F5);
    assertEquals("Listen anew", door.text("listen-turn"));
  }

  private void assertNothingIsLost(String state) throws Exception {
    assertEquals(List.of(), LargeTextTest.lost(door.scene()), state);
  }

  /** Nothing is beyond the right or left edge, where nobody can scroll. */
  private boolean isWithinTheWindow(String id) throws Exception {
    Scene scene = door.scene();
    return Booth.call(
        () -> {
          scene.getRoot().layout();
          Node node = scene.lookup("#" + id);
          Bounds bounds = node.localToScene(node.getLayoutBounds());
          return bounds.getMinX() >= 0 && bounds.getMaxX() <= scene.getWidth();
        });
  }

  @Test
  void nothingIsLostWithTextTwiceAsLargeInTheLongestLanguage() throws Exception {
    Booth.call(
        () -> {
          door.look.language().set(Language.GERMAN);
          door.look.textSize().set(TextSize.LARGEST);
          return true;
        });
    door.settle();
    door.press(KeyCode.INSERT);
    assertNothingIsLost("the list");
    door.press(KeyCode.F5);
    assertNothingIsLost("which rule book");
    fill("form-rules", RULES.toString());
    door.press(KeyCode.ENTER);
    assertNothingIsLost("prospects");
    door.press(KeyCode.INSERT);
    door.press(KeyCode.F9);
    assertNothingIsLost("which practice day");
    door.press(KeyCode.ESCAPE);
    door.press(KeyCode.INSERT);
    compare(SHOTS, RULES.toString());
    assertNothingIsLost("compared");
    assertTrue(isWithinTheWindow("setups-table"));
    assertTrue(isWithinTheWindow("setups-margins"));
    door.press(KeyCode.PAGE_DOWN);
    Scene scene = door.scene();
    double turned = Booth.call(() -> ((ScrollPane) scene.lookup(".screen-scroll")).getVvalue());
    assertTrue(turned > 0, "what is below is reached");
    door.press(KeyCode.F8);
    assertNothingIsLost("what is written");
    door.press(KeyCode.ESCAPE);
    door.press(KeyCode.INSERT);
    door.press(KeyCode.DELETE);
    assertNothingIsLost("which port");
    door.press(KeyCode.ESCAPE);
    door.press(KeyCode.INSERT);
    door.press(KeyCode.F6);
    assertNothingIsLost("which capture");
    door.press(KeyCode.ESCAPE);
    door.press(KeyCode.INSERT);
    play("demo-data/gate-timer.capture", "plain-decimal.toml");
    assertNothingIsLost("what does not fit");
  }
}
