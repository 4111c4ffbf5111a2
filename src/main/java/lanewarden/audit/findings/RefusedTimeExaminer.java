package lanewarden.audit.findings;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Fact;
import lanewarden.journal.FrameFact;
import lanewarden.journal.ProtestFact;
import lanewarden.ledger.Entry;
import org.jspecify.annotations.Nullable;

/**
 * Looks whether a refused line came between the entries that it must lie between.
 *
 * <p>A station writes what the instrument sends in the order in which it came, and before anything
 * that somebody does: so a line is no older than the last entry that somebody signed, no older than
 * the line before it, and no younger than its own entry. What comes while nobody is on duty waits
 * for the next sign-in: such a line is no older than the end of the duty before, or than the
 * program. The clock is allowed for as with readings. Owned by one thread.
 */
final class RefusedTimeExaminer {
  private static final int NANOS = 9;

  private final ClockExaminer clock;
  private final Attendance attendance;
  private final List<Finding> findings;
  private @Nullable Earlier done;
  private @Nullable Earlier left;
  private @Nullable Earlier heard;
  private Duration told = Duration.ZERO;
  private long program;
  private boolean visit;

  /** What a line comes after, and by how much the clock had jumped until then. */
  private record Earlier(long entry, Instant at, Duration jumped, String what) {}

  /**
   * @param clock has looked at each entry before this does
   * @param attendance has looked at each fact before this does
   */
  RefusedTimeExaminer(ClockExaminer clock, Attendance attendance, List<Finding> findings) {
    this.clock = clock;
    this.attendance = attendance;
    this.findings = findings;
  }

  /** Looks at a fact that was just folded into the standing. */
  void examine(Entry entry, Fact fact) {
    if (program != clock.opening()) {
      program = clock.opening();
      left = earlier(entry, began(entry), "the program began");
    }
    if (fact instanceof FrameFact.ClockStepped step) {
      told = told.plus(Duration.ofMillis(step.by().abs().movePointRight(3).longValue()));
    } else if (fact instanceof Fact.LineRefused line) {
      refused(entry, line);
      heard(entry, line.at());
      visit = false;
    } else if (fact instanceof Fact.ReadingTaken taken) {
      heard(entry, taken.at());
    } else if (fact instanceof Fact.VerificationShot shot) {
      heard(entry, shot.at());
    } else if (!isOfTheWire(fact)) {
      duty(entry, fact);
      done = earlier(entry, entry.at(), "entry " + entry.sequence() + " was signed");
    }
  }

  /** Follows what was heard and may come with it in one transaction, done by nobody. */
  private static boolean isOfTheWire(Fact fact) {
    return fact instanceof Fact.LinkChanged
        || fact instanceof Fact.ReadingFlagged
        || fact instanceof Fact.VerdictGiven
        || (fact instanceof Fact.VerificationEnded ended && ended.reason() == null)
        || (fact instanceof Fact.LineHeld held && held.verification() != null)
        || (fact instanceof Fact.HoldLifted lifted && lifted.verification() != null);
  }

  /** Somebody who only signs a protest goes again, and what waits goes on waiting. */
  private void duty(Entry entry, Fact fact) {
    boolean ends = fact instanceof FrameFact.OfficialSignedOut;
    if (fact instanceof Fact.StationClosed || (ends && !visit)) {
      left = earlier(entry, entry.at(), "the official left");
    }
    visit =
        fact instanceof Fact.OfficialSignedIn || (visit && (ends || fact instanceof ProtestFact));
  }

  private void heard(Entry entry, Instant at) {
    heard = earlier(entry, at, "what the instrument sent before it");
  }

  private Earlier earlier(Entry entry, Instant at, String what) {
    return new Earlier(entry.sequence(), at, jumped(), what);
  }

  private Duration jumped() {
    return clock.jumped().plus(told);
  }

  private static Instant began(Entry entry) {
    BigDecimal nanos = entry.monotonicSeconds().movePointRight(NANOS);
    return entry.at().minusNanos(nanos.longValue());
  }

  private void refused(Entry entry, Fact.LineRefused line) {
    boolean waited = attendance.catchesUp() && line.check() == null;
    Earlier floor = waited ? left : done;
    if (isBefore(line, floor) && floor != null) {
      add(entry, line, "before " + floor.what(), floor.at(), floor.entry());
    } else if (isBefore(line, heard) && heard != null) {
      add(entry, line, "before " + heard.what(), heard.at(), heard.entry());
    } else if (line.at().isAfter(entry.at().plus(slack(floor)))) {
      add(entry, line, "after its entry was signed", entry.at(), entry.sequence());
    }
  }

  private boolean isBefore(Fact.LineRefused line, @Nullable Earlier earlier) {
    return earlier != null && line.at().isBefore(earlier.at().minus(slack(earlier)));
  }

  private Duration slack(@Nullable Earlier since) {
    return ClockExaminer.LEAST.plus(since == null ? Duration.ZERO : jumped().minus(since.jumped()));
  }

  private void add(Entry entry, Fact.LineRefused line, String how, Instant other, long number) {
    findings.add(
        Finding.of(
            Kind.READING_TIME,
            (line.check() == null ? "A line" : "Check " + line.check() + ": a line")
                + " that was refused as "
                + Wording.quoted(line.reason())
                + " came "
                + how
                + ": "
                + Wording.time(line.at())
                + ", against "
                + Wording.time(other)
                + " of entry "
                + number
                + ".",
            entry.sequence()));
  }
}
