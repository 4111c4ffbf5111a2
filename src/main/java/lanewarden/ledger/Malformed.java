package lanewarden.ledger;

/** Stored bytes that are not an entry of this format, and why. */
final class Malformed extends Exception {
  private static final long serialVersionUID = 1L;

  private final LedgerFault.Kind kind;
  private final String why;

  Malformed(LedgerFault.Kind kind, String why) {
    // A damaged ledger may raise thousands of these; where they were raised tells nobody anything.
    super(why, null, false, false);
    this.kind = kind;
    this.why = why;
  }

  LedgerFault.Kind kind() {
    return kind;
  }

  /** The end of a sentence: "... because " + why. */
  String why() {
    return why;
  }
}
