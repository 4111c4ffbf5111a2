package lanewarden.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.audit.Finding.Kind;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.Hold;
import lanewarden.journal.InstrumentVerification;
import lanewarden.journal.Occasion;
import lanewarden.journal.Standing;

/**
 * Looks at how the station's instrument was verified, and at what was done while the line was held.
 *
 * <p>Owned by one thread.
 */
final class InstrumentExaminer {
  private final Standing standing;
  private final List<Finding> findings;
  private Optional<Hold> hold = Optional.empty();
  private Optional<Occasion> due = Optional.empty();
  private Optional<InstrumentVerification> running = Optional.empty();
  private Fact.VerificationPlanned plan = new Fact.VerificationPlanned(false, null, false);
  private boolean planned;
  private boolean dueAtEnd;
  private Optional<Long> owed = Optional.empty();

  InstrumentExaminer(Standing standing, List<Finding> findings) {
    this.standing = standing;
    this.findings = findings;
  }

  /** Notes how things stand before the next fact is folded. */
  void before() {
    hold = standing.hold();
    due = standing.verificationDue();
    running = standing.verification();
    plan = standing.verificationPlan();
    dueAtEnd = standing.verificationDueAtEnd();
  }

  /** Looks at a fact that was just folded into the standing. */
  void examine(long entry, Fact fact) {
    holdOwed(fact);
    if (fact instanceof Fact.CheckOpened) {
      called(entry);
    } else if (fact instanceof Fact.ReadingTaken) {
      whileHeld("A reading was taken", entry);
    } else if (fact instanceof Fact.VerdictGiven) {
      whileHeld("A verdict was given", entry);
    } else if (fact instanceof Fact.VerificationPlanned now) {
      planned(entry, now);
    } else if (fact instanceof Fact.VerificationBegan) {
      began(entry);
    } else if (fact instanceof Fact.VerificationShot shot) {
      shot(entry, shot);
    } else if (fact instanceof Fact.VerificationEnded ended) {
      ended(entry, ended);
    } else if (fact instanceof Fact.LineHeld held) {
      held(entry, held);
    } else if (fact instanceof Fact.HoldLifted lifted) {
      lifted(entry, lifted);
    } else if (fact instanceof Fact.StationClosed closed && dueAtEnd) {
      closed(entry, closed);
    }
  }

  private void called(long entry) {
    whileHeld("A check was opened", entry);
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

  private void whileHeld(String what, long entry) {
    hold.ifPresent(
        on ->
            add(
                Kind.HELD,
                what + " although entry " + on.number() + " holds the line.",
                on.number(),
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
      add(
          Kind.VERIFICATION,
          "Verification "
              + round.number()
              + ": shot "
              + shot.shot()
              + " is held against "
              + shot.reference()
              + ", but the reference was agreed to be "
              + round.began().known()
              + ".",
          round.number(),
          entry);
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
      add(
          Kind.VERIFICATION_OUT,
          name
              + " ("
              + round.began().occasion()
              + "): "
              + ended.words()
              + (brokenOff ? ", " + Wording.quoted(ended.reason() + "") : "")
              + ".",
          round.number(),
          entry);
    }
    if (!ended.passed() && !brokenOff && hold.filter(on -> !on.byHand()).isEmpty()) {
      owed = Optional.of(round.number());
    }
  }

  /** A verification out of limits holds the line with the very next entry. */
  private void holdOwed(Fact fact) {
    boolean paid =
        fact instanceof Fact.LineHeld held && owed.equals(Optional.ofNullable(held.verification()));
    if (owed.isPresent() && !paid) {
      notHeld(owed.get());
    }
    owed = Optional.empty();
  }

  private void notHeld(long round) {
    add(
        Kind.HOLD,
        "Verification " + round + " was out of its limits, and the line was not held.",
        round);
  }

  private void held(long entry, Fact.LineHeld held) {
    List<Long> should = standing.checksSinceGood();
    if (!held.checks().equals(should)) {
      add(
          Kind.HOLD,
          "The hold lists the checks "
              + Wording.numbers(held.checks())
              + "; decided since the last good verification were "
              + Wording.numbers(should)
              + ".",
          entry);
    }
    Long by = held.verification();
    if (by != null
        && verification(by)
            .ended()
            .filter(end -> !end.fact().passed() && end.fact().reason() == null)
            .isEmpty()) {
      add(
          Kind.HOLD,
          "The hold names verification " + by + ", which did not end out of its limits.",
          entry);
    }
  }

  private void lifted(long entry, Fact.HoldLifted lifted) {
    Hold on =
        standing.holds().stream()
            .filter(h -> h.number() == lifted.hold())
            .findFirst()
            .orElseThrow();
    Long by = lifted.verification();
    if (by == null && !on.byHand()) {
      add(
          Kind.HOLD,
          "A hold after a verification out of limits was lifted by hand: "
              + Wording.quoted(lifted.reason())
              + ".",
          on.number(),
          entry);
    } else if (by != null && (by < on.number() || !verification(by).isGood())) {
      add(
          Kind.HOLD,
          "A hold was lifted by verification " + by + ", which did not pass after it.",
          on.number(),
          entry);
    }
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
    owed.ifPresent(this::notHeld);
    standing.holds().forEach(this::inQuestion);
  }

  private void inQuestion(Hold on) {
    List<Long> entries = new ArrayList<>(List.of(on.number()));
    entries.addAll(on.fact().checks());
    List<String> waiting =
        on.fact().checks().stream()
            .map(this::check)
            .filter(Check::inQuestion)
            .filter(check -> !checkedAgain(check, on))
            .map(Wording::check)
            .toList();
    String end =
        on.lifted()
            .map(
                fact ->
                    " It was lifted "
                        + (fact.verification() == null
                            ? "by hand: " + Wording.quoted(fact.reason())
                            : "by verification " + fact.verification())
                        + ".")
            .orElse(" It stood at the ledger's last entry.");
    findings.add(
        new Finding(
            Kind.IN_QUESTION,
            entries,
            "The line was held: "
                + on.fact().reason()
                + ". In question: "
                + Wording.count(on.fact().checks().size(), "check")
                + "."
                + end
                + (waiting.isEmpty()
                    ? ""
                    : " Not checked again afterwards: " + String.join("; ", waiting) + ".")));
  }

  private boolean checkedAgain(Check questioned, Hold on) {
    return standing.checksOf(questioned.opened().bib()).stream()
        .anyMatch(c -> c.number() > on.number() && c.verdict().isPresent() && !c.inQuestion());
  }

  private Check check(long number) {
    return standing.checks().stream().filter(c -> c.number() == number).findFirst().orElseThrow();
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
