package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import lanewarden.station.EventFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is told while a key waits, and before an official is signed out. */
class WaitingTest {
  @TempDir Path temp;

  /** Four wrong passphrases were typed a moment ago. */
  private static void fourWrong(EventFolder event) throws Exception {
    Files.writeString(
        event.path().resolve("keys").resolve("piet-arrowsmith.key.wrong"),
        "4 " + Instant.now(Clock.systemUTC()).truncatedTo(ChronoUnit.SECONDS));
  }

  @Test
  void theFifthWrongPassphraseIsFollowedByTheSecondsLeft() throws Exception {
    try (Booth booth = new Booth(temp)) {
      fourWrong(booth.folder);
      booth.type("four grey geese");
      booth.press(KeyCode.ENTER);
      String first = countdown(booth);
      assertTrue(first.startsWith("Wait 30 s"), first);
      Thread.sleep(2_500);
      assertFalse(countdown(booth).isBlank());
      assertTrue(seconds(countdown(booth)) < 30, countdown(booth));
      booth.type(Booth.PASSPHRASE);
      booth.press(KeyCode.ENTER);
      assertTrue(booth.text("sign-in-trouble").contains("KEY-WAIT"));
      assertTrue(seconds(countdown(booth)) < 30, countdown(booth));
      assertEquals(Optional.empty(), booth.station.view().official());
    }
  }

  private static String countdown(Booth booth) throws Exception {
    return Booth.call(
        () -> {
          Node card = booth.front.official().lookup("#sign-in-trouble");
          return card.isVisible() ? ((Label) card.lookup(".countdown")).getText() : "";
        });
  }

  private static int seconds(String words) {
    return Integer.parseInt(words.replaceAll("[^0-9]+", " ").strip().split(" ")[0]);
  }

  @Test
  void whoIsAboutToBeSignedOutIsToldAndStaysWithAnyKey() throws Exception {
    EventFolder event = BoothEvent.event(temp.resolve("made"));
    Path settings = event.path().resolve("station.toml");
    Files.writeString(
        settings,
        Files.readString(settings).replace("[place]", "sign_out_after = \"1 min\"\n[place]"));
    try (Booth booth = Booth.on(event, temp, 1280, 800)) {
      booth.signIn();
      String told = booth.text("idle-words");
      assertTrue(told.contains(Booth.OFFICIAL + " is signed out in"), told);
      // The seconds are counted by a timer of the toolkit, which a busy machine lets wait
      for (int i = 0; i < 60 && seconds(booth.text("idle-words")) > 58; i++) {
        Thread.sleep(250);
      }
      int before = seconds(booth.text("idle-words"));
      assertTrue(before <= 58, booth.text("idle-words"));
      booth.press(KeyCode.SHIFT);
      assertTrue(
          booth.text("idle-words").isBlank() || seconds(booth.text("idle-words")) > before,
          booth.text("idle-words"));
    }
  }
}
