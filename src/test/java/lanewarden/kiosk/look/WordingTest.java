package lanewarden.kiosk.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import lanewarden.journal.Occasion;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is signed in a word or two, in the words of the screens. */
class WordingTest {
  @ParameterizedTest
  @EnumSource(Occasion.class)
  void inEnglishAnOccasionReadsAsItIsSignedAndInGermanNot(Occasion occasion) {
    Texts english = Texts.in(Language.ENGLISH);
    Texts german = Texts.in(Language.GERMAN);
    assertEquals(occasion.word(), Wording.occasion(occasion.word(), english));
    assertNotEquals(occasion.word(), Wording.occasion(occasion.word(), german));
    assertEquals("as an older version said", Wording.occasion("as an older version said", german));
  }
}
