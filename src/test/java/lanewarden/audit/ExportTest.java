package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import lanewarden.audit.wording.Cell;
import lanewarden.journal.Fact;
import lanewarden.ledger.ExportedEntries;
import lanewarden.ledger.Verification;
import lanewarden.quantity.Mass;
import lanewarden.station.SignedPapers;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a ledger becomes for other programs. */
class ExportTest {
  private static final String FORMULA = "=HYPERLINK(\"//evil\",\"Marta\")";
  private static final String LINES = "first, \"quoted\"\r\n=second";

  @TempDir Path folder;
  Path file;
  Path out;

  @BeforeEach
  void shoot() throws Exception {
    file = folder.resolve("event.ledger");
    out = folder.resolve("export");
    try (ScriptedLedger ledger = ScriptedLedger.with(file, ScriptedLedger.RULES)) {
      ledger.open(new Fact.CheckOpened("101", FORMULA, "OC", 1, Mass.parse("362 gr"), null));
      ledger.read("299.8 ft/s");
      long misread = ledger.read("91.4 m/s");
      ledger.declareVoid(misread, LINES);
      ledger.read("300.1 ft/s");
      ledger.read("300.1 ft/s");
      ledger.verdict();
      ledger.close(null);
      ledger.check("-102", "Dieter Hallbr\u00fcck", "LB", "58.5 m/s", "58.6 m/s", "58.7 m/s");
      ledger.call("@103", "Lone Marsk", "OC");
      ledger.close("+49 171 the archer's mother called");
    }
  }

  private List<List<String>> read(String name) throws IOException {
    return Rfc4180.read(Files.readString(out.resolve(name)));
  }

  private Set<String> files() throws IOException {
    try (Stream<Path> inside = Files.list(out)) {
      return new TreeSet<>(inside.map(f -> f.getFileName().toString()).toList());
    }
  }

  private static String at(List<List<String>> table, int row, String heading) {
    return table.get(row).get(table.get(0).indexOf(heading));
  }

  @Test
  void theWholeExportHoldsProofTablesAndPage() throws Exception {
    AuditSummary summary = new Export(SignedPapers::of).whole(file, out, progress -> {});
    assertEquals(Set.of("checks.csv", "entries.jsonl", "readings.csv", "verify.html"), files());
    Verification found =
        ExportedEntries.verify(
            out.resolve("entries.jsonl"),
            List.of(summary.head().orElseThrow().printed()),
            examined -> {});
    assertEquals(List.of(), found.faults());
    assertEquals(summary.entries(), found.entries());
  }

  @Test
  void theTablesHaveARowForEachCheckAndReading() throws Exception {
    new Export(SignedPapers::of).whole(file, out, progress -> {});
    List<List<String>> checks = read("checks.csv");
    assertEquals(4, checks.size());
    assertEquals("within", at(checks, 1, "outcome"));
    // 300 ft/s and 3 %, worked by hand
    assertEquals("309.00", at(checks, 1, "passes up to"));
    assertEquals("ft/s", at(checks, 1, "passes up to (unit)"));
    assertEquals("362", at(checks, 1, "arrow mass"));
    assertEquals("gr", at(checks, 1, "arrow mass (unit)"));
    assertTrue(at(checks, 1, "opened (UTC)").matches("2026-05-30T07:3\\d:\\d\\dZ"));
    assertEquals("over", at(checks, 2, "outcome"));
    assertEquals("Dieter Hallbr\u00fcck", at(checks, 2, "name"));
    assertEquals(ScriptedLedger.OFFICIAL, at(checks, 2, "official"));
    assertEquals("", at(checks, 3, "outcome"));
    List<List<String>> readings = read("readings.csv");
    assertEquals(8, readings.size());
    assertEquals("91.4", at(readings, 2, "speed"));
    assertEquals("m/s", at(readings, 2, "speed (unit)"));
    assertEquals("void", at(readings, 2, "counts"));
    assertEquals(LINES, at(readings, 2, "why void"));
    assertEquals("yes", at(readings, 1, "counts"));
  }

  @Test
  void noCellBeginsAFormula() throws Exception {
    new Export(SignedPapers::of).whole(file, out, progress -> {});
    List<String> cells = new ArrayList<>();
    for (String name : List.of("checks.csv", "readings.csv")) {
      read(name).forEach(cells::addAll);
    }
    assertEquals(
        List.of(), cells.stream().filter(c -> c.matches("(?s)\\s*[=+\\-@\\t\\r\\n].*")).toList());
    assertTrue(cells.contains("'" + FORMULA), "the text itself is kept");
    assertTrue(cells.containsAll(List.of("'-102", "'@103")));
    assertTrue(cells.contains("'+49 171 the archer's mother called"));
  }

  /**
   * OWASP, "CSV Injection": = + - @ tab, CR, LF and full-width forms. Small forms (Unicode block
   * FE50), superscripts, other control characters and blanks before: our own.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "+1",
        "-1",
        "@SUM(A1)",
        "\t=1",
        "\r=1",
        "\n=1",
        " =1",
        "\u00a0=1",
        "\u200b=1",
        "\ufeff=1",
        "\uff1d1",
        "\uff0b1",
        "\uff0d1",
        "\uff201",
        "\ufe621",
        "\ufe631",
        "\ufe661",
        "\ufe6b1",
        "\u207b1",
        "\u000b=1",
        "\f=1",
        "\u0000=1",
        "'=1",
        "=1\n=2"
      })
  void aTextThatCouldBeAFormulaGetsAnApostropheWhichCanBeTakenAway(String text) {
    assertEquals("'" + text, Cell.text(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "Marta", "O'Brien", "a=b", "299.8", "#12", "\"quoted\"", "A-1"})
  void anyOtherTextStaysAsItIs(String text) {
    assertEquals(text, Cell.text(text));
  }

  @Test
  void thePublicEditionKnowsBibAndOutcomeAndNoName() throws Exception {
    AuditSummary summary = new Export(SignedPapers::of).forThePublic(file, out, progress -> {});
    assertTrue(summary.sound());
    assertEquals(Set.of("checks.csv"), files());
    String all = Files.readString(out.resolve("checks.csv"));
    for (String person :
        List.of("evil", "Hallbr", "Marsk", "mother", "quoted", ScriptedLedger.OFFICIAL)) {
      assertFalse(all.contains(person), person);
    }
    List<List<String>> checks = read("checks.csv");
    assertEquals("101", at(checks, 1, "bib"));
    assertEquals("within", at(checks, 1, "outcome"));
    assertFalse(all.contains("91.4"), "a single reading");
  }

  @Test
  void anUnsoundLedgerIsExportedWithItsFaults() throws Exception {
    Path damaged = folder.resolve("damaged.ledger");
    ScriptedLedger ledger = ScriptedLedger.with(damaged, ScriptedLedger.RULES);
    ledger.check("7", "Ada Brink", "OC", "299 ft/s", "299 ft/s", "299 ft/s");
    ledger.tamperWith(8);
    AuditSummary summary = new Export(SignedPapers::of).whole(damaged, out, progress -> {});
    assertFalse(summary.sound());
    assertEquals(
        List.of(8L, 9L),
        ExportedEntries.verify(out.resolve("entries.jsonl"), List.of(), examined -> {})
            .faults()
            .stream()
            .map(fault -> fault.sequence())
            .toList());
  }

  @Test
  void whatIsThereAlreadyIsKept() throws Exception {
    Files.createDirectory(out);
    new Export(SignedPapers::of).whole(file, out, progress -> {});
    IOException refused =
        assertThrows(
            IOException.class, () -> new Export(SignedPapers::of).whole(file, out, progress -> {}));
    assertTrue(refused.getMessage().contains("is no empty folder"), refused.getMessage());
    IOException nowhere =
        assertThrows(
            IOException.class,
            () ->
                new Export(SignedPapers::of)
                    .whole(file, folder.resolve("none/export"), progress -> {}));
    assertTrue(nowhere.getMessage().contains("This folder does not exist"), nowhere.getMessage());
    try (Stream<Path> inside = Files.list(folder)) {
      assertEquals(
          Set.of("event.ledger", "event.ledger.lock", "export"),
          new TreeSet<>(inside.map(f -> f.getFileName().toString()).toList()));
    }
  }
}
