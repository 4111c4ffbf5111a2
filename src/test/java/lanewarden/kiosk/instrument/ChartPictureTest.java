package lanewarden.kiosk.instrument;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Texts;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is written beside the charts. */
class ChartPictureTest {

  /** As wide as another toolkit, AWT, draws them in the same typeface. */
  @ParameterizedTest
  @EnumSource(Language.class)
  void theNamesOfTheLinesAreWholeInEveryLanguage(Language language) throws Exception {
    Texts texts = Texts.in(language);
    Font face = face();
    for (String key : List.of("chart.limit", "chart.centre", "chart.set")) {
      String words = texts.of(key, texts.number("\u221210.00"));
      double wide =
          face.getStringBounds(words, new FontRenderContext(null, true, true)).getWidth()
              / face.getSize2D();
      assertTrue(wide <= ChartPicture.NAMES, words + ": " + wide);
    }
  }

  private static Font face() throws Exception {
    try (InputStream in =
        ChartPictureTest.class.getResourceAsStream(
            "/net/sf/jasperreports/fonts/dejavu/DejaVuSans.ttf")) {
      return Font.createFont(Font.TRUETYPE_FONT, Objects.requireNonNull(in)).deriveFont(100f);
    }
  }
}
