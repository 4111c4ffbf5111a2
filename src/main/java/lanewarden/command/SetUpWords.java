package lanewarden.command;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.station.SetUpText;

/** Bow and arrow as typed in one line: each figure behind its word, in any order. */
final class SetUpWords {

  private enum Figure {
    ARROW,
    DRAW,
    CERTIFIED,
    LENGTH,
    BRACE
  }

  private static final Pattern FIGURE =
      Pattern.compile(
          "\\s*(arrow|draw|certified|length|brace)\\s+([^\\s,].*?),?\\s*"
              + "(?=\\b(?:arrow|draw|certified|length|brace)\\b|$)",
          Pattern.CASE_INSENSITIVE);

  private SetUpWords() {}

  /**
   * Reads for example {@code arrow 352.5, draw 60 lbf}.
   *
   * @throws CommandRefused if it holds anything else, or a figure twice
   */
  static SetUpText read(String typed) throws CommandRefused {
    Map<Figure, String> figures = new EnumMap<>(Figure.class);
    Matcher matcher = FIGURE.matcher(typed);
    int end = 0;
    while (end < typed.length() && matcher.find(end) && matcher.start() == end) {
      Figure figure = Figure.valueOf(matcher.group(1).toUpperCase(Locale.ROOT));
      if (figures.put(figure, matcher.group(2)) != null) {
        throw refused("\"" + matcher.group(1) + "\" stands there twice.");
      }
      end = matcher.end();
    }
    if (figures.isEmpty() || end < typed.length()) {
      throw refused("\"" + typed + "\" was not understood.");
    }
    return new SetUpText(
        figures.getOrDefault(Figure.ARROW, ""),
        figures.getOrDefault(Figure.DRAW, ""),
        figures.getOrDefault(Figure.CERTIFIED, ""),
        figures.getOrDefault(Figure.LENGTH, ""),
        figures.getOrDefault(Figure.BRACE, ""));
  }

  private static CommandRefused refused(String why) {
    return CommandRefused.misstep(
        "SET-UP-WORDS",
        "Bow and arrow were not stated.",
        why,
        "Write each figure behind its word: setup arrow 352.5, draw 60, certified 62, length 29, brace 7.");
  }
}
