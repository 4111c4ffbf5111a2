package lanewarden.command;

import java.util.ArrayList;
import java.util.List;
import lanewarden.bench.Comparison;
import lanewarden.bench.ComparisonSheet;
import lanewarden.quantity.Sentence;

/** A comparison of set-ups for a terminal, never without its cautions. */
final class ComparisonLines {

  private ComparisonLines() {}

  /** What the shots show, with how it is to be read and its cautions. */
  static List<String> of(Comparison comparison) {
    ComparisonSheet sheet = new ComparisonSheet(comparison);
    List<String> lines = new ArrayList<>();
    lines.add(Notice.of("practice", sheet.summary().toString()).line());
    sheet.leftOut().forEach(out -> lines.add(Notice.of("left out", out.toString()).line()));
    section(lines, Columns.lines(setUps(sheet), 3));
    if (!sheet.pairs().isEmpty()) {
      section(lines, Columns.lines(pairs(sheet), 2));
    }
    if (!sheet.margins().isEmpty()) {
      section(lines, Columns.lines(margins(sheet), 2));
    }
    section(lines, notices("rated", sheet.expectations()));
    section(lines, notices("bow mass", sheet.masses()));
    section(lines, sheet.notes());
    return lines;
  }

  private static void section(List<String> lines, List<String> more) {
    if (!more.isEmpty()) {
      lines.add("");
      lines.addAll(more);
    }
  }

  private static List<String> notices(String kind, List<Sentence> sentences) {
    return sentences.stream().map(sentence -> Notice.of(kind, sentence.toString()).line()).toList();
  }

  private static List<List<String>> setUps(ComparisonSheet sheet) {
    String unit = sheet.unit().symbol();
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "place",
            "set-up",
            "arrow",
            "shots",
            "mean " + unit,
            "± 95 %",
            "spread",
            sheet.energyUnit().symbol(),
            sheet.momentumUnit().symbol()));
    sheet.lines().forEach(line -> rows.add(line.cells()));
    return rows;
  }

  private static List<List<String>> pairs(ComparisonSheet sheet) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "faster", "than", "by " + sheet.unit().symbol(), "from", "to", "the difference is"));
    for (ComparisonSheet.Pair pair : sheet.pairs()) {
      rows.add(
          List.of(pair.faster(), pair.slower(), pair.by(), pair.from(), pair.to(), pair.sense()));
    }
    return rows;
  }

  private static List<List<String>> margins(ComparisonSheet sheet) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "set-up",
            "division",
            "allowed " + sheet.unit().symbol(),
            "margin",
            "from",
            "to",
            "the mean is"));
    sheet.margins().forEach(margin -> rows.add(margin.cells()));
    return rows;
  }
}
