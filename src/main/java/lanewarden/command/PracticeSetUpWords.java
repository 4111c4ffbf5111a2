package lanewarden.command;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lanewarden.station.PracticeSetUpText;

/** A bow and an arrow of a practice as typed in one line: their names, then figures. */
final class PracticeSetUpWords {

  private enum Figure {
    MASS,
    DRAW,
    LENGTH,
    BRACE,
    RATED;

    static Optional<Figure> of(String word) {
      return Stream.of(values())
          .filter(figure -> figure.name().equals(word.toUpperCase(Locale.ROOT)))
          .findFirst();
    }
  }

  private static final int NAMES = 2;

  private PracticeSetUpWords() {}

  /**
   * Reads for example {@code Heron; light shaft; mass 352.5; draw 60}.
   *
   * @throws CommandRefused if a name is missing, a figure stands there twice, or anything else does
   */
  static PracticeSetUpText read(String typed) throws CommandRefused {
    List<String> parts = Stream.of(typed.split(";", -1)).map(String::strip).toList();
    if (parts.size() < NAMES || parts.get(0).isEmpty() || parts.get(1).isEmpty()) {
      throw refused("It takes the bow's name and the arrow's, with a semicolon between.");
    }
    Map<Figure, String> figures = new EnumMap<>(Figure.class);
    for (String part : parts.subList(NAMES, parts.size())) {
      String[] words = part.split("\\s+", 2);
      Optional<Figure> figure = Figure.of(words[0]).filter(known -> words.length > 1);
      if (figure.isEmpty()) {
        throw refused("\"" + part + "\" was not understood.");
      }
      if (figures.put(figure.get(), words[1]) != null) {
        throw refused("\"" + words[0] + "\" stands there twice.");
      }
    }
    return new PracticeSetUpText(
        parts.get(0),
        parts.get(1),
        figures.getOrDefault(Figure.MASS, ""),
        figures.getOrDefault(Figure.DRAW, ""),
        figures.getOrDefault(Figure.LENGTH, ""),
        figures.getOrDefault(Figure.BRACE, ""),
        figures.getOrDefault(Figure.RATED, ""));
  }

  private static CommandRefused refused(String why) {
    return CommandRefused.misstep(
        "SET-UP-WORDS",
        "No set-up was stated; the one before is shot on.",
        why,
        "Type: setup Heron; light; mass 352.5; draw 60; length 29; brace 7; rated 330, 70, 30,"
            + " 350. Figures stated before need not be typed again.");
  }
}
