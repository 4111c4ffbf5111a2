package lanewarden.station;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import lanewarden.ledger.Enrolled;
import lanewarden.ledger.Ledger;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.Role;
import lanewarden.ledger.SigningKey;
import lanewarden.ledger.Suspension;
import lanewarden.ledger.Verification;

/** The officials of an event as its ledger has them. */
final class People {
  private final Ledger ledger;

  People(Ledger ledger) {
    this.ledger = ledger;
  }

  /** Every key that was ever enrolled, and how it stands. */
  List<KeyOffice.Official> all() {
    return all(ledger.officials(), ledger::suspension);
  }

  /**
   * The same of a ledger that is not opened, and may be another program's to write.
   *
   * @throws StationException if it cannot be read, or is not sound
   */
  static List<KeyOffice.Official> in(Path ledger) throws StationException {
    try {
      Verification found = Verification.of(ledger);
      found.requireSound("The officials were not listed.");
      return all(found.officials(), found::suspension);
    } catch (LedgerException e) {
      throw StationException.of(e);
    }
  }

  private static List<KeyOffice.Official> all(
      List<Enrolled> enrolled, Function<String, Optional<Suspension>> suspensions) {
    Map<String, KeyOffice.Official> all = new LinkedHashMap<>();
    for (Enrolled each : enrolled) {
      Optional<KeyOffice.Suspended> suspension =
          suspensions
              .apply(each.thumbprint())
              .map(s -> new KeyOffice.Suspended(s.sequence(), s.reason()));
      all.put(
          each.thumbprint(),
          new KeyOffice.Official(
              each.name(), each.thumbprint(), each.role() == Role.JUDGE, suspension));
    }
    return List.copyOf(all.values());
  }

  /** Every name that was ever enrolled, by the thumbprint of its key. */
  Map<String, String> names() {
    return names(ledger.officials());
  }

  /** The names of those enrolled, by the thumbprint of the key. */
  static Map<String, String> names(List<Enrolled> enrolled) {
    Map<String, String> names = new LinkedHashMap<>();
    enrolled.forEach(one -> names.put(one.thumbprint(), one.name()));
    return names;
  }

  /** The official of this name who may sign now. */
  Optional<Enrolled> standing(String name) {
    return ledger.officials().stream()
        .filter(o -> o.name().equals(name.strip()))
        .flatMap(o -> ledger.official(o.thumbprint()).stream())
        .findFirst();
  }

  /**
   * The same, who must be there.
   *
   * @param what what is not done if there is no such official
   */
  Enrolled required(String name, String what) throws StationException {
    return standing(name).orElseThrow(() -> nobody(name, what));
  }

  /** The last suspension of an official of this name who may not sign now. */
  Suspension suspended(String name, String what) throws StationException {
    if (standing(name).isPresent()) {
      throw StationException.misstep(
          "NOT-SUSPENDED",
          what,
          name.strip() + " may sign already.",
          "Replace the key instead, if it is lost.");
    }
    return ledger.officials().stream()
        .filter(o -> o.name().equals(name.strip()))
        .flatMap(o -> ledger.suspension(o.thumbprint()).stream())
        .reduce((before, after) -> after.sequence() > before.sequence() ? after : before)
        .orElseThrow(() -> nobody(name, what));
  }

  private StationException nobody(String name, String what) {
    List<String> names =
        ledger.officials().stream()
            .filter(o -> ledger.official(o.thumbprint()).isPresent())
            .map(Enrolled::name)
            .distinct()
            .toList();
    return StationException.misstep(
        "NO-SUCH-OFFICIAL",
        what,
        "No such official: \"" + name.strip() + "\".",
        names.isEmpty()
            ? "Enrol an official first."
            : "Those who may sign are " + String.join(", ", names) + ". Write the name as it is.");
  }

  /** The suspension of a key that may not sign now. */
  Optional<Suspension> suspension(SigningKey key) {
    return ledger.suspension(key.thumbprint());
  }

  /** Refuses the key of an official whom the organizer suspended. */
  void requireNotSuspended(SigningKey key) throws StationException {
    Optional<Suspension> suspension = suspension(key);
    if (suspension.isPresent()) {
      throw StationException.stuck(trouble("Nobody was signed in.", suspension.get()));
    }
  }

  /** What a suspended official is told. */
  static Trouble trouble(String what, Suspension suspension) {
    return new Trouble(
        what,
        "The organizer suspended "
            + suspension.official().name()
            + " with entry "
            + suspension.sequence()
            + ", for this reason: "
            + suspension.reason(),
        "Have another official sign in, or ask the organizer.",
        "OFFICIAL-SUSPENDED",
        Trouble.Kind.USAGE);
  }
}
