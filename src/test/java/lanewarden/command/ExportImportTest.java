package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lanewarden.station.EventFolder;
import lanewarden.station.LedgerInspection;
import lanewarden.station.LedgerNames;
import lanewarden.station.PracticeEvent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** export, import, and the report's verifier. */
class ExportImportTest extends PracticeRun {
  private Path out;
  private Path entries;

  @BeforeEach
  void shoot() {
    line("1", "wait", "close");
    out = here.resolve("export");
    entries = out.resolve("entries.jsonl");
  }

  private Typed export(String... more) {
    return new Typed()
        .run(
            Stream.concat(
                    Stream.of("export", event.path().toString(), "--out", out.toString()),
                    Stream.of(more))
                .toArray(String[]::new));
  }

  /** What a report or verification says, without the paths that differ. */
  private static List<String> lines(Typed typed, String path) {
    return typed.lines().stream().map(line -> line.replace(path, "")).toList();
  }

  @Test
  void whatWasExportedIsImportedElsewhereAndSaysTheSame() throws Exception {
    Typed exported = export();
    assertEquals(0, exported.code(), exported.toString());
    assertTrue(exported.lines().contains("export   " + out), exported.toString());
    Path copy = here.resolve("copy.ledger");
    String head = LedgerInspection.of(event.path(), List.of()).head().orElseThrow();
    Typed imported =
        new Typed().run("import", entries.toString(), "--out", copy.toString(), "--head", head);
    assertEquals(0, imported.code(), imported.toString());

    String ledger = event.ledger().toString();
    assertEquals(
        lines(new Typed().run("verify", ledger), ledger),
        lines(new Typed().run("verify", copy.toString()), copy.toString()));
    Path pdf = here.resolve("report.pdf");
    Typed first = new Typed().run("report", ledger, "--out", pdf.toString());
    Typed second = new Typed().run("report", copy.toString(), "--out", pdf.toString());
    assertEquals(0, second.code(), second.toString());
    assertEquals(first.lines(), second.lines());
  }

  @Test
  void anExportNamedWhereALedgerIsAskedLeadsToTheImport() {
    export();
    for (String named : List.of(entries.toString(), out.toString())) {
      for (String command : List.of("verify", "report", "docket")) {
        Typed typed = new Typed().run(command, named);
        assertEquals(2, typed.code(), typed.toString());
        assertTrue(typed.talk().contains("LEDGER-EXPORTED"), typed.toString());
        assertTrue(typed.talk().contains("import " + entries + " --out"), typed.toString());
      }
    }
  }

  @Test
  void anImportIntoAFolderMakesTheLedgerInIt() throws Exception {
    export();
    Path folder = Files.createDirectory(here.resolve("elsewhere"));
    Typed json =
        new Typed().run("import", entries.toString(), "--out", folder.toString(), "--json");
    assertEquals(0, json.code(), json.toString());
    JsonNode members = new ObjectMapper().readTree(json.results());
    assertTrue(Files.exists(Path.of(members.get("ledger").asText())));
    assertEquals(0, new Typed().run("verify", folder.toString()).code());
  }

  @Test
  void aDamagedExportIsRefusedWithAllItsFaults() throws Exception {
    export();
    List<String> lines = Files.readAllLines(entries);
    Files.writeString(
        entries,
        String.join("\n", Stream.concat(lines.stream().limit(3), lines.stream().skip(5)).toList()));
    Path copy = here.resolve("copy.ledger");
    Typed refused = new Typed().run("import", entries.toString(), "--out", copy.toString());
    assertEquals(3, refused.code(), refused.toString());
    assertTrue(refused.lines().contains("ledger   none was made"), refused.toString());
    assertTrue(refused.results().contains("Entries 4 to 5 are missing."), refused.toString());
    assertTrue(refused.results().contains("sound    NO: 2 faults"), refused.toString());
    assertFalse(Files.exists(copy));
  }

  @Test
  void ofALedgerThatLiesAloneAReportCanBeMadeOfBothEditions() throws Exception {
    export();
    Path alone = Files.createDirectory(out.resolveSibling("alone"));
    Typed imported = new Typed().run("import", entries.toString(), "--out", alone.toString());
    assertEquals(0, imported.code(), imported.toString());
    for (String edition : List.of("--json", "--public")) {
      Typed report = new Typed().run("report", alone.toString(), edition);
      assertEquals(0, report.code(), report.toString());
    }
    EventFolder folder = new EventFolder(alone);
    assertTrue(Files.exists(PracticeEvent.report(folder)));
    assertTrue(Files.exists(alone.resolve(LedgerNames.of(folder.ledger()).report(false, false))));
  }

  @Test
  void anImportNeverOverwritesALedger() {
    export();
    Typed refused = new Typed().run("import", entries.toString(), "--out", event.path().toString());
    assertEquals(2, refused.code(), refused.toString());
    assertTrue(refused.talk().contains("a ledger is never overwritten"), refused.toString());
  }

  @Test
  void thePublicExportHasNoEntries() throws Exception {
    Typed exported = export("--public", "--json");
    assertEquals(0, exported.code(), exported.toString());
    assertEquals(1, new ObjectMapper().readTree(exported.results()).get("checks").asInt());
    assertFalse(Files.exists(entries));
    assertTrue(Files.exists(out.resolve("checks.csv")));
  }

  @Test
  void aReportCanHaveItsVerifierBesideIt() throws Exception {
    Typed report =
        new Typed().run("report", event.path().toString(), "--with-verifier", out.toString());
    assertEquals(0, report.code(), report.toString());
    assertTrue(Files.exists(PracticeEvent.report(event)));
    assertTrue(Files.exists(out.resolve("verify.html")));
    assertTrue(Files.exists(entries));
  }
}
