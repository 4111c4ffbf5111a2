package lanewarden.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import lanewarden.audit.AuditReport;
import lanewarden.audit.AuditSummary;
import lanewarden.audit.Export;
import lanewarden.audit.ReportEdition;
import lanewarden.audit.seal.Seal;
import lanewarden.station.EventFolder;
import lanewarden.station.LedgerNames;
import lanewarden.station.SignedPapers;
import lanewarden.station.Trouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the audit report. */
@Command(
    description = {
      "Audit a ledger, and write the report as a PDF: every verdict is recomputed, and every fault,"
          + " contradiction and other finding is told, here too. Needs only the ledger file.",
      "It is set to last (PDF/A-3, PDF/UA-1); the ledger, its rule books and the papers of the line"
          + " travel inside it.",
      "Exit code 3 if the ledger is not sound or contradicts its own rules, 4 if no time-stamp was"
          + " to be had; the report is written all the same and says so."
    })
final class ReportCommand implements Callable<Integer> {
  private final Workplace workplace;

  @Parameters(paramLabel = "FOLDER-OR-LEDGER", description = "An event's folder or a ledger file.")
  private Path ledger = Path.of("");

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description =
          "Where to write it (default: audit-HEAD.pdf in the event's folder, public-HEAD.pdf for"
              + " everybody's, -sealed.pdf if it is; HEAD is the ledger's, as the report prints"
              + " it).")
  private Optional<Path> out = Optional.empty();

  @Option(
      names = "--with-verifier",
      paramLabel = "FOLDER",
      description =
          "Also make this folder with the entries and the page that verifies them, as export does.")
  private Optional<Path> verifier = Optional.empty();

  @Option(
      names = "--public",
      description =
          "Write the edition for everybody: bibs and outcomes, without names, typed words, single"
              + " readings and the ledger.")
  private boolean forEverybody;

  @Mixin private SealOptions sealing = new SealOptions();

  @Mixin private PrintOption printing = new PrintOption();

  @Option(names = "--json", description = "Answer with one JSON object.")
  private boolean json;

  ReportCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() throws Exception {
    Path file = EventFolder.ledgerAt(ledger);
    EventFolder event = folderOf(file);
    LedgerNames names = LedgerNames.of(file);
    ReportEdition edition =
        new ReportEdition(
            !forEverybody, sealing.seal(event, workplace), sealing.authority(event, workplace));
    String usual = names.report(edition.named(), edition.seal().isPresent());
    Path pdf = out.orElseGet(() -> event.path().resolve(usual)).toAbsolutePath();
    AuditReport.Written written = new ReportWriting(workplace).write(file, pdf, edition);
    AuditSummary summary = written.summary();
    Terminal terminal = workplace.terminal();
    if (verifier.isPresent()) {
      new Export(SignedPapers::of).whole(file, verifier.get(), new Steps(terminal));
    }
    if (json) {
      Map<String, Object> members = members(summary, pdf, edition);
      printing.print(pdf).ifPresent(name -> members.put("printer", name));
      terminal.result(JsonLine.of(members));
    } else {
      terminal.result(Notice.of("report", pdf.toString()).line());
      terminal.result(
          Notice.of("seal", edition.seal().map(Seal::fingerprint).orElse("none")).line());
      AuditNotice.tell(summary, terminal);
      printing.print(pdf).ifPresent(name -> terminal.result(Notice.of("printer", name).line()));
    }
    written.withoutTimeStamp().ifPresent(why -> terminal.say(Trouble.noTimeStamp(why).toString()));
    if (!isFine(summary)) {
      return ExitCode.PROOF;
    }
    return written.withoutTimeStamp().isEmpty() ? ExitCode.FINE : ExitCode.ENVIRONMENT;
  }

  /** Whether the ledger holds and every verdict in it follows. */
  static boolean isFine(AuditSummary summary) {
    return summary.sound() && summary.contradictions().isEmpty();
  }

  private static EventFolder folderOf(Path file) {
    return new EventFolder(
        Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(Path.of("")));
  }

  private static Map<String, Object> members(
      AuditSummary summary, Path pdf, ReportEdition edition) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("report", pdf.toString());
    edition.seal().ifPresent(seal -> members.put("seal", seal.fingerprint()));
    members.putAll(AuditNotice.members(summary));
    return members;
  }
}
