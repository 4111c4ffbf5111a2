package lanewarden.audit.findings;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.ReadingMark;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.Flood;
import lanewarden.journal.Interpreter.Before;
import lanewarden.journal.Interpreter.Heard;
import lanewarden.journal.Interpreter.Interpretation;
import lanewarden.journal.SecondReading;
import lanewarden.journal.Standing;
import lanewarden.journal.Untimely;
import lanewarden.ledger.Entry;
import lanewarden.rules.Division;
import lanewarden.rules.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * Looks whether every refused line was refused for the reason that was signed: by its bytes and the
 * papers of its opening, by what the instrument had sent before it, and by what stood at the line.
 *
 * <p>What a practice took stands in no entry, so a line that came twice while no check ran is not
 * held against the one before it. Owned by one thread.
 */
final class RefusedExaminer {
  private static final String TORN = "torn";
  private static final String OVERLONG = "overlong";

  private static final String UP = "up";

  private final Standing standing;
  private final Attendance attendance;
  private final ClockExaminer clock;
  private final List<Finding> findings;
  private final Map<String, Sent> byInstrument = new HashMap<>();
  private final Deque<Fact.LineRefused> written = new ArrayDeque<>();
  private long program;
  private boolean linked;

  /** What is remembered of an instrument since its link opened. */
  private static final class Sent {
    private Optional<Heard> last = Optional.empty();
    private Optional<Instant> at = Optional.empty();
    private Duration jumped = Duration.ZERO;
    private boolean midway = true;
    private boolean overlong;
    private boolean uncertain;
  }

  /**
   * @param attendance has looked at each fact before this does
   * @param clock has looked at each entry before this does
   */
  RefusedExaminer(
      Standing standing, Attendance attendance, ClockExaminer clock, List<Finding> findings) {
    this.standing = standing;
    this.attendance = attendance;
    this.clock = clock;
    this.findings = findings;
  }

  /** Looks at a fact that was just folded into the standing. */
  void examine(Entry entry, Fact fact, Optional<Interpretation> papers) {
    if (program != clock.opening()) {
      program = clock.opening();
      linked = false;
      joined();
    }
    if (fact instanceof Fact.LinkChanged link) {
      linked(link.state().equals(UP));
    } else if (fact instanceof Fact.LineRefused line) {
      boolean unseen = papers.isPresent() && sent(line.instrument()).uncertain;
      findings.add(
          RefusedNote.of(
              entry.sequence(), line, standing, papers.flatMap(p -> p.says(line)), unseen));
    }
    papers.ifPresent(
        known -> {
          if (fact instanceof Fact.ReadingTaken taken) {
            taken(
                known, taken.instrument(), taken.source(), taken.raw(), taken.second(), taken.at());
          } else if (fact instanceof Fact.VerificationShot shot) {
            taken(known, shot.instrument(), shot.source(), shot.raw(), shot.second(), shot.at());
          } else if (fact instanceof Fact.LineRefused line) {
            refused(entry.sequence(), line, known);
          }
        });
  }

  /** Only a link that was not there before may begin in the middle of a line. */
  private void linked(boolean now) {
    if (!now || !linked) {
      joined();
    }
    linked = now;
  }

  private void joined() {
    byInstrument.values().forEach(sent -> sent.midway = true);
  }

  private void taken(
      Interpretation papers,
      String instrument,
      String source,
      String raw,
      @Nullable SecondReading second,
      Instant at) {
    if (!ReadingMark.isHeard(source)) {
      return;
    }
    // What was heard shows that the link was there, whether an entry says so or not
    linked = true;
    remember(instrument, papers.heard(instrument, source, raw), at);
    if (second != null) {
      remember(second.instrument(), papers.heard(second.instrument(), source, second.raw()), at);
    }
  }

  private void remember(String instrument, Optional<Heard> heard, Instant at) {
    Sent sent = sent(instrument);
    sent.midway = false;
    sent.overlong = false;
    if (heard.isPresent()) {
      sent.last = heard;
      sent.at = Optional.of(at);
      sent.jumped = clock.jumped();
      sent.uncertain = false;
    }
  }

  private Sent sent(String instrument) {
    return byInstrument.computeIfAbsent(instrument, name -> new Sent());
  }

  private void refused(long entry, Fact.LineRefused line, Interpretation papers) {
    if (line.reason().equals(Flood.REASON)) {
      flood(entry, line);
      byInstrument.values().forEach(sent -> sent.uncertain = true);
      return;
    }
    written.addLast(line);
    if (written.size() > Flood.MOST + 1) {
      written.removeFirst();
    }
    Optional<Heard> heard = papers.heard(line.instrument(), line.source(), line.raw());
    List<String> against = new ArrayList<>(papers.against(line, before(line)));
    if (against.isEmpty()) {
      Untimely.of(line.reason()).flatMap(reason -> against(reason, line)).ifPresent(against::add);
      elsewhere(line).ifPresent(against::add);
    }
    if (!against.isEmpty()) {
      tell(entry, line, String.join("; ", against));
    }
    follow(line, heard);
  }

  private void tell(long entry, Fact.LineRefused line, String against) {
    findings.add(
        Finding.of(
            Kind.REFUSED,
            (line.check() == null ? "A line" : "Check " + line.check() + ": a line")
                + " was refused as "
                + Wording.quoted(line.reason())
                + ", but "
                + against
                + ".",
            entry));
  }

  private Before before(Fact.LineRefused line) {
    Sent sent = sent(line.instrument());
    boolean inCheck =
        standing.current().stream()
            .flatMap(check -> check.shots().stream())
            .map(shot -> shot.reading())
            .anyMatch(taken -> taken.line() != null && taken.raw().equals(line.raw()));
    return new Before(
        sent.last,
        sent.at.map(at -> elapsed(at, line.at(), clock.jumped().minus(sent.jumped))),
        sent.midway,
        sent.overlong,
        sent.uncertain || inCheck || (standing.current().isEmpty() && isRepeat(line)));
  }

  /** A clock that was set back meanwhile makes no line come before the one before it. */
  private static Duration elapsed(Instant from, Instant to, Duration jumped) {
    Duration shown = Duration.between(from, to);
    return shown.isNegative() && !shown.plus(jumped).isNegative() ? Duration.ZERO : shown;
  }

  private static boolean isRepeat(Fact.LineRefused line) {
    return line.reason().equals(Untimely.REPEATED.word());
  }

  /** How the instrument's next line stands after this one. */
  private void follow(Fact.LineRefused line, Optional<Heard> heard) {
    Sent sent = sent(line.instrument());
    sent.overlong = line.reason().equals(OVERLONG);
    sent.midway = line.reason().equals(TORN) || sent.overlong;
    if (heard.isPresent() && !sent.midway && !isRepeat(line)) {
      remember(line.instrument(), heard, line.at());
    }
  }

  /** A flood is counted only after so many lines of one second that were written. */
  private void flood(long entry, Fact.LineRefused line) {
    boolean follows =
        written.size() > Flood.MOST
            && written.stream()
                .allMatch(
                    one ->
                        Objects.equals(one.check(), line.check())
                            && one.at().plus(Flood.SECOND).isAfter(line.at()));
    if (!follows) {
      findings.add(
          Finding.of(
              Kind.REFUSED,
              Wording.count(Flood.lines(line), "line was", "lines were")
                  + " only counted, as of a flood, but the "
                  + (Flood.MOST + 1)
                  + " lines that a station writes before it counts do not stand within the second"
                  + " before.",
              entry));
    }
  }

  /** What stood at the line must be what made a good reading count for nobody. */
  private Optional<String> against(Untimely reason, Fact.LineRefused line) {
    boolean verified = standing.verification().isPresent();
    boolean held = standing.hold().isPresent();
    boolean clear = standing.stop().isEmpty();
    Optional<Check> check = standing.current();
    boolean fits =
        switch (reason) {
          case STOPPED -> !clear;
          case NO_SHOT -> verified && clear;
          case HELD -> held && !verified && clear;
          case OFF_DUTY -> attendance.catchesUp() && !attendance.was(line.at());
          case NO_COMPETITOR -> check.isEmpty() && !held && !verified && clear;
          case DECIDED -> clear && check.filter(c -> c.outcome().isPresent()).isPresent();
          case NOT_ASKED -> clear && check.filter(c -> !takesShots(c)).isPresent();
          // What was there before is looked at with the bytes
          case REPEATED -> true;
        };
    return fits ? Optional.empty() : Optional.of(words(reason, line));
  }

  /** A line is written under the check at the line, unless nobody was there to be asked. */
  private Optional<String> elsewhere(Fact.LineRefused line) {
    Optional<Long> atLine = standing.current().map(Check::number);
    Long signed = line.check();
    if (signed != null) {
      return atLine.equals(Optional.of(signed))
          ? Optional.empty()
          : Optional.of("check " + signed + " was not at the line");
    }
    boolean ofTheWire =
        Untimely.of(line.reason()).filter(reason -> reason != Untimely.REPEATED).isEmpty();
    return ofTheWire && attendance.was(line.at())
        ? atLine.map(
            check -> "it is signed under no check, and check " + check + " was at the line")
        : Optional.empty();
  }

  private String words(Untimely reason, Fact.LineRefused line) {
    if (standing.stop().isPresent() && reason != Untimely.OFF_DUTY) {
      return "the line was not clear, for which every reading is refused";
    }
    return switch (reason) {
      case STOPPED -> "the line was not stopped";
      case NO_SHOT -> "no verification was going on";
      case HELD -> "the line was not held";
      case OFF_DUTY ->
          attendance.was(line.at())
              ? "somebody was on duty at its time"
              : "what comes while nobody is on duty is written right after the sign-in, before"
                  + " anything else";
      case NO_COMPETITOR ->
          standing
              .current()
              .map(check -> "check " + check.number() + " was at the line")
              .orElse("the line was held or the instrument verified");
      case DECIDED -> "no check at the line was decided";
      case NOT_ASKED -> "no check at the line waited for something else than a shot";
      case REPEATED -> "";
    };
  }

  private boolean takesShots(Check check) {
    Optional<Division> division =
        standing
            .ruleBook(check.ruleBook())
            .flatMap(book -> book.division(check.opened().division()));
    return check.outcome().isEmpty()
        && division
            .map(known -> check.judgedBy(known.rule()))
            .filter(Verdict::takesShots)
            .isPresent();
  }
}
