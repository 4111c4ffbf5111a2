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

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  VerifyCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    LedgerInspection found = LedgerInspection.of(ledger, heads);
    if (json) {
      workplace.terminal().result(JsonLine.of(members(found)));
    } else {
      tell(found);
    }
    return found.sound() ? ExitCode.FINE : ExitCode.PROOF;
  }

  private void tell(LedgerInspection found) {
    tell("ledger", found.ledger().toString());
    found.station().ifPresent(station -> tell("station", station));
    tell("entries", Long.toString(found.entries()));
    found.head().ifPresent(head -> tell("head", head));
    found.organizer().ifPresent(thumbprint -> tell("organizer", thumbprint));
    found.officials().forEach(o -> tell("official", o.thumbprint() + "  " + o.name()));
    found.faults().forEach(fault -> tell("fault", fault.words()));
    int faults = found.faults().size();
    tell(
        "sound",
        faults == 0
            ? "yes: every signature and every link holds"
            : "NO: " + faults + (faults == 1 ? " fault" : " faults"));
  }

  private void tell(String kind, String words) {
    workplace.terminal().result(Notice.of(kind, words).line());
  }

  private static Map<String, Object> members(LedgerInspection found) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("ledger", found.ledger().toString());
    members.put("sound", found.sound());
    members.put("entries", found.entries());
    found.station().ifPresent(station -> members.put("station", station));
    found.head().ifPresent(head -> members.put("head", head));
    found.organizer().ifPresent(thumbprint -> members.put("organizer", thumbprint));
    members.put(
        "officials",
        found.officials().stream()
            .map(o -> Map.of("name", o.name(), "thumbprint", o.thumbprint()))
            .toList());
    members.put(
        "faults",
        found.faults().stream()
            .map(f -> Map.of("entry", f.entry(), "kind", f.kind(), "words", f.words()))
            .toList());
    return members;
  }
}
