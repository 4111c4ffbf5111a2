package lanewarden.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import lanewarden.audit.AuditSummary;
import lanewarden.audit.Export;
import lanewarden.station.EventFolder;
import lanewarden.station.SignedPapers;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a ledger into files for other programs. */
@Command(
    description = {
      "Write a ledger into a new folder for other programs: entries.jsonl (every entry with its"
          + " signature), checks.csv and readings.csv, and verify.html, a page that verifies the"
          + " entries in any current browser, without a network.",
      "With --public only checks.csv, without names and readings: bib and outcome only. The signed"
          + " entries hold names, and cannot be changed without breaking their signatures.",
      "Exit code 3 if the ledger is not sound; what can be read of it is written all the same."
    })
final class ExportCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(paramLabel = "FOLDER-OR-LEDGER", description = "An event's folder or a ledger file.")
  private Path ledger = Path.of("");

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FOLDER",
      description = "The folder to make; there must be nothing in it.")
  private Path out = Path.of("");

  @Option(names = "--public", description = "Without names, contact data and people's words.")
  private boolean forThePublic;

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  ExportCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    Path file = EventFolder.ledgerAt(ledger);
    Path folder = out.toAbsolutePath();
    Terminal terminal = workplace.terminal();
    Steps steps = new Steps(terminal);
    AuditSummary summary =
        forThePublic
            ? new Export(SignedPapers::of).forThePublic(file, folder, steps)
            : new Export(SignedPapers::of).whole(file, folder, steps);
    if (json) {
      terminal.result(JsonLine.of(members(summary, folder)));
    } else {
      terminal.result(Notice.of("export", folder.toString()).line());
      terminal.result(Notice.of("entries", Long.toString(summary.entries())).line());
      terminal.result(Notice.of("checks", Integer.toString(summary.checks())).line());
      terminal.result(
          Notice.of(
                  "sound",
                  summary.sound()
                      ? "yes: every signature and every link holds"
                      : "NO: " + summary.faults().size() + " faults; run verify to see them")
              .line());
    }
    return summary.sound() ? ExitCode.FINE : ExitCode.PROOF;
  }

  private static Map<String, Object> members(AuditSummary summary, Path folder) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("export", folder.toString());
    members.put("sound", summary.sound());
    members.put("entries", summary.entries());
    members.put("checks", summary.checks());
    return members;
  }
}
