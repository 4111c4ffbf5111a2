package lanewarden.audit;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lanewarden.journal.Standing;
import lanewarden.ledger.Verification;

/**
 * Everything a report rests on: what verification found, and what the entries amount to.
 *
 * @param findings the gravest first
 * @param signed how many entries each key signed, by thumbprint
 * @param faulty the numbers of the entries that are not sound
 * @param openings how the line was opened
 * @param first time of the first entry that could be read
 * @param last time of the last one
 */
record Evidence(
    Verification verification,
    Standing standing,
    List<Finding> findings,
    Map<String, Integer> signed,
    Set<Long> faulty,
    Openings openings,
    Optional<Instant> first,
    Optional<Instant> last) {

  Evidence {
    findings = List.copyOf(findings);
    signed = Map.copyOf(signed);
    faulty = Set.copyOf(faulty);
  }
}
