package lanewarden.kiosk.audit;

import java.nio.file.Path;
import java.util.function.Consumer;

/** Makes the audit report of a ledger. */
@FunctionalInterface
public interface ReportMaker {

  /**
   * How far the making is.
   *
   * @param step what is being done
   * @param done how much of it
   * @param total how much there is, or 0 if that is not known yet
   */
  record Progress(String step, int done, int total) {}

  /**
   * Makes the report. Called off the screen's thread; tells of its progress on its own.
   *
   * @param ledger the ledger's file, which may be open
   * @param pdf the file to write
   * @throws Exception whatever keeps it from being made; the screen shows it
   */
  void make(Path ledger, Path pdf, Consumer<Progress> progress) throws Exception;
}
