package lanewarden.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import lanewarden.station.LedgerInspection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Verifies a ledger. */
@Command(
    description = {
      "Verify a ledger: every signature, every link, every entry; all faults are listed.",
      "Exit code 0 if it is sound, 3 if it is not."
    },
    footer = {
      "",
      "A sound ledger was written in this order by the keys it names, and nothing was changed since.",
      "Compare the organizer's thumbprint with the published one, and give every head you have on"
          + " paper: a tail that was cut off, or a whole ledger that was made anew, shows only so."
    })
final class VerifyCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(paramLabel = "LEDGER-OR-FOLDER", description = "A ledger file or an event's folder.")
  private Path ledger = Path.of("");

  @Option(
      names = "--head",
      paramLabel = "SEQ-HASH",
      description = "A head as printed on a slip or report, such as 1234-ab12cd34ef56; repeatable.")
  private List<String> heads = List.of();

  @Option(
      names = "--witness",
      paramLabel = "LEDGER",
      description =
          "Another station's ledger or folder: the heads of this ledger that were signed into it"
              + " (command witness) are compared too; repeatable.")
  private List<Path> witnesses = List.of();

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  VerifyCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    LedgerInspection found = LedgerInspection.of(ledger, heads, witnesses);
    Terminal terminal = workplace.terminal();
    String file = found.ledger().toString();
    if (json) {
      Map<String, Object> members = new LinkedHashMap<>();
      members.put("ledger", file);
      members.putAll(InspectionNotice.members(found));
      terminal.result(JsonLine.of(members));
    } else {
      terminal.result(Notice.of("ledger", file).line());
      InspectionNotice.tell(found, terminal);
    }
    return found.sound() ? ExitCode.FINE : ExitCode.PROOF;
  }
}
