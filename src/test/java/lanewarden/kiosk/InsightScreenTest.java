package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import lanewarden.journal.Check;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A check and the charts looked into at the event, and in its ledger alone: the same is told. */
class InsightScreenTest {
  private static final String DAMAGED = "$PLWT,00003,0304.1,F,006578,A*00\\r\\n";
  private static final String SPOILT =
      "DROP TRIGGER entry_is_never_changed;UPDATE entry SET jws = replace(jws, 'a', 'b')"
          + " WHERE seq = (SELECT max(seq) FROM entry)";

  @TempDir Path temp;

  /** A crossbow over its energy, its arrow weighed, with a line that was refused. */
  private static Check shootOver(Booth booth) throws Exception {
    booth.signIn();
    booth.scan("301");
    booth.emit(DAMAGED);
    booth.shoot("376.1 ft/s");
    booth.press(KeyCode.F10);
    booth.type("401");
    while (booth.shows("set-up-panel")) {
      booth.press(KeyCode.ENTER);
    }
    return booth.check();
  }

  private Path brought(Booth booth) throws Exception {
    Path folder = Files.createDirectory(temp.resolve("brought"));
    booth.close();
    return Files.copy(booth.folder.ledger(), folder.resolve("ledger.sqlite"));
  }

  private Doorstep records(KeyCode errand) throws Exception {
    Doorstep door = new Doorstep(temp.resolve("door"));
    door.press(KeyCode.INSERT);
    door.press(KeyCode.F8);
    door.press(errand);
    return door;
  }

  private static void answer(Doorstep door, String... answers) throws Exception {
    for (String answer : answers) {
      door.type(answer);
      door.press(KeyCode.ENTER);
    }
  }

  private static List<?> shots(Scene scene) throws Exception {
    return Booth.call(() -> List.copyOf(((ListView<?>) scene.lookup("#chart-shots")).getItems()));
  }

  @Test
  void dossierTellsAllThatTheTerminalTellsOfACheck() throws Exception {
    try (Booth booth = Booth.ofClauses(temp, 1280, 800)) {
      Check check = shootOver(booth);
      booth.press(KeyCode.F1);
      String told = Doorstep.words(booth.front.official(), "dossier");
      String rule = booth.station.view().check().orElseThrow().division().inWords();
      for (String line :
          List.of(
              "OVER",
              "Set-up as signed: Arrow 401 gr",
              "Lines refused while it ran: 1",
              DAMAGED,
              "torn: Its beginning may be missing",
              rule,
              "Phase when it was opened: before the event",
              "What follows: ",
              "Rule of XB \u00b7 Crossbow:",
              "Advice, no part of the verdict",
              "To come within: ",
              "This check counts.",
              "It is still at the line.",
              "Never go below the least arrow mass",
              check.shots().get(0).reading().instrument(),
              ", entry " + check.verdict().orElseThrow().sequence())) {
        assertTrue(told.contains(line), line + "\n" + told);
      }
      assertTimesHaveTheirZone(told);
      assertTrue(told.indexOf("OVER") < told.indexOf("376.1 ft/s"), told);
      assertTrue(told.indexOf("376.1 ft/s") < told.indexOf("Lines refused"), told);
    }
  }

  /** There is one at all, and behind each stands how far its clock is from UTC. */
  private static void assertTimesHaveTheirZone(String told) {
    assertTrue(told.matches("(?s).*\\d\\d:\\d\\d:\\d\\d UTC.*"), told);
    assertFalse(told.matches("(?s).*\\d\\d:\\d\\d:\\d\\d(?! UTC).*"), told);
  }

  @Test
  void judgeWithTheLedgersFileAloneSeesTheSameDossier() throws Exception {
    Path ledger;
    String told;
    String number;
    try (Booth booth = Booth.ofClauses(temp, 1280, 800)) {
      number = String.valueOf(shootOver(booth).number());
      booth.press(KeyCode.ENTER);
      booth.press(KeyCode.F1);
      booth.type("301");
      told = Doorstep.words(booth.front.official(), "dossier");
      booth.press(KeyCode.ESCAPE);
      ledger = brought(booth);
    }
    try (Doorstep door = records(KeyCode.HOME)) {
      answer(door, ledger.toString(), "301");
      String shown = door.words("dossier-panel");
      for (String line : told.split("\n")) {
        assertTrue(shown.contains(line), line + "\n" + shown);
      }
      assertFalse(shown.contains("NOT sound"), shown);
      assertTrue(shown.contains("at the bow about "), shown);
      assertTrue(shown.contains("Ended with its verdict."), shown);
      door.press(KeyCode.ESCAPE);
      assertEquals("Checks shown: 1", Doorstep.text(door.scene(), "errand-words"));

      door.press(KeyCode.HOME);
      answer(door, number);
      assertEquals(shown, door.words("dossier-panel"));
      door.press(KeyCode.ESCAPE);
      door.press(KeyCode.HOME);
      answer(door, "nobody");
      assertTrue(door.words("check-panel").contains("NO-SUCH-CHECK"), door.words("check-panel"));
    }
    RecordsProofTest.spoil(ledger, SPOILT);
    try (Doorstep door = records(KeyCode.HOME)) {
      answer(door, ledger.toString(), number);
      String shown = door.words("dossier-panel");
      assertTrue(shown.contains("The ledger is NOT sound, so nothing of this is proved"), shown);
      assertTrue(shown.contains("376.1 ft/s"), shown);
    }
  }

  @Test
  void atTheEventItsOwnLedgerIsMeantAndAnyOtherMayBeNamed() throws Exception {
    try (Booth booth = Booth.ofClauses(temp, 1280, 800)) {
      shootOver(booth);
      booth.press(KeyCode.F8);
      booth.press(KeyCode.HOME);
      booth.focusField("form-which");
      RecordsScreenTest.answer(booth, "301");
      assertTrue(booth.shows("dossier-panel"), booth.text("form-trouble"));
      assertTrue(Doorstep.words(booth.front.official(), "dossier-panel").contains(DAMAGED));
      assertTrue(isOnTheScreen(booth, "#dossier-panel .key-button"), "the way back");
      booth.press(KeyCode.ESCAPE);
      booth.press(KeyCode.HOME);
      booth.focusField("form-ledger");
      booth.type(BoothEvent.PLAIN.ledger().toString());
      booth.focusField("form-which");
      RecordsScreenTest.answer(booth, "301");
      assertTrue(booth.text("form-trouble").contains("NO-SUCH-CHECK"), booth.text("form-trouble"));
    }
  }

  private static boolean isOnTheScreen(Booth booth, String selector) throws Exception {
    return Booth.call(
        () -> {
          Scene scene = booth.front.official();
          scene.getRoot().applyCss();
          scene.getRoot().layout();
          Node node = scene.getRoot().lookup(selector);
          return node.localToScene(node.getLayoutBounds()).getMaxY() <= scene.getHeight();
        });
  }

  @Test
  void actsOfTheRecordsAreAllOnTheScreen() throws Exception {
    try (Booth booth = Booth.ofClauses(temp, 1280, 800)) {
      booth.signIn();
      booth.scan("301");
      booth.press(KeyCode.F8);
      assertTrue(isOnTheScreen(booth, "#errand-home"), "look into a check");
      assertTrue(isOnTheScreen(booth, "#errand-delete"), "charts");
    }
  }

  @Test
  void chartsOfALedgerAloneAreThoseOfItsEventWithEveryShot() throws Exception {
    Path ledger;
    List<?> drawn;
    String words;
    try (Booth booth =
        Booth.on(ProvingScreenTest.verifying(temp.resolve("made")), temp, 1280, 800)) {
      booth.signIn();
      booth.press(KeyCode.END);
      booth.shoot("296.0 ft/s", "296.9 ft/s");
      booth.press(KeyCode.ESCAPE);
      booth.press(KeyCode.DELETE);
      drawn = shots(booth.front.official());
      words = booth.text("chart-single-words");
      assertEquals(2, drawn.size());
      assertTrue(drawn.get(0).toString().contains("296.9 ft/s against 296.4 ft/s (simulator)"));
      drawn.forEach(shot -> assertTimesHaveTheirZone(shot.toString()));
      assertTrue(drawn.get(0).toString().contains("Shot 2: +0.50\u00a0ft/s\naverage "));
      ledger = brought(booth);
    }
    try (Doorstep door = records(KeyCode.DELETE)) {
      answer(door, ledger.toString());
      assertEquals(drawn, shots(door.scene()));
      assertEquals(words, Doorstep.text(door.scene(), "chart-single-words"));
      door.press(KeyCode.ESCAPE);
      assertEquals("Shots compared: 2", Doorstep.text(door.scene(), "errand-words"));

      door.press(KeyCode.DELETE);
      door.focus("form-ledger");
      answerAnew(door, BoothEvent.PLAIN.ledger());
      assertTrue(
          Doorstep.text(door.scene(), "chart-note").endsWith("Verifications in this ledger: 0."),
          door.words("chart-panel"));
    }
    RecordsProofTest.spoil(ledger, SPOILT);
    try (Doorstep door = records(KeyCode.DELETE)) {
      answer(door, ledger.toString());
      assertTrue(
          Doorstep.text(door.scene(), "chart-note").startsWith("The ledger is NOT sound"),
          door.words("chart-panel"));
    }
  }

  private static void answerAnew(Doorstep door, Path ledger) throws Exception {
    Scene scene = door.scene();
    Booth.call(
        () -> {
          ((TextInputControl) scene.lookup("#form-ledger").lookup(".text-input"))
              .setText(ledger.toString());
          return true;
        });
    door.press(KeyCode.ENTER);
  }

  @Test
  void everyWordOfADossierIsWhole() throws Exception {
    try (Booth booth = Booth.ofClauses(temp, 1280, 800)) {
      shootOver(booth);
      booth.press(KeyCode.F1);
      assertEquals(
          List.of(),
          Booth.call(
              () -> {
                booth.front.official().getRoot().applyCss();
                booth.front.official().getRoot().layout();
                return booth.front.official().lookup("#dossier").lookupAll(".label").stream()
                    .map(Labeled.class::cast)
                    .filter(one -> one.getHeight() < Math.floor(one.prefHeight(one.getWidth())))
                    .map(Labeled::getText)
                    .toList();
              }));
    }
  }
}
