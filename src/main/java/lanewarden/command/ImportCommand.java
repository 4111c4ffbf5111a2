package lanewarden.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import lanewarden.station.LedgerInspection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes a ledger of exported entries. */
@Command(
    description = {
      "Make a ledger file of exported entries (entries.jsonl), to verify and report on another"
          + " machine. The entries are kept byte for byte as they were signed.",
      "They are verified first: unless every signature and every link holds, nothing is made, all"
          + " faults are listed, and the exit code is 3."
    })
final class ImportCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(paramLabel = "ENTRIES", description = "The exported file, entries.jsonl.")
  private Path entries = Path.of("");

  @Option(
      names = "--out",
      required = true,
      paramLabel = "LEDGER-OR-FOLDER",
      description = "The ledger file to make, or a folder to make it in.")
  private Path out = Path.of("");

  @Option(
      names = "--head",
      paramLabel = "SEQ-HASH",
      description = "A head as printed on a slip or report, such as 1234-ab12cd34ef56; repeatable.")
  private List<String> heads = List.of();

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  ImportCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    LedgerInspection found = LedgerInspection.ofImport(entries, out, heads);
    String ledger = Files.exists(found.ledger()) ? found.ledger().toString() : "none was made";
    Terminal terminal = workplace.terminal();
    if (json) {
      Map<String, Object> members = new LinkedHashMap<>();
      members.put("ledger", ledger);
      members.putAll(InspectionNotice.members(found));
      terminal.result(JsonLine.of(members));
    } else {
      terminal.result(Notice.of("ledger", ledger).line());
      InspectionNotice.tell(found, terminal);
    }
    return found.sound() ? ExitCode.FINE : ExitCode.PROOF;
  }
}
