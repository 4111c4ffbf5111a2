package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.geometry.NodeOrientation;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import lanewarden.journal.Outcome;
import lanewarden.kiosk.look.Appearance;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Theme;
import lanewarden.station.LedgerInspection;
import lanewarden.station.ScreenChoices;
import lanewarden.station.Station;
import lanewarden.station.UserFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The language of the screens, changed at the start and while a competitor is being checked. */
class LanguageScreenTest {
  @TempDir Path temp;

  private static final KeyCode GERMAN = KeyCode.F2;
  private static final KeyCode HEBREW = KeyCode.F7;

  private Doorstep onDuty() throws Exception {
    return onDuty(BoothEvent.copied(BoothEvent.PLAIN.path(), temp.resolve("event")));
  }

  private Doorstep onDuty(Path event) throws Exception {
    Doorstep door = new Doorstep(temp, 1280, 800, Optional.of(event));
    door.press(KeyCode.DOWN);
    door.type(Booth.PASSPHRASE);
    door.press(KeyCode.ENTER);
    assertEquals(Optional.of(Booth.OFFICIAL), station(door).view().official());
    return door;
  }

  private static Station station(Doorstep door) {
    return door.line.station().orElseThrow();
  }

  @Test
  void theFaultsOfARuleBookAreToldInTheLanguageOfTheScreens() throws Exception {
    try (Booth booth = Booth.in(Language.GERMAN, BoothEvent.PLAIN, temp, 1280, 800)) {
      booth.press(KeyCode.F10);
      booth.focusField("field-limit");
      booth.type("3");
      assertEquals(
          "Erwartet: eine Geschwindigkeit wie \"300 ft/s\"; gefunden: \"3\". Abhilfe: die Einheit"
              + " dazuschreiben, eine von ft/s, m/s.",
          booth.text("fault-limit"));
      booth.focusField("field-counted");
      booth.type("9");
      assertEquals(
          "Erwartet: mindestens 9, so viele wie gezählt werden; gefunden: 5. Abhilfe: mehr Schüsse"
              + " erlauben oder weniger Messwerte zählen.",
          booth.text("fault-shots"));
    }
  }

  @Test
  void theStateOfTheLinkAndTheFaultsOfAFormAreToldInTheLanguageOfTheScreens() throws Exception {
    try (Booth booth = Booth.in(Language.GERMAN, BoothEvent.PLAIN, temp, 1280, 800)) {
      booth.signIn();
      booth.instrument.unplug();
      booth.settle();
      assertEquals(
          "Der Anschluss des Messgeräts ist weg: abgezogen oder ausgeschaltet. Wieder einstecken;"
              + " die Verbindung kommt von selbst zurück.",
          booth.text("link-remedy"));
    }
    try (Doorstep door = new Doorstep(temp.resolve("door"), 1280, 800, Optional.empty())) {
      Booth.call(
          () -> {
            door.look.language().set(Language.GERMAN);
            return true;
          });
      door.press(KeyCode.F4);
      door.press(KeyCode.ENTER);
      assertTrue(
          door.text("fault-folder").startsWith("Hier muss eine Datei oder ein Ordner"),
          door.text("fault-folder"));
    }
  }

  private static void speak(Doorstep door, KeyCode language) throws Exception {
    door.press(KeyCode.INSERT);
    door.press(KeyCode.F4);
    door.press(language);
  }

  private static void shoot(Doorstep door, String speed) throws Exception {
    door.press(KeyCode.F2);
    door.type(speed);
    door.press(KeyCode.ENTER);
  }

  @Test
  void theLanguageChangesInTheMiddleOfACheckAndTheLedgerDoesNotNotice() throws Exception {
    Path event = BoothEvent.copied(BoothEvent.PLAIN.path(), temp.resolve("event"));
    BoothEvent.typed(event);
    try (Doorstep door = onDuty(event)) {
      door.type("101");
      door.press(KeyCode.ENTER);
      assertEquals("SHOOTING", door.text("outcome"));
      shoot(door, "280.4");
      speak(door, GERMAN);
      assertEquals("LÄUFT", door.text("outcome"));
      assertEquals("280,4", door.text("reading"));
      shoot(door, "281,6");
      assertEquals("281,6", door.text("reading"));
      speak(door, HEBREW);
      shoot(door, "281.3");
      assertEquals(
          Optional.of(Outcome.WITHIN), station(door).view().check().orElseThrow().outcome());
      assertEquals("תקין", door.text("outcome"));
    }
    LedgerInspection ledger = LedgerInspection.of(temp.resolve("event"), List.of());
    assertTrue(ledger.sound(), ledger.toString());
  }

  @Test
  void aLanguageFromRightToLeftTurnsTheScreensRoundAndAnotherTurnsThemBack() throws Exception {
    try (Doorstep door = onDuty()) {
      assertEquals(NodeOrientation.LEFT_TO_RIGHT, direction(door.scene()));
      speak(door, HEBREW);
      assertEquals(NodeOrientation.RIGHT_TO_LEFT, direction(door.scene()));
      Scene board = Booth.call(() -> door.entrance.windows().orElseThrow().front().board());
      assertEquals(NodeOrientation.RIGHT_TO_LEFT, direction(board));
      assertEquals(Set.of(NodeOrientation.LEFT_TO_RIGHT), directionsOfMarks(door.scene()));
      speak(door, KeyCode.F1);
      assertEquals(NodeOrientation.LEFT_TO_RIGHT, direction(door.scene()));
      assertEquals(Optional.of(Booth.OFFICIAL), station(door).view().official());
    }
  }

  @Test
  void aTroubleIsToldInTheLanguageOfTheScreensWithItsOwnSentencesBelow() throws Exception {
    try (Doorstep door = onDuty()) {
      speak(door, GERMAN);
      call(door, "10");
      String german = door.text("notice");
      assertTrue(german.startsWith("Das passt auf mehrere Teilnehmer"), german);
      assertTrue(german.contains("Type the bib, or more of the name."), german);
      assertTrue(german.contains("Code SEVERAL-COMPETITORS"), german);
      speak(door, HEBREW);
      call(door, "10");
      assertTrue(door.text("notice").startsWith("זה מתאים לכמה מתחרים"));
      assertEquals(Set.of(NodeOrientation.LEFT_TO_RIGHT), directions(door.scene(), ".particulars"));
      speak(door, KeyCode.F1);
      call(door, "10");
      String english = door.text("notice");
      assertTrue(english.startsWith("Nobody was called."), english);
      assertEquals(1, english.split("Type the bib", -1).length - 1, english);
    }
  }

  @Test
  void anInstrumentThatIsNotThereIsToldInTheLanguageWithItsPortBelow() throws Exception {
    Path event = BoothEvent.copied(BoothEvent.PLAIN.path(), temp.resolve("event"));
    BoothEvent.onPort(event, "/dev/none-of-these");
    try (Doorstep door = onDuty(event)) {
      speak(door, GERMAN);
      for (int i = 0; i < 50 && !door.text("link-remedy").contains("Anschluss"); i++) {
        Thread.sleep(100);
        door.settle();
      }
      assertTrue(door.text("link-remedy").startsWith("Den Anschluss des Messgeräts gibt es nicht"));
      assertTrue(door.text("link-particulars").contains("/dev/none-of-these"));
    }
  }

  private static void call(Doorstep door, String bib) throws Exception {
    door.type(bib);
    door.press(KeyCode.ENTER);
  }

  /** A tick that is mirrored is another shape. */
  private static Set<NodeOrientation> directionsOfMarks(Scene scene) throws Exception {
    return directions(scene, ".mark");
  }

  private static Set<NodeOrientation> directions(Scene scene, String which) throws Exception {
    return Booth.call(
        () ->
            scene.getRoot().lookupAll(which).stream()
                .map(Node::getEffectiveNodeOrientation)
                .collect(Collectors.toSet()));
  }

  private static NodeOrientation direction(Scene scene) throws Exception {
    return Booth.call(scene::getEffectiveNodeOrientation);
  }

  @Test
  void theStartScreenSpeaksTheLanguageThatTheEventWasLeftIn() throws Exception {
    try (Doorstep door = onDuty()) {
      speak(door, GERMAN);
      Booth.call(
          () -> {
            door.entrance.windows().orElseThrow().leave();
            return true;
          });
      door.settle();
      assertEquals("Sprache", door.text("language"));
    }
  }

  @Test
  void whatWasChosenIsThereAtTheNextStart() throws Exception {
    ScreenChoices choices = new UserFolder(temp.resolve("user")).screenChoices();
    assertEquals(Language.GERMAN, look(choices, Locale.GERMANY).language().get());
    assertEquals(Language.ENGLISH, look(choices, Locale.JAPAN).language().get());
    choices.write(new Appearance(Theme.SUNLIGHT, Language.HEBREW).chosen());
    Appearance look = look(choices, Locale.GERMANY);
    assertEquals(Language.HEBREW, look.language().get());
    assertEquals(Theme.SUNLIGHT, look.theme().get());
  }

  @Test
  void aChoiceThatCannotBeReadKeepsNobodyFromStarting() throws Exception {
    Path file = Files.createDirectories(temp.resolve("user")).resolve("screens.properties");
    ScreenChoices choices = new UserFolder(temp.resolve("user")).screenChoices();
    Files.write(file, new byte[] {(byte) 0xff, 0});
    assertEquals(Theme.DAY, look(choices, Locale.ENGLISH).theme().get());
    Files.writeString(file, "theme = plaid\nlanguage = \\uZZZZ\n");
    assertEquals(Theme.DAY, look(choices, Locale.ENGLISH).theme().get());
    choices.write(new Appearance(Theme.NIGHT, Language.FRENCH).chosen());
    assertEquals(Theme.NIGHT, look(choices, Locale.ENGLISH).theme().get());
  }

  private static Appearance look(ScreenChoices choices, Locale system) {
    return Appearance.of(choices.read(), system);
  }
}
