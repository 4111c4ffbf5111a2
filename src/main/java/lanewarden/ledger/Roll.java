package lanewarden.ledger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Who may sign: the organizer, from the opening on, and each official from the enrolment on, until
 * suspended.
 *
 * <p>Folded from entries in their order. Owned by one thread at a time.
 */
final class Roll {
  private @Nullable VerifyingKey organizer;
  private final List<Enrolled> enrolments = new ArrayList<>();
  private final List<Suspension> suspensions = new ArrayList<>();
  private final Map<String, Enrolled> standing = new HashMap<>();
  private final Map<String, Suspension> suspended = new HashMap<>();

  Optional<VerifyingKey> organizer() {
    return Optional.ofNullable(organizer);
  }

  /** Everybody who was enrolled, suspended or not. */
  List<Enrolled> officials() {
    return List.copyOf(enrolments);
  }

  List<Suspension> suspensions() {
    return List.copyOf(suspensions);
  }

  /** The official who may sign with this key now. */
  Optional<Enrolled> official(String thumbprint) {
    return Optional.ofNullable(standing.get(thumbprint));
  }

  /** The suspension that keeps this key from signing now. */
  Optional<Suspension> suspension(String thumbprint) {
    return Optional.ofNullable(suspended.get(thumbprint));
  }

  boolean isOrganizer(String thumbprint) {
    return organizer != null && organizer.thumbprint().equals(thumbprint);
  }

  boolean maySign(String thumbprint) {
    return isOrganizer(thumbprint) || standing.containsKey(thumbprint);
  }

  /** Takes what an entry says about keys; the entry's signature must have been found good. */
  Optional<LedgerFault> take(Entry entry) {
    return switch (entry.kind()) {
      case KeyNotice.OPENED -> open(entry);
      case KeyNotice.ENROLLED -> enrol(entry);
      case KeyNotice.SUSPENDED -> suspend(entry);
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
    enrolments.add(named.get());
    standing.put(named.get().thumbprint(), named.get());
    suspended.remove(named.get().thumbprint());
    return Optional.empty();
  }

  private Optional<LedgerFault> suspend(Entry entry) {
    Optional<Enrolled> named =
        KeyNotice.key(entry.payload()).flatMap(key -> official(key.thumbprint()));
    Optional<String> reason = KeyNotice.reason(entry.payload());
    if (!isOrganizer(entry.signer())) {
      return badSuspension(entry, "suspends an official, but the organizer did not sign it");
    }
    if (named.isEmpty() || reason.isEmpty()) {
      return badSuspension(entry, "suspends nobody who may sign, or gives no reason");
    }
    Suspension suspension = new Suspension(named.get(), reason.get(), entry.sequence());
    suspensions.add(suspension);
    standing.remove(named.get().thumbprint());
    suspended.put(named.get().thumbprint(), suspension);
    return Optional.empty();
  }

  private static Optional<LedgerFault> badSuspension(Entry entry, String words) {
    return fault(entry, LedgerFault.Kind.BAD_SUSPENSION, words);
  }

  private static Optional<LedgerFault> badEnrolment(Entry entry, String words) {
    return fault(entry, LedgerFault.Kind.BAD_ENROLMENT, words);
  }

  private static Optional<LedgerFault> fault(Entry entry, LedgerFault.Kind kind, String words) {
    return Optional.of(
        new LedgerFault(entry.sequence(), kind, "Entry " + entry.sequence() + " " + words + "."));
  }
}
