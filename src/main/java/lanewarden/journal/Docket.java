package lanewarden.journal;

import java.util.List;
import java.util.Optional;

/**
 * Every protest and every correction, as things stand; immutable.
 *
 * @param protests in the order filed
 * @param corrections in the order made
 */
public record Docket(List<Protest> protests, List<Correction> corrections) {

  /** Copies the lists. */
  public Docket {
    protests = List.copyOf(protests);
    corrections = List.copyOf(corrections);
  }

  /** The protest that an entry filed. */
  public Optional<Protest> protest(long number) {
    return protests.stream().filter(protest -> protest.number() == number).findFirst();
  }

  /** The correction that an entry made. */
  public Optional<Correction> correction(long number) {
    return corrections.stream().filter(correction -> correction.number() == number).findFirst();
  }

  /** The protests that a check has a part in: filed against it, or it is a recheck under them. */
  public List<Protest> protestsOf(long check) {
    return protests.stream()
        .filter(protest -> protest.fact().check() == check || protest.rechecks().contains(check))
        .toList();
  }

  /** The corrections of a check, in the order made. */
  public List<Correction> correctionsOf(long check) {
    return corrections.stream().filter(one -> one.fact().check() == check).toList();
  }

  /**
   * The check that counts in the place of this one by the last ruling on the dispute, be this the
   * check in dispute or a recheck of it; empty where nothing was ruled, or this one counts.
   */
  public Optional<Long> instead(long check) {
    return protestsOf(check).stream()
        .findFirst()
        .flatMap(protest -> rulingOn(protest.fact().check()))
        .map(given -> given.fact().stands())
        .filter(stands -> stands != check);
  }

  /** The ruling that says which outcome of a check counts: the last one on it. */
  public Optional<Protest.Given> rulingOn(long check) {
    return protests.stream()
        .filter(protest -> protest.fact().check() == check)
        .flatMap(protest -> protest.ruling().stream())
        .reduce((earlier, later) -> earlier.sequence() > later.sequence() ? earlier : later);
  }
}
