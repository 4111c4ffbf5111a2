package lanewarden.station;

import java.util.List;
import java.util.Map;
import java.util.Optional;
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
 * @param officials every name that was ever enrolled, by the thumbprint of its key
 */
public record Dossier(
    CheckView check,
    List<CheckView> rechecks,
    List<Protest> protests,
    List<Correction> corrections,
    long counting,
    Map<String, String> officials) {

  /** Copies the lists. */
  public Dossier {
    rechecks = List.copyOf(rechecks);
    protests = List.copyOf(protests);
    corrections = List.copyOf(corrections);
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
