package lanewarden.audit.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.Hold;
import lanewarden.journal.InstrumentVerification;
import lanewarden.journal.Standing;

/**
 * Looks at the holds of the line: whether they follow from the verifications, and what was done
 * while one stood.
 *
 * <p>Owned by one thread.
 */
final class HoldExaminer {
  private final Standing standing;
  private final List<Finding> findings;
  private Optional<Hold> hold = Optional.empty();
  private Optional<Long> owed = Optional.empty();

  HoldExaminer(Standing standing, List<Finding> findings) {
    this.standing = standing;
    this.findings = findings;
  }

  /** Notes how things stand before the next fact is folded. */
  void before() {
    hold = standing.hold();
  }

  /** Looks at a fact that was just folded into the standing. */
  void examine(long entry, Fact fact) {
    holdOwed(fact);
    if (fact instanceof Fact.CheckOpened) {
      whileHeld("A check was opened", entry);
    } else if (fact instanceof Fact.ReadingTaken) {
      whileHeld("A reading was taken", entry);
    } else if (fact instanceof Fact.VerdictGiven) {
      whileHeld("A verdict was given", entry);
    } else if (fact instanceof Fact.VerificationEnded ended) {
      ended(ended);
    } else if (fact instanceof Fact.LineHeld held) {
      held(entry, held);
    } else if (fact instanceof Fact.HoldLifted lifted) {
      lifted(entry, lifted);
    }
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
    boolean brokenOff = verification(round).filter(InstrumentVerification::isBrokenOff).isPresent();
    findings.add(
        new Finding(
            Kind.HOLD,
            Stream.concat(Stream.of(round), standing.checksSinceGood().stream()).toList(),
            "Verification "
                + round
                + (brokenOff
                    ? " was broken off with shots that were out of its limits already"
                    : " was out of its limits")
                + ", and the line was not held."));
  }

  private void ended(Fact.VerificationEnded ended) {
    if (hold.filter(on -> !on.byHand()).isEmpty()) {
      owed =
          verification(ended.verification())
              .filter(HoldExaminer::isOut)
              .map(InstrumentVerification::number);
    }
  }

  /** Whether it ended out of its limits, be it that it was broken off. */
  private static boolean isOut(InstrumentVerification round) {
    return round.ended().isPresent()
        && !round.isGood()
        && (!round.isBrokenOff() || VerificationOutcome.of(round).convicts());
  }

  private void held(long entry, Fact.LineHeld held) {
    List<Long> should = standing.checksSinceGood();
    if (!held.checks().equals(should)) {
      // A check that was left out belongs to it as much as those that it lists
      findings.add(
          new Finding(
              Kind.HOLD,
              Stream.concat(Stream.of(entry), should.stream()).toList(),
              "The hold lists the checks "
                  + Wording.numbers(held.checks())
                  + "; decided since the last good verification were "
                  + Wording.numbers(should)
                  + "."));
    }
    Long by = held.verification();
    if (by != null && verification(by).filter(HoldExaminer::isOut).isEmpty()) {
      add(
          Kind.HOLD,
          "The hold names verification "
              + by
              + (verification(by).isPresent()
                  ? ", which did not end out of its limits."
                  : ", and there is no such verification."),
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
    } else if (by != null && isNotGoodAfter(on, by)) {
      add(
          Kind.HOLD,
          "A hold was lifted by verification "
              + by
              + (verification(by).isPresent()
                  ? ", which did not pass after it."
                  : ", and there is no such verification."),
          on.number(),
          entry);
    } else if (by != null) {
      looser(entry, on, by);
    }
  }

  private boolean isNotGoodAfter(Hold on, long by) {
    return by < on.number() || verification(by).filter(InstrumentVerification::isGood).isEmpty();
  }

  /** Looser limits pass what the limits that held the line would not. */
  private void looser(long entry, Hold on, long by) {
    Long held = on.fact().verification();
    List<String> ways =
        Optional.ofNullable(held)
            .flatMap(this::verification)
            .flatMap(put -> verification(by).map(lifted -> VerificationOutcome.looser(put, lifted)))
            .orElse(List.of());
    if (!ways.isEmpty()) {
      add(
          Kind.HOLD_LOOSER,
          "Verification "
              + held
              + " held the line, and verification "
              + by
              + " lifted the hold by looser limits: "
              + String.join("; ", ways)
              + ".",
          on.number(),
          by,
          entry);
    }
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

  private Optional<InstrumentVerification> verification(long number) {
    return standing.verifications().stream().filter(round -> round.number() == number).findFirst();
  }

  private void add(Kind kind, String words, Long... entries) {
    findings.add(Finding.of(kind, words, entries));
  }
}
