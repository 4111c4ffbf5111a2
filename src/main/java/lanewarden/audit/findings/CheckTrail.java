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
import lanewarden.journal.AtTheLine;
import lanewarden.journal.Correction;
import lanewarden.journal.Fact;
import lanewarden.journal.Standing;

/**
 * Which checks each entry bears on, so that what was found can be told of a check.
 *
 * <p>Keeps two numbers an entry, for ledgers are long. Owned by one thread.
 */
final class CheckTrail {
  /** These stand for everything of their sort, of many checks; others name the culprit last. */
  private static final Set<Kind> OF_MANY = Set.of(Kind.UNATTENDED, Kind.BYTES);

  /** What has no effect takes nothing away from the outcome that stands. */
  private static final Set<Kind> WITHOUT_EFFECT = Set.of(Kind.RULING, Kind.CORRECTION);

  private final LongStream.Builder pairs = LongStream.builder();
  private long adoption;

  /** Notes the check that a fact is of, and for a check the rule book that it is judged by. */
  void note(long entry, Fact fact) {
    if (fact instanceof Fact.RuleBookAdopted) {
      adoption = entry;
    }
    AtTheLine.check(entry, fact).ifPresent(check -> pair(entry, check));
    if (fact instanceof Fact.CheckOpened) {
      pair(adoption, entry);
    }
  }

  private void pair(long entry, long check) {
    pairs.add(entry).add(check);
  }

  /** The contradictions of each check that has any, by its number, in the order given. */
  Map<Long, List<Finding>> finish(Standing standing, List<Finding> findings) {
    standing.docket().corrections().stream()
        .filter(correction -> !correction.isOpen())
        .forEach(this::corrected);
    List<Finding> own =
        findings.stream()
            .filter(found -> found.isContradiction() && !WITHOUT_EFFECT.contains(found.kind()))
            .toList();
    Map<Long, Set<Long>> checks =
        checks(own.stream().flatMap(CheckTrail::culprits).collect(Collectors.toSet()));
    Map<Long, List<Finding>> byCheck = new HashMap<>();
    for (Finding found : own) {
      culprits(found)
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

  /** A copy speaks against the later reading, a recheck against itself and not the check before. */
  private static Stream<Long> culprits(Finding found) {
    return OF_MANY.contains(found.kind())
        ? found.entries().stream()
        : found.entries().stream().max(Long::compare).stream();
  }
}
