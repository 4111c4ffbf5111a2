package lanewarden.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanewarden.audit.AuditSummary;
import lanewarden.audit.Export;
import lanewarden.journal.Outcome;
import lanewarden.station.EventFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the audit report. */
@Command(
    description = {
      "Write the audit report of a ledger as a PDF. Needs only the ledger file.",
      "Exit code 3 if the ledger is not sound or contradicts its own rules; the report is written"
          + " all the same and says so."
    })
final class ReportCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(paramLabel = "FOLDER-OR-LEDGER", description = "An event's folder or a ledger file.")
  private Path ledger = Path.of("");

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Where to write it (default: audit-report.pdf in the event's folder).")
  private Optional<Path> out = Optional.empty();

  @Option(
      names = "--with-verifier",
      paramLabel = "FOLDER",
      description =
          "Also make this folder with the entries and the page that verifies them, as export does.")
  private Optional<Path> verifier = Optional.empty();

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  ReportCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    Path file = EventFolder.ledgerAt(ledger);
    Path pdf = out.orElseGet(() -> beside(file)).toAbsolutePath();
    AuditSummary summary = new ReportWriting(workplace).write(file, pdf);
    Terminal terminal = workplace.terminal();
    if (verifier.isPresent()) {
      new Export().whole(file, verifier.get(), new Steps(terminal));
    }
    if (json) {
      terminal.result(JsonLine.of(members(summary, pdf)));
    } else {
      terminal.result(Notice.of("report", pdf.toString()).line());
      terminal.result(Notice.of("checks", checks(summary)).line());
      summary
          .contradictions()
          .forEach(c -> terminal.result(Notice.of("finding", c.words()).line()));
      terminal.result(
          Notice.of(
                  "sound",
                  summary.sound()
                      ? "yes: every signature and every link holds"
                      : "NO: " + summary.faults().size() + " faults, listed in the report")
              .line());
    }
    return isFine(summary) ? ExitCode.FINE : ExitCode.PROOF;
  }

  /** Whether the ledger holds and every verdict in it follows. */
  static boolean isFine(AuditSummary summary) {
    return summary.sound() && summary.contradictions().isEmpty();
  }

  private static Path beside(Path file) {
    Path folder = Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(Path.of(""));
    return new EventFolder(folder).report();
  }

  private static String checks(AuditSummary summary) {
    StringBuilder words = new StringBuilder().append(summary.checks()).append(':');
    for (Outcome outcome : Outcome.values()) {
      int count = summary.outcomes().getOrDefault(outcome, 0);
      if (count > 0) {
        words.append(' ').append(count).append(' ').append(outcome.word()).append(',');
      }
    }
    return words
        .append(' ')
        .append(summary.withoutVerdict())
        .append(" without a verdict")
        .toString();
  }

  private static Map<String, Object> members(AuditSummary summary, Path pdf) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("report", pdf.toString());
    members.put("sound", summary.sound());
    members.put("contradictions", summary.contradictions().size());
    members.put("entries", summary.entries());
    members.put("checks", summary.checks());
    for (Outcome outcome : Outcome.values()) {
      members.put(outcome.word(), summary.outcomes().getOrDefault(outcome, 0));
    }
    members.put("without a verdict", summary.withoutVerdict());
    return members;
  }
}
