package lanewarden.command;

import java.util.ArrayList;
import java.util.List;

/** A table for a terminal: columns as wide as their widest cell, two spaces apart. */
final class Columns {

  private Columns() {}

  /**
   * The lines of a table.
   *
   * @param rows of as many cells each, the heading first
   * @param left how many columns from the first stand flush left; figures stand flush right
   */
  static List<String> lines(List<List<String>> rows, int left) {
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < row.size(); i++) {
        boolean last = i == row.size() - 1;
        String gap = " ".repeat(width(rows, i) - length(row.get(i)));
        line.append(i >= left && !last ? gap : "").append(row.get(i));
        line.append(last ? "" : (i < left ? gap : "") + "  ");
      }
      lines.add(line.toString());
    }
    return lines;
  }

  private static int width(List<List<String>> rows, int column) {
    return rows.stream().mapToInt(row -> length(row.get(column))).max().orElse(0);
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }
}
