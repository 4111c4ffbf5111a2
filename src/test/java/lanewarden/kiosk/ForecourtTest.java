package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import lanewarden.station.BroughtText;
import lanewarden.station.Outlook;
import lanewarden.station.SetUpText;
import lanewarden.station.WrittenRules;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is done without an event, from the start screen, by keys alone. */
class ForecourtTest {
  private static final Path RULES = Path.of("demo-data", "rule-book.toml").toAbsolutePath();

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
}
