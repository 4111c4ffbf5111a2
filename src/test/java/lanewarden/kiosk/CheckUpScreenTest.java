package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import lanewarden.station.SelfCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The station is looked over by keys alone, while the line goes on. */
class CheckUpScreenTest {
  @TempDir Path temp;

  static void open(Booth booth) throws Exception {
    booth.press(KeyCode.INSERT);
    booth.press(KeyCode.END);
  }

  private static List<SelfCheck.Point> points(Booth booth) throws Exception {
    return Booth.call(
        () ->
            ((ListView<?>) booth.front.official().lookup("#checkup-points"))
                .getItems().stream().map(SelfCheck.Point.class::cast).toList());
  }

  @Test
  void everyPointIsShownTheWorstFirstBeforeAnybodySignedIn() throws Exception {
    try (Booth booth = new Booth(temp)) {
      open(booth);
      assertTrue(booth.shows("checkup"));
      assertEquals(SelfCheck.Subject.values().length, points(booth).size());
      assertEquals(SelfCheck.State.ATTENTION, points(booth).get(0).state());
      assertEquals("Nothing is wrong; to look at: 3", booth.text("checkup-words"));
      booth.press(KeyCode.ESCAPE);
      assertTrue(booth.shows("sign-in-screen"));
    }
  }

  @Test
  void lineGoesOnBesideItAndIsOneKeyAway() throws Exception {
    try (Booth booth = new Booth(temp)) {
      booth.signIn();
      booth.scan("103");
      open(booth);
      booth.shoot("299.1 ft/s");
      assertEquals(1, booth.check().shots().size());
      assertTrue(booth.shows("checkup"));
      booth.scan("101");
      assertEquals("103", booth.check().opened().bib(), "a scan has nothing to say here");
      booth.press(KeyCode.ESCAPE);
      assertTrue(booth.shows("line"));
    }
  }

  @Test
  void whatWasMendedIsGoodWhenLookedAtAgain() throws Exception {
    try (Booth booth = new Booth(temp)) {
      Path roster = booth.folder.path().resolve("roster.csv");
      String before = Files.readString(roster);
      Files.writeString(roster, "999,Eve Quiver,NONE\n", StandardOpenOption.APPEND);
      open(booth);
      assertEquals("Wrong: 1; to look at: 3", booth.text("checkup-words"));
      SelfCheck.Point worst = points(booth).get(0);
      assertEquals(SelfCheck.Subject.ROSTER, worst.subject());
      assertFalse(worst.remedy().isBlank());

      Files.writeString(roster, before);
      booth.press(KeyCode.F2);
      assertEquals("Nothing is wrong; to look at: 3", booth.text("checkup-words"));
    }
  }

  @Test
  void bundleIsToldBeforeItIsWrittenAndLiesInTheEventsFolder() throws Exception {
    try (Booth booth = new Booth(temp)) {
      open(booth);
      booth.press(KeyCode.F8);
      assertTrue(booth.shows("bundle-panel"));
      Path zip = booth.folder.path().resolve("support.zip").toAbsolutePath();
      assertFalse(Files.exists(zip), "told, and not written yet");
      booth.press(KeyCode.ENTER);
      assertFalse(booth.shows("bundle-panel"), booth.text("form-trouble"));
      assertTrue(Files.size(zip) > 0);
      assertEquals("Written: " + zip, booth.text("checkup-words"));

      booth.press(KeyCode.F8);
      booth.type(zip.toString());
      booth.press(KeyCode.ENTER);
      assertTrue(booth.text("form-trouble").contains("FILE-EXISTS"), booth.text("form-trouble"));
    }
  }
}
