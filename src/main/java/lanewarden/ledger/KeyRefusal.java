package lanewarden.ledger;

/** Why a ledger does not take a key, in sentences for the official at the table. */
final class KeyRefusal {
  private KeyRefusal() {}

  static LedgerException suspended(String what, Suspension suspension) {
    return new LedgerException(
        "LEDGER-SUSPENDED",
        what,
        "The organizer suspended the key of "
            + suspension.official().name()
            + " with entry "
            + suspension.sequence()
            + ", for this reason: "
            + suspension.reason(),
        "Have another official sign in, or the organizer enrol a key of this official again.");
  }

  static LedgerException notEnrolled(String what, String thumbprint) {
    return new LedgerException(
        "LEDGER-NOT-ENROLLED",
        what,
        "The key " + thumbprint + " is not enrolled in this ledger.",
        "Have the organizer enrol this official, or sign in as one who is.");
  }

  static LedgerException enrolled(String name) {
    return new LedgerException(
        "LEDGER-ENROLLED",
        name + " was not enrolled.",
        "This key is enrolled already.",
        "Use it as it is, or make a new key.");
  }

  /** Refuses what only the organizer may do. */
  static void unlessOrganizer(Roll roll, SigningKey signer, String what) throws LedgerException {
    if (!roll.isOrganizer(signer.thumbprint())) {
      throw new LedgerException(
          "LEDGER-NOT-ORGANIZER",
          what,
          "Only the organizer's key enrols and suspends officials.",
          "Sign in with the organizer's key.");
    }
  }
}
