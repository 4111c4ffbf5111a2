package lanewarden.ledger;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.Collection;
import java.util.function.Consumer;

/**
 * Entries outside a ledger: a text file, UTF-8, one entry a line, in their order.
 *
 * <p>The form is told in {@code ledger-format.md}. What such a file proves is what the ledger
 * proves: every signature and link is in it.
 */
public final class ExportedEntries {

  private ExportedEntries() {}

  /** Writes the line of an entry, with its line end. */
  public static void write(Entry entry, OutputStream out) throws IOException {
    out.write(EntryLine.of(entry));
    out.write('\n');
  }

  /**
   * Verifies a file of exported entries as {@link Verification#of(Path, Collection, Consumer)}
   * verifies a ledger; that every line says what is signed in it belongs to it.
   *
   * @throws LedgerException when the file cannot be read at all
   */
  public static Verification verify(
      Path lines, Collection<PrintedHead> printed, Consumer<? super Examined> reader)
      throws LedgerException {
    try (LineRows rows = new LineRows(lines)) {
      return new Verifier(rows, new Heads(printed), reader).verify();
    }
  }

  /**
   * Makes a ledger file of exported entries, byte for byte those that were signed, while verifying
   * them. The ledger appears whole, or not at all when anything is wrong with the entries.
   *
   * @param ledger there must be nothing at this path, and its folder must be there
   * @return what the verification found; where it is not sound, no ledger was made
   * @throws LedgerException {@code LEDGER-EXISTS} when the path is taken; or when either file
   *     cannot be used
   */
  public static Verification makeLedger(Path lines, Path ledger, Collection<PrintedHead> printed)
      throws LedgerException {
    try (LedgerCopy copy = LedgerCopy.at(ledger)) {
      Verification found = verify(lines, printed, copy);
      if (found.sound()) {
        copy.deliver();
      }
      return found;
    }
  }
}
