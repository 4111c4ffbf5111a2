package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.TextSize;
import lanewarden.station.EventFolder;
import lanewarden.station.SelfCheck;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An event is looked over from the start screen, also one that does not open, by keys alone. */
class CheckUpCornerTest {
  @TempDir Path temp;
  private Path event;
  private Doorstep door;

  @BeforeEach
  void open() throws Exception {
    event = BoothEvent.copied(BoothEvent.PLAIN.path(), temp.resolve("event")).toAbsolutePath();
    door = new Doorstep(temp);
  }

  @AfterEach
  void close() throws Exception {
    door.close();
  }

  private boolean shows(String id) throws Exception {
    Scene scene = door.scene();
    return Booth.call(() -> scene.lookup("#" + id) != null && Booth.seen(scene.lookup("#" + id)));
  }

  private void ask() throws Exception {
    door.press(KeyCode.INSERT);
    door.press(KeyCode.END);
  }

  private void look(String folder) throws Exception {
    ask();
    door.focus("form-folder");
    door.type(folder);
    door.press(KeyCode.ENTER);
  }

  private List<SelfCheck.Point> points() throws Exception {
    Scene scene = door.scene();
    return Booth.call(
        () ->
            ((ListView<?>) scene.lookup("#checkup-points"))
                .getItems().stream().map(SelfCheck.Point.class::cast).toList());
  }

  private SelfCheck.Point worst() throws Exception {
    SelfCheck.Point worst = points().get(0);
    assertEquals(SelfCheck.State.WRONG, worst.state(), worst.toString());
    assertFalse(worst.remedy().isBlank(), worst.toString());
    return worst;
  }

  private void doesNotOpen() throws Exception {
    door.chosen.add(event);
    door.press(KeyCode.F3);
    assertTrue(door.entrance.windows().isEmpty(), "the event opened");
    assertTrue(shows("start"));
  }

  /** The bundle is told before it is written. */
  private void packs() throws Exception {
    Path zip = event.resolve("support.zip");
    door.press(KeyCode.F8);
    assertTrue(shows("bundle-panel"));
    assertFalse(Files.exists(zip), "told, and not written yet");
    door.press(KeyCode.ENTER);
    assertFalse(shows("bundle-panel"), door.text("form-trouble"));
    assertTrue(Files.size(zip) > 0);
    assertEquals("Written: " + zip, door.text("checkup-words"));
  }

  @Test
  void soundEventIsLookedOverWithoutBeingOpened() throws Exception {
    look(event.toString());
    assertTrue(shows("checkup"));
    assertEquals(SelfCheck.Subject.values().length, points().size());
    assertEquals("Nothing is wrong; to look at: 3", door.text("checkup-words"));
    assertTrue(door.words("checkup").contains(event.toString()), door.words("checkup"));
    assertTrue(door.line.station().isEmpty());
    door.press(KeyCode.ESCAPE);
    assertTrue(shows("start"));
  }

  @Test
  void eventWithBrokenSettingsIsLookedOverAndPacked() throws Exception {
    Path settings = event.resolve("station.toml");
    String before = Files.readString(settings);
    Files.writeString(settings, "[instrument\n");
    doesNotOpen();
    look(event.toString());
    assertTrue((worst().found() + worst().details()).contains("station.toml"), worst().toString());
    packs();

    Files.writeString(settings, before);
    door.press(KeyCode.F2);
    assertEquals("Nothing is wrong; to look at: 3", door.text("checkup-words"));
  }

  @Test
  void eventWithACutLedgerIsLookedOverAndPacked() throws Exception {
    Path ledger = new EventFolder(event).ledger();
    try (RandomAccessFile file = new RandomAccessFile(ledger.toFile(), "rw")) {
      file.setLength(file.length() / 2);
    }
    doesNotOpen();
    look(event.toString());
    assertEquals(SelfCheck.Subject.LEDGER, worst().subject());
    packs();
  }

  @Test
  void eventWithAnUnsoundLedgerIsLookedOverAndPacked() throws Exception {
    RecordsProofTest.spoil(
        new EventFolder(event).ledger(),
        "DROP TRIGGER entry_is_never_changed;UPDATE entry SET jws = replace(jws, 'a', 'b')"
            + " WHERE seq = 3");
    doesNotOpen();
    look(event.toString());
    assertEquals(SelfCheck.Subject.LEDGER, worst().subject());
    packs();
  }

  @Test
  void whatIsNoFolderIsRefusedAndNothingIsShown() throws Exception {
    look(temp.resolve("nowhere").toString());
    assertTrue(door.words("checked-event").contains("nowhere"), door.words("checked-event"));
    door.press(KeyCode.ESCAPE);
    look(event.resolve("station.toml").toString());
    assertTrue(door.words("checked-event").contains("station.toml"), door.words("checked-event"));
    assertFalse(shows("checkup"));
  }

  @Test
  void eventPickedAtTheStartIsMeantElseTheOneLookedOverLast() throws Exception {
    ask();
    assertEquals("", door.text("form-folder"));
    door.chosen.add(event);
    door.touch("choose-folder");
    door.press(KeyCode.ENTER);
    assertTrue(shows("checkup"));
    ask();
    assertEquals(event.toString(), door.text("form-folder"));
    door.press(KeyCode.ESCAPE);
    door.press(KeyCode.ESCAPE);

    Path other = BoothEvent.copied(event, temp.resolve("other")).toAbsolutePath();
    door.user.lastEvents().add(other);
    look(event.toString());
    door.press(KeyCode.ESCAPE);
    ask();
    assertEquals(other.toString(), door.text("form-folder"));
    door.press(KeyCode.ENTER);
    assertTrue(door.words("checkup").contains(other.toString()), door.words("checkup"));
  }

  @Test
  void nothingIsLostWithTextTwiceAsLargeInTheLongestLanguage() throws Exception {
    Booth.call(
        () -> {
          door.look.language().set(Language.GERMAN);
          door.look.textSize().set(TextSize.LARGEST);
          return true;
        });
    door.settle();
    ask();
    assertEquals(List.of(), LargeTextTest.lost(door.scene()), "which event");
    door.type(event.toString());
    door.press(KeyCode.ENTER);
    assertTrue(shows("checkup"));
    assertEquals(List.of(), LargeTextTest.lost(door.scene()), "looked over");
  }
}
