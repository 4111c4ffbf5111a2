package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.look.Language;
import lanewarden.station.RuleDraft;
import lanewarden.station.RuleKey;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rule studio as opened from the kiosk, worked by keys. */
class RuleStudioTest {
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

  private void typeInto(String field, String text) throws Exception {
    booth.focusField(field);
    booth.type(text);
  }

  private Node node(String id) throws Exception {
    return Booth.call(() -> booth.front.official().lookup("#" + id));
  }

  @Test
  void theDoorAtSignInOpensTheEventsRuleBook() throws Exception {
    assertTrue(booth.shows("studio"));
    assertEquals("rule-book.toml", booth.text("studio-file"));
    assertEquals("Nothing changed. This rule book is in force.", booth.text("studio-state"));
    assertTrue(booth.text("curve").startsWith("An archer whose arrows fly at exactly"));
    booth.press(KeyCode.F12);
    assertTrue(booth.shows("sign-in-screen"));
    assertFalse(booth.windows.left);
  }

  @Test
  void typingShowsTheFaultBesideItsFieldAndTakesItAwayAgain() throws Exception {
    typeInto("field-limit", "3");
    assertTrue(booth.text("fault-limit").startsWith("Expected a speed such as"));
    assertTrue(booth.text("studio-state").contains("rule-book.draft.toml"));
    assertTrue(booth.shows("effect-note"));
    booth.type("05 ft/s");
    assertFalse(booth.shows("fault-limit"));
    assertFalse(booth.shows("effect-note"));
    assertEquals("Changed, not saved", booth.text("studio-state"));
  }

  /** Demands, worked cases and numbers, in the language of the screens. */
  @Test
  void inGermanItIsToldInGermanWhatTheRuleDoes() throws Exception {
    booth.close();
    booth =
        Booth.in(
            Language.GERMAN,
            BoothEvent.PLAIN,
            Files.createDirectory(temp.resolve("german")),
            1280,
            800);
    booth.press(KeyCode.F10);
    assertTrue(booth.text("curve").startsWith("Ein Schütze, dessen Pfeile im Mittel genau"));
    assertTrue(labels("effect-numbers").get(0).startsWith("Was sie bewirkt, "));
    assertEquals("Höchstens 300 ft/s plus 3 % (309 ft/s).", labels("rule-words").get(0));
    List<String> cases = labels("rule-cases");
    assertEquals(
        "außerhalb (Messwerte 309,5 ft/s, 308,7 ft/s, 309,1 ft/s): zu schnell, Mittelwert 309,1"
            + " ft/s, Limit 300 ft/s plus 3 % = 309 ft/s",
        cases.get(2));
    for (String pane : List.of("effect-numbers", "rule-words", "rule-cases")) {
      for (String said : labels(pane)) {
        assertFalse(said.matches(".*\\b(the|of|is|with|reading|readings)\\b.*"), said);
      }
    }
  }

  private List<String> labels(String pane) throws Exception {
    return labels(booth, pane);
  }

  /** The words within something that is shown. */
  static List<String> labels(Booth booth, String pane) throws Exception {
    return Booth.call(
        () ->
            booth.front.official().lookup("#" + pane).lookupAll(".label").stream()
                .map(label -> ((Label) label).getText())
                .filter(text -> !text.isBlank())
                .toList());
  }

  @Test
  void theWordThatHoldsWhereNothingIsSaidIsHighlighted() throws Exception {
    assertEquals(List.of("at most"), highlighted("field-bound"));
    assertEquals(List.of("simple"), highlighted("field-acceptance"));
  }

  private List<String> highlighted(String field) throws Exception {
    return Booth.call(
        () ->
            booth.front.official().lookup("#" + field).lookupAll(".choice").stream()
                .map(ToggleButton.class::cast)
                .filter(ToggleButton::isSelected)
                .map(ToggleButton::getText)
                .toList());
  }

  @Test
  void savedRulesAreNotInForceUntilTheOrganizerSignsThem() throws Exception {
    typeInto("field-limit", "305 ft/s");
    booth.press(KeyCode.F5);
    assertEquals("305 ft/s", RuleDraft.open(file).text(1, RuleKey.LIMIT));
    assertEquals(
        "Saved; the file before is kept beside it. Not in force: put it in force with the"
            + " organizer's passphrase (F10).",
        booth.text("studio-state"));
    long before = booth.station.view().head().sequence();

    booth.press(KeyCode.F10);
    booth.type("The limit was a slip");
    booth.press(KeyCode.ENTER);
    booth.type("wrong words");
    booth.press(KeyCode.ENTER);
    assertTrue(booth.text("form-trouble").contains("KEY-PASSPHRASE"));
    assertEquals(before, booth.station.view().head().sequence());
    booth.type("a very long oak");
    booth.press(KeyCode.ENTER);
    assertTrue(booth.text("studio-state").startsWith("In force"), booth.text("studio-state"));
    assertEquals(before + 1, booth.station.view().head().sequence());
    assertTrue(
        booth.text("studio-trouble").contains("EDITION-SAME"),
        "told where the edition can still be changed, not first at the line");
    booth.press(KeyCode.F12);
    booth.press(KeyCode.F10);
    assertEquals("Nothing changed. This rule book is in force.", booth.text("studio-state"));
  }

  @Test
  void savingWhatIsNotChangedWritesNothingAndSaysWhatIsInForce() throws Exception {
    booth.press(KeyCode.F5);
    assertEquals(
        "Nothing was written: the file says this already. This rule book is in force.",
        booth.text("studio-state"));
    assertTrue(booth.isDisabled("studio-adopt"), "the very one is in force");
  }

  @Test
  void aFileThatIsNotTheOneInForceIsToldWhenItIsOpened() throws Exception {
    booth.press(KeyCode.F12);
    Files.writeString(file, Files.readString(file) + "# another edition\n");
    booth.press(KeyCode.F10);
    assertEquals(
        "Nothing changed. Not in force: put it in force with the organizer's passphrase (F10).",
        booth.text("studio-state"));
    assertFalse(booth.isDisabled("studio-adopt"));
  }

  @Test
  void oneOfSeveralWordsIsOneStopOfTheTabulatorAndChosenWithTheArrowKeys() throws Exception {
    booth.focusField("field-limit");
    // "none" beside the limit, then at most or below
    booth.press(KeyCode.TAB);
    booth.press(KeyCode.TAB);
    booth.press(KeyCode.RIGHT);
    assertEquals(List.of("below"), highlighted("field-bound"));
    booth.press(KeyCode.RIGHT);
    assertEquals(List.of("below"), highlighted("field-bound"), "the last one stays");
    booth.press(KeyCode.LEFT);
    assertEquals(List.of("at most"), highlighted("field-bound"));
    booth.press(KeyCode.RIGHT);
    booth.press(KeyCode.TAB);
    booth.type("5 gr/lb");
    assertEquals("5 gr/lb", booth.fieldText("field-only-below"));
  }

  @Test
  void whatIsNotSavedCannotBePutInForce() throws Exception {
    typeInto("field-limit", "305 ft/s");
    booth.press(KeyCode.F10);
    assertFalse(booth.shows("adopt-panel"));
  }

  @Test
  void leavingAsksBeforeAnythingTypedIsGivenUp() throws Exception {
    typeInto("field-limit", "305 ft/s");
    booth.press(KeyCode.F12);
    assertTrue(booth.shows("ask-panel"));
    booth.press(KeyCode.ESCAPE);
    assertTrue(booth.shows("studio"));
    assertEquals("305 ft/s", booth.fieldText("field-limit"));
    booth.press(KeyCode.F12);
    booth.press(KeyCode.F4);
    assertTrue(booth.shows("sign-in-screen"));
    assertEquals("300 ft/s", RuleDraft.open(file).text(1, RuleKey.LIMIT));
  }

  @Test
  void enterSavesWhatWasTypedAndLeaves() throws Exception {
    typeInto("field-limit", "305 ft/s");
    booth.press(KeyCode.F12);
    booth.press(KeyCode.ENTER);
    assertTrue(booth.shows("sign-in-screen"));
    assertEquals("305 ft/s", RuleDraft.open(file).text(1, RuleKey.LIMIT));
  }

  @Test
  void whatCannotBeSavedIsNotLeft() throws Exception {
    typeInto("field-limit", "305 ft/s");
    Files.writeString(file, Files.readString(file) + "# theirs\n");
    booth.press(KeyCode.F12);
    booth.press(KeyCode.ENTER);
    assertTrue(booth.shows("studio"));
    assertFalse(booth.shows("ask-panel"));
    assertTrue(booth.text("studio-trouble").contains("RULES-CHANGED"));
    assertEquals("305 ft/s", booth.fieldText("field-limit"));
  }

  @Test
  void aNameThatIsTakenIsRefusedInTheFormWithTheNameStillThere() throws Exception {
    typeInto("field-limit", "305 ft/s");
    Files.writeString(booth.folder.path().resolve("mine.toml"), "theirs");
    booth.press(KeyCode.F6);
    booth.focusField("form-save-name");
    booth.type("mine.toml");
    booth.press(KeyCode.ENTER);
    assertTrue(booth.shows("save-as-panel"));
    assertTrue(booth.text("form-trouble").contains("RULES-TAKEN"));
    assertEquals("mine.toml", booth.fieldText("form-save-name"));
    booth.focusField("form-save-name");
    booth.type("ours.toml");
    booth.press(KeyCode.ENTER);
    assertFalse(booth.shows("save-as-panel"));
    assertEquals("ours.toml", booth.text("studio-file"));
  }

  @Test
  void removingAsksFirst() throws Exception {
    booth.press(KeyCode.F4);
    booth.press(KeyCode.ESCAPE);
    assertTrue(booth.text("studio-state").startsWith("Nothing changed"));
    booth.press(KeyCode.F4);
    booth.press(KeyCode.ENTER);
    assertEquals("Changed, not saved", booth.text("studio-state"));
  }

  @Test
  void theFileChangedBySomebodyElseIsToldAndSavedUnderAnotherName() throws Exception {
    typeInto("field-limit", "305 ft/s");
    Files.writeString(file, Files.readString(file) + "# theirs\n");
    booth.press(KeyCode.F5);
    assertTrue(booth.text("studio-trouble").contains("RULES-CHANGED"));
    booth.press(KeyCode.F6);
    Booth.call(
        () -> {
          ((TextInputControl) booth.front.official().lookup("#form-save-name"))
              .setText("mine.toml");
          return true;
        });
    booth.press(KeyCode.ENTER);
    assertTrue(Files.exists(booth.folder.path().resolve("mine.toml")));
    assertEquals("mine.toml", booth.text("studio-file"));
    assertEquals("Saved.", booth.text("studio-state"));
  }

  @Test
  void lanesAndSamplesOpenOverTheForm() throws Exception {
    booth.press(KeyCode.F8);
    assertTrue(booth.shows("lanes-panel"));
    assertTrue(booth.text("lanes-answer").contains("side by side"));
    booth.press(KeyCode.ESCAPE);
    assertTrue(booth.shows("studio"));
  }

  @Test
  void everythingThatTakesKeysSaysItsNameAndIsLargeEnoughToTouch() throws Exception {
    List<String> wrong = new ArrayList<>();
    Booth.call(
        () -> {
          examine((Parent) booth.front.official().lookup("#studio"), wrong);
          return true;
        });
    assertEquals(List.of(), wrong);
  }

  private static void examine(Parent parent, List<String> wrong) {
    for (Node node : parent.getChildrenUnmodifiable()) {
      if (!node.isVisible() || !node.isManaged()) {
        continue;
      }
      if (node instanceof ButtonBase || node instanceof TextInputControl) {
        boolean scrolls = node.getStyleClass().contains("increment-button");
        String name = node.getAccessibleText();
        if (!scrolls && (name == null || name.isBlank())) {
          wrong.add("no name: " + node);
        }
        if (!scrolls && (node.getLayoutBounds().getHeight() < 48 || width(node) < 48)) {
          wrong.add("too small: " + node);
        }
      } else if (node instanceof Parent inner) {
        examine(inner, wrong);
      }
    }
  }

  private static double width(Node node) {
    return node.getLayoutBounds().getWidth();
  }

  @Test
  void theTabulatorLeadsThroughTheWholeFormAndTheFormFollows() throws Exception {
    booth.focusField("field-code");
    List<String> unseen = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      booth.press(KeyCode.TAB);
      Booth.call(
          () -> {
            Node owner = booth.front.official().getFocusOwner();
            double top = owner.localToScene(owner.getLayoutBounds()).getMinY();
            double bottom = owner.localToScene(owner.getLayoutBounds()).getMaxY();
            if (top < 0 || bottom > 720) {
              unseen.add(owner + " from " + top + " to " + bottom);
            }
            return true;
          });
    }
    assertEquals(List.of(), unseen);
  }

  @Test
  void whatChangesWhileTypingIsSeenWithoutScrolling() throws Exception {
    for (String id : List.of("curve", "effect-numbers", "rule-words", "rule-cases")) {
      Node shown = node(id);
      double bottom = Booth.call(() -> shown.localToScene(shown.getLayoutBounds()).getMaxY());
      double bar =
          Booth.call(
              () -> {
                Node save = booth.front.official().lookup("#studio-save");
                return save.localToScene(save.getLayoutBounds()).getMinY();
              });
      assertTrue(bottom <= bar, id + " ends at " + bottom + ", the buttons begin at " + bar);
    }
  }
}
