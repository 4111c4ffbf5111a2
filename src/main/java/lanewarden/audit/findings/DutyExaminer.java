package lanewarden.audit.findings;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Belonging;
import lanewarden.journal.Correction;
import lanewarden.journal.Fact;
import lanewarden.journal.FrameFact;
import lanewarden.journal.ProtestFact;
import lanewarden.journal.Standing;
import lanewarden.ledger.Entry;

/**
 * Looks whether everything that is done at the line was signed by the official on duty, while the
 * line was open.
 *
 * <p>A station signs somebody in whenever it begins to run, so the duty of before ends where the
 * seconds since opening begin anew; the line stays open over that, as the program does not open it
 * twice. What the organizer's desk and visitors sign beside the line (draws, rule books, protests,
 * corrections, heads) is no matter here, and neither is the verdict that a confirmed correction
 * brings with it. Owned by one thread.
 */
final class DutyExaminer {
  private final Standing standing;
  private final List<Finding> findings;
  private final Map<Long, Acts> byCheck = new LinkedHashMap<>();
  private final Acts others = new Acts();
  private final Acts stops = new Acts();
  private Optional<String> onDuty = Optional.empty();
  private Optional<Confirmed> confirmed = Optional.empty();
  private BigDecimal seconds = BigDecimal.ZERO;

  /** What was signed wrongly, and why it was wrong. */
  private static final class Acts {
    private final List<Long> entries = new ArrayList<>();
    private final Set<String> reasons = new LinkedHashSet<>();
  }

  /** A correction that somebody put in effect, whose check is judged anew with it. */
  private record Confirmed(long check, String signer) {}

  DutyExaminer(Standing standing, List<Finding> findings) {
    this.standing = standing;
    this.findings = findings;
  }

  /** Looks at the frame of an entry, before what it says is folded. */
  void before(Entry entry) {
    if (entry.monotonicSeconds().compareTo(seconds) < 0) {
      onDuty = Optional.empty();
    }
    seconds = entry.monotonicSeconds();
  }

  /** Looks at a fact that was just folded into the standing. */
  void examine(Entry entry, Fact fact) {
    if (fact instanceof Fact.OfficialSignedIn) {
      onDuty = Optional.of(entry.signer());
    } else if (fact instanceof FrameFact.OfficialSignedOut || fact instanceof Fact.StationClosed) {
      onDuty = Optional.empty();
    } else if (fact instanceof ProtestFact.CorrectionConfirmed confirms) {
      confirmed =
          standing
              .docket()
              .correction(confirms.correction())
              .filter(Correction::askedAnew)
              .map(made -> new Confirmed(made.fact().check(), entry.signer()));
    } else if (Belonging.isAtTheLine(fact)) {
      check(entry, fact)
          .ifPresent(check -> act(entry, byCheck.computeIfAbsent(check, n -> new Acts())));
    } else if (isOfTheInstrument(fact)) {
      act(entry, others);
    } else if (isStop(fact)) {
      act(entry, stops);
    }
  }

  /** The check that an act at the line is of; empty where it follows a correction. */
  private Optional<Long> check(Entry entry, Fact fact) {
    boolean mayFollow = fact instanceof Fact.ReadingFlagged || fact instanceof Fact.VerdictGiven;
    return Belonging.check(entry.sequence(), fact)
        .filter(check -> !(mayFollow && followsCorrection(entry, check)));
  }

  private boolean followsCorrection(Entry entry, long check) {
    return confirmed.equals(Optional.of(new Confirmed(check, entry.signer())));
  }

  private static boolean isOfTheInstrument(Fact fact) {
    return fact instanceof Fact.VerificationBegan
        || fact instanceof Fact.VerificationShot
        || fact instanceof Fact.ReferenceTyped
        || fact instanceof Fact.VerificationEnded
        || fact instanceof Fact.LineHeld
        || fact instanceof Fact.HoldLifted;
  }

  private static boolean isStop(Fact fact) {
    return fact instanceof FrameFact.LineStopped || fact instanceof FrameFact.LineCleared;
  }

  private void act(Entry entry, Acts acts) {
    boolean wrong = false;
    if (onDuty.isEmpty()) {
      acts.reasons.add("nobody was signed in");
      wrong = true;
    } else if (!onDuty.get().equals(entry.signer())) {
      acts.reasons.add("somebody else was signed in than whose key signed");
      wrong = true;
    }
    if (standing.opened().isEmpty()) {
      acts.reasons.add("the line was not open");
      wrong = true;
    }
    if (wrong) {
      acts.entries.add(entry.sequence());
    }
  }

  /** Tells of it, a finding for each check. */
  void finish() {
    byCheck.forEach(
        (number, acts) ->
            tell(standing.find(number).map(Wording::check).orElse("Check " + number), acts));
    tell("Verifications and holds", others);
    tell("Stops of the line", stops);
  }

  private void tell(String whose, Acts acts) {
    if (!acts.entries.isEmpty()) {
      findings.add(
          new Finding(
              Kind.UNATTENDED,
              acts.entries,
              whose
                  + ": "
                  + Wording.count(acts.entries.size(), "entry", "entries")
                  + (acts.entries.size() == 1 ? " was" : " were")
                  + " signed although "
                  + String.join(", and ", acts.reasons)
                  + "."));
    }
  }
}
