package lanewarden.kiosk.line;

import lanewarden.bench.Advice;
import lanewarden.kiosk.look.Cautions;
import lanewarden.kiosk.look.Texts;

/**
 * Advice in the words of the screen: the slip has all of it.
 *
 * @param line what would help
 * @param exception why one of the two changes is no help; blank where both are
 * @param cautions all of them
 */
public record AdvicePage(String line, String exception, String cautions) {

  static AdvicePage of(Advice advice, Texts texts) {
    return new AdvicePage(
        texts.of(advice.line()),
        advice.exception().map(texts::of).orElse(""),
        Cautions.paragraph(texts));
  }
}
