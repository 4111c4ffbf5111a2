package lanewarden.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanewarden.audit.printing.Printers;
import lanewarden.audit.slip.SlipRefused;
import lanewarden.audit.slip.SlipSearch;
import lanewarden.audit.slip.Slips;
import lanewarden.station.EventFolder;
import lanewarden.station.SignedPapers;
import lanewarden.station.Trouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes, prints and looks up slips. */
@Command(
    description = {
      "Write the slip of a check: a small PDF for the archer or the bow; or look a slip up.",
      "The slip says what the ledger says. Its square code holds no name and no outcome: it leads"
          + " back to the ledger.",
      "Exit code 3 if a slip that was looked up does not fit the ledger, or no longer stands."
    })
final class SlipCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "FOLDER-OR-LEDGER",
      description = "An event's folder or a ledger file.")
  private Optional<Path> ledger = Optional.empty();

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "CHECK",
      description = DeskCommand.LAST_CHECK)
  private Optional<String> check = Optional.empty();

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Where to write it (default: slip-CHECK.pdf in the event's folder).")
  private Optional<Path> out = Optional.empty();

  @Mixin private PrintOption printing = new PrintOption();

  @Option(names = "--printers", description = "List the printers of the system, and do no more.")
  private boolean printers;

  @Option(
      names = "--find",
      paramLabel = "TEXT-OR-PICTURE",
      description = "Look up the slip with this text in its code, or the one in this picture.")
  private Optional<String> find = Optional.empty();

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  SlipCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    if (printers) {
      Printers.ofSystem().names().forEach(name -> tell("printer", name));
      return ExitCode.FINE;
    }
    Slips slips = new Slips(workplace.here().clock(), SignedPapers::of);
    Path file =
        EventFolder.ledgerAt(ledger.orElseThrow(() -> missing("which ledger", "FOLDER-OR-LEDGER")));
    try {
      if (find.isPresent()) {
        return found(SlipSearch.find(file, find.get(), SignedPapers::of));
      }
      return write(slips, file, check.orElseThrow(() -> missing("which check", "CHECK")));
    } catch (SlipRefused e) {
      throw new CommandRefused(
          new Trouble(
              e.what(), e.why(), e.remedy(), e.code(), Trouble.Kind.valueOf(e.nature().name())));
    }
  }

  private static CommandRefused missing(String what, String label) {
    return CommandRefused.misstep(
        "COMMAND-LINE",
        "The command was not understood.",
        "It does not say " + what + " is meant.",
        "Give " + label + "; --help says how.");
  }

  private int write(Slips slips, Path file, String which) throws Exception {
    Path pdf = out.orElseGet(() -> beside(file, which)).toAbsolutePath();
    Slips.Written slip = slips.write(file, which, pdf);
    Optional<String> printed = printing.print(pdf);
    if (json) {
      Map<String, Object> members = new LinkedHashMap<>();
      members.put("slip", pdf.toString());
      members.put("check", slip.check());
      members.put("outcome", slip.outcome());
      members.put("code", slip.text());
      printed.ifPresent(name -> members.put("printer", name));
      workplace.terminal().result(JsonLine.of(members));
    } else {
      tell("slip", pdf.toString());
      tell("check", slip.check() + ": " + slip.outcome());
      tell("code", slip.text());
      printed.ifPresent(name -> tell("printer", name));
    }
    return ExitCode.FINE;
  }

  private static Path beside(Path file, String which) {
    return file.toAbsolutePath()
        .resolveSibling("slip-" + which.replaceAll("[^\\w.-]", "_") + ".pdf");
  }

  private int found(SlipSearch.Found found) {
    if (json) {
      Map<String, Object> members = new LinkedHashMap<>();
      members.put("check", found.check());
      found.bib().ifPresent(bib -> members.put("bib", bib));
      found.printed().ifPresent(outcome -> members.put("printed", outcome));
      found.now().ifPresent(outcome -> members.put("now", outcome));
      members.put("faults", found.troubles());
      members.put("stands", found.stands());
      workplace.terminal().result(JsonLine.of(members));
    } else {
      tell("check", found.check() + found.bib().map(bib -> ", bib " + bib).orElse(""));
      found.printed().ifPresent(outcome -> tell("printed", outcome));
      found.now().ifPresent(outcome -> tell("now", outcome));
      found.troubles().forEach(trouble -> tell("fault", trouble));
      tell("stands", found.stands() ? "yes: as printed" : "NO: " + whyNot(found));
    }
    return found.stands() ? ExitCode.FINE : ExitCode.PROOF;
  }

  private static String whyNot(SlipSearch.Found found) {
    return found.troubles().isEmpty()
        ? "what counts was changed after the slip was printed"
        : "the slip and this ledger do not fit together";
  }

  private void tell(String kind, String words) {
    workplace.terminal().result(Notice.of(kind, words).line());
  }
}
