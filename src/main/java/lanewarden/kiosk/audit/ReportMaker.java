package lanewarden.kiosk.audit;

import java.nio.file.Path;
import java.util.function.Consumer;
import lanewarden.audit.AuditReport;
import lanewarden.audit.ReportEdition;
import lanewarden.audit.press.Progress;

/** Makes the audit report of a ledger. */
@FunctionalInterface
public interface ReportMaker {

  /**
   * Makes the report. Called off the screen's thread; tells of its progress on its own.
   *
   * @param ledger the ledger's file, which may be open
   * @param pdf the file to write
   * @param edition what stands in it, and who seals it
   * @throws Exception whatever keeps it from being made; the screen shows it
   */
  AuditReport.Written make(
      Path ledger, Path pdf, ReportEdition edition, Consumer<? super Progress> progress)
      throws Exception;
}
