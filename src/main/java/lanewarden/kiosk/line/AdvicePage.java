package lanewarden.kiosk.line;

import java.util.ArrayList;
import java.util.List;
import lanewarden.bench.Advice;
import lanewarden.bench.Caution;

/**
 * Advice in the words of the screen: the slip has all of it.
 *
 * @param line what would help; where a heavier arrow does not, why
 * @param cautions all of them
 */
public record AdvicePage(String line, String cautions) {

  static AdvicePage of(Advice advice) {
    List<String> said = new ArrayList<>(List.of(advice.line()));
    advice.exception().ifPresent(said::add);
    return new AdvicePage(String.join(" ", said), Caution.paragraph());
  }
}
