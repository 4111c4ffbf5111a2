package lanewarden.station;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lanewarden.journal.Check;
import lanewarden.journal.Correction;
import lanewarden.journal.Protest;

/**
 * A check with everything that stands beside it; immutable.
 *
 * @param check the check, never a recheck under a protest
 * @param rechecks what was shot beside it, in the order opened
 * @param protests those against it, in the order filed
 * @param corrections of it and of its rechecks, in the order made
 * @param counting the number of the check whose outcome counts
 * @param ownKeys for each correction by its number, the keys that cannot confirm it: those of
 *     whoever made it; thumbprints
 * @param officials every name that was ever enrolled, by the thumbprint of its key
 */
public record Dossier(
    CheckView check,
    List<CheckView> rechecks,
    List<Protest> protests,
    List<Correction> corrections,
    long counting,
    Map<Long, Set<String>> ownKeys,
    Map<String, String> officials) {

  /** Copies the lists. */
  public Dossier {
    rechecks = List.copyOf(rechecks);
    protests = List.copyOf(protests);
    corrections = List.copyOf(corrections);
    ownKeys = Map.copyOf(ownKeys);
    officials = Map.copyOf(officials);
  }

  /** The check and what was shot beside it. */
  public List<CheckView> checks() {
    return Stream.concat(Stream.of(check), rechecks.stream()).toList();
  }

  /** Whose key it is; the thumbprint itself where that is not known. */
  public String nameOf(String thumbprint) {
    return officials.getOrDefault(thumbprint, thumbprint);
  }

  /** Whether this official may confirm a correction: nobody confirms their own, with any key. */
  public boolean mayConfirm(KeyOffice.Official official, Correction correction) {
    return !ownKeys.getOrDefault(correction.number(), Set.of()).contains(official.thumbprint());
  }

  /** The recheck under a protest that came to an outcome. */
  public Optional<CheckView> settled(Protest protest) {
    return rechecks.stream()
        .filter(beside -> protest.rechecks().contains(beside.check().number()))
        .filter(beside -> Protest.settles(beside.check()))
        .findFirst();
  }

  /** The recheck under a protest that is still being shot. */
  public Optional<CheckView> running(Protest protest) {
    return rechecks.stream()
        .filter(beside -> protest.rechecks().contains(beside.check().number()))
        .filter(beside -> !beside.check().isClosed() && beside.outcome().isEmpty())
        .findFirst();
  }

  /** The checks that a ruling on a protest may let count, the one in dispute first. */
  public List<Check> mayCount(Protest protest) {
    return Stream.concat(Stream.of(check.check()), settled(protest).map(CheckView::check).stream())
        .toList();
  }

  /** Whether something waits for a judge or a second person. */
  public boolean isOpen() {
    return protests.stream().anyMatch(Protest::isOpen)
        || corrections.stream().anyMatch(Correction::isOpen);
  }
}
