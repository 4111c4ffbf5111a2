package lanewarden.kiosk.line;

import lanewarden.bench.Advice;
import lanewarden.bench.Caution;

/**
 * Advice in the words of the screen: the slip has all of it.
 *
 * @param line what would help
 * @param exception why one of the two changes is no help; blank where both are
 * @param cautions all of them
 */
public record AdvicePage(String line, String exception, String cautions) {

  static AdvicePage of(Advice advice) {
    return new AdvicePage(advice.line(), advice.exception().orElse(""), Caution.paragraph());
  }
}
