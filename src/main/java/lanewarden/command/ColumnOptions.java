package lanewarden.command;

import java.util.List;
import lanewarden.station.CompetitorList;
import picocli.CommandLine.Option;

/** Which column of a list of competitors is which: the options of every command that reads one. */
final class ColumnOptions {

  @Option(
      names = "--column",
      paramLabel = "COLUMN=HEADING",
      description =
          "Which of the list's columns is bib, name, division, arrow-mass, draw-weight,"
              + " certified-draw-weight, draw-length or brace-height, by its heading or its number"
              + " from 1: --column \"bib=Start number\" --column division=4. With nothing behind the"
              + " = the roster shall not have it. Repeat it for each; the others are found by the"
              + " words that people usually write.")
  private List<String> said = List.of();

  /** What was said, as it was typed. */
  List<String> said() {
    return said;
  }

  /** Of which columns nothing was taken, a sentence each: nobody shall miss one without a word. */
  static List<String> leftOut(CompetitorList list) {
    return list.leftOut().stream()
        .map(
            column ->
                "Column "
                    + column.number()
                    + " \""
                    + column.heading()
                    + "\" is left out."
                    + column
                        .near()
                        .map(
                            near ->
                                " If it is the "
                                    + near
                                    + ": --column "
                                    + near
                                    + "="
                                    + column.number())
                        .orElse(""))
        .toList();
  }
}
