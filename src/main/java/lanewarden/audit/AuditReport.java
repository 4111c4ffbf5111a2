package lanewarden.audit;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import lanewarden.audit.findings.Evidence;
import lanewarden.audit.findings.LedgerFold;
import lanewarden.audit.press.Announcer;
import lanewarden.audit.press.Destination;
import lanewarden.audit.press.Press;
import lanewarden.audit.press.Progress;
import lanewarden.audit.seal.TimeStampRefused;
import lanewarden.journal.Interpreter;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.Verification;

/**
 * The audit report of one ledger, as a PDF: what was signed, whether it is whole, whether every
 * verdict follows, and what an opponent should look at.
 *
 * <p>Needs nothing but the ledger file, and works beside a station that is appending. May be used
 * again and by any thread; a single call stays on its caller's thread.
 */
public final class AuditReport {
  private static final int READ = 25;
  private static final int COMPOSED = 35;
  private static final int PRINTED = 95;

  private final Clock clock;
  private final Interpreter interpreter;

  /**
   * @param clock for the time the report was made
   * @param interpreter reads anew what instruments sent
   */
  public AuditReport(Clock clock, Interpreter interpreter) {
    this.clock = clock;
    this.interpreter = interpreter;
  }

  /**
   * What came of a report.
   *
   * @param summary what it says, in figures
   * @param withoutTimeStamp why it has no time-stamp although one was asked for; empty where it has
   *     one, or none was asked for
   */
  public record Written(AuditSummary summary, Optional<String> withoutTimeStamp) {}

  /**
   * Writes the whole report, unsealed.
   *
   * @return what the report says, in figures
   * @throws LedgerException as {@link #write(Path, Path, ReportEdition, Consumer)} does
   * @throws IOException as it does
   */
  public AuditSummary write(Path ledgerFile, Path pdf, Consumer<? super Progress> progress)
      throws LedgerException, IOException {
    return write(ledgerFile, pdf, ReportEdition.plain(), progress).summary();
  }

  /**
   * Reads, verifies and recomputes the ledger, and writes the report.
   *
   * <p>A ledger that is not sound is reported too, with every fault in front. The file appears
   * whole or not at all; a PDF that is there already is replaced only by a whole one. Where the
   * authority gives no time-stamp, the report is written without one and says so.
   *
   * @param ledgerFile only read
   * @param pdf its folder must be there
   * @param edition what stands in it, and who seals it
   * @param progress told on this thread, first at once and last when the file is in its place
   * @throws LedgerException if the file cannot be read as a ledger at all
   * @throws IOException if the report cannot be written, saying why and what to do
   */
  public Written write(
      Path ledgerFile, Path pdf, ReportEdition edition, Consumer<? super Progress> progress)
      throws LedgerException, IOException {
    Announcer announcer = new Announcer(progress);
    announcer.say("Reading the ledger", 0);
    Destination destination = Destination.of(pdf, ledgerFile);
    LedgerFold fold = new LedgerFold(interpreter, announcer, 0, edition.named());
    Verification verification = Verification.of(ledgerFile, List.of(), fold);
    announcer.say("Looking at every check", READ);
    Evidence evidence = fold.finish(verification);
    announcer.say("Writing the report", READ);
    AuditSummary summary = Figures.of(evidence);
    Issue issue =
        new Issue(
            evidence,
            summary,
            edition,
            clock.instant(),
            new Press(AuditReport.class, announcer, COMPOSED, PRINTED));
    Optional<TimeStampRefused> refused = issue.into(destination);
    announcer.say("The report is written", Announcer.WHOLE);
    return new Written(summary, refused.map(r -> String.valueOf(r.getMessage())));
  }
}
