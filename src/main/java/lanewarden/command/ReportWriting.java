package lanewarden.command;

import java.nio.file.Path;
import lanewarden.audit.AuditReport;
import lanewarden.audit.AuditSummary;
import lanewarden.audit.ReportEdition;
import lanewarden.station.SignedPapers;

/** Writes a report and says how far it is. */
final class ReportWriting {
  private final Workplace workplace;

  ReportWriting(Workplace workplace) {
    this.workplace = workplace;
  }

  AuditSummary write(Path ledger, Path pdf) throws Exception {
    return write(ledger, pdf, ReportEdition.plain()).summary();
  }

  AuditReport.Written write(Path ledger, Path pdf, ReportEdition edition) throws Exception {
    return new AuditReport(workplace.here().clock(), SignedPapers::of)
        .write(ledger, pdf, edition, new Steps(workplace.terminal()));
  }
}
