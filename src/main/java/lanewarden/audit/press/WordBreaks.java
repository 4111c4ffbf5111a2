package lanewarden.audit.press;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import lanewarden.quantity.EnergyUnit;
import lanewarden.quantity.ForceUnit;
import lanewarden.quantity.MassUnit;
import lanewarden.quantity.SpeedUnit;
import lanewarden.quantity.Unit;

/**
 * Where a line may end: at a space, but never between a figure and its unit, and never inside one.
 *
 * <p>Owned by one thread.
 */
final class WordBreaks {
  private static final int END = -1;
  private static final Set<String> UNITS = units();

  private String text = "";
  private int at;

  private static Set<String> units() {
    Set<String> units = new HashSet<>(Set.of("%", "UTC"));
    Stream.of(SpeedUnit.values(), MassUnit.values(), ForceUnit.values(), EnergyUnit.values())
        .flatMap(Arrays::stream)
        .map(Unit::symbol)
        .forEach(units::add);
    return Set.copyOf(units);
  }

  /** Begins with another text. */
  void setText(String newText) {
    text = newText;
    at = 0;
  }

  /** Where the next part ends; less than nothing after the last one. */
  int next() {
    if (at >= text.length()) {
      return END;
    }
    at++;
    while (at < text.length() && !mayBreak()) {
      at++;
    }
    return at;
  }

  private boolean mayBreak() {
    return isSpace(at - 1) && !isSpace(at) && !(figureEnds(at - 1) && unitStarts());
  }

  private boolean isSpace(int index) {
    return text.charAt(index) == ' ' || text.charAt(index) == '\n';
  }

  private boolean figureEnds(int space) {
    return space > 0 && Character.isDigit(text.charAt(space - 1));
  }

  private boolean unitStarts() {
    int end = at;
    while (end < text.length() && !isSpace(end) && ",.;:)”".indexOf(text.charAt(end)) < 0) {
      end++;
    }
    return UNITS.contains(text.substring(at, end));
  }
}
