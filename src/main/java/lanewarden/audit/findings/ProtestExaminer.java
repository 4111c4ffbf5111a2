package lanewarden.audit.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Check;
import lanewarden.journal.Correction;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import lanewarden.journal.Protest;
import lanewarden.journal.ProtestFact;
import lanewarden.journal.Standing;

/**
 * Looks at protests with their rechecks and rulings, and at corrections.
 *
 * <p>Owned by one thread.
 */
final class ProtestExaminer {
  private final Standing standing;
  private final List<Finding> findings;

  ProtestExaminer(Standing standing, List<Finding> findings) {
    this.standing = standing;
    this.findings = findings;
  }

  /**
   * Looks at a recheck that was just opened.
   *
   * @param number of the protest that it names
   */
  void opened(Check recheck, long number) {
    Optional<Protest> protest = standing.docket().protest(number);
    if (protest.isEmpty()) {
      against(recheck, "names protest " + number + ", which the ledger does not hold", number);
      return;
    }
    if (protest.get().objection().isPresent()) {
      against(recheck, "was opened under protest " + number + ", which has no effect", number);
    } else if (!protest.get().isOpen()) {
      against(recheck, "was opened after the ruling on protest " + number, number);
    }
    protest.get().rechecks().stream()
        .filter(earlier -> earlier != recheck.number())
        .flatMap(earlier -> standing.find(earlier).stream())
        .filter(Protest::settles)
        .forEach(
            earlier ->
                against(
                    recheck,
                    "was opened although recheck "
                        + earlier.number()
                        + " had ended "
                        + outcome(earlier),
                    number));
    standing
        .find(protest.get().fact().check())
        .filter(original -> !isOfTheSame(recheck.opened(), original.opened()))
        .ifPresent(
            original ->
                against(
                    recheck,
                    "is of another bib, division or attempt than check " + original.number(),
                    number));
  }

  private static boolean isOfTheSame(Fact.CheckOpened recheck, Fact.CheckOpened original) {
    return recheck.bib().equals(original.bib())
        && recheck.division().equals(original.division())
        && recheck.attempt() == original.attempt();
  }

  private void against(Check recheck, String words, long protest) {
    add(
        Kind.RECHECK,
        Wording.check(recheck) + ", a recheck, " + words + ".",
        recheck.number(),
        protest);
  }

  /** Looks at everything that was protested and corrected, when the last entry is folded. */
  void finish() {
    standing.docket().protests().forEach(this::told);
    standing.docket().corrections().forEach(this::told);
  }

  private void told(Protest protest) {
    Check original = standing.find(protest.fact().check()).orElseThrow();
    List<Long> entries = new ArrayList<>(List.of(protest.number(), original.number()));
    entries.addAll(protest.rechecks());
    String filed = filed(protest, original) + rechecks(protest);
    protest.rulings().forEach(given -> withoutEffect(protest, given));
    if (protest.withoutEffect().isPresent()) {
      String words = "It has no effect: " + protest.withoutEffect().get() + ".";
      findings.add(new Finding(Kind.PROTEST, entries, filed + " " + words));
      return;
    }
    Optional<Protest.Given> ruling = protest.ruling();
    if (ruling.isEmpty()) {
      findings.add(new Finding(Kind.PROTEST_OPEN, entries, filed));
      return;
    }
    entries.add(ruling.get().sequence());
    findings.add(new Finding(Kind.RULED, entries, filed + ruled(ruling.get(), original)));
  }

  private static String filed(Protest protest, Check original) {
    ProtestFact.ProtestFiled fact = protest.fact();
    return Wording.check(original)
        + " ended "
        + outcome(original)
        + ". "
        + Wording.capital(fact.occasion().word())
        + " "
        + protest.number()
        + " by "
        + Wording.quoted(fact.by())
        + ": "
        + Wording.quoted(fact.ground())
        + ".";
  }

  private String rechecks(Protest protest) {
    StringBuilder words = new StringBuilder();
    for (long recheck : protest.rechecks()) {
      words
          .append(" Recheck ")
          .append(recheck)
          .append(": ")
          .append(standing.find(recheck).map(ProtestExaminer::outcome).orElseThrow())
          .append('.');
    }
    return words.toString();
  }

  private static String ruled(Protest.Given given, Check original) {
    ProtestFact.ProtestRuled fact = given.fact();
    return " It was "
        + fact.ruling().word()
        + ": "
        + Wording.quoted(fact.reason())
        + ". What counts is "
        + (fact.stands() == original.number() ? "check " : "recheck ")
        + fact.stands()
        + "; consequence: "
        + Wording.quoted(fact.consequence())
        + ".";
  }

  private void withoutEffect(Protest protest, Protest.Given given) {
    given
        .objection()
        .ifPresent(
            objection ->
                add(
                    Kind.RULING,
                    "Entry "
                        + given.sequence()
                        + " rules on protest "
                        + protest.number()
                        + ", but has no effect: "
                        + objection.words()
                        + ".",
                    given.sequence(),
                    protest.number()));
  }

  private void told(Correction correction) {
    Check check = standing.find(correction.fact().check()).orElseThrow();
    correction.confirmations().forEach(given -> withoutEffect(correction, given));
    String words =
        Wording.check(check)
            + ", "
            + correction.fact().what().word()
            + ": "
            + correction.after()
            + " in the place of "
            + correction.before()
            + ", because "
            + Wording.quoted(correction.fact().reason())
            + ".";
    Optional<Correction.Confirmed> confirmed = correction.confirmation();
    if (confirmed.isEmpty()) {
      add(Kind.CORRECTION_OPEN, words + " It has no effect.", correction.number(), check.number());
      return;
    }
    boolean undone = correction.askedAnew() && check.outcome().isEmpty();
    add(
        Kind.CORRECTED,
        words
            + " Two persons signed it."
            + (undone ? " The check has no verdict now: the rule asks for more than it has." : ""),
        correction.number(),
        confirmed.get().sequence(),
        check.number());
  }

  private void withoutEffect(Correction correction, Correction.Confirmed given) {
    given
        .objection()
        .ifPresent(
            objection ->
                add(
                    Kind.CORRECTION,
                    "Entry "
                        + given.sequence()
                        + " confirms correction "
                        + correction.number()
                        + ", but has no effect: "
                        + objection.words()
                        + ".",
                    given.sequence(),
                    correction.number()));
  }

  private static String outcome(Check check) {
    return check.outcome().map(Outcome::word).orElse("without a verdict");
  }

  private void add(Kind kind, String words, Long... entries) {
    findings.add(Finding.of(kind, words, entries));
  }
}
