package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.look.Appearance;
import lanewarden.kiosk.look.TextSize;
import lanewarden.kiosk.sound.Cue;
import lanewarden.kiosk.sound.Volume;
import lanewarden.station.ScreenChoices;
import lanewarden.station.UserFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Text size and sounds, as they are chosen and as the line makes them heard. */
class ComfortScreenTest {
  @TempDir Path temp;

  @Test
  void theLineIsHeardAsItIsSeen() throws Exception {
    try (Booth booth = new Booth(temp)) {
      booth.signIn();
      booth.scan("101");
      assertEquals(List.of(), booth.windows.heard);
      booth.shoot("280.4 ft/s");
      booth.emit("$PLWT,00003,0304.1,F,006578,A*00\\r\\n");
      booth.shoot("281.6 ft/s", "281.3 ft/s");
      assertEquals(List.of(Cue.READING, Cue.REFUSED, Cue.READING, Cue.WITHIN), booth.windows.heard);
      booth.windows.heard.clear();
      booth.scan("103");
      booth.shoot("312.4 ft/s", "310.0 ft/s", "311.2 ft/s");
      assertEquals(List.of(Cue.READING, Cue.READING, Cue.OVER), booth.windows.heard);
    }
  }

  @Test
  void whatIsPickedInThePanelHoldsAtOnce() throws Exception {
    try (Booth booth = new Booth(temp)) {
      booth.press(KeyCode.INSERT);
      booth.press(KeyCode.F2);
      assertTrue(booth.shows("comfort-panel"));
      pick(booth, "form-size", 2);
      pick(booth, "form-volume", 0);
      assertEquals(TextSize.LARGER, booth.front.look().textSize().get());
      assertEquals(Volume.OFF, booth.front.look().volume().get());
      booth.press(KeyCode.ESCAPE);
      assertFalse(booth.shows("comfort-panel"));
    }
  }

  private static void pick(Booth booth, String row, int place) throws Exception {
    Booth.call(
        () -> {
          List<ToggleButton> buttons =
              booth.front.official().lookup("#" + row).lookupAll(".toggle-button").stream()
                  .map(ToggleButton.class::cast)
                  .toList();
          buttons.get(place).fire();
          return true;
        });
    booth.settle();
  }

  @Test
  void whatWasChosenIsThereAtTheNextStart() throws Exception {
    ScreenChoices choices = new UserFolder(temp.resolve("user")).screenChoices();
    Appearance first = Appearance.of(choices.read(), Locale.ENGLISH);
    assertEquals(TextSize.PLAIN, first.textSize().get());
    assertEquals(Volume.MIDDLE, first.volume().get());
    first.textSize().set(TextSize.LARGEST);
    first.volume().set(Volume.QUIET);
    choices.write(first.chosen());
    Appearance next = Appearance.of(choices.read(), Locale.ENGLISH);
    assertEquals(TextSize.LARGEST, next.textSize().get());
    assertEquals(Volume.QUIET, next.volume().get());
  }
}
