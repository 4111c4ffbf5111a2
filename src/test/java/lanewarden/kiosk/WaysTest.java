package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One key lists every screen from everywhere; Escape leads back. */
class WaysTest {
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

  @Test
  void everyScreenIsReachedFromSigningInAndLeftWithEscape() throws Exception {
    Map<KeyCode, String> screens =
        Map.of(
            KeyCode.F1, "protest",
            KeyCode.F8, "records",
            KeyCode.DELETE, "wire-panel",
            KeyCode.F10, "studio");
    for (Map.Entry<KeyCode, String> screen : screens.entrySet()) {
      booth.press(KeyCode.INSERT);
      assertTrue(booth.shows("ways-panel"));
      booth.press(screen.getKey());
      assertFalse(booth.shows("ways-panel"));
      assertTrue(booth.shows(screen.getValue()), screen.getValue());
      booth.press(KeyCode.ESCAPE);
      assertTrue(booth.shows("sign-in-screen"), screen.getValue());
      assertFalse(booth.shows(screen.getValue()), screen.getValue());
    }
  }

  @Test
  void theLineIsOneKeyAwayFromEveryScreen() throws Exception {
    booth.signIn();
    booth.scan("103");
    for (KeyCode screen : new KeyCode[] {KeyCode.F1, KeyCode.F8, KeyCode.DELETE}) {
      booth.press(KeyCode.INSERT);
      booth.press(screen);
      booth.press(KeyCode.ESCAPE);
      booth.shoot("299.1 ft/s");
      assertFalse(booth.shows("glance"), "the line has the screen after " + screen);
    }
    assertEquals(3, booth.check().shots().size());
  }

  @Test
  void oneScreenLeadsToTheNextWithoutTheLineBetween() throws Exception {
    booth.signIn();
    booth.press(KeyCode.F1);
    booth.press(KeyCode.INSERT);
    booth.press(KeyCode.DELETE);
    assertTrue(booth.shows("chart-panel"));
    booth.press(KeyCode.INSERT);
    booth.press(KeyCode.F8);
    assertTrue(booth.shows("records"));
    booth.press(KeyCode.INSERT);
    booth.press(KeyCode.HOME);
    assertTrue(booth.shows("line"));
    assertFalse(booth.shows("records"));
  }

  @Test
  void whatIsNotOpenNowSaysWhyAndDoesNothing() throws Exception {
    booth.signIn();
    booth.press(KeyCode.INSERT);
    assertTrue(booth.text("way-f10").contains("signed out"), booth.text("way-f10"));
    booth.press(KeyCode.F10);
    booth.press(KeyCode.F12);

    assertTrue(booth.shows("ways-panel"));
    assertFalse(booth.windows.left);
  }

  @Test
  void scannedBibLeadsNowhereButBack() throws Exception {
    booth.signIn();
    booth.press(KeyCode.INSERT);
    booth.scan("103");

    assertFalse(booth.shows("ways-panel"));
    assertTrue(booth.shows("line"));
    assertTrue(booth.station.view().check().isEmpty());
  }

  @Test
  void whatIsBeingFilledInIsNotLeftByAccident() throws Exception {
    booth.signIn();
    booth.scan("103");
    booth.press(KeyCode.F4);
    booth.type("the archer felt ill");
    booth.press(KeyCode.INSERT);

    assertTrue(booth.shows("entry-panel"));
    assertEquals("the archer felt ill", booth.text("entry-field"));
  }

  @Test
  void whoCalledSomebodyAllTheSameHasTheKeyFirst() throws Exception {
    try (Booth clauses =
        Booth.ofClauses(Files.createDirectory(temp.resolve("clauses")), 1280, 800)) {
      clauses.signIn();
      clauses.scan("401");
      assertTrue(clauses.shows("all-the-same"));
      clauses.press(KeyCode.INSERT);
      assertTrue(clauses.shows("entry-panel"));
      clauses.press(KeyCode.ESCAPE);
      clauses.press(KeyCode.ESCAPE);
      clauses.press(KeyCode.INSERT);
      assertTrue(clauses.shows("ways-panel"));
    }
  }

  @Test
  void changedRuleBookIsNotLeftUnasked() throws Exception {
    booth.press(KeyCode.F10);
    booth.focusField("field-limit");
    booth.type("305 ft/s");
    booth.press(KeyCode.INSERT);
    booth.press(KeyCode.F1);

    assertFalse(booth.shows("protest"));
    assertTrue(booth.shows("studio"));
  }
}
