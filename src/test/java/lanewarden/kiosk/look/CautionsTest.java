package lanewarden.kiosk.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import lanewarden.bench.Caution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The cautions of the screens are those of the slip. */
class CautionsTest {

  @Test
  void inEnglishTheyAreWordForWordWhatStandsOnPaper() {
    assertEquals(Caution.paragraph(), Cautions.paragraph(Texts.in(Language.ENGLISH)));
  }

  @ParameterizedTest
  @EnumSource(value = Language.class, mode = EnumSource.Mode.EXCLUDE, names = "ENGLISH")
  void inEachOtherLanguageTheyAreAsManySentencesOfItsOwn(Language language) {
    String words = Cautions.paragraph(Texts.in(language));
    assertNotEquals(Caution.paragraph(), words);
    // Each ends with a full stop: none was left out
    assertEquals(Caution.values().length, words.chars().filter(c -> c == '.').count(), words);
  }
}
