package lanewarden.audit.findings;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.press.Announcer;
import lanewarden.audit.press.Packed;
import lanewarden.audit.wording.Openings;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Fact;
import lanewarden.journal.FactRefused;
import lanewarden.journal.FrameFact;
import lanewarden.journal.Interpreter;
import lanewarden.journal.Standing;
import lanewarden.ledger.Entry;
import lanewarden.ledger.Examined;
import lanewarden.ledger.Verification;
import org.jspecify.annotations.Nullable;

/**
 * Folds the entries of a ledger while they are verified, and looks at each on the way.
 *
 * <p>What cannot be understood is a finding, never the end. Owned by one thread.
 */
public final class LedgerFold implements Consumer<Examined> {
  /** How many entries pass between two words to whoever waits. */
  private static final int STRIDE = 500;

  private final Standing standing = new Standing();
  private final List<Finding> findings = new ArrayList<>();
  private final CheckExaminer checks = new CheckExaminer(standing, findings);
  private final DrawExaminer draws = new DrawExaminer(standing, findings);
  private final InstrumentExaminer instrument = new InstrumentExaminer(standing, findings);
  private final StopExaminer stops = new StopExaminer(standing, findings);
  private final StationExaminer station = new StationExaminer(standing, findings);
  private final BytesExaminer bytes;
  private final PapersExaminer papers;
  private final ClockExaminer clock = new ClockExaminer(findings);
  private final Attendance attendance = new Attendance(clock);
  private final RefusedExaminer refused =
      new RefusedExaminer(standing, attendance, clock, findings);
  private final RefusedTimeExaminer refusedTimes =
      new RefusedTimeExaminer(clock, attendance, findings);
  private final ReadingTimeExaminer times = new ReadingTimeExaminer(clock, findings);
  private final RosterExaminer rosters = new RosterExaminer(standing, findings);
  private final DutyExaminer duty = new DutyExaminer(standing, findings);
  private final CheckTrail trail = new CheckTrail(standing);
  private final LineExaminer lines = new LineExaminer(findings);
  private final Openings openings = new Openings();
  private final Seals seals = new Seals();
  private final Practices practices = new Practices();
  private final Optional<Packed> entries;
  private final Map<String, Integer> signed = new HashMap<>();
  private final Set<Long> faulty = new HashSet<>();
  private final Announcer announcer;
  private final int from;
  private @Nullable Instant first;
  private @Nullable Instant last;
  private long read;

  /** A fold that keeps none of the entries themselves. */
  public LedgerFold(Interpreter interpreter, Announcer announcer, int from) {
    this(interpreter, announcer, from, false);
  }

  /**
   * @param interpreter reads anew what instruments sent
   * @param from where in the whole this work begins
   * @param keepsEntries whether the entries themselves are wanted
   */
  public LedgerFold(Interpreter interpreter, Announcer announcer, int from, boolean keepsEntries) {
    this.bytes = new BytesExaminer(interpreter, findings);
    this.papers = new PapersExaminer(interpreter, findings);
    this.entries = keepsEntries ? Optional.of(new Packed()) : Optional.empty();
    this.announcer = announcer;
    this.from = from;
  }

  @Override
  public void accept(Examined examined) {
    Entry entry = examined.entry();
    if (!examined.sound()) {
      faulty.add(entry.sequence());
    }
    entries.ifPresent(
        kept -> {
          kept.add(entry.jws());
          kept.add('\n');
        });
    signed.merge(entry.signer(), 1, Integer::sum);
    first = first == null ? entry.at() : first;
    last = entry.at();
    clock.examine(entry);
    fold(entry);
    read++;
    if (read % STRIDE == 0) {
      announcer.say("Reading the ledger: " + Wording.count(read, "entry", "entries"), from);
    }
  }

  private void fold(Entry entry) {
    instrument.before();
    stops.before();
    duty.before(entry);
    try {
      Optional<Fact> fact = standing.apply(entry);
      if (fact.isPresent()) {
        examine(entry, fact.get());
      } else {
        station.examineOther(entry);
      }
    } catch (FactRefused e) {
      findings.add(
          Finding.of(Kind.UNREADABLE, firstLine(String.valueOf(e.getMessage())), entry.sequence()));
    } catch (RuntimeException e) {
      unlooked(entry, e);
    }
  }

  private void examine(Entry entry, Fact fact) {
    long number = entry.sequence();
    List<Runnable> looks =
        List.of(
            () -> trail.note(number, fact),
            () -> attendance.examine(entry, fact),
            () -> station.examine(entry, fact, clock.opening()),
            () -> checks.examine(number, fact),
            () -> instrument.examine(number, fact),
            () -> stops.examine(number, fact),
            () -> bytes.examine(number, fact),
            () -> papers.examine(entry, fact),
            () -> refused.examine(entry, fact, bytes.papers().filter(p -> p.fault().isEmpty())),
            () -> times.examine(entry, fact),
            () -> refusedTimes.examine(entry, fact),
            () -> rosters.examine(entry, fact),
            () -> duty.examine(entry, fact),
            () -> lines.examine(number, fact, clock.opening()),
            () -> examineOnce(entry, fact));
    Optional<RuntimeException> fault = Optional.empty();
    for (Runnable look : looks) {
      try {
        look.run();
      } catch (RuntimeException e) {
        fault = fault.or(() -> Optional.of(e));
      }
    }
    fault.ifPresent(e -> unlooked(entry, e));
  }

  private void examineOnce(Entry entry, Fact fact) {
    if (fact instanceof Fact.DrawMade draw) {
      draws.examine(entry.sequence(), draw);
    } else if (fact instanceof Fact.StationOpened opened) {
      openings.add(entry.sequence(), opened);
    } else if (fact instanceof FrameFact.ReportSealAdopted adopted) {
      seals.examine(entry, adopted, findings);
    } else if (fact instanceof FrameFact.PracticeKept kept) {
      practices.add(entry, kept);
    } else if (fact instanceof FrameFact.ClockStepped step) {
      clock.examine(entry.sequence(), step);
    }
  }

  /**
   * Our own fault at one entry must be seen, and must not take the report of all others with it: no
   * signed entry may keep an opponent from reading.
   */
  private void unlooked(Entry entry, RuntimeException fault) {
    findings.add(
        Finding.of(
            Kind.UNREADABLE,
            "Entry "
                + entry.sequence()
                + " of kind "
                + entry.kind()
                + " could not be looked at to the end: "
                + fault
                + ". That is a fault of this program as well; until it is mended, read the entry"
                + " yourself, and trust nothing that rests on it.",
            entry.sequence()));
  }

  private static String firstLine(String words) {
    String line = words.lines().findFirst().orElse("");
    return line.substring(0, 1).toUpperCase(Locale.ROOT) + line.substring(1) + ".";
  }

  /** What it all amounts to, once the last entry is verified. */
  public Evidence finish(Verification verification) {
    checks.finish();
    instrument.finish();
    stops.finish();
    bytes.finish();
    duty.finish();
    lines.finish();
    new ProtestExaminer(standing, findings).finish();
    new UndecidedExaminer(standing, findings).finish();
    papers.finish(Evidence.names(verification));
    rosters.finish(Evidence.names(verification));
    station.finish(verification.officials(), verification.organizer(), verification.suspensions());
    seals.finish(verification.organizer(), findings);
    verification.faults().forEach(f -> faulty.add(f.sequence()));
    findings.sort(Comparator.comparing(Finding::kind));
    return new Evidence(
        verification,
        standing,
        findings,
        trail.finish(findings),
        signed,
        faulty,
        openings,
        seals,
        practices,
        entries,
        clock.sheet(),
        Optional.ofNullable(first),
        Optional.ofNullable(last));
  }
}
