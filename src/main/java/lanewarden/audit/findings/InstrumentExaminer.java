package lanewarden.audit.findings;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.ReadingMark;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Fact;
import lanewarden.journal.InstrumentVerification;
import lanewarden.journal.Occasion;
import lanewarden.journal.SecondReading;
import lanewarden.journal.Standing;

/**
 * Looks at how the station's instrument was verified, and when.
 *
 * <p>Owned by one thread.
 */
final class InstrumentExaminer {
  private static final String LINK_UP = "up";

  private final Standing standing;
  private final List<Finding> findings;
  private final HoldExaminer holds;
  private final Set<Long> typedBesideInstrument = new HashSet<>();
  private Optional<Occasion> due = Optional.empty();
  private Optional<InstrumentVerification> running = Optional.empty();
  private Fact.VerificationPlanned plan = new Fact.VerificationPlanned(false, null, false);
  private boolean planned;
  private boolean dueAtEnd;

  InstrumentExaminer(Standing standing, List<Finding> findings) {
    this.standing = standing;
    this.findings = findings;
    this.holds = new HoldExaminer(standing, findings);
  }

  /** Notes how things stand before the next fact is folded. */
  void before() {
    holds.before();
    due = standing.verificationDue();
    running = standing.verification();
    plan = standing.verificationPlan();
    dueAtEnd = standing.verificationDueAtEnd();
  }

  /** Looks at a fact that was just folded into the standing. */
  void examine(long entry, Fact fact) {
    holds.examine(entry, fact);
    if (fact instanceof Fact.CheckOpened) {
      called(entry);
    } else if (fact instanceof Fact.VerificationPlanned now) {
      planned(entry, now);
    } else if (fact instanceof Fact.VerificationBegan) {
      began(entry);
    } else if (fact instanceof Fact.VerificationShot shot) {
      shot(entry, shot);
    } else if (fact instanceof Fact.VerificationEnded ended) {
      ended(entry, ended);
    } else if (fact instanceof Fact.StationClosed closed && dueAtEnd) {
      closed(entry, closed);
    }
  }

  private void called(long entry) {
    running.ifPresent(
        round ->
            add(
                Kind.ORDER,
                "Check " + entry + " was opened while verification " + round.number() + " went on.",
                round.number(),
                entry));
    due.ifPresent(
        occasion ->
            add(
                Kind.VERIFICATION_DUE,
                "Check "
                    + entry
                    + " was opened though a verification was due ("
                    + occasion.word()
                    + ").",
                entry));
  }

  private void planned(long entry, Fact.VerificationPlanned now) {
    if (planned) {
      add(
          Kind.EXCHANGED,
          "From here on verifications are due "
              + Wording.plan(now)
              + "; before it was "
              + Wording.plan(plan)
              + ".",
          entry);
    }
    planned = true;
  }

  private void began(long entry) {
    running.ifPresent(
        other ->
            add(
                Kind.ORDER,
                "Verification " + entry + " began while " + other.number() + " went on.",
                other.number(),
                entry));
    standing
        .current()
        .ifPresent(
            check ->
                add(
                    Kind.ORDER,
                    "Verification "
                        + entry
                        + " began while check "
                        + check.number()
                        + " was at the line.",
                    check.number(),
                    entry));
  }

  private void shot(long entry, Fact.VerificationShot shot) {
    InstrumentVerification round = verification(shot.verification());
    if (isTyped(shot)) {
      typed(entry, shot);
    }
    if (round.ended().isPresent()
        || shot.shot() != round.shots().size()
        || shot.shot() > round.began().shots()) {
      add(
          Kind.ORDER,
          "Verification " + round.number() + ": entry " + entry + " is no shot that it lacked.",
          round.number(),
          entry);
    }
    if (round.began().known() != null && !round.began().known().equals(shot.reference())) {
      heldAgainstAnother(
          entry, round, shot, "but the reference was agreed to be " + round.began().known());
    }
    confirmed(entry, round, shot);
  }

  /** Where nothing was agreed beforehand, the second instrument's own value is the reference. */
  private void confirmed(long entry, InstrumentVerification round, Fact.VerificationShot shot) {
    SecondReading second = shot.second();
    if (second != null
        && round.began().known() == null
        && !second.speed().equals(shot.reference())) {
      heldAgainstAnother(
          entry, round, shot, "but the second instrument measured " + second.speed());
    }
  }

  private void heldAgainstAnother(
      long entry, InstrumentVerification round, Fact.VerificationShot shot, String but) {
    add(
        Kind.VERIFICATION,
        "Verification "
            + round.number()
            + ": shot "
            + shot.shot()
            + " is held against "
            + reference(shot)
            + ", "
            + but
            + ".",
        round.number(),
        entry);
  }

  private static String reference(Fact.VerificationShot shot) {
    return shot.reference() == null ? "nothing" : shot.reference().toString();
  }

  private void typed(long entry, Fact.VerificationShot shot) {
    add(
        Kind.TYPED,
        "Verification " + shot.verification() + ", shot " + shot.shot() + ": " + shot.speed() + ".",
        entry);
    if (standing.link().filter(link -> link.state().equals(LINK_UP)).isPresent()) {
      typedBesideInstrument.add(entry);
    }
  }

  private void ended(long entry, Fact.VerificationEnded ended) {
    InstrumentVerification round = verification(ended.verification());
    String name = "Verification " + round.number();
    VerificationOutcome outcome = VerificationOutcome.of(round);
    boolean brokenOff = ended.reason() != null;
    if (ended.passed() && (brokenOff || !outcome.passes())) {
      add(
          Kind.VERIFICATION,
          name + " was signed as passed, but: " + outcome.words() + ".",
          round.number(),
          entry);
    } else if (!ended.passed() && !brokenOff && outcome.passes()) {
      add(
          Kind.VERIFICATION,
          name + " was signed as out of its limits, but: " + outcome.words() + ".",
          round.number(),
          entry);
    }
    if (!ended.passed()) {
      notPassed(entry, round, ended, outcome);
    } else if (isTypedBesideInstrument(round)) {
      add(
          Kind.VERIFICATION_TYPED,
          name
              + " passed on typed values alone, although the instrument was connected: nothing that"
              + " it sent shows that they are its readings.",
          round.number(),
          entry);
    }
  }

  private void notPassed(
      long entry,
      InstrumentVerification round,
      Fact.VerificationEnded ended,
      VerificationOutcome outcome) {
    boolean brokenOff = ended.reason() != null;
    add(
        Kind.VERIFICATION_OUT,
        "Verification "
            + round.number()
            + " ("
            + round.began().occasion()
            + "): "
            + ended.words()
            + (brokenOff ? ", " + Wording.quoted(ended.reason() + "") : "")
            + "."
            + (brokenOff && outcome.convicts() ? seenAlready(outcome) : ""),
        round.number(),
        entry);
  }

  /** Whoever breaks off a verification that goes wrong does not hide what it showed. */
  private String seenAlready(VerificationOutcome outcome) {
    List<Long> since = standing.checksSinceGood();
    return " The shots taken were out of its limits already: "
        + outcome.words()
        + ". Decided since the last good verification: "
        + (since.isEmpty() ? "no check" : "checks " + Wording.numbers(since))
        + ".";
  }

  private boolean isTypedBesideInstrument(InstrumentVerification round) {
    return round.shots().stream().allMatch(shot -> isTyped(shot.fact()))
        && round.shots().stream().anyMatch(shot -> typedBesideInstrument.contains(shot.sequence()));
  }

  private static boolean isTyped(Fact.VerificationShot shot) {
    return shot.source().equals(ReadingMark.TYPED);
  }

  private void closed(long entry, Fact.StationClosed closed) {
    String reason = closed.reason();
    add(
        reason == null ? Kind.VERIFICATION_DUE : Kind.VERIFICATION_SKIPPED,
        "The line closed without the verification that was due"
            + (reason == null
                ? ", and no reason was signed."
                : ": " + Wording.quoted(reason) + "."),
        entry);
  }

  /** Looks at what is left open when the last entry is folded. */
  void finish() {
    holds.finish();
  }

  private InstrumentVerification verification(long number) {
    return standing.verifications().stream()
        .filter(round -> round.number() == number)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("verification " + number + " was not folded"));
  }

  private void add(Kind kind, String words, Long... entries) {
    findings.add(Finding.of(kind, words, entries));
  }
}
