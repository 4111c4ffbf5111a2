package lanewarden.station;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.Base64;
import lanewarden.journal.FrameFact;
import lanewarden.ledger.KeyFile;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.SealKey;

/** The key that seals an event's reports. */
final class ReportSeal {
  private static final String UNIT = "Report seal, speed check";

  private ReportSeal() {}

  /**
   * Makes the key and puts it, under the organizer's passphrase, into the event's folder.
   *
   * @param passphrase is wiped
   * @return what the organizer is to sign
   * @throws LedgerException if there is one already, or it cannot be written
   */
  static FrameFact.ReportSealAdopted make(
      EventFolder folder,
      String station,
      String organizer,
      char[] passphrase,
      Clock clock,
      SecureRandom random)
      throws LedgerException {
    SealKey key =
        SealKey.generate(UNIT, station, clock.instant().truncatedTo(ChronoUnit.SECONDS), random);
    KeyFile.seal(folder.reportSeal(), key, organizer, passphrase, random);
    return new FrameFact.ReportSealAdopted(
        Base64.getEncoder().encodeToString(key.certificateBytes()));
  }
}
