package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.List;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.look.Language;
import lanewarden.station.EventFolder;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * When everything is to be said at once on the smallest screen, under the band that says that
 * nothing counts, the stop, the outcome and the shots are whole; in every language.
 */
class CrowdedLineTest {
  private static final double WIDTH = 1280;
  private static final double HEIGHT = 800;

  @TempDir static Path scratch;
  private static EventFolder event;
  private static EventFolder unplaced;

  @TempDir Path temp;

  @BeforeAll
  static void makeEvent() throws Exception {
    event = ProvingScreenTest.verifying(scratch.resolve("made"));
    unplaced = BoothEvent.unplaced(scratch.resolve("unplaced"));
  }

  /** The line is not clear, and held, and what was scanned is nobody's bib. */
  static void crowd(Booth booth) throws Exception {
    booth.press(KeyCode.END);
    booth.shoot("296.0 ft/s", "296.9 ft/s");
    booth.press(KeyCode.ESCAPE);
    booth.scan("101");
    booth.shoot("299.8 ft/s", "300.1 ft/s", "300.1 ft/s");
    booth.press(KeyCode.PAGE_DOWN);
    booth.type("1");
    booth.press(KeyCode.ENTER);
    booth.press(KeyCode.F6);
    booth.type("1");
    booth.press(KeyCode.ENTER);
    booth.scan("999");
  }

  /** Over the limit, with an arrow that was not weighed. */
  static void shootUnweighed(Booth booth) throws Exception {
    booth.scan("103");
    booth.shoot("312.4 ft/s", "310.0 ft/s", "311.2 ft/s");
  }

  private static void assertWhole(Booth booth, String... ids) throws Exception {
    for (String id : ids) {
      assertTrue(booth.shows(id), id);
      assertEquals(List.of(), booth.cutOff(id), id);
    }
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void stopOutcomeAndShotsAreWholeWhenTheLineIsHeldTooAndSomethingIsTold(Language language)
      throws Exception {
    try (Booth booth = Booth.training(language, event, temp, WIDTH, HEIGHT)) {
      booth.signIn();
      crowd(booth);
      assertWhole(
          booth, "training", "stop", "proving", "notice", "progress", "check-card", "stop-line");
    }
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void theCardOfAnArrowThatWasNotWeighedIsWhole(Language language) throws Exception {
    try (Booth booth = Booth.training(language, unplaced, temp, WIDTH, HEIGHT)) {
      booth.signIn();
      shootUnweighed(booth);
      assertWhole(booth, "training", "check-card", "rule", "advice", "stop-line");
    }
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void aStopThatIsNotSignedYetLeavesTheCheckWhole(Language language) throws Exception {
    try (Booth booth = Booth.training(language, event, temp, WIDTH, HEIGHT);
        Connection backup =
            DriverManager.getConnection("jdbc:sqlite:" + booth.folder.ledger().toUri());
        Statement statement = backup.createStatement()) {
      booth.signIn();
      booth.press(KeyCode.END);
      booth.shoot("296.0 ft/s", "296.9 ft/s");
      booth.press(KeyCode.ESCAPE);
      booth.scan("101");
      booth.shoot("299.8 ft/s", "300.1 ft/s");
      statement.execute("BEGIN IMMEDIATE");
      booth.press(KeyCode.F6);
      assertWhole(booth, "training", "standing-trouble", "progress", "check-card", "stop-line");
    }
  }

  /** A rule of many clauses is longer in some languages: its words give way, nothing else does. */
  @ParameterizedTest
  @EnumSource(Language.class)
  void underARuleOfManyClausesOutcomeAdviceAndShotsAreWhole(Language language) throws Exception {
    try (Booth booth = Booth.in(language, BoothEvent.CLAUSES, temp, WIDTH, HEIGHT)) {
      booth.signIn();
      booth.scan("101");
      booth.press(KeyCode.ESCAPE);
      assertWhole(booth, "set-up", "conditions", "verdict", "shots");
      booth.press(KeyCode.F4);
      booth.type("1");
      booth.press(KeyCode.ENTER);
      booth.scan("102");
      booth.shoot("305 ft/s", "306.1 ft/s", "306.3 ft/s");
      assertWhole(booth, "set-up", "conditions", "verdict", "shots");
      booth.press(KeyCode.F11);
      assertWhole(booth, "set-up", "verdict", "shots", "advice");
    }
  }
}
