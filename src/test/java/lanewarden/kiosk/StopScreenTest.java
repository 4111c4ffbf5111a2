package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** One key stops the line for safety; what is seen then, and how it goes on. */
class StopScreenTest {
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

  private boolean stopped() {
    return booth.station.view().stop().isPresent();
  }

  @Test
  void oneKeyStopsTheLineBeforeAnythingIsAsked() throws Exception {
    booth.scan("101");
    booth.shoot("299.8 ft/s");
    booth.press(KeyCode.F6);
    assertTrue(stopped());
    assertTrue(booth.shows("entry-panel"), "why is asked afterwards");
    booth.shoot("300.1 ft/s");
    assertEquals(1, booth.check().shots().size());
    booth.scan("102");
    assertTrue(booth.shows("entry-panel"), "a bib is no reason");
    assertEquals(Optional.empty(), booth.station.view().stop().orElseThrow().reason());
    booth.focusField("entry-field");
    booth.type("1");
    booth.press(KeyCode.ENTER);
    assertEquals(
        Optional.of("Somebody is forward of the line"),
        booth.station.view().stop().orElseThrow().reason());
    assertEquals("LINE NOT CLEAR", booth.text("stop-word"));
    assertTrue(booth.text("stop-words").startsWith("Somebody is forward of the line. Let down"));
    assertTrue(booth.isWhole("stop-words"));
    assertEquals("101", booth.text("bib"), "the check stays");
    assertEquals("WAITING", booth.text("outcome"));
    assertEquals("LINE NOT CLEAR", booth.boardText("board-stopped"));
    assertTrue(booth.boardText("board-stopped-words").startsWith("Let down."));
    assertEquals("", booth.boardText("board-bib"));
  }

  private String saidOfTheLine() throws Exception {
    StringBuilder said = new StringBuilder();
    Map<KeyCode, String> places = Map.of(KeyCode.F1, "protest-how", KeyCode.F8, "errand-words");
    for (KeyCode way : List.of(KeyCode.F1, KeyCode.F8)) {
      booth.press(KeyCode.INSERT);
      booth.press(way);
      String words = booth.text(Objects.requireNonNull(places.get(way)));
      assertFalse(words.isBlank(), way.toString());
      said.append(words.contains("The line goes on meanwhile.") ? "goes on, " : "nothing, ");
      booth.press(KeyCode.ESCAPE);
    }
    return said.toString();
  }

  @Test
  void noScreenSaysThatTheLineGoesOnWhileItIsStopped() throws Exception {
    assertEquals("goes on, goes on, ", saidOfTheLine());
    booth.press(KeyCode.F6);
    booth.press(KeyCode.ESCAPE);
    assertTrue(stopped());
    assertEquals("nothing, nothing, ", saidOfTheLine());
    booth.press(KeyCode.F6);
    booth.press(KeyCode.F11);
    assertFalse(stopped());
    assertEquals("goes on, goes on, ", saidOfTheLine());
  }

  @Test
  void theLineGoesOnOnlyOnceTheOfficialSaidThatItIsClear() throws Exception {
    booth.scan("101");
    booth.press(KeyCode.F6);
    booth.press(KeyCode.ESCAPE);
    assertTrue(stopped(), "to say nothing of why leaves it stopped");
    booth.press(KeyCode.F6);
    assertTrue(booth.shows("entry-panel"));
    booth.press(KeyCode.ESCAPE);
    assertTrue(stopped(), "to go back leaves it stopped too");
    booth.press(KeyCode.F6);
    booth.scan("102");
    assertTrue(stopped(), "nor does a bib that somebody scans");
    assertFalse(booth.shows("entry-panel"));
    for (KeyCode elsewhere : List.of(KeyCode.TAB, KeyCode.RIGHT, KeyCode.LEFT, KeyCode.UP)) {
      booth.press(KeyCode.F6);
      booth.press(elsewhere);
      booth.press(KeyCode.SPACE);
      booth.scan("102");
      assertTrue(stopped(), "nor behind " + elsewhere);
      booth.press(KeyCode.ESCAPE);
    }
    booth.press(KeyCode.F6);
    booth.press(KeyCode.F11);
    assertFalse(stopped());
    assertEquals("", booth.text("stop-word"));
    assertEquals("", booth.boardText("board-stopped"));
    booth.shoot("299.8 ft/s", "300.1 ft/s", "300.1 ft/s");
    assertEquals("WITHIN", booth.text("outcome"));
  }

  @Test
  void itIsStoppedOverAPanelOfTheLine() throws Exception {
    booth.scan("101");
    booth.press(KeyCode.F9);
    booth.press(KeyCode.F6);
    assertTrue(stopped());
    assertTrue(booth.shows("entry-panel"));
  }

  @ParameterizedTest
  @EnumSource(names = {"F1", "F3", "F8", "F5", "F9", "END"})
  void itIsStoppedFromEveryOtherScreenAndLeadsToTheLine(KeyCode way) throws Exception {
    booth.scan("101");
    booth.press(KeyCode.INSERT);
    booth.press(way);
    assertFalse(booth.shows("bib"), "another screen");
    booth.press(KeyCode.F6);
    assertTrue(stopped());
    assertTrue(booth.shows("entry-panel"));
    assertEquals("101", booth.text("bib"));
    booth.press(KeyCode.ESCAPE);
    booth.press(KeyCode.INSERT);
    booth.press(way);
    booth.press(KeyCode.F6);
    assertFalse(booth.shows("bib"), "a line that is stopped asks nobody back");
  }

  @Test
  void itIsStoppedOverTheListsThatTheLineOpensToo() throws Exception {
    for (List<KeyCode> way :
        List.of(List.of(KeyCode.INSERT), List.of(KeyCode.INSERT, KeyCode.F4))) {
      for (KeyCode key : way) {
        booth.press(key);
      }
      booth.press(KeyCode.F6);
      assertTrue(stopped(), way.toString());
      booth.press(KeyCode.ESCAPE);
      booth.press(KeyCode.F6);
      booth.press(KeyCode.F11);
      assertFalse(stopped());
    }
  }

  @Test
  void aStopThatCannotBeSignedYetIsToldOnceAndTheBoardSaysToLetDown() throws Exception {
    booth.scan("101");
    try (Connection backup =
            DriverManager.getConnection("jdbc:sqlite:" + booth.folder.ledger().toUri());
        Statement statement = backup.createStatement()) {
      statement.execute("BEGIN IMMEDIATE");
      booth.press(KeyCode.F6);
      assertTrue(booth.shows("standing-trouble"));
      assertFalse(booth.shows("notice"), "once is enough");
      assertEquals("LINE NOT CLEAR", booth.boardText("board-stopped"));
      assertEquals("WAITING", booth.text("outcome"), "not that it shoots");
      booth.shoot("299.8 ft/s");
      assertFalse(stopped());
    }
    booth.press(KeyCode.F1);
    assertTrue(stopped());
    assertEquals(List.of(), booth.check().shots());
    assertFalse(booth.shows("standing-trouble"));
    assertTrue(booth.shows("stop"));
  }
}
