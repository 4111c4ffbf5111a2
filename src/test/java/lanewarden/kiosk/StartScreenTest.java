package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.geometry.NodeOrientation;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import lanewarden.journal.Outcome;
import lanewarden.kiosk.look.Language;
import lanewarden.station.DemoEvent;
import lanewarden.station.LedgerInspection;
import lanewarden.station.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From the start screen to a line, by keys alone. */
class StartScreenTest {
  @TempDir Path temp;

  private static final String LIST =
      "Start number;Archer;Bow class;Arrow weight\n"
          + "11;Ines Wetherholt;OC;352 gr\n21;Mbali Thornquist;TR;\n";

  /** Fills in the whole form with readings typed, up to the key that makes the event. */
  private void fillIn(Doorstep door, Path event) throws Exception {
    door.press(KeyCode.F4);
    door.chosen.add(event);
    door.press(KeyCode.F4);
    door.focus("field-station");
    door.type("North gate");
    door.press(KeyCode.ENTER);
    door.chosen.add(Files.writeString(temp.resolve("list.csv"), LIST));
    door.press(KeyCode.F4);
    door.press(KeyCode.ENTER);
    assertEquals("New event: the instrument (3 of 4)", door.text("make-title"));
    door.press(KeyCode.RIGHT);
    assertTrue(
        door.text("kind-words").startsWith("Somebody reads the display"), door.text("kind-words"));
    door.press(KeyCode.ENTER);
    door.person(0, "Orla Finch", "a long oak");
    door.person(1, "Wanda Okafor-Lind", "a long elm");
  }

  @Test
  void aStrangerGetsFromTheStartToTheFirstSignedVerdict() throws Exception {
    Path event = temp.resolve("my event");
    try (Doorstep door = new Doorstep(temp)) {
      fillIn(door, event);
      door.press(KeyCode.ENTER);
      assertEquals(
          LedgerInspection.of(event, List.of()).organizer().orElseThrow(), door.text("thumbprint"));
      assertEquals("", door.text("field-person-0-passphrase"));
      door.press(KeyCode.ENTER);
      door.press(KeyCode.DOWN);
      door.type("a long elm");
      door.press(KeyCode.ENTER);
      assertEquals(Optional.of("Wanda Okafor-Lind"), station(door).view().official());
      door.type("21");
      door.press(KeyCode.ENTER);
      for (String speed : List.of("62.1", "62.4", "62.2")) {
        door.press(KeyCode.F2);
        door.type(speed);
        door.press(KeyCode.ENTER);
      }
      assertEquals(
          Optional.of(Outcome.WITHIN), station(door).view().check().orElseThrow().outcome());
      assertEquals("", door.text("training"), "a line with typed readings is a real one");
    }
    LedgerInspection ledger = LedgerInspection.of(event, List.of());
    assertTrue(ledger.sound(), ledger.toString());
  }

  private static Station station(Doorstep door) {
    return door.line.station().orElseThrow();
  }

  @Test
  void theListOfTheEventsOpenedLastLeadsBackWithOneKey() throws Exception {
    Path event = BoothEvent.copied(BoothEvent.PLAIN.path(), temp.resolve("event"));
    try (Doorstep door = new Doorstep(temp, 1280, 800, Optional.of(event))) {
      assertEquals("Hollow Oak Open", station(door).view().event());
      door.press(KeyCode.F12);
      assertTrue(door.line.station().isEmpty());
      assertEquals(List.of("Lanewarden"), door.titles());
      door.press(KeyCode.ENTER);
      assertEquals("Hollow Oak Open", station(door).view().event());
      door.press(KeyCode.F12);
      assertFalse(door.closed);
      door.press(KeyCode.F12);
      assertTrue(door.closed);
    }
  }

  @Test
  void aFolderThatIsNoEventIsToldOnTheStartScreen() throws Exception {
    try (Doorstep door = new Doorstep(temp, 1280, 800, Optional.of(temp))) {
      assertTrue(door.text("start-trouble").contains("NO-EVENT"), door.text("start-trouble"));
      assertTrue(door.line.station().isEmpty());
    }
  }

  @Test
  void aBrokenListIsToldAndKeepsNobodyFromAnything() throws Exception {
    Path list = Files.createDirectories(temp.resolve("user")).resolve("last-events.txt");
    Files.write(list, new byte[] {(byte) 0xff, 0});
    Path event = BoothEvent.copied(BoothEvent.PLAIN.path(), temp.resolve("event"));
    try (Doorstep door = new Doorstep(temp)) {
      assertTrue(door.text("start-trouble").contains("LAST-EVENTS"), door.text("start-trouble"));
      door.chosen.add(event);
      door.press(KeyCode.F3);
      assertEquals("Hollow Oak Open", station(door).view().event());
    }
    assertEquals(event + "\n", Files.readString(list));
  }

  @Test
  void practiceIsMarkedOnEveryScreenAndOnTheBoard() throws Exception {
    try (Doorstep door = new Doorstep(temp)) {
      assertEquals("", door.text("training"));
      door.press(KeyCode.F2);
      assertTrue(door.text("training").startsWith("TRAINING"), door.titles().toString());
      assertTrue(door.text("hint").contains(DemoEvent.PASSPHRASE), door.text("hint"));
      assertEquals(List.of("TRAINING: Lanewarden: check-in line"), door.titles());
      for (KeyCode way : List.of(KeyCode.F1, KeyCode.ESCAPE, KeyCode.F3, KeyCode.ESCAPE)) {
        door.press(way);
        assertTrue(door.text("training").startsWith("TRAINING"), way.toString());
      }
      Scene board = Booth.call(() -> door.entrance.windows().orElseThrow().front().board());
      assertTrue(Doorstep.text(board, "training").startsWith("TRAINING"));
      door.press(KeyCode.F12);
      assertEquals("", door.text("training"));
    }
  }

  @Test
  void everyFaultStandsAtItsFieldAndNothingIsMade() throws Exception {
    Path taken = Files.createDirectory(temp.resolve("taken"));
    Files.writeString(taken.resolve("mine.txt"), "mine");
    try (Doorstep door = new Doorstep(temp)) {
      door.press(KeyCode.F4);
      door.chosen.add(taken);
      door.press(KeyCode.F4);
      door.press(KeyCode.ENTER);
      assertTrue(door.text("fault-folder").contains("never made over it"));
      assertTrue(door.text("fault-station").contains("needs a name"));
      assertTrue(door.text("make-title").contains("1 of 4"));
      door.chosen.add(temp.resolve("free"));
      door.press(KeyCode.F4);
      door.press(KeyCode.ENTER);
      door.type("North gate");
      assertEquals("", door.text("fault-folder") + door.text("fault-station"));
      door.press(KeyCode.ENTER);
      door.chosen.add(
          Files.writeString(temp.resolve("list.csv"), "No;Who;Class\n11;Ann;OC\n12;Ben;XX\n"));
      door.press(KeyCode.F4);
      door.press(KeyCode.ENTER);
      assertTrue(door.text("fault-column-name").contains("Choose the column"));
      door.press(KeyCode.RIGHT, 2);
      assertTrue(door.label("field-column-name").contains("Who"));
      assertEquals("", door.text("fault-column-name"));
      assertTrue(door.text("fault-roster").contains("1 line is wrong"), door.text("fault-roster"));
      assertTrue(door.lines("roster-faults").get(0).startsWith("Line 3: expected a division"));
      Files.writeString(temp.resolve("list.csv"), "No;Who;Class\n11;Ann;OC\n12;Ben;TR\n");
      door.press(KeyCode.F5);
      assertEquals("", door.text("fault-roster"));
      door.press(KeyCode.ENTER);
      door.press(KeyCode.ENTER);
      assertTrue(
          door.text("fault-port").contains("where the instrument is"), door.text("fault-port"));
      door.pick("field-kind", "make.kind.simulator");
      door.press(KeyCode.ENTER);
      door.press(KeyCode.ENTER);
      assertTrue(door.text("fault-person-1").contains("nobody could sign"));
    }
    assertEquals(List.of(taken.resolve("mine.txt")), files(taken));
    assertFalse(Files.exists(temp.resolve("free")));
  }

  private static List<Path> files(Path folder) throws Exception {
    try (var files = Files.list(folder)) {
      return files.toList();
    }
  }

  @Test
  void whatWasTypedIsStillThereAfterAWayBackToTheStart() throws Exception {
    try (Doorstep door = new Doorstep(temp)) {
      door.press(KeyCode.F4);
      door.focus("field-station");
      door.type("North gate");
      door.press(KeyCode.ESCAPE);
      door.press(KeyCode.F4);
      assertEquals("North gate", door.label("field-station"));
    }
  }

  @Test
  void aRuleBookIsBegunWithTheExampleAndNeverOverAnother() throws Exception {
    Path rules = temp.resolve("my-rules.toml");
    try (Doorstep door = new Doorstep(temp)) {
      door.chosen.add(rules);
      door.press(KeyCode.F6);
      assertEquals(Files.readString(Path.of("config/rule-book.toml")), Files.readString(rules));
      assertEquals("", door.text("start-version"), "the studio has the window");
      door.press(KeyCode.ESCAPE);
      assertEquals("Lanewarden test", door.text("start-version"));
      door.chosen.add(rules);
      door.press(KeyCode.F6);
      assertTrue(door.text("start-trouble").contains("FILE-EXISTS"), door.text("start-trouble"));
    }
  }

  @Test
  void thePortOfAnEventIsChangedFromTheStart() throws Exception {
    Path event = BoothEvent.copied(BoothEvent.PLAIN.path(), temp.resolve("event"));
    Path settings = event.resolve("station.toml");
    try (Doorstep door = new Doorstep(temp)) {
      door.user.lastEvents().add(event);
      door.press(KeyCode.F4);
      door.press(KeyCode.ESCAPE);
      door.press(KeyCode.F8);
      assertTrue(door.text("start-trouble").contains("from the simulator"));
      BoothEvent.onPort(event, "COM3");
      String before = Files.readString(settings);
      door.press(KeyCode.F8);
      assertEquals("", door.text("start-trouble"));
      assertTrue(door.words("port-panel").contains("The settings name COM3."));
      door.type("/dev/serial/by-id/gate");
      door.press(KeyCode.ENTER);
      assertEquals("", door.words("port-panel"));
      assertEquals(before.replace("COM3", "/dev/serial/by-id/gate"), Files.readString(settings));
    }
  }

  @Test
  void aPortHoldsForOneOpeningAloneAndTheSettingsStay() throws Exception {
    Path event = BoothEvent.copied(BoothEvent.PLAIN.path(), temp.resolve("event"));
    String settings = Files.readString(event.resolve("station.toml"));
    try (Doorstep door = new Doorstep(temp)) {
      openedLast(door, event);
      door.press(KeyCode.F11);
      door.focus("form-port");
      door.type(temp.resolve("gate").toString());
      door.press(KeyCode.ENTER);
      assertFalse(station(door).view().training(), "an instrument measures, not the simulator");
      assertEquals("Hollow Oak Open", station(door).view().event());
      assertEquals(settings, Files.readString(event.resolve("station.toml")));
      door.press(KeyCode.F12);
      door.press(KeyCode.ENTER);
      assertTrue(station(door).view().training(), "the next opening is as the settings say");
    }
  }

  private static void openedLast(Doorstep door, Path event) throws Exception {
    door.user.lastEvents().add(event);
    door.press(KeyCode.F4);
    door.press(KeyCode.ESCAPE);
  }

  @Test
  void anyEventCanBeOpenedOtherwiseByItsFolderTypedOrChosen() throws Exception {
    Path event = BoothEvent.copied(BoothEvent.PLAIN.path(), temp.resolve("event"));
    try (Doorstep door = new Doorstep(temp)) {
      door.press(KeyCode.F11);
      door.focus("form-folder");
      door.type(temp.resolve("nowhere").toString());
      door.press(KeyCode.ENTER);
      assertTrue(door.words("otherwise-panel").contains("nowhere"), door.words("otherwise-panel"));
      assertTrue(door.line.station().isEmpty());

      door.chosen.add(event);
      Scene scene = door.scene();
      Booth.call(
          () -> {
            ((Button) scene.lookup("#choose-folder")).fire();
            return true;
          });
      assertEquals(event.toString(), door.text("form-folder"));
      door.focus("form-port");
      door.type(temp.resolve("gate").toString());
      door.press(KeyCode.ENTER);
      assertEquals("Hollow Oak Open", station(door).view().event());
      assertFalse(station(door).view().training(), "an instrument measures, not the simulator");
      assertEquals(event, door.user.lastEvents().read().events().get(0).folder());
    }
  }

  @Test
  void archersOfATrainingShootAtThePaceThatIsSaid() throws Exception {
    Path event = BoothEvent.copied(BoothEvent.PLAIN.path(), temp.resolve("event"));
    try (Doorstep door = new Doorstep(temp)) {
      slowArcher(event);
      openedLast(door, event);
      door.press(KeyCode.F11);
      door.focus("form-pace");
      door.type("0");
      door.press(KeyCode.ENTER);
      station(door).signIn(Booth.OFFICIAL, Booth.PASSPHRASE.toCharArray());
      assertShoots(door);
    }
  }

  /** An archer who at the usual pace takes ten minutes for the first arrow, five to practise. */
  private static void slowArcher(Path event) throws Exception {
    Files.writeString(
        event.resolve("rehearsal.capture"),
        "@ 103\n600000 $PLWT,00329,0309.4,F,006464,A*1C\\r\\n\n");
  }

  private static void assertShoots(Doorstep door) throws Exception {
    station(door).call("103");
    for (int i = 0;
        i < 600 && station(door).view().check().orElseThrow().check().shots().isEmpty();
        i++) {
      Thread.sleep(100);
    }
    assertEquals(1, station(door).view().check().orElseThrow().check().shots().size());
  }

  @Test
  void whoPractisesSaysThePaceTooAlsoWhereNoEventWasOpenedYet() throws Exception {
    try (Doorstep door = new Doorstep(temp)) {
      slowArcher(DemoEvent.in(door.user.practice(), door.line.here()).folder().path());
      door.press(KeyCode.F11);
      assertFalse(door.words("otherwise-panel").contains("2"), door.words("otherwise-panel"));
      door.focus("form-pace");
      door.type("0");
      door.press(KeyCode.ENTER);
      assertTrue(door.text("hint").contains(DemoEvent.PASSPHRASE), door.text("hint"));
      station(door).signIn(DemoEvent.OFFICIAL, DemoEvent.PASSPHRASE.toCharArray());
      assertShoots(door);
    }
  }

  @Test
  void inHebrewAPortReadsFromLeftToRightAllTheSame() throws Exception {
    try (Doorstep door = new Doorstep(temp)) {
      Booth.call(
          () -> {
            door.look.language().set(Language.HEBREW);
            return true;
          });
      door.press(KeyCode.F11);
      Scene scene = door.scene();
      assertEquals(
          List.of(NodeOrientation.RIGHT_TO_LEFT, NodeOrientation.LEFT_TO_RIGHT),
          Booth.call(
              () ->
                  Stream.of("otherwise-panel", "form-port")
                      .map(id -> scene.lookup("#" + id).getEffectiveNodeOrientation())
                      .toList()));
    }
  }

  @Test
  void aPaceThatIsNoneOrServesNobodyIsRefusedAndWhatWasTypedStays() throws Exception {
    Path event = BoothEvent.copied(BoothEvent.PLAIN.path(), temp.resolve("event"));
    try (Doorstep door = new Doorstep(temp)) {
      openedLast(door, event);
      door.press(KeyCode.F11);
      door.focus("form-port");
      door.type("COM7");
      for (String wrong : List.of("fast", "-1", "NaN")) {
        door.focus("form-pace");
        door.type(wrong);
        door.press(KeyCode.ENTER);
        assertTrue(door.words("otherwise-panel").contains("PACE-REFUSED"), wrong);
        assertEquals(wrong, door.text("form-pace"));
      }
      door.focus("form-pace");
      door.type("0.5");
      door.press(KeyCode.ENTER);
      assertTrue(
          door.words("otherwise-panel").contains("PACE-UNUSED"), door.words("otherwise-panel"));
      assertEquals("COM7", door.text("form-port"));
      assertTrue(door.line.station().isEmpty());
    }
  }
}
