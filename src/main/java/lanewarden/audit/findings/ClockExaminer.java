package lanewarden.audit.findings;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.FrameFact;
import lanewarden.ledger.Entry;
import org.jspecify.annotations.Nullable;

/**
 * Holds the times of the entries against the seconds since the ledger was opened, which nobody can
 * set.
 *
 * <p>Within one opening, time less seconds is the time of the opening and must stay the same; where
 * it does not, the clock was set, or the computer slept. An opening begins where the seconds begin
 * anew; or where they only grew, but are fewer than the clock went on since the entry before, at an
 * entry of a kind that stands first after an opening: then the ledger was opened after that entry.
 * Owned by one thread.
 */
final class ClockExaminer {
  /** What is less is no step: the station's own measure, for the reasons given there. */
  static final Duration LEAST = Duration.ofSeconds(2);

  /**
   * What is less may come of reading the two clocks one after the other; two programs that open the
   * ledger one after the other are further apart, since each verifies it first.
   */
  private static final Duration APART = Duration.ofMillis(100);

  /** Kinds that a station or the organizer's desk may write first after opening. */
  private static final Set<String> FIRST =
      Set.of(
          "official-signed-in",
          "rule-book-adopted",
          "official-enrolled",
          "official-suspended",
          "report-seal-adopted");

  /** Written while the ledger is made; the seconds begin when that is done. */
  private static final String MAKING = "ledger-opened";

  private static final String STEPPED = "clock-stepped";
  private static final int MICROS = 6;

  private final List<Finding> findings;
  private final List<Opening> openings = new ArrayList<>();
  private @Nullable Entry before;
  private @Nullable Instant latest;
  private Duration jumped = Duration.ZERO;

  /** One time the ledger was open for writing, as far as it was read. */
  static final class Opening {
    private final Entry first;
    private Duration origin;
    private final boolean back;
    private Duration now;
    private Duration steps = Duration.ZERO;
    private Step largest = new Step(0, Duration.ZERO);

    Opening(Entry first, boolean back) {
      this.first = first;
      this.origin = since(first);
      this.now = origin;
      this.back = back;
    }

    /** The making is done, and the seconds run from here on. */
    private void begin(Entry second) {
      origin = since(second);
      now = origin;
    }

    long entry() {
      return first.sequence();
    }

    /** Whether it began earlier than an entry before it was written, by the clock. */
    boolean isBack() {
      return back;
    }

    Step largest() {
      return largest;
    }

    /** How far the two clocks drifted apart, apart from steps. */
    Duration drift() {
      return now.minus(origin).minus(steps);
    }
  }

  /** A jump of the clock at an entry; less than zero when it went back. */
  record Step(long entry, Duration by) {}

  ClockExaminer(List<Finding> findings) {
    this.findings = findings;
  }

  /** Looks at the frame of an entry, whatever it says. */
  void examine(Entry entry) {
    Instant last = latest;
    boolean back = last != null && entry.at().isBefore(last);
    if (last != null && back) {
      findings.add(
          Finding.of(
              Kind.CLOCK,
              "Entry "
                  + entry.sequence()
                  + " is of "
                  + Wording.time(entry.at())
                  + ", earlier than an entry before it ("
                  + Wording.time(last)
                  + "). The order of the entries is the order in which they were signed.",
              entry.sequence()));
    }
    if (opens(entry)) {
      openings.add(new Opening(entry, back));
      if (last != null && back) {
        jumped = jumped.plus(Duration.between(entry.at(), last));
      }
    } else {
      follow(entry);
    }
    latest = last == null || entry.at().isAfter(last) ? entry.at() : last;
    before = entry;
  }

  /** The first entry since the ledger was opened for writing last. */
  long opening() {
    return openings.get(openings.size() - 1).entry();
  }

  /** By how much the clock jumped in all, either way, as far as it is known. */
  Duration jumped() {
    return jumped;
  }

  private boolean opens(Entry entry) {
    Entry last = before;
    if (last == null || entry.monotonicSeconds().compareTo(last.monotonicSeconds()) < 0) {
      return true;
    }
    Duration least = last.kind().equals(MAKING) ? LEAST : APART;
    return FIRST.contains(entry.kind())
        && since(entry).minus(since(last)).compareTo(least) > 0
        && Duration.between(last.at(), entry.at()).compareTo(seconds(entry)) >= 0;
  }

  private void follow(Entry entry) {
    Opening opening = openings.get(openings.size() - 1);
    Duration by = since(entry).minus(opening.now);
    if (!isStep(by) && before != null && before.kind().equals(MAKING)) {
      opening.begin(entry);
      return;
    }
    opening.now = since(entry);
    if (!isStep(by)) {
      return;
    }
    jumped = jumped.plus(by.abs());
    opening.steps = opening.steps.plus(by);
    if (by.abs().compareTo(opening.largest.by().abs()) > 0) {
      opening.largest = new Step(entry.sequence(), by);
    }
    if (!entry.kind().equals(STEPPED)) {
      findings.add(
          Finding.of(
              Kind.CLOCK_STEP,
              "Before this entry the station’s clock "
                  + jumped(by)
                  + " against its seconds since opening, and no entry tells of it.",
              entry.sequence()));
    }
  }

  /** Looks at a step that the station noticed itself. */
  void examine(long number, FrameFact.ClockStepped step) {
    findings.add(
        Finding.of(
            Kind.CLOCK_STEP,
            "The station noticed that its clock "
                + jumped(Duration.ofMillis(step.by().movePointRight(3).longValue()))
                + "; it should have shown "
                + Wording.time(step.expected())
                + ".",
            number));
  }

  private static boolean isStep(Duration by) {
    return by.abs().compareTo(LEAST) > 0;
  }

  /** How the clock went, in words. */
  static String jumped(Duration by) {
    return "jumped " + (by.isNegative() ? "back by " : "forward by ") + inSeconds(by.abs());
  }

  /** A time in seconds, to the tenth. */
  static String inSeconds(Duration time) {
    long tenths = (time.toMillis() + 50) / 100;
    return Wording.number(tenths / 10) + "." + tenths % 10 + " s";
  }

  private static Duration seconds(Entry entry) {
    BigDecimal micros = entry.monotonicSeconds().movePointRight(MICROS);
    return Duration.ofNanos(micros.longValue() * 1000);
  }

  /** The time of the opening as an entry's time and seconds give it. */
  private static Duration since(Entry entry) {
    return Duration.between(Instant.EPOCH, entry.at()).minus(seconds(entry));
  }

  /** What it amounts to. */
  ClockSheet sheet() {
    return ClockSheet.of(openings, Optional.ofNullable(latest));
  }
}
