package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import lanewarden.station.EventFolder;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The instrument's charts and its wire, worked by keys alone. */
class InstrumentScreenTest {
  private static final String DAMAGED = "$PLWT,00003,0304.1,F,006578,A*00\\r\\n";

  @TempDir static Path scratch;
  private static EventFolder event;

  @TempDir Path temp;
  private Booth booth;

  @BeforeAll
  static void makeEvent() throws Exception {
    event = ProvingScreenTest.verifying(scratch.resolve("made"));
  }

  @BeforeEach
  void open() throws Exception {
    booth = Booth.on(event, temp, 1280, 800);
  }

  @AfterEach
  void close() {
    booth.close();
  }

  private List<String> heard() throws Exception {
    return Booth.call(
        () -> {
          ListView<?> lines = (ListView<?>) booth.front.official().lookup("#wire-lines");
          return lines.getItems().stream().map(Object::toString).toList();
        });
  }

  private List<String> smallButtons() throws Exception {
    return Booth.call(
        () -> {
          List<String> small = new ArrayList<>();
          // The next frame may not have come yet
          booth.front.official().getRoot().applyCss();
          booth.front.official().getRoot().layout();
          for (Node node :
              booth.front.official().getRoot().lookupAll(".instrument-panel .button")) {
            Button button = (Button) node;
            if (button.getWidth() < 48 || button.getHeight() < 48) {
              small.add(button.getAccessibleText());
            }
          }
          return small;
        });
  }

  @Test
  void beforeAnybodySignsInTheWireShowsWhatCameAndWhy() throws Exception {
    booth.shoot("296.0 ft/s");
    booth.emit(DAMAGED);
    booth.press(KeyCode.DELETE);
    assertTrue(booth.shows("wire-panel"));
    assertEquals(
        "Since the program started: 1 read, 1 refused. Shown 3, newest first:",
        booth.text("wire-counted"));
    assertTrue(heard().get(0).contains("REFUSED"), heard().get(0));
    assertTrue(heard().get(0).contains(DAMAGED), heard().get(0));
    assertTrue(heard().get(0).contains("checksum"), heard().get(0));
    assertTrue(heard().get(1).contains("296.0 ft/s"), heard().get(1));
    assertTrue(heard().get(2).contains("CONNECTED"), heard().get(2));
  }

  @Test
  void whatComesWhileSomebodyLooksIsShownAtOnce() throws Exception {
    booth.press(KeyCode.DELETE);
    booth.shoot("301.2 ft/s");
    assertTrue(heard().get(0).contains("301.2 ft/s"), heard().get(0));
    assertTrue(booth.text("wire-verdict").startsWith("FITS"), booth.text("wire-verdict"));
  }

  @Test
  void oneKeyLeadsToTheChartsAndBackAndEscapeLeaves() throws Exception {
    booth.press(KeyCode.DELETE);
    assertEquals(List.of(), smallButtons());
    booth.press(KeyCode.F2);
    assertTrue(booth.shows("chart-panel"));
    assertFalse(booth.shows("wire-panel"));
    assertEquals(List.of(), smallButtons());
    booth.press(KeyCode.F2);
    assertTrue(booth.shows("wire-panel"));
    booth.press(KeyCode.ESCAPE);
    assertFalse(booth.shows("wire-panel"));
    booth.signIn();
    assertTrue(booth.shows("line"), "the passphrase goes where it belongs again");
  }

  /** What is played is nobody's shot: the line and its own wire do not hear of it. */
  @Test
  void captureIsPlayedBesideTheLineAndCountsForNobody() throws Exception {
    booth.signIn();
    booth.press(KeyCode.DELETE);
    booth.press(KeyCode.F2);
    booth.press(KeyCode.F4);
    assertTrue(booth.shows("listen-capture"));
    booth.type(
        Files.writeString(temp.resolve("one.capture"), "0 $PLWT,00354,0268.8,F,007440,A*1B\\r\\n\n")
            .toString());
    booth.focusField("form-profile");
    booth.type("gate-timer.toml");
    booth.press(KeyCode.ENTER);
    for (int i = 0; i < 200 && !booth.text("listen-turn").startsWith("Listen anew"); i++) {
      Thread.sleep(20);
      booth.settle();
    }
    assertTrue(booth.text("wire-verdict").startsWith("FITS"), booth.text("wire-verdict"));
    assertTrue(booth.station.view().check().isEmpty());
    assertEquals(0, booth.station.wire().readings());
    booth.press(KeyCode.ESCAPE);
    assertTrue(booth.shows("line"));
  }

  @Test
  void theChartsFollowAVerification() throws Exception {
    booth.signIn();
    booth.press(KeyCode.DELETE);
    assertTrue(booth.text("chart-note").startsWith("Nothing can be drawn yet"));
    assertFalse(booth.shows("chart-single"));
    booth.press(KeyCode.ESCAPE);
    booth.press(KeyCode.END);
    booth.shoot("296.0 ft/s", "296.9 ft/s");
    booth.press(KeyCode.ESCAPE);
    booth.press(KeyCode.DELETE);
    String words = booth.text("chart-single-words");
    assertTrue(words.startsWith("INSIDE: all 2 lie between"), words);
    assertTrue(
        booth.text("chart-single").endsWith(words), "the picture's words are the chart's words");
    assertTrue(booth.shows("chart-average"));
    assertEquals("", booth.text("chart-note"));
  }

  @Test
  void aBibScannedOverTheChartsCallsNobody() throws Exception {
    booth.signIn();
    booth.press(KeyCode.DELETE);
    booth.type("101");
    booth.press(KeyCode.ESCAPE);
    assertEquals("", booth.text("bib"));
    assertTrue(booth.station.view().check().isEmpty());
  }
}
