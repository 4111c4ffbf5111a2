package lanewarden.audit.press;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class InkTest {
  private static String escaped(String text) throws Exception {
    try (Typeface face = Typeface.open(Cut.TEXT)) {
      return new Ink(List.of(face)).escape(text);
    }
  }

  @Test
  void escapesMarkup() throws Exception {
    assertEquals("&lt;b a=&quot;&#39;&quot;&gt;&amp;", escaped("<b a=\"'\">&"));
  }

  @Test
  void keepsTheLettersOfNames() throws Exception {
    assertEquals(
        "Łucja Åkerbring Hrubešek Κωστής Иван", escaped("Łucja Åkerbring Hrubešek Κωστής Иван"));
  }

  @Test
  void namesACharacterThatTheTypefaceCannotShow() throws Exception {
    assertEquals("[U+5F35][U+1F3F9]", escaped("\u5f35\ud83c\udff9"));
  }

  @Test
  void lettersOfAPictureAreNoMarkupAndNamedWhereTheTypefaceLacksThem() throws Exception {
    try (Typeface face = Typeface.open(Cut.TEXT)) {
      assertEquals("<b> & [U+1F3F9]", new Ink(List.of(face)).plain("<b> & \ud83c\udff9"));
    }
  }

  @Test
  void namesCharactersThatWouldHideOrReorderOthers() throws Exception {
    assertEquals("a[U+202E]b[U+0000]c[U+200B]d[U+D800]", escaped("a\u202eb\u0000c\u200bd\ud800"));
  }
}
