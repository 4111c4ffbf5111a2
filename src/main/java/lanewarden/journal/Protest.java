package lanewarden.journal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A protest with what was done about it, as folded from the ledger.
 *
 * @param number the sequence of the entry that filed it
 * @param at when it was filed
 * @param signer thumbprint of the key of the official who took it down
 * @param fact the check in dispute, who files, and why
 * @param objection why it is none and nothing follows from it; empty where it is one
 * @param rechecks the checks that stand beside the one in dispute, in the order opened
 * @param rulings everything that was signed as a ruling on it, in order
 */
public record Protest(
    long number,
    Instant at,
    String signer,
    ProtestFact.ProtestFiled fact,
    Optional<Objection> objection,
    List<Long> rechecks,
    List<Given> rulings) {

  /** Copies the lists. */
  public Protest {
    rechecks = List.copyOf(rechecks);
    rulings = List.copyOf(rulings);
  }

  /**
   * Something signed as a ruling.
   *
   * @param sequence of its entry
   * @param at when
   * @param signer thumbprint of the key that signed it
   * @param objection why it changes nothing; empty where it is a ruling
   */
  public record Given(
      long sequence,
      Instant at,
      String signer,
      ProtestFact.ProtestRuled fact,
      Optional<Objection> objection) {}

  /** The ruling, if a judge gave one that has no objection against it. */
  public Optional<Given> ruling() {
    return rulings.stream().filter(given -> given.objection().isEmpty()).findFirst();
  }

  /** Whether it waits for a ruling. */
  public boolean isOpen() {
    return objection.isEmpty() && ruling().isEmpty();
  }

  /** Why it is none, as a clause; empty where it is one. */
  public Optional<String> withoutEffect() {
    return objection.map(Objection::words);
  }

  /** The check in dispute, and every recheck of it. */
  public List<Long> all() {
    return Stream.concat(Stream.of(fact.check()), rechecks.stream()).toList();
  }

  /** Whether a recheck came to an outcome that can count in the place of another. */
  public static boolean settles(Check recheck) {
    return !recheck.inQuestion()
        && recheck.outcome().filter(outcome -> outcome != Outcome.NOT_DECIDED).isPresent();
  }

  Protest recheck(long check) {
    List<Long> more = new ArrayList<>(rechecks);
    more.add(check);
    return new Protest(number, at, signer, fact, objection, more, rulings);
  }

  Protest rule(Given given) {
    List<Given> more = new ArrayList<>(rulings);
    more.add(given);
    return new Protest(number, at, signer, fact, objection, rechecks, more);
  }
}
