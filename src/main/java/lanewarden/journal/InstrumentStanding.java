package lanewarden.journal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * How far the station's instrument can be believed: its verifications and the holds of the line.
 *
 * <p>Owned by the standing's thread.
 */
final class InstrumentStanding {
  private final Map<Long, InstrumentVerification> verifications = new LinkedHashMap<>();
  private final Map<Long, Hold> holds = new LinkedHashMap<>();
  private Fact.VerificationPlanned plan = new Fact.VerificationPlanned(false, null, false);
  private final NavigableMap<Long, Fact.StationOpened> openings = new TreeMap<>();

  /** The line opened with this entry, or another instrument, profile or program took over. */
  void opened(long sequence, Fact.StationOpened fact) {
    openings.put(sequence, fact);
  }

  /** Where it stood when an entry was written, if that was said. */
  Optional<Place> place(long entry) {
    return Optional.ofNullable(openings.lowerEntry(entry)).map(at -> at.getValue().place());
  }

  private long opened() {
    return openings.isEmpty() ? 0 : openings.lastKey();
  }

  /** Takes a fact if it is about the instrument. */
  boolean fold(long sequence, Instant at, String signer, Fact fact) {
    if (fact instanceof Fact.VerificationPlanned planned) {
      plan = planned;
    } else if (fact instanceof Fact.VerificationBegan began) {
      put(new InstrumentVerification(sequence, began, at, signer, List.of(), Optional.empty()));
    } else if (fact instanceof Fact.VerificationShot shot) {
      put(verification(shot.verification()).take(sequence, shot));
    } else if (fact instanceof Fact.ReferenceTyped typed) {
      put(verification(typed.verification()).take(typed));
    } else if (fact instanceof Fact.VerificationEnded ended) {
      put(
          verification(ended.verification())
              .end(new InstrumentVerification.Ended(sequence, ended)));
    } else {
      return false;
    }
    return true;
  }

  private void put(InstrumentVerification verification) {
    verifications.put(verification.number(), verification);
  }

  private InstrumentVerification verification(long number) {
    InstrumentVerification verification = verifications.get(number);
    if (verification == null) {
      throw new IllegalArgumentException("there is no verification " + number);
    }
    return verification;
  }

  void hold(Hold hold) {
    holds.put(hold.number(), hold);
  }

  /** The hold, lifted. */
  Hold lift(Fact.HoldLifted fact) {
    Hold hold = holds.get(fact.hold());
    if (hold == null) {
      throw new IllegalArgumentException("there is no hold " + fact.hold());
    }
    Hold lifted = hold.lift(fact);
    holds.put(lifted.number(), lifted);
    return lifted;
  }

  /** Whether a hold puts this check in question. */
  boolean questions(long check) {
    return holds.values().stream()
        .anyMatch(hold -> hold.questions() && hold.fact().checks().contains(check));
  }

  List<InstrumentVerification> verifications() {
    return List.copyOf(verifications.values());
  }

  List<Hold> holds() {
    return new ArrayList<>(holds.values());
  }

  Fact.VerificationPlanned plan() {
    return plan;
  }

  Optional<InstrumentVerification> running() {
    return last().filter(InstrumentVerification::isRunning);
  }

  private Optional<InstrumentVerification> last() {
    return verifications.values().stream().reduce((earlier, later) -> later);
  }

  Optional<InstrumentVerification> good() {
    return verifications.values().stream()
        .filter(InstrumentVerification::isGood)
        .reduce((earlier, later) -> later);
  }

  /** The entry with which the last good verification ended; 0 before the first. */
  private long goodSince() {
    return good()
        .flatMap(InstrumentVerification::ended)
        .map(InstrumentVerification.Ended::sequence)
        .orElse(0L);
  }

  /** Whether a verdict of the check, or its opening, came after an entry. */
  private static boolean isAfter(long sequence, Check check) {
    return check.number() > sequence
        || check.verdict().filter(given -> given.sequence() > sequence).isPresent();
  }

  List<Long> sinceGood(Collection<Check> checks) {
    long since = goodSince();
    return checks.stream()
        .filter(Check::restsOnInstrument)
        .filter(check -> isAfter(since, check))
        .map(Check::number)
        .toList();
  }

  Optional<Occasion> due(Collection<Check> checks) {
    if (plan.beforeOpening() && opened() > goodSince()) {
      return Optional.of(Occasion.OPENING);
    }
    OptionalInt left = callsLeft(checks);
    return left.isPresent() && left.getAsInt() == 0
        ? Optional.of(Occasion.INTERVAL)
        : Optional.empty();
  }

  OptionalInt callsLeft(Collection<Check> checks) {
    Integer every = plan.every();
    if (every == null) {
      return OptionalInt.empty();
    }
    long since = goodSince();
    long called =
        checks.stream()
            .filter(check -> check.number() > since)
            .map(check -> check.opened().bib())
            .distinct()
            .count();
    return OptionalInt.of((int) Math.max(0, every - called));
  }

  boolean dueAtEnd(Collection<Check> checks) {
    long since = goodSince();
    return plan.atEnd() && checks.stream().anyMatch(c -> !c.shots().isEmpty() && isAfter(since, c));
  }
}
