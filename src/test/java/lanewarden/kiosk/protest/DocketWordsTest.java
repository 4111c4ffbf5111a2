package lanewarden.kiosk.protest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import lanewarden.journal.ProtestFact;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Texts;
import org.junit.jupiter.api.Test;

/** The ledger's own words, which are English, in the language of the screens. */
class DocketWordsTest {

  private static List<String> all(Language language) {
    Texts texts = Texts.in(language);
    return Stream.concat(
            Stream.of(ProtestFact.Cause.values()).map(cause -> DocketWords.cause(cause, texts)),
            Stream.of(ProtestFact.Answer.values()).map(given -> DocketWords.answer(given, texts)))
        .toList();
  }

  @Test
  void inEnglishTheyAreTheWordsOfTheLedger() {
    assertEquals(
        Stream.concat(
                Stream.of(ProtestFact.Cause.values()).map(ProtestFact.Cause::word),
                Stream.of(ProtestFact.Answer.values()).map(ProtestFact.Answer::word))
            .toList(),
        all(Language.ENGLISH).stream().map(word -> word.toLowerCase(Locale.ROOT)).toList());
  }

  /** In the language with letters of its own, so that an English word cannot pass for one of it. */
  @Test
  void noneStaysEnglish() {
    all(Language.HEBREW).forEach(word -> assertFalse(word.matches(".*[a-zA-Z].*"), word));
  }
}
