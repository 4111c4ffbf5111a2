package lanewarden.audit.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import lanewarden.audit.PrintedReport;
import lanewarden.audit.Rfc4180;
import lanewarden.audit.press.Conformance;
import lanewarden.bench.Caution;
import lanewarden.bench.Comparison;
import lanewarden.bench.Practice;
import lanewarden.rules.RuleBook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ComparisonPaperTest {
  @TempDir Path folder;

  private final ComparisonPaper paper =
      new ComparisonPaper(Clock.fixed(PrintedReport.MADE, ZoneOffset.UTC));

  private static Comparison demo() throws Exception {
    return Comparison.of(
        Practice.read(
            "demo-data/practice.csv", Files.readAllBytes(Path.of("demo-data/practice.csv"))),
        Optional.of(
            RuleBook.read("rules", Files.readAllBytes(Path.of("demo-data/rule-book.toml")))));
  }

  private static Comparison of(String lines) throws Exception {
    return Comparison.of(
        Practice.read("odd.csv", lines.getBytes(StandardCharsets.UTF_8)), Optional.empty());
  }

  @Test
  void paperSaysWhatTheComparisonSaysAndIsMadeToLast() throws Exception {
    Path pdf = folder.resolve("set-ups.pdf");
    paper.pdf(demo(), pdf);
    String text = PrintedReport.textOf(pdf);
    for (String words :
        List.of(
            "8 set-ups, 49 shots, 1 left out",
            "1= Club bow + short shaft 350 gr 6 of 7 300.0 1.3 1.3 69.93 0.466",
            "Left out. Club bow + short shaft: 390 ft/s (line 45)",
            "Grey riser + short shaft Red riser + short shaft 2.7 0.2 5.2 real",
            "Club bow + short shaft Green riser + short shaft 1.5 -1.4 4.4 within noise",
            "Club bow + short shaft HC 282.0 -18.0 -19.3 -16.7 over",
            "noise, not used",
            "Rules of thumb, not measured",
            Caution.paragraph())) {
      assertTrue(text.contains(words), words + " in " + text);
    }
    assertEquals(List.of(), Conformance.faults(pdf));
  }

  @Test
  void oneShotOfOneSetUpMakesAPaperToo() throws Exception {
    Path pdf = folder.resolve("one.pdf");
    paper.pdf(of("bow,arrow,arrow-mass,speed\nRed <b>,long,377.5 gr,91.44 m/s\n"), pdf);
    String text = PrintedReport.textOf(pdf);
    assertTrue(text.contains("– Red <b> + long 377.5 gr 1 91.4 – – 102.27 2.237"), text);
    assertFalse(text.contains("Which differences are real"), text);
    assertEquals(List.of(), Conformance.faults(pdf));
  }

  @Test
  void aSetUpOfWhichNoShotCountsIsShownWithoutAMean() throws Exception {
    Path pdf = folder.resolve("none.pdf");
    paper.pdf(of("bow,arrow,arrow-mass,speed,misread\nRed,long,377.5 gr,390 ft/s,yes\n"), pdf);
    assertTrue(PrintedReport.textOf(pdf).contains("– Red + long 377.5 gr 0 of 1 – – –"));
  }

  @Test
  void tableHasOneRowASetUpAndEveryPairTwice() throws Exception {
    Path csv = folder.resolve("set-ups.csv");
    paper.csv(demo(), csv);
    List<List<String>> rows = Rfc4180.read(Files.readString(csv));
    assertEquals(9, rows.size());
    assertEquals(
        List.of("1", "Club bow", "short shaft", "350", "gr", "7", "6"), rows.get(1).subList(0, 7));
    assertEquals("300.000", cell(rows, 1, "mean (ft/s)"));
    assertEquals("within noise", cell(rows, 1, "difference from Green riser + short shaft"));
    assertEquals("really slower", cell(rows, 8, "difference from Club bow + short shaft"));
    assertEquals("", cell(rows, 1, "difference from Club bow + short shaft"));
  }

  private static String cell(List<List<String>> rows, int row, String heading) {
    int column = rows.get(0).indexOf(heading);
    assertTrue(column >= 0, heading + " in " + rows.get(0));
    return rows.get(row).get(column);
  }

  /**
   * Common practice: 300 and 290 ft/s at 350 and 377.5 gr, so 28 ft/s faster than the 272 ft/s of
   * the Red riser, 18 above the 282 ft/s of a division, as rated (330 ft/s at 10 lbf and 1 in more,
   * 2 ft/s and 10 ft/s each), and 42 gr of virtual mass: (300²·350 − 290²·377.5)/(290² − 300²).
   */
  @Test
  void tableHasTheFiguresOfMarginsDifferencesRatingAndVirtualMass() throws Exception {
    Path csv = folder.resolve("figures.csv");
    paper.csv(demo(), csv);
    List<List<String>> rows = Rfc4180.read(Files.readString(csv));
    Map<String, String> cells =
        Map.of(
            "faster than Red riser + long shaft by (ft/s)", "28.000",
            "HC allows (ft/s)", "282.000",
            "margin to the limit of HC (ft/s)", "-18.000",
            "mean against the limit of HC (no verdict)", "over",
            "mean against the limit of OC (no verdict)", "inside",
            "expected by the rating (ft/s)", "300.000",
            "expected by the rating at least (ft/s)", "293.000",
            "mean against the rating (by rules of thumb)", "as expected",
            "virtual mass by the speeds alone (gr)", "42.0",
            "virtual mass rests on", "0 gr to 80 gr supposed, and the speeds");
    cells.forEach((heading, cell) -> assertEquals(cell, cell(rows, 1, heading), heading));
    assertEquals("-45.1", cell(rows, 8, "virtual mass by the speeds alone (gr)"));
    assertEquals(
        "-" + cell(rows, 1, "faster than Red riser + long shaft by at most (ft/s)"),
        cell(rows, 8, "faster than Club bow + short shaft by at least (ft/s)"));
    for (String figure : List.of("mean", "margin to the limit of HC", "virtual mass")) {
      String unit = figure.startsWith("v") ? " (gr)" : " (ft/s)";
      double low = Double.parseDouble(cell(rows, 1, figure + " at least" + unit));
      double high = Double.parseDouble(cell(rows, 1, figure + " at most" + unit));
      assertTrue(low < high, figure);
    }
  }

  @Test
  void everyCellIsAPlainNumberOrBeginsNoFormula() throws Exception {
    Path csv = folder.resolve("safe.csv");
    paper.csv(demo(), csv);
    Pattern safe = Pattern.compile("-?\\d+(\\.\\d+)?|([^=+\\-@\\t\\r\\n].*)?");
    for (List<String> row : Rfc4180.read(Files.readString(csv))) {
      row.forEach(cell -> assertTrue(safe.matcher(cell).matches(), cell));
    }
  }

  /** The page that tells the format, with X for a division and Y for a set-up. */
  @Test
  void pageOfTheFormatNamesEveryHeadingInItsOrder() throws Exception {
    Path csv = folder.resolve("headings.csv");
    paper.csv(demo(), csv);
    List<String> headings =
        Rfc4180.read(Files.readString(csv)).get(0).stream()
            .map(heading -> heading.replaceAll("\\b(OC|HC|RB|LB|YC)\\b", "X"))
            .map(heading -> heading.replaceAll("[A-Z]\\w+ \\w+ \\+ \\w+ shaft", "Y"))
            .distinct()
            .toList();
    String page = Files.readString(Path.of("src/site/markdown/practice-format.md"));
    String table = page.substring(page.indexOf("| heading |"));
    assertEquals(
        headings,
        Pattern.compile("^\\| `([^`]+)` \\|", Pattern.MULTILINE)
            .matcher(table)
            .results()
            .map(found -> found.group(1))
            .toList());
  }

  @Test
  void noSpreadsheetTakesANameForAFormula() throws Exception {
    Path csv = folder.resolve("formula.csv");
    paper.csv(of("bow,arrow,arrow-mass,speed\n=1+1,@long,350 gr,300 ft/s\n"), csv);
    List<List<String>> rows = Rfc4180.read(Files.readString(csv));
    assertEquals(List.of("'=1+1", "'@long"), rows.get(1).subList(1, 3));
    assertFalse(rows.get(0).stream().anyMatch(heading -> heading.startsWith("=")), csv.toString());
  }

  @Test
  void replacesNoFileThatIsNotItsOwnKind() throws Exception {
    Path there = Files.writeString(folder.resolve("there.csv"), "mine");
    Comparison demo = demo();
    assertThrows(IOException.class, () -> paper.csv(demo, there));
    assertThrows(IOException.class, () -> paper.pdf(demo, there));
    assertEquals("mine", Files.readString(there));
  }
}
