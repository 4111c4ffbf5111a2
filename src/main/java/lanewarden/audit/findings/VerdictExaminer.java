package lanewarden.audit.findings;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.Standing;
import lanewarden.rules.Consequence;
import lanewarden.rules.Division;
import lanewarden.rules.RuleBook;
import lanewarden.rules.Verdict;

/**
 * Recomputes every verdict from the check's shots as they stood when it was given, by the rule book
 * that it names; and what follows it.
 *
 * <p>Owned by one thread.
 */
final class VerdictExaminer {
  private final Standing standing;
  private final List<Finding> findings;
  private final Map<Long, Given> last = new HashMap<>();
  private final Map<Long, Given> fallen = new HashMap<>();

  private record Given(long entry, Fact.VerdictGiven fact) {}

  VerdictExaminer(Standing standing, List<Finding> findings) {
    this.standing = standing;
    this.findings = findings;
  }

  /** Looks at a verdict that was just folded. */
  void given(long entry, Fact.VerdictGiven given, Check check) {
    Given replaced = last.put(check.number(), new Given(entry, given));
    if (replaced != null) {
      takenBack(replaced, check, "replaced by a second verdict", entry);
    }
    givenAnew(entry, given, check);
    if (!given.ruleBook().equals(check.ruleBook())) {
      add(
          Kind.RULE,
          Wording.check(check)
              + ": the verdict names the rule book "
              + Wording.shortHash(given.ruleBook())
              + ", but "
              + Wording.shortHash(check.ruleBook())
              + " was in force when the check was opened.",
          entry);
    }
    List<Long> counted = counted(given, check);
    if (!given.readings().equals(counted)) {
      add(
          Kind.READINGS,
          Wording.check(check)
              + ": the verdict lists the readings "
              + Wording.numbers(given.readings())
              + ", but "
              + Wording.numbers(counted)
              + " counted.",
          entry);
    }
    recompute(entry, given, check);
  }

  /** The readings that count by the rule that the verdict names, as far as it is known. */
  private List<Long> counted(Fact.VerdictGiven given, Check check) {
    return standing
        .ruleBook(given.ruleBook())
        .flatMap(book -> book.division(check.opened().division()))
        .map(division -> check.counted(division.rule()))
        .orElse(check.standing());
  }

  private void recompute(long entry, Fact.VerdictGiven given, Check check) {
    Optional<RuleBook> book = standing.ruleBook(given.ruleBook());
    if (book.isEmpty()) {
      add(
          Kind.RULE,
          Wording.check(check)
              + ": the verdict names a rule book that the ledger does not hold ("
              + Wording.shortHash(given.ruleBook())
              + "), so it cannot be recomputed.",
          entry);
      return;
    }
    Optional<Division> division = book.get().division(check.opened().division());
    if (division.isEmpty()) {
      add(
          Kind.RULE,
          Wording.check(check)
              + ": the rule book it names has no division "
              + check.opened().division()
              + ", so the verdict cannot be recomputed.",
          entry);
      return;
    }
    Verdict recomputed = check.judgedBy(division.get().rule());
    compare(entry, given, check, recomputed);
    if (recomputed.word().equals(given.outcome().word())) {
      follows(
          entry,
          given,
          check,
          division.get().rule().aftermath().follows(recomputed, check.phase()));
    }
  }

  private void follows(
      long entry, Fact.VerdictGiven given, Check check, Optional<Consequence> recomputed) {
    Optional<Consequence> signed = check.verdict().flatMap(Check.GivenVerdict::follows);
    if (signed.equals(recomputed)) {
      return;
    }
    String rule = recomputed.map(next -> inWords(given, next)).orElse("nothing");
    if (signed.isEmpty()) {
      add(
          Kind.FOLLOWS_UNSAID,
          Wording.check(check) + ": nothing was signed; by the rule follows: " + rule + ".",
          entry);
    } else {
      add(
          Kind.FOLLOWS,
          Wording.check(check)
              + " "
              + check.phase().phrase()
              + " was signed with what follows as "
              + Wording.quoted(inWords(given, signed.get()))
              + ", but by the rule follows: "
              + rule
              + ".",
          entry);
    }
  }

  private static String inWords(Fact.VerdictGiven given, Consequence follows) {
    return Check.GivenVerdict.inWords(given.outcome(), follows).toString();
  }

  private void compare(long entry, Fact.VerdictGiven given, Check check, Verdict recomputed) {
    if (!recomputed.ends()) {
      add(
          Kind.VERDICT,
          Wording.check(check)
              + " was signed as "
              + Wording.quoted(given.outcome().word())
              + ", but the rule had not decided yet: it needed "
              + recomputed.reason()
              + ".",
          entry);
    } else if (!recomputed.word().equals(given.outcome().word())) {
      add(
          Kind.VERDICT,
          Wording.check(check)
              + " was signed as "
              + Wording.quoted(given.outcome().word())
              + ", but the rule gives "
              + Wording.verdict(recomputed)
              + ".",
          entry);
    } else if (!recomputed.reason().equals(given.reason())) {
      add(
          Kind.REASON,
          Wording.check(check)
              + " reads "
              + Wording.quoted(given.reason())
              + "; recomputed: "
              + Wording.quoted(recomputed.reason())
              + ".",
          entry);
    }
  }

  /**
   * What a verdict rested on was just changed: it falls.
   *
   * @param how for example {@code a reading was declared void}
   */
  void fell(long entry, Check check, String how) {
    Given falls = last.remove(check.number());
    if (falls != null) {
      takenBack(falls, check, "taken back when " + how, entry);
      fallen.put(check.number(), falls);
    }
  }

  /** A verdict in the place of one that fell is told beside it, be it the same or another. */
  private void givenAnew(long entry, Fact.VerdictGiven given, Check check) {
    Given fell = fallen.remove(check.number());
    if (fell != null) {
      add(
          Kind.TAKEN_BACK,
          Wording.check(check)
              + ": in the place of "
              + told(fell.fact())
              + " was given "
              + told(given)
              + ".",
          fell.entry(),
          entry);
    }
  }

  private static String told(Fact.VerdictGiven given) {
    return Wording.quoted(given.outcome().word()) + " (" + given.reason() + ")";
  }

  private void takenBack(Given falls, Check check, String how, long by) {
    add(
        Kind.TAKEN_BACK,
        Wording.check(check) + ": " + told(falls.fact()) + " was " + how + ".",
        falls.entry(),
        by);
  }

  private void add(Kind kind, String words, Long... entries) {
    findings.add(Finding.of(kind, words, entries));
  }
}
