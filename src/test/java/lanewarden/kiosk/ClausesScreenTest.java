package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Set;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import lanewarden.bench.Caution;
import lanewarden.quantity.Mass;
import lanewarden.rules.SetUp;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The line under rules that ask for more than arrow speed, worked by keys and a reader alone. */
class ClausesScreenTest {
  @TempDir Path temp;
  private Booth booth;

  @BeforeEach
  void openAndSignIn() throws Exception {
    booth = Booth.ofClauses(temp, 1280, 800);
    booth.signIn();
  }

  @AfterEach
  void close() {
    booth.close();
  }

  private Mass arrow() {
    return booth.check().setUp().arrowMass();
  }

  private void stateAll() throws Exception {
    booth.type("372");
    booth.press(KeyCode.ENTER);
    booth.type("60");
    booth.press(KeyCode.ENTER);
    booth.type("62");
    booth.press(KeyCode.ENTER);
  }

  @Test
  void panelForBowAndArrowOpensByItselfAndEnterLeadsThroughTheFields() throws Exception {
    booth.scan("101");
    assertTrue(booth.shows("set-up-panel"));
    assertEquals("WAITING", booth.text("outcome"));
    stateAll();

    assertFalse(booth.shows("set-up-panel"));
    assertEquals(Mass.parse("372 gr"), arrow());
    assertEquals("SHOOTING", booth.text("outcome"));
    assertEquals("Arrow 372 gr · Draw weight 60 lbf · Certified 62 lbf", booth.text("set-up"));
  }

  @Test
  void panelLeftWithEscapeDoesNotComeBackByItselfButByItsKey() throws Exception {
    booth.scan("101");
    booth.press(KeyCode.ESCAPE);
    assertFalse(booth.shows("set-up-panel"));
    assertTrue(booth.text("outcome-words").startsWith("To be stated first: arrow mass"));
    booth.press(KeyCode.F10);

    assertTrue(booth.shows("set-up-panel"));
  }

  @Test
  void noReadingCanBeTypedBeforeTheFiguresAreStatedButTheCheckCanBeEnded() throws Exception {
    booth.scan("101");
    booth.press(KeyCode.ESCAPE);
    booth.press(KeyCode.F2);
    assertFalse(booth.shows("entry-panel"));
    booth.press(KeyCode.F4);

    assertTrue(booth.shows("entry-panel"));
  }

  @Test
  void figureThatIsNoneIsRefusedInThePanel() throws Exception {
    booth.scan("501");
    booth.press(KeyCode.F10);
    booth.type("heavy");
    booth.press(KeyCode.ENTER);

    assertTrue(booth.shows("set-up-panel"));
    assertEquals("Draw weight 42 lbf", booth.text("set-up"));
  }

  @Test
  void panelShowsTheLightestArrowAdmittedAndRestatingAsksTheRuleAnew() throws Exception {
    booth.scan("103");
    assertEquals("NOT ADMITTED", booth.text("outcome"));
    booth.press(KeyCode.F10);
    assertTrue(booth.text("set-up-least").endsWith("372 gr"), booth.text("set-up-least"));
    Booth.call(
        () -> {
          booth.front.official().lookup("#set-up-field-1").requestFocus();
          return true;
        });
    booth.press(KeyCode.ESCAPE);
    booth.press(KeyCode.F5);

    assertEquals(2, booth.check().opened().attempt());
  }

  @Test
  void oneKeyTicksEveryConditionAndTheVerdictFalls() throws Exception {
    booth.scan("102");
    booth.shoot("300 ft/s", "301 ft/s", "300.5 ft/s");
    assertEquals("WAITING", booth.text("outcome"));
    booth.press(KeyCode.F11);

    assertEquals("WITHIN", booth.text("outcome"));
  }

  @Test
  void eachConditionCanBeTickedAlone() throws Exception {
    booth.scan("102");
    Booth.call(
        () -> {
          ((Button) booth.front.official().lookup(".condition")).fire();
          return true;
        });
    booth.settle();

    assertEquals(Set.of("full draw"), booth.check().ticked());
    assertTrue(
        Booth.call(
            () ->
                ((Button) booth.front.official().lookup(".condition")).getText().startsWith("☑")));
  }

  @Test
  void whatFollowsAFailStandsUnderTheOutcomeAndOnTheBoard() throws Exception {
    booth.scan("102");
    booth.press(KeyCode.F11);
    booth.shoot("306 ft/s", "306 ft/s", "306 ft/s");

    assertEquals("OVER", booth.text("outcome"));
    assertEquals(
        "What follows: the archer is barred from the event.", booth.text("outcome-follows"));
    assertEquals(booth.text("outcome-follows"), booth.boardText("board-follows"));
  }

  /** Of the roster's figure nobody knows whether it is right. */
  @Test
  void adviceComesOnlyWhenTheArrowWasWeighedAndNeverWithoutItsCautions() throws Exception {
    booth.scan("102");
    booth.press(KeyCode.F11);
    booth.shoot("306 ft/s", "307 ft/s", "306 ft/s");
    assertEquals("Weigh the arrow (F10) to see what would bring it within.", booth.text("advice"));
    assertEquals("", booth.text("advice-cautions"));
    booth.press(KeyCode.F10);
    booth.type("372");
    while (booth.shows("set-up-panel")) {
      booth.press(KeyCode.ENTER);
    }

    assertEquals("OVER", booth.text("outcome"));
    assertTrue(booth.text("advice").startsWith("To come within: an arrow"), booth.text("advice"));
    for (Caution caution : Caution.values()) {
      assertTrue(booth.text("advice-cautions").contains(caution.inWords()), caution.name());
    }
    assertTrue(booth.isWhole("advice-cautions"));
  }

  @Test
  void whoMustBeNamedIsCalledOnTheJudgesWordByOneKey() throws Exception {
    booth.scan("401");
    assertTrue(booth.text("notice").contains("GROUNDS-MISSING"));
    booth.press(KeyCode.INSERT);
    booth.type("1");
    booth.press(KeyCode.ENTER);

    assertEquals("401", booth.text("bib"));
    assertEquals("Named by a judge", booth.check().opened().grounds());
    assertFalse(booth.shows("all-the-same"));
    assertEquals("", booth.text("call-field"));
  }

  @Test
  void aPassLapsesWithTheRulesOwnWords() throws Exception {
    booth.scan("401");
    booth.press(KeyCode.INSERT);
    booth.type("judge Ostrander");
    booth.press(KeyCode.ENTER);
    booth.shoot("270 ft/s");
    booth.press(KeyCode.ENTER);
    booth.scan("401");
    booth.press(KeyCode.INSERT);
    booth.type("401");
    booth.press(KeyCode.ENTER);
    assertTrue(booth.shows("entry-panel"), "a bib is no grounds");
    booth.press(KeyCode.ESCAPE);
    booth.press(KeyCode.INSERT);
    booth.type("2");
    booth.press(KeyCode.ENTER);

    assertEquals("another arrow", booth.check().opened().grounds());
  }

  @Test
  void nothingIsOfferedWhereNoGroundsHelp() throws Exception {
    booth.scan("999");

    assertTrue(booth.text("notice").contains("NO-SUCH-COMPETITOR"));
    assertFalse(booth.shows("all-the-same"));
    booth.press(KeyCode.INSERT);
    assertFalse(booth.shows("entry-panel"));
  }

  @Test
  void thePhaseStandsInTheStatusBarAndIsChangedWithAConfirmation() throws Exception {
    assertEquals("Phase: before", booth.text("phase"));
    booth.press(KeyCode.HOME);
    booth.type("2");
    booth.press(KeyCode.ENTER);

    assertEquals("Phase: during", booth.text("phase"));
    assertEquals("during", booth.station.view().phase().word());
  }

  @Test
  void thePhaseGoesBackOnlyWithAReason() throws Exception {
    booth.press(KeyCode.HOME);
    booth.type("2");
    booth.press(KeyCode.ENTER);
    booth.press(KeyCode.HOME);
    booth.type("1");
    booth.press(KeyCode.ENTER);
    assertEquals("Phase: during", booth.text("phase"));
    assertTrue(booth.shows("entry-panel"));
    booth.type("1");
    booth.press(KeyCode.ENTER);

    assertEquals("Phase: before", booth.text("phase"));
    assertFalse(booth.shows("entry-panel"));
  }

  @Test
  void limitsAreSaidInWordsWhereTheyAreNoPlainSpeed() throws Exception {
    booth.scan("201");
    assertEquals("Limit: below 280\u00a0ft/s", booth.boardText("board-limit"));
    booth.station.endCheck("only looked at");
    booth.settle();
    booth.scan("202");
    assertEquals("No limit for this arrow", booth.boardText("board-limit"));
    assertEquals("WITHIN", booth.boardText("board-word"));
    booth.scan("301");
    assertTrue(
        booth
            .boardText("board-limit")
            .startsWith("Limit 165 J for an arrow of 400 gr: up to 112.83"),
        booth.boardText("board-limit"));
    booth.station.endCheck("only looked at");
    booth.settle();
    booth.scan("501");
    assertEquals("No limit", booth.boardText("board-limit"));
    booth.scan("101");
    assertEquals("WAITING", booth.boardText("board-word"));
  }

  @Test
  void aTypedReadingsUnitStandsBesideItsFieldAndAWrongOneIsExplained() throws Exception {
    booth.scan("301");
    booth.press(KeyCode.F2);
    assertEquals("m/s", booth.text("entry-unit"));
    booth.type("371");
    assertEquals("m/s", booth.text("entry-unit"));
    booth.type(" ft/s");
    assertEquals("", booth.text("entry-unit"), "the official wrote another unit");
    booth.press(KeyCode.ESCAPE);
    booth.press(KeyCode.F2);
    booth.type("371");
    booth.press(KeyCode.ENTER);

    assertTrue(
        booth.text("refused-words").endsWith("If the display says 371 ft/s, type: 371 ft/s"),
        booth.text("refused-words"));
  }

  /** What is handed over is signed as weighed; so nothing is that nobody typed. */
  @Test
  void declaredArrowThatNobodyTypedIsNotSignedAsWeighedAndGetsNoAdvice() throws Exception {
    booth.scan("102");
    booth.press(KeyCode.F11);
    booth.shoot("306 ft/s", "307 ft/s", "306 ft/s");
    booth.press(KeyCode.F10);
    booth.press(KeyCode.ENTER);
    assertTrue(booth.shows("set-up-panel"));
    assertTrue(booth.check().weighed().isEmpty(), booth.check().weighed().toString());
    Booth.call(
        () -> {
          booth.front.official().lookup("#set-up-field-2").requestFocus();
          return true;
        });
    booth.type("60");
    booth.press(KeyCode.ENTER);
    assertFalse(booth.shows("set-up-panel"));
    assertEquals(Set.of(SetUp.DRAW_WEIGHT), booth.check().weighed());
    assertEquals("Weigh the arrow (F10) to see what would bring it within.", booth.text("advice"));
    assertEquals("", booth.text("advice-cautions"));
  }
}
