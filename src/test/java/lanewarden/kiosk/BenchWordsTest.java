package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.look.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Advice, prospects and a comparison of set-ups in the language of the screens; the same figures in
 * English are held in AdviceTest, ProspectTest and CompareCommandTest.
 */
class BenchWordsTest {
  private static final Path DEMO = Path.of("demo-data/practice.csv").toAbsolutePath();

  @TempDir Path temp;

  private static void fill(Booth booth, String field, String text) throws Exception {
    booth.focusField(field);
    booth.type(text);
  }

  @Test
  void inGermanTheLineSaysWhatWouldHelp() throws Exception {
    try (Booth booth = Booth.in(Language.GERMAN, BoothEvent.CLAUSES, temp, 1280, 800)) {
      booth.signIn();
      booth.scan("102");
      booth.press(KeyCode.F11);
      booth.shoot("306 ft/s", "307 ft/s", "306 ft/s");
      booth.press(KeyCode.F10);
      booth.type("372,5");
      while (booth.shows("set-up-panel")) {
        booth.press(KeyCode.ENTER);
      }
      assertEquals(
          "Um ins Limit zu kommen: ein 8 bis 16 gr schwererer Pfeil (381 bis 389 gr), oder 1,3 bis 3,1"
              + " lbf weniger Zuggewicht.",
          booth.text("advice"));
      assertTrue(booth.isWhole("advice-cautions"));
    }
  }

  @Test
  void inGermanItIsToldWhatAwaitsASetUp() throws Exception {
    try (Booth booth = Booth.in(Language.GERMAN, BoothEvent.CLAUSES, temp, 1280, 800)) {
      booth.press(KeyCode.INSERT);
      booth.press(KeyCode.F5);
      booth.type("350");
      fill(booth, "prospect-speed", "300,5");
      fill(booth, "prospect-draw", "60");
      booth.press(KeyCode.ENTER);
      List<String> told = words(booth, "prospects-told");
      assertEquals(
          "Ein Pfeil von 350 gr mit 300,5 ft/s (294,6 bis 306,4 ft/s mit 95 % Vertrauen).",
          told.get(0));
      assertEquals("Er trägt 70,2 ft·lbf (95,1 J) und 0,467 slug·ft/s.", told.get(1));
      assertTrue(
          told.contains("Unzulässig: Pfeilgewicht 350 gr, mindestens 6 gr/lb × 60 lbf = 360 gr."),
          told + "");
      assertTrue(
          told.contains(
              "Wird gemessen; bis 120,62 m/s besteht. Die erste Kontrolle wird bestanden: 99,8 von 100 Mal."),
          told + "");
      assertEquals(
          "Von der Kontrolle angenommen: Pfeile, die um 2 ft/s streuen, ein Messgerät, das um 0,5 ft/s je Messwert und um 1 ft/s für alle unsicher ist, 5 % ungültige Schüsse.",
          told.get(told.size() - 1));
      assertEquals(List.of(), english(told));
    }
  }

  @Test
  void inGermanItIsToldHowSetUpsCompare() throws Exception {
    try (Booth booth = Booth.in(Language.GERMAN, BoothEvent.PLAIN, temp, 1280, 800)) {
      booth.press(KeyCode.INSERT);
      booth.press(KeyCode.F9);
      booth.press(KeyCode.F3);
      booth.type(DEMO.toString());
      booth.press(KeyCode.ENTER);
      assertFalse(booth.shows("begin-panel"), booth.text("form-trouble"));
      List<String> told = words(booth, "setups-told");
      assertEquals("8 Ausrüstungen, 49 Schüsse, 1 weggelassen", told.get(0));
      assertEquals(
          List.of(
              "1=",
              "Club bow + short shaft",
              "350 gr",
              "6 von 7",
              "300,0",
              "1,3",
              "1,3",
              "69,93",
              "0,466"),
          words(booth, "setups-table").subList(9, 18));
      assertEquals(
          List.of("Club bow + short shaft", "OC", "309,0", "9,0", "7,7", "10,3", "darunter"),
          words(booth, "setups-margins").subList(7, 14));
      for (String words :
          List.of(
              "Weggelassen: Club bow + short shaft: 390 ft/s (Zeile 45): 390 ft/s ist unmöglich: 118 ft·lbf von verfügbaren 105 ft·lbf",
              "Green riser + long shaft und Grey riser + short shaft sind nicht zu unterscheiden: 1,8\u00a0(-0,7\u00a0bis\u00a04,4).",
              "Red riser + short shaft: langsamer als nach Faustregeln vom Bogen zu erwarten, etwa 300 ft/s (293 bis 307)",
              "Red riser: -45 gr nach den Geschwindigkeiten allein, was kein Bogen hat: Rauschen, nicht verwendet; angenommen sind 0 gr bis 80 gr",
              "Ein Messwert wird weggelassen, wenn die Datei sagt, dass er eine Fehlmessung ist, wenn der Pfeil mehr Energie hätte, als der Bogen nach seinen angegebenen Werten geben kann, oder wenn er mehr als 3,5 skalierte mediane absolute Abweichungen und 2 % vom Median von drei oder mehr Messwerten entfernt liegt.")) {
        assertTrue(told.contains(words), words + " is not among " + told);
      }
      assertEquals(List.of(), english(told));
      assertTrue(
          words(booth, "setups-shooting").contains("350 gr · 60 lbf · 29 in · 6,25 in"),
          words(booth, "setups-shooting") + "");
      assertTrue(
          booth
              .text("setups-picture")
              .startsWith("Club bow + short shaft, 350 gr, Mittel 300,0 ± 1,3 ft/s; "),
          booth.text("setups-picture"));
      assertTrue(
          words(booth, "setups-list").contains("300,0 ± 1,3 · Schüsse: 6 von 7 · weggelassen: 1"),
          words(booth, "setups-list") + "");
    }
  }

  @Test
  void inGermanTheReadingThatCameLastIsWrittenAsTheOthers() throws Exception {
    try (Booth booth = Booth.in(Language.GERMAN, BoothEvent.PLAIN, temp, 1280, 800)) {
      booth.press(KeyCode.INSERT);
      booth.press(KeyCode.F9);
      booth.press(KeyCode.F2);
      booth.type("Heron");
      fill(booth, "form-arrow", "short shaft");
      fill(booth, "form-mass", "350,5");
      booth.press(KeyCode.ENTER);
      assertFalse(booth.shows("state-panel"), booth.text("form-trouble"));
      booth.press(KeyCode.F4);
      booth.shoot("298.0 ft/s");
      booth.scan("301,5");
      assertEquals("301,5 ft/s", booth.text("setups-last"));
      booth.press(KeyCode.F5);
      List<String> asked = words(booth, "mark-panel");
      assertTrue(asked.stream().anyMatch(said -> said.endsWith("301,5 ft/s")), asked + "");
      assertEquals(List.of(), english(asked));
    }
  }

  /** What has a small English word or a decimal point in it. */
  private static List<String> english(List<String> told) {
    return told.stream()
        .filter(said -> said.matches(".*(\\b(the|of|is|with|to|and|not)\\b|\\d\\.\\d).*"))
        .toList();
  }

  private static List<String> words(Booth booth, String id) throws Exception {
    return Booth.call(
        () -> {
          List<String> words = new ArrayList<>();
          collect(booth.front.official().lookup("#" + id), words);
          return words;
        });
  }

  private static void collect(Node node, List<String> words) {
    if (node instanceof Labeled label && label.getText() != null) {
      words.add(label.getText());
    } else if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> collect(child, words));
    }
  }
}
