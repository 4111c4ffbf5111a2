package lanewarden.audit;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import lanewarden.audit.findings.Evidence;
import lanewarden.audit.findings.LedgerFold;
import lanewarden.audit.press.Announcer;
import lanewarden.audit.press.Progress;
import lanewarden.journal.Interpreter;
import lanewarden.ledger.Enrolled;
import lanewarden.ledger.Entry;
import lanewarden.ledger.ExportedEntries;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.Verification;

/**
 * Writes what a ledger says into files for other programs: the entries with their proof, two tables
 * (RFC 4180), and a page that verifies the entries in a browser.
 *
 * <p>Needs nothing but the ledger file, and works beside a station that is appending. May be used
 * again and by any thread; a single call stays on its caller's thread.
 */
public final class Export {
  /** The entries, one a line. */
  public static final String ENTRIES = "entries.jsonl";

  /** The page that verifies them. */
  public static final String VERIFIER = "verify.html";

  private static final String CHECKS = "checks.csv";
  private static final String READINGS = "readings.csv";
  private static final String ORGANIZER = "the organizer";
  private static final int READ = 70;

  private final Interpreter interpreter;

  /**
   * @param interpreter reads anew what instruments sent
   */
  public Export(Interpreter interpreter) {
    this.interpreter = interpreter;
  }

  /**
   * Verifies a ledger and writes everything in it. Of a ledger that is not sound, the entries that
   * can be read are written as they are: whoever verifies them finds the same faults.
   *
   * @param folder a new or empty folder; it appears whole or not at all
   * @param progress told on this thread
   * @return what the entries amount to, with all faults
   * @throws LedgerException if the file cannot be read as a ledger at all
   * @throws IOException if the folder cannot be written, saying why and what to do
   */
  public AuditSummary whole(Path ledger, Path folder, Consumer<? super Progress> progress)
      throws LedgerException, IOException {
    return write(ledger, folder, true, progress);
  }

  /**
   * The same for everybody: the table of checks alone, with bibs and outcomes, without names,
   * contact data, single readings and words of people. The signed bytes of an entry hold names, and
   * prove nothing when they are changed.
   */
  public AuditSummary forThePublic(Path ledger, Path folder, Consumer<? super Progress> progress)
      throws LedgerException, IOException {
    return write(ledger, folder, false, progress);
  }

  private AuditSummary write(
      Path ledger, Path folder, boolean whole, Consumer<? super Progress> progress)
      throws LedgerException, IOException {
    Announcer announcer = new Announcer(progress);
    announcer.say("Reading the ledger", 0);
    try (ExportFolder target = ExportFolder.at(folder)) {
      LedgerFold fold = new LedgerFold(interpreter, announcer, 0);
      Verification verification = whole ? entries(ledger, fold, target) : fold(ledger, fold);
      Evidence evidence = fold.finish(verification);
      announcer.say("Writing the tables", READ);
      Edition edition = new Edition(whole, officials(verification));
      table(target, CHECKS, new CheckTable(evidence, edition).rows());
      if (whole) {
        table(target, READINGS, new ReadingTable(evidence).rows());
        try (OutputStream out = target.file(VERIFIER)) {
          out.write(VerifierPage.html().getBytes(StandardCharsets.UTF_8));
        }
      }
      target.deliver();
      announcer.say("The export is written", Announcer.WHOLE);
      return Figures.of(evidence);
    }
  }

  private static Verification fold(Path ledger, LedgerFold fold) throws LedgerException {
    return Verification.of(ledger, List.of(), fold);
  }

  private static Verification entries(Path ledger, LedgerFold fold, ExportFolder target)
      throws LedgerException, IOException {
    try (OutputStream out = target.file(ENTRIES)) {
      return Verification.of(
          ledger,
          List.of(),
          examined -> {
            write(examined.entry(), out);
            fold.accept(examined);
          });
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private static void write(Entry entry, OutputStream out) {
    try {
      ExportedEntries.write(entry, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, String> officials(Verification verification) {
    Map<String, String> names = new HashMap<>();
    verification.organizer().ifPresent(thumbprint -> names.put(thumbprint, ORGANIZER));
    for (Enrolled official : verification.officials()) {
      names.put(official.thumbprint(), official.name());
    }
    return names;
  }

  private static void table(ExportFolder target, String name, List<List<String>> rows)
      throws IOException {
    try (OutputStream out = target.file(name);
        CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(out)) {
      rows.forEach(csv::writeRecord);
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }
}
