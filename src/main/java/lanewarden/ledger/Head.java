package lanewarden.ledger;

/**
 * The last entry of a ledger: its sequence and the hash of its bytes.
 *
 * <p>Whoever holds a head can tell later whether entries up to it were cut off or changed.
 */
public record Head(long sequence, Sha256 hash) {

  /** The form printed on slips and reports, such as {@code 1234-ab12cd34ef56}. */
  public String shortForm() {
    return sequence + "-" + hash.shortHex();
  }

  /** What a slip or report shows of this head. */
  public PrintedHead printed() {
    return PrintedHead.parse(shortForm());
  }
}
