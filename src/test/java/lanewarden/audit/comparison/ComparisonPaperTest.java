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
import java.util.Optional;
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
    assertEquals(32, rows.get(0).size());
    assertEquals("than Club bow + short shaft", rows.get(0).get(24));
    assertEquals(
        List.of("1", "Club bow", "short shaft", "350", "gr", "7", "6"), rows.get(1).subList(0, 7));
    assertEquals("300.000", rows.get(1).get(8));
    assertEquals("within noise", rows.get(1).get(25));
    assertEquals("really slower", rows.get(8).get(24));
  }

  @Test
  void noSpreadsheetTakesANameForAFormula() throws Exception {
    Path csv = folder.resolve("formula.csv");
    paper.csv(of("bow,arrow,arrow-mass,speed\n=1+1,@long,350 gr,300 ft/s\n"), csv);
    List<List<String>> rows = Rfc4180.read(Files.readString(csv));
    assertEquals(List.of("'=1+1", "'@long"), rows.get(1).subList(1, 3));
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
