package lanewarden.audit;

import java.util.Optional;
import lanewarden.audit.findings.Seals;
import lanewarden.audit.seal.Seal;
import lanewarden.audit.seal.TimeStampRefused;

/**
 * What a report says of its own seal.
 *
 * @param sealed whether it carries one
 * @param heading in a few words, with a shape
 * @param words what follows from that
 * @param fingerprint SHA-256 of the certificate; empty where there is no seal
 * @param time whether somebody else vouches for the time; empty where there is no seal
 */
record SealWords(boolean sealed, String heading, String words, String fingerprint, String time) {

  /**
   * @param refused why the authority gave no time-stamp, if it gave none
   */
  static SealWords of(ReportEdition edition, Seals seals, Optional<TimeStampRefused> refused) {
    if (edition.seal().isEmpty()) {
      return new SealWords(
          false,
          "○ This report is not sealed.",
          "The file carries no signature: a change of it can be found only by making the report"
              + " again from the ledger.",
          "",
          "");
    }
    Seal seal = edition.seal().get();
    Optional<Long> entry = seals.entryOf(seal);
    return new SealWords(
        true,
        entry.isPresent() ? "● This report is sealed." : "▲ This report is sealed by a stranger.",
        "The file carries a signature that any PDF reader can check. "
            + entry
                .map(
                    e ->
                        "The organizer stated the certificate below in entry "
                            + e
                            + " of the ledger: compare it with the one that the reader shows.")
                .orElse(
                    "But no entry of this ledger in which the organizer states the certificate"
                        + " below was found: do not trust the seal."),
        seal.fingerprint(),
        time(edition, refused));
  }

  private static String time(ReportEdition edition, Optional<TimeStampRefused> refused) {
    if (edition.authority().isEmpty()) {
      return "No time-stamp: nobody but the station’s own clock vouches for when it was made.";
    }
    return refused
        .map(
            r ->
                "No time-stamp: "
                    + r.getMessage()
                    + ". Nobody but the station’s own clock vouches for when it was made.")
        .orElse(
            "With a time-stamp (RFC 3161) of "
                + edition.authority().get().url()
                + ", kept in the signature.");
  }
}
