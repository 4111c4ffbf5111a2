package lanewarden.audit.findings;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Fact;
import lanewarden.ledger.Entry;

/**
 * Looks whether a reading was made after its check was opened and before the entry that took it.
 *
 * <p>As far as the clock allows: what is known of its jumps since the check was opened is allowed
 * for, and so is what is no jump. Owned by one thread.
 */
final class ReadingTimeExaminer {
  private final ClockExaminer clock;
  private final List<Finding> findings;
  private final Map<Long, Opened> checks = new HashMap<>();

  /** When a check was opened, and by how much the clock had jumped until then. */
  private record Opened(Instant at, Duration jumped) {}

  /**
   * @param clock has looked at each entry before this does
   */
  ReadingTimeExaminer(ClockExaminer clock, List<Finding> findings) {
    this.clock = clock;
    this.findings = findings;
  }

  /** Looks at a fact that was just folded into the standing. */
  void examine(Entry entry, Fact fact) {
    if (fact instanceof Fact.CheckOpened) {
      checks.put(entry.sequence(), new Opened(entry.at(), clock.jumped()));
    } else if (fact instanceof Fact.ReadingTaken taken && checks.containsKey(taken.check())) {
      taken(entry, taken, checks.get(taken.check()));
    }
  }

  private void taken(Entry entry, Fact.ReadingTaken taken, Opened check) {
    Duration slack = ClockExaminer.LEAST.plus(clock.jumped().minus(check.jumped()));
    if (taken.at().isBefore(check.at().minus(slack))) {
      add(entry, taken, "before the check was opened", check.at(), taken.check());
    } else if (taken.at().isAfter(entry.at().plus(slack))) {
      add(entry, taken, "after the entry that took it was signed", entry.at(), entry.sequence());
    }
  }

  private void add(Entry entry, Fact.ReadingTaken taken, String how, Instant other, long number) {
    findings.add(
        Finding.of(
            Kind.READING_TIME,
            "Check "
                + taken.check()
                + ", shot "
                + taken.shot()
                + " was measured "
                + how
                + ": "
                + Wording.time(taken.at())
                + ", against "
                + Wording.time(other)
                + " of entry "
                + number
                + ".",
            entry.sequence()));
  }
}
