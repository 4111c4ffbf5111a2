package lanewarden.audit.findings;

import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.seal.Seal;
import lanewarden.journal.FrameFact;
import lanewarden.ledger.Entry;

/**
 * The keys that seal reports, as the ledger states them.
 *
 * <p>Owned by one thread until it is finished; then only read.
 */
public final class Seals {
  private final Map<Long, Stated> byEntry = new LinkedHashMap<>();
  private Optional<String> organizer = Optional.empty();

  @SuppressWarnings("ArrayRecordComponent") // two are never compared
  private record Stated(String signer, byte[] certificate) {}

  /** Keeps what an entry states of a seal. */
  void examine(Entry entry, FrameFact.ReportSealAdopted adopted, List<Finding> findings) {
    try {
      byte[] certificate = Base64.getDecoder().decode(adopted.certificate());
      byEntry.put(entry.sequence(), new Stated(entry.signer(), certificate));
    } catch (IllegalArgumentException notBase64) {
      findings.add(
          Finding.of(
              Kind.UNREADABLE,
              "The certificate of a report's seal is not base64.",
              entry.sequence()));
    }
  }

  /** Looks at who stated them, when all keys are known. */
  void finish(Optional<String> rootOfTrust, List<Finding> findings) {
    organizer = rootOfTrust;
    byEntry.forEach(
        (number, stated) -> {
          if (!isOrganizers(stated)) {
            findings.add(
                Finding.of(
                    Kind.SEAL,
                    "A seal of reports was stated with another key than the organizer's: "
                        + Seal.fingerprint(stated.certificate())
                        + ".",
                    number));
          }
        });
  }

  private boolean isOrganizers(Stated stated) {
    return organizer.equals(Optional.of(stated.signer()));
  }

  /** The entry with which the organizer stated this seal, if one did. */
  public Optional<Long> entryOf(Seal seal) {
    return byEntry.entrySet().stream()
        .filter(e -> isOrganizers(e.getValue()))
        .filter(e -> seal.has(e.getValue().certificate()))
        .map(Map.Entry::getKey)
        .reduce((earlier, later) -> later);
  }
}
