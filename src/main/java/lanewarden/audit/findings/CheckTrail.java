package lanewarden.audit.findings;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.journal.Belonging;
import lanewarden.journal.Correction;
import lanewarden.journal.Fact;
import lanewarden.journal.ProtestFact;
import lanewarden.journal.Standing;

/**
 * Which checks each entry belongs to, so that what was found can be told of a check.
 *
 * <p>A contradiction is told of every check that one of its entries belongs to: of a reading that
 * stands twice, nobody can tell which is the copy.
 *
 * <p>Keeps two numbers an entry, for ledgers are long. Owned by one thread.
 */
final class CheckTrail {
  /** What has no effect takes nothing away from the outcome that stands. */
  private static final Set<Kind> WITHOUT_EFFECT =
      Set.of(Kind.PROTEST, Kind.RULING, Kind.CORRECTION);

  private final Standing standing;
  private final LongStream.Builder pairs = LongStream.builder();
  private long adoption;

  CheckTrail(Standing standing) {
    this.standing = standing;
  }

  /**
   * Notes the checks that a fact belongs to which was just folded into the standing, and for a
   * check the rule book that it is judged by.
   */
  void note(long entry, Fact fact) {
    if (fact instanceof Fact.RuleBookAdopted) {
      adoption = entry;
    } else if (fact instanceof Fact.CheckOpened) {
      pair(adoption, entry);
    }
    if (fact instanceof Fact.LineRefused line && line.check() == null) {
      // Whoever hides a shot leaves out whose it was: that of the check at the line
      standing.current().ifPresent(check -> pair(entry, check.number()));
    } else if (!(fact instanceof ProtestFact.CorrectionMade)) {
      Belonging.checks(entry, fact, standing).forEach(check -> pair(entry, check));
    }
  }

  private void pair(long entry, long check) {
    pairs.add(entry).add(check);
  }

  /** The contradictions of each check that has any, by its number, in the order given. */
  Map<Long, List<Finding>> finish(List<Finding> findings) {
    // What is corrected takes something away from a check only once it counts
    standing.docket().corrections().stream()
        .filter(correction -> !correction.isOpen())
        .forEach(this::corrected);
    List<Finding> own =
        findings.stream()
            .filter(found -> found.isContradiction() && !WITHOUT_EFFECT.contains(found.kind()))
            .toList();
    Map<Long, Set<Long>> checks =
        checks(own.stream().flatMap(found -> found.entries().stream()).collect(Collectors.toSet()));
    Map<Long, List<Finding>> byCheck = new HashMap<>();
    for (Finding found : own) {
      found.entries().stream()
          .flatMap(entry -> checks.getOrDefault(entry, Set.of()).stream())
          .distinct()
          .forEach(
              check ->
                  byCheck.merge(
                      check,
                      List.of(found),
                      (some, more) -> Stream.concat(some.stream(), more.stream()).toList()));
    }
    return byCheck;
  }

  private void corrected(Correction correction) {
    pair(correction.number(), correction.fact().check());
  }

  private Map<Long, Set<Long>> checks(Set<Long> entries) {
    long[] all = pairs.build().toArray();
    Map<Long, Set<Long>> checks = new HashMap<>();
    for (int i = 0; i < all.length; i += 2) {
      if (entries.contains(all[i])) {
        checks.computeIfAbsent(all[i], entry -> new HashSet<>()).add(all[i + 1]);
      }
    }
    return checks;
  }
}
