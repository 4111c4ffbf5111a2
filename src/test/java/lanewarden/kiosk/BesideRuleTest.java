package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A second rule beside the one that is open in the rule studio, worked by keys. */
class BesideRuleTest {
  @TempDir Path temp;
  private Booth booth;
  private Path file;

  @BeforeEach
  void open() throws Exception {
    booth = new Booth(temp);
    file = booth.folder.ruleBookFile();
    booth.press(KeyCode.F10);
  }

  @AfterEach
  void close() {
    booth.close();
  }

  private List<String> labels(String pane) throws Exception {
    return RuleStudioTest.labels(booth, pane);
  }

  @Test
  void aSecondRuleStandsBesideWithItsNumbers() throws Exception {
    booth.press(KeyCode.F9);
    booth.touch("pick-2");
    assertTrue(booth.shows("numbers-second"));
    booth.press(KeyCode.F9);
    booth.touch("pick-0");
    assertFalse(booth.shows("numbers-second"));
  }

  @Test
  void theSameDivisionOfAnotherRuleBookStandsBesideWithWordsCasesAndWhatDiffers() throws Exception {
    Path other = booth.folder.path().resolve("hill.toml");
    Files.writeString(other, Files.readString(file).replaceFirst("300 ft/s", "290 ft/s"));
    askForAnotherRuleBook("hill.toml");
    assertFalse(booth.shows("beside-panel"));
    assertEquals(
        List.of(
            "Only the first: At most 300 ft/s plus 3 % (309 ft/s).",
            "Only the second: At most 290 ft/s plus 3 % (298.7 ft/s)."),
        labels("rule-difference"));
    assertEquals("At most 290 ft/s plus 3 % (298.7 ft/s).", labels("beside-words").get(0));
    assertTrue(labels("beside-cases").size() > 2, labels("beside-cases").toString());
    assertTrue(labels("numbers-second").get(0).startsWith("OC of hill.toml"));
    booth.focusField("field-limit");
    booth.type("290 ft/s");
    assertEquals(List.of("Nothing: both demand the same."), labels("rule-difference"));
  }

  private void askForAnotherRuleBook(String named) throws Exception {
    typeAnotherRuleBook(booth, named);
    booth.press(KeyCode.ENTER);
  }

  /** Opens the form that asks for a rule book to put beside, and types one. */
  static void typeAnotherRuleBook(Booth booth, String named) throws Exception {
    booth.press(KeyCode.F9);
    int last = Booth.call(() -> booth.front.official().getRoot().lookupAll(".pick").size()) - 1;
    booth.touch("pick-" + last);
    assertTrue(booth.shows("beside-panel"));
    booth.type(named);
  }

  @Test
  void anEventsFolderStandsBesideTooAndWhatIsNoRuleBookIsRefusedWhereItWasTyped() throws Exception {
    askForAnotherRuleBook("nowhere.toml");
    assertTrue(booth.shows("beside-panel"));
    assertTrue(booth.text("form-trouble").contains("FILE"), booth.text("form-trouble"));
    assertEquals("nowhere.toml", booth.fieldText("form-beside-file"));
    booth.press(KeyCode.ESCAPE);

    Path other = Files.createDirectory(temp.resolve("other event"));
    String written = Files.readString(file);
    Files.writeString(other.resolve("rule-book.toml"), written.replace("\"OC\"", "\"XC\""));
    askForAnotherRuleBook(other.toString());
    assertTrue(booth.text("form-trouble").contains("BESIDE-NONE"), booth.text("form-trouble"));
    assertFalse(booth.shows("numbers-second"));
    Files.writeString(other.resolve("rule-book.toml"), written);
    booth.press(KeyCode.ENTER);
    assertTrue(booth.shows("numbers-second"));
    assertTrue(labels("numbers-second").get(0).startsWith("OC of other event"));
  }
}
