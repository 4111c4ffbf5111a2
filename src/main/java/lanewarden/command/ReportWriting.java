package lanewarden.command;

import java.nio.file.Path;
import lanewarden.audit.AuditReport;
import lanewarden.audit.AuditSummary;

/** Writes a report and says how far it is. */
final class ReportWriting {
  private final Workplace workplace;

  ReportWriting(Workplace workplace) {
    this.workplace = workplace;
  }

  AuditSummary write(Path ledger, Path pdf) throws Exception {
    return new AuditReport(workplace.here().clock())
        .write(ledger, pdf, new Steps(workplace.terminal()));
  }
}
