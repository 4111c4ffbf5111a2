package lanewarden.audit;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanewarden.audit.findings.Finding;
import lanewarden.journal.Outcome;
import lanewarden.ledger.Head;
import lanewarden.ledger.LedgerFault;

/**
 * What a report says, in figures.
 *
 * @param entries how many entries the ledger has, faulty ones included
 * @param checks how many checks were opened
 * @param competitors how many competitors were checked at least once
 * @param outcomes how many checks that count ended with each outcome; every outcome is there
 * @param withoutVerdict how many checks have no verdict, those in question left out
 * @param inQuestion how many checks a hold of the line puts in question, whatever their outcome
 * @param faults what verification found wrong; none in a sound ledger
 * @param findings what an opponent should look at, the gravest first
 * @param head the ledger's last entry; nothing where none could be read
 */
public record AuditSummary(
    long entries,
    int checks,
    int competitors,
    Map<Outcome, Integer> outcomes,
    int withoutVerdict,
    int inQuestion,
    List<LedgerFault> faults,
    List<Finding> findings,
    Optional<Head> head) {

  /**
   * Something that verification found wrong, for those who know no ledger.
   *
   * @param entry its number; 0 for the file as a whole
   * @param kind the same word for every fault of its kind
   * @param words in plain words
   */
  public record Wrong(long entry, String kind, String words) {}

  /** Copies the map and the lists. */
  public AuditSummary {
    Map<Outcome, Integer> every = new EnumMap<>(Outcome.class);
    for (Outcome outcome : Outcome.values()) {
      every.put(outcome, outcomes.getOrDefault(outcome, 0));
    }
    outcomes = Collections.unmodifiableMap(every);
    faults = List.copyOf(faults);
    findings = List.copyOf(findings);
  }

  /** Whether the ledger's signatures and chain are whole. */
  public boolean sound() {
    return faults.isEmpty();
  }

  /** Every fault, in words. */
  public List<Wrong> wrong() {
    return faults.stream()
        .map(fault -> new Wrong(fault.sequence(), fault.kind().word(), fault.words()))
        .toList();
  }

  /** The findings where the ledger contradicts its own rules. */
  public List<Finding> contradictions() {
    return findings.stream().filter(Finding::isContradiction).toList();
  }
}
