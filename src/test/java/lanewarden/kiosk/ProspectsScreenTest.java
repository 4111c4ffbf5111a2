package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import lanewarden.bench.Caution;
import lanewarden.kiosk.look.Theme;
import lanewarden.rules.Division;
import lanewarden.station.BroughtText;
import lanewarden.station.Outlook;
import lanewarden.station.SetUpText;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What awaits a set-up, asked by keys alone before anybody signed in. */
class ProspectsScreenTest {
  @TempDir Path temp;
  private Booth booth;

  @BeforeEach
  void open() throws Exception {
    booth = Booth.ofClauses(temp, 1280, 800);
    booth.press(KeyCode.INSERT);
    booth.press(KeyCode.F5);
    assertTrue(booth.shows("prospects"));
  }

  @AfterEach
  void close() {
    booth.close();
  }

  private void fill(String field, String text) throws Exception {
    booth.focusField(field);
    booth.type(text);
  }

  @Test
  void everyDivisionOfTheRuleBookInForceSaysWhatAwaitsTheSetUp() throws Exception {
    booth.type("350");
    fill("prospect-speed", "300");
    fill("prospect-draw", "60");
    booth.press(KeyCode.ENTER);

    assertFalse(booth.shows("prospects-trouble"), booth.text("prospects-trouble"));
    Outlook outlook =
        booth
            .station
            .proceedings()
            .outlook(
                new BroughtText(new SetUpText("350", "60", ""), "300", "3", List.of(), ""),
                "2 ft/s",
                "");
    assertFalse(outlook.divisions().isEmpty());
    for (int i = 0; i < outlook.divisions().size(); i++) {
      Division division = outlook.divisions().get(i);
      assertEquals(
          division.code() + " · " + division.name() + ". " + outlook.prospects().get(i).inWords(),
          booth.text("prospect-of-" + division.code().toLowerCase(Locale.ROOT)));
    }
    assertTrue(booth.text("prospects-cautions").contains(Caution.paragraph()));
  }

  @Test
  void noProspectHasATick() throws Exception {
    booth.type("350");
    fill("prospect-speed", "300");
    fill("prospect-draw", "60");
    booth.press(KeyCode.ENTER);
    for (String id : List.of("prospect-of-la", "prospect-of-nj")) {
      Node card = Booth.call(() -> booth.front.official().lookup("#" + id));
      assertTrue(card.lookupAll(".sign-within").isEmpty(), id);
      assertFalse(card.lookupAll(".sign-running").isEmpty(), id);
    }
  }

  private void fillAll() throws Exception {
    booth.type("350");
    fill("prospect-shots", "350 gr: 284 284 284");
    fill("prospect-other-shots", "377.5 gr: 272 272 272");
    fill("prospect-draw", "60");
    fill("prospect-certified", "60");
    fill("prospect-length", "29");
    fill("prospect-curve", "7 0, 9 22, 11 60, 24 60, 28 15");
    booth.press(KeyCode.ENTER);
    assertFalse(booth.shows("prospects-trouble"), booth.text("prospects-trouble"));
  }

  @Test
  void whatIsBelowIsReachedByAKeyThatSaysWhenThatIsAll() throws Exception {
    fillAll();
    assertFalse(booth.isWhole("prospects-supposed"));
    assertFalse(booth.isDisabled("prospects-more"));
    booth.press(KeyCode.PAGE_DOWN);
    booth.press(KeyCode.PAGE_DOWN);
    assertTrue(booth.isWhole("prospects-supposed"));
    assertTrue(booth.isDisabled("prospects-more"));
  }

  /** The more there is to tell, the more somebody may change: what does not fit is scrolled. */
  @Test
  void cautionsStandWholeHoweverMuchIsTold() throws Exception {
    fillAll();
    for (Theme theme : Theme.values()) {
      Booth.call(
          () -> {
            booth.front.look().theme().set(theme);
            return true;
          });
      assertTrue(booth.isWhole("prospects-cautions"), theme.name());
    }

    fill("prospect-curve", "7 0, 9");
    booth.press(KeyCode.ENTER);
    assertTrue(booth.shows("prospects-trouble"));
    assertTrue(booth.isWhole("prospects-cautions"));
  }

  @Test
  void wrongUnitIsToldWithWhatToDoAndNothingTypedIsLost() throws Exception {
    booth.type("350 lbf");
    fill("prospect-speed", "300");
    booth.press(KeyCode.ENTER);

    assertTrue(booth.text("prospects-trouble").contains("SET-UP-UNREADABLE"));
    assertEquals("350 lbf", booth.text("prospect-arrow"));
    assertTrue(booth.shows("prospects-cautions"));
  }

  @Test
  void speedIsExpectedOrMeasuredButNotBoth() throws Exception {
    booth.type("350");
    fill("prospect-speed", "300");
    fill("prospect-shots", "350 gr: 290 291 289");
    booth.press(KeyCode.ENTER);
    assertTrue(booth.text("prospects-trouble").contains("BROUGHT-UNREADABLE"));
  }

  @Test
  void emptiedFieldsWaitForTheNextSetUpFromTheFirst() throws Exception {
    booth.type("350");
    fill("prospect-speed", "300");
    booth.press(KeyCode.F2);
    booth.type("420");
    assertEquals("420", booth.text("prospect-arrow"));
    assertEquals("", booth.text("prospect-speed"));
  }

  @Test
  void escapeLeadsBack() throws Exception {
    booth.press(KeyCode.ESCAPE);
    assertTrue(booth.shows("sign-in-screen"));
  }
}
