package lanewarden.kiosk.setups;

import java.nio.file.Path;
import java.util.function.Consumer;
import lanewarden.audit.comparison.ComparisonPaper;
import lanewarden.bench.Comparison;
import lanewarden.kiosk.desk.SideTable;
import lanewarden.kiosk.form.Places;
import lanewarden.station.Trouble;

/**
 * Writes what was found to files, under the name of the practice where nobody names another.
 *
 * @param paper writes it
 * @param places where files lie
 * @param table where it is done
 */
record Copies(ComparisonPaper paper, Places places, SideTable table) {
  private static final String ENDING = ".csv";

  /**
   * Writes tables and pictures.
   *
   * @param typed the file, or blank for the usual
   * @param written takes the file
   */
  void paper(Comparison found, String typed, Consumer<Path> written, Consumer<Trouble> refused) {
    String stem = stem(found.practice().file());
    table.ask(
        () -> {
          Path to = places.fresh(typed, stem + ".pdf");
          paper.pdf(found, to);
          return to;
        },
        written,
        refused);
  }

  /**
   * Writes a line a set-up.
   *
   * @param typed the file, or blank for the usual
   * @param written takes the file
   */
  void table(Comparison found, String typed, Consumer<Path> written, Consumer<Trouble> refused) {
    String stem = stem(found.practice().file());
    table.ask(
        () -> {
          Path to = places.fresh(typed, stem + "-set-ups.csv");
          paper.csv(found, to);
          return to;
        },
        written,
        refused);
  }

  /** The name of a practice file, without its ending. */
  static String stem(String file) {
    String name = String.valueOf(Path.of(file).getFileName());
    return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
  }
}
