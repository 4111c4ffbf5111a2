package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import lanewarden.kiosk.look.Language;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The full screen is left by officials only, and never holds anybody while something is broken. */
class FullScreenTest {
  @TempDir Path temp;
  private Doorstep door;
  private Stage stage;

  @BeforeEach
  void open() throws Exception {
    Path event = BoothEvent.copied(BoothEvent.PLAIN.path(), temp.resolve("event"));
    door = new Doorstep(temp, 1280, 800, Optional.of(event));
    stage =
        (Stage)
            Booth.call(() -> door.entrance.windows().orElseThrow().front().official().getWindow());
  }

  @AfterEach
  void close() throws Exception {
    door.close();
  }

  private void fill() throws Exception {
    door.press(KeyCode.INSERT);
    door.press(KeyCode.F11);
    assertTrue(isFull());
  }

  private boolean isFull() throws Exception {
    return Booth.call(stage::isFullScreen);
  }

  /** What Alt and F4 send, and the cross in the corner of a window. */
  private void requestClose() throws Exception {
    Booth.call(
        () -> {
          WindowEvent.fireEvent(stage, new WindowEvent(stage, WindowEvent.WINDOW_CLOSE_REQUEST));
          return true;
        });
    door.settle();
  }

  private boolean asks() throws Exception {
    return !door.words("way-out-panel").isBlank();
  }

  /** The officials in order, then the organizer. */
  private void answer(int who, String passphrase) throws Exception {
    door.type(String.valueOf(who));
    door.press(KeyCode.ENTER);
    door.type(passphrase);
    door.press(KeyCode.ENTER);
  }

  @Test
  void escapeDoesNotLeaveIt() throws Exception {
    fill();
    door.press(KeyCode.ESCAPE);
    assertTrue(isFull());
    assertTrue(Booth.call(stage::isShowing));
  }

  @Test
  void closingTheWindowAsksForAPassphraseAndAWrongOneIsRefused() throws Exception {
    fill();
    requestClose();
    assertTrue(Booth.call(stage::isShowing));
    assertTrue(asks());
    answer(1, "a stranger guesses");
    assertTrue(Booth.call(stage::isShowing));
    assertTrue(door.words("way-out-panel").contains("KEY-PASSPHRASE"), door.words("way-out-panel"));
    door.type(Booth.PASSPHRASE);
    door.press(KeyCode.ENTER);
    assertFalse(Booth.call(stage::isShowing));
  }

  @Test
  void escapeFromTheQuestionStays() throws Exception {
    fill();
    requestClose();
    door.press(KeyCode.ESCAPE);
    assertFalse(asks());
    assertTrue(isFull());
    assertTrue(Booth.call(stage::isShowing));
  }

  @Test
  void leavingTheProgramAsksToo() throws Exception {
    fill();
    door.press(KeyCode.F12);
    assertTrue(Booth.call(stage::isShowing));
    assertTrue(asks());
  }

  @Test
  void officialLeavesItAndTheWindowIsAsBeforeWithNobodySignedIn() throws Exception {
    fill();
    door.press(KeyCode.INSERT);
    door.press(KeyCode.F11);
    answer(1, Booth.PASSPHRASE);
    assertFalse(isFull());
    assertTrue(Booth.call(stage::isShowing));
    assertEquals(Optional.empty(), door.line.station().orElseThrow().view().official());
    requestClose();
    assertFalse(Booth.call(stage::isShowing));
  }

  @Test
  void organizerLeavesIt() throws Exception {
    fill();
    requestClose();
    int organizer = door.line.station().orElseThrow().officials().size() + 1;
    answer(organizer, BoothEvent.ORGANIZER_PASSPHRASE);
    assertFalse(Booth.call(stage::isShowing));
  }

  @Test
  void organizerWhoKeepsTheKeyElsewhereSaysWhereAndNoOtherFileOpens() throws Exception {
    Path event = temp.resolve("event");
    Path stick = temp.resolve("stick.key");
    Files.move(event.resolve("keys").resolve("organizer.key"), stick);
    // What a stranger could bring along: a key of the stranger's own, and any file at all
    Path foreign = BoothEvent.station(temp.resolve("foreign"), "Station 9").organizerKey();
    Path letter = Files.writeString(temp.resolve("letter.txt"), "Dear all");
    fill();
    requestClose();
    int organizer = door.line.station().orElseThrow().officials().size() + 1;
    door.type(String.valueOf(organizer));
    refuses(letter, "KEY-DAMAGED");
    refuses(foreign, "NOT-ORGANIZER");
    refuses(temp.resolve("nowhere"), "ORGANIZER-KEY-MISSING");
    typePlace(stick);
    assertFalse(Booth.call(stage::isShowing));
  }

  private void refuses(Path place, String code) throws Exception {
    typePlace(place);
    assertTrue(Booth.call(stage::isShowing), place.toString());
    assertTrue(door.words("way-out-panel").contains(code), door.words("way-out-panel"));
  }

  private void typePlace(Path place) throws Exception {
    door.focus("form-organizer-key");
    door.type(place.toString());
    door.press(KeyCode.ENTER);
    door.type(BoothEvent.ORGANIZER_PASSPHRASE);
    door.press(KeyCode.ENTER);
  }

  @Test
  void officialLeavesThePlaceOfTheOrganizersKeyOpen() throws Exception {
    Files.delete(temp.resolve("event").resolve("keys").resolve("organizer.key"));
    fill();
    requestClose();
    answer(1, Booth.PASSPHRASE);
    assertFalse(Booth.call(stage::isShowing));
  }

  @Test
  void anotherLanguageDoesNotLeaveIt() throws Exception {
    fill();
    Booth.call(
        () -> {
          door.entrance.windows().orElseThrow().speak(Language.GERMAN);
          return true;
        });
    door.settle();
    assertTrue(isFull());
    requestClose();
    assertTrue(asks());
  }

  @Test
  void nobodyIsTrappedWhereTheKeysCannotBeRead() throws Exception {
    fill();
    Path keys = temp.resolve("event").resolve("keys");
    Files.move(keys, temp.resolve("gone"));
    Files.writeString(keys, "a file in place of the folder");
    requestClose();
    assertTrue(door.words("stuck-panel").contains("passphrase cannot be proved"));
    door.press(KeyCode.F12);
    assertFalse(Booth.call(stage::isShowing));
  }

  @Test
  void windowForAFaultHasAWayOutThatAsksAsWell() throws Exception {
    fill();
    Booth.call(
        () -> {
          door.entrance.windows().orElseThrow().front().fault(new IllegalStateException("odd"));
          return true;
        });
    assertTrue(door.words("fault-panel").contains("Leave full screen"));
    door.press(KeyCode.F12);
    answer(1, Booth.PASSPHRASE);
    assertFalse(isFull());
  }

  @Test
  void plainWindowClosesUnasked() throws Exception {
    requestClose();
    assertFalse(Booth.call(stage::isShowing));
    assertEquals(List.of("Lanewarden"), door.titles());
  }
}
