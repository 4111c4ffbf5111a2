package lanewarden.command;

import java.nio.file.Path;
import lanewarden.audit.AuditReport;
import lanewarden.audit.AuditSummary;
import lanewarden.audit.Progress;

/** Writes a report and says how far it is. */
final class ReportWriting {
  private static final int WHOLE = 100;

  private final Workplace workplace;
  private String said = "";

  ReportWriting(Workplace workplace) {
    this.workplace = workplace;
  }

  AuditSummary write(Path ledger, Path pdf) throws Exception {
    return new AuditReport(workplace.here().clock()).write(ledger, pdf, this::say);
  }

  private void say(Progress progress) {
    String words =
        "%3d %% %s".formatted(WHOLE * progress.done() / progress.total(), progress.step());
    if (!words.equals(said)) {
      said = words;
      workplace.terminal().say(words);
    }
  }
}
