package lanewarden.ledger;

import java.nio.file.Path;
import java.util.Optional;

/**
 * The last entry of a ledger: its sequence and the hash of its bytes.
 *
 * <p>Whoever holds a head can tell later whether entries up to it were cut off or changed.
 */
public record Head(long sequence, Sha256 hash) {

  /**
   * The last entry of a ledger file as it is now, unverified; nothing where none can be read.
   *
   * @throws LedgerException when the file cannot be read as a ledger at all
   */
  public static Optional<Head> of(Path ledger) throws LedgerException {
    try (LedgerFile opened = LedgerFile.open(ledger, "The head of " + ledger + " was not read.")) {
      return opened.head();
    }
  }

  /** The form printed on slips and reports, such as {@code 1234-ab12cd34ef56}. */
  public String shortForm() {
    return sequence + "-" + hash.shortHex();
  }

  /** What a slip or report shows of this head. */
  public PrintedHead printed() {
    return PrintedHead.parse(shortForm());
  }
}
