package lanewarden.ledger;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Who may sign: the organizer, from the opening on, and each official from the enrolment on.
 *
 * <p>Folded from entries in their order. Owned by one thread at a time.
 */
final class Roll {
  private @Nullable VerifyingKey organizer;
  private final Map<String, Enrolled> officials = new LinkedHashMap<>();

  Optional<VerifyingKey> organizer() {
    return Optional.ofNullable(organizer);
  }

  List<Enrolled> officials() {
    return List.copyOf(officials.values());
  }

  Optional<Enrolled> official(String thumbprint) {
    return Optional.ofNullable(officials.get(thumbprint));
  }

  boolean isOrganizer(String thumbprint) {
    return organizer != null && organizer.thumbprint().equals(thumbprint);
  }

  boolean maySign(String thumbprint) {
    return isOrganizer(thumbprint) || officials.containsKey(thumbprint);
  }

  /** Takes what an entry says about keys; the entry's signature must have been found good. */
  Optional<LedgerFault> take(Entry entry) {
    return switch (entry.kind()) {
      case KeyNotice.OPENED -> open(entry);
      case KeyNotice.ENROLLED -> enrol(entry);
      default ->
          entry.sequence() == 1
              ? fault(entry, LedgerFault.Kind.BAD_OPENING, "does not open a ledger")
              : Optional.empty();
    };
  }

  private Optional<LedgerFault> open(Entry entry) {
    if (entry.sequence() != 1 || organizer != null) {
      return fault(entry, LedgerFault.Kind.BAD_OPENING, "opens the ledger a second time");
    }
    Optional<VerifyingKey> named = KeyNotice.key(entry.payload());
    if (named.isEmpty() || !named.get().thumbprint().equals(entry.signer())) {
      return fault(
          entry,
          LedgerFault.Kind.BAD_OPENING,
          "does not name, as the organizer's, the key that signed it");
    }
    organizer = named.get();
    return Optional.empty();
  }

  private Optional<LedgerFault> enrol(Entry entry) {
    Optional<Enrolled> named = Enrolled.of(entry);
    if (!isOrganizer(entry.signer())) {
      return badEnrolment(entry, "enrols an official, but the organizer did not sign it");
    }
    if (named.isEmpty()) {
      return badEnrolment(entry, "enrols an official without a name or a key");
    }
    if (maySign(named.get().thumbprint())) {
      return badEnrolment(entry, "enrols a key that may sign already");
    }
    officials.put(named.get().thumbprint(), named.get());
    return Optional.empty();
  }

  private static Optional<LedgerFault> badEnrolment(Entry entry, String words) {
    return fault(entry, LedgerFault.Kind.BAD_ENROLMENT, words);
  }

  private static Optional<LedgerFault> fault(Entry entry, LedgerFault.Kind kind, String words) {
    return Optional.of(
        new LedgerFault(entry.sequence(), kind, "Entry " + entry.sequence() + " " + words + "."));
  }
}
