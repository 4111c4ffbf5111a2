package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.look.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Why a check stands as it does and what follows, at the line and on the board, in the language of
 * the screens; what is signed stays English.
 */
class ReasonsScreenTest {
  @TempDir Path temp;

  private static void shootOver(Booth booth) throws Exception {
    booth.scan("102");
    booth.press(KeyCode.F11);
    booth.shoot("305 ft/s", "306.1 ft/s", "306.3 ft/s");
  }

  @Test
  void inGermanTheLineAndTheBoardSayWhyAndWhatFollows() throws Exception {
    try (Booth booth = Booth.in(Language.GERMAN, BoothEvent.CLAUSES, temp, 1280, 800)) {
      booth.signIn();
      booth.scan("102");
      assertEquals("Noch mindestens 3 Messwerte", booth.text("outcome-words"));
      booth.press(KeyCode.F11);
      booth.shoot("305 ft/s", "306.1 ft/s", "306.3 ft/s");
      String why =
          "Mittelwert 305,8 ft/s, Limit 300 ft/s plus 2 ft/s = 302 ft/s;"
              + " wie weit darüber, sagt der Mittelwert: 305,8 ft/s";
      String follows = "Wie es weitergeht: der Schütze ist vom Turnier ausgeschlossen.";
      assertEquals(why, booth.text("outcome-words"));
      assertEquals(why, booth.boardText("board-deciding"));
      assertEquals(follows, booth.text("outcome-follows"));
      assertEquals(follows, booth.boardText("board-follows"));
      assertEquals(
          "mean 305.8 ft/s, limit 300 ft/s plus 2 ft/s = 302 ft/s;"
              + " how far over is told by the mean, 305.8 ft/s",
          booth.check().verdict().orElseThrow().fact().reason());
    }
  }

  @Test
  void inHebrewTheLineAndTheBoardSayWhatIsMissing() throws Exception {
    try (Booth booth = Booth.in(Language.HEBREW, BoothEvent.CLAUSES, temp, 1280, 800)) {
      booth.signIn();
      booth.scan("101");
      booth.press(KeyCode.ESCAPE);
      String missing = "יש לציין תחילה: מסת החץ, משקל מתיחה בפועל, משקל מתיחה מאושר";
      assertEquals(missing, booth.text("outcome-words").replace("\u200e", ""));
      assertEquals(missing, booth.boardText("board-deciding").replace("\u200e", ""));
    }
  }

  /** Of the rule only what the rule book itself writes in words stays as it is written. */
  @Test
  void inGermanTheRuleIsTold() throws Exception {
    try (Booth booth = Booth.in(Language.GERMAN, BoothEvent.CLAUSES, temp, 1280, 800)) {
      booth.signIn();
      booth.scan("102");
      assertEquals(
          "Höchstens 300 ft/s plus 2 ft/s (302 ft/s). Ein Pfeil von weniger als 6 gr/lb ist nicht"
              + " zulässig (das größere von eingestelltem und bescheinigtem Zuggewicht). Der"
              + " Mittelwert von 3 Messwerten entscheidet. Wie weit darüber, sagt der Mittelwert."
              + " Höchstens 4 Schüsse, ungültige eingeschlossen. 1 ungültiger Messwert ist erlaubt."
              + " Wo eine Nachkontrolle folgt, ist 1 erlaubt. Bis zu 1 % darüber: eine"
              + " Nachkontrolle, solange noch eine übrig ist. Bis zu 3 % darüber: der Schütze ist"
              + " vom Turnier ausgeschlossen. Wer sonst vor dem Turnier durchfällt: eine"
              + " Nachkontrolle, solange noch eine übrig ist. Wer sonst während des Turniers"
              + " durchfällt: ein Kampfrichter entscheidet. Wer sonst nach dem Turnier durchfällt:"
              + " ein Kampfrichter entscheidet. Vor dem Urteil hakt die offizielle Person ab: full"
              + " draw; 4 yd from the instrument.",
          booth.text("rule"));
    }
  }

  /** In English letters are only names, units and what the rule book itself says. */
  @ParameterizedTest
  @EnumSource(Language.class)
  void whatStandsOnTheBoardIsWholeAndNotEnglishInAnotherLanguage(Language language)
      throws Exception {
    try (Booth booth = Booth.in(language, BoothEvent.CLAUSES, temp, 1280, 800)) {
      booth.signIn();
      booth.scan("101");
      booth.press(KeyCode.ESCAPE);
      assertEquals(List.of(), booth.boardCutOff("board"), "to be stated");
      booth.press(KeyCode.F4);
      booth.type("1");
      booth.press(KeyCode.ENTER);
      booth.scan("103");
      assertEquals(List.of(), booth.boardCutOff("board"), "not admitted");
      booth.press(KeyCode.ENTER);
      shootOver(booth);
      assertEquals(List.of(), booth.boardCutOff("board"), "over");
      assertEquals(List.of(), booth.cutOff("verdict"), "the outcome at the line");
      for (String words :
          List.of(
              booth.boardText("board-deciding"),
              booth.boardText("board-follows"),
              booth.text("outcome-words"),
              booth.text("outcome-follows"))) {
        assertFalse(words.isEmpty());
        boolean english = words.contains("limit ") || words.contains("the archer");
        assertTrue(language == Language.ENGLISH ? english : !english, words);
      }
    }
  }
}
