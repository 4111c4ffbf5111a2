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
import org.jspecify.annotations.Nullable;

/**
 * Looks whether a reading was made between the entries that it must lie between: after its check
 * was opened, or after the entry of its verification before it, and before the entry that took it.
 *
 * <p>As far as the clock allows: what is known of its jumps since the earlier entry is allowed for,
 * and so is what is no jump. Owned by one thread.
 */
final class ReadingTimeExaminer {
  private final ClockExaminer clock;
  private final List<Finding> findings;
  private final Map<Long, Earlier> checks = new HashMap<>();
  private final Map<Long, Earlier> verifications = new HashMap<>();

  /** The entry that a reading comes after, and by how much the clock had jumped until then. */
  private record Earlier(long entry, Instant at, Duration jumped, String what) {}

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
      checks.put(entry.sequence(), now(entry, "the check was opened"));
    } else if (fact instanceof Fact.ReadingTaken taken) {
      String where = "Check " + taken.check() + ", shot " + taken.shot();
      measured(entry, where, taken.at(), checks.get(taken.check()));
    } else if (fact instanceof Fact.VerificationBegan) {
      verifications.put(entry.sequence(), now(entry, "the verification began"));
    } else if (fact instanceof Fact.VerificationShot shot) {
      String where = "Verification " + shot.verification() + ", shot " + shot.shot();
      measured(entry, where, shot.at(), verifications.get(shot.verification()));
      verifications.put(shot.verification(), now(entry, "the shot before it was signed"));
    } else if (fact instanceof Fact.ReferenceTyped typed) {
      verifications.put(
          typed.verification(), now(entry, "the reference value of the shot before it was signed"));
    }
  }

  private Earlier now(Entry entry, String what) {
    return new Earlier(entry.sequence(), entry.at(), clock.jumped(), what);
  }

  private void measured(Entry entry, String where, Instant at, @Nullable Earlier earlier) {
    if (earlier == null) {
      return;
    }
    Duration slack = ClockExaminer.LEAST.plus(clock.jumped().minus(earlier.jumped()));
    if (at.isBefore(earlier.at().minus(slack))) {
      add(entry, where, at, "before " + earlier.what(), earlier.at(), earlier.entry());
    } else if (at.isAfter(entry.at().plus(slack))) {
      add(
          entry,
          where,
          at,
          "after the entry that took it was signed",
          entry.at(),
          entry.sequence());
    }
  }

  private void add(Entry entry, String where, Instant at, String how, Instant other, long number) {
    findings.add(
        Finding.of(
            Kind.READING_TIME,
            where
                + " was measured "
                + how
                + ": "
                + Wording.time(at)
                + ", against "
                + Wording.time(other)
                + " of entry "
                + number
                + ".",
            entry.sequence()));
  }
}
