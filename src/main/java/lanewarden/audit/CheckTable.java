package lanewarden.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lanewarden.audit.findings.Evidence;
import lanewarden.audit.wording.Cell;
import lanewarden.audit.wording.CheckRow;
import lanewarden.journal.Check;
import lanewarden.journal.Docket;
import lanewarden.journal.Fact;
import lanewarden.journal.TakenShot;
import lanewarden.quantity.Speed;
import lanewarden.rules.Division;

/** The checks of a ledger as an exported table, a row each. */
final class CheckTable {
  private static final List<String> HEADINGS =
      List.of(
          "check",
          "opened (UTC)",
          "phase",
          "bib",
          "division",
          "attempt",
          "outcome",
          "decided (UTC)",
          "verdict entry",
          "readings that count",
          "passes up to",
          "passes up to (unit)",
          "in question",
          "recheck of protest",
          "protest",
          "counts",
          "corrected by entry");

  private static final List<String> MORE =
      List.of(
          "name",
          "reason",
          "follows",
          "why without a verdict",
          "called on the grounds",
          "arrow mass",
          "arrow mass (unit)",
          "draw weight",
          "draw weight (unit)",
          "certified draw weight",
          "certified draw weight (unit)",
          "official");

  private final Evidence evidence;
  private final Edition edition;

  CheckTable(Evidence evidence, Edition edition) {
    this.evidence = evidence;
    this.edition = edition;
  }

  /** The rows, headings first. */
  List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(edition.whole() ? Cell.row(HEADINGS, MORE) : HEADINGS);
    for (Check check : evidence.standing().checks()) {
      rows.add(
          edition.whole() ? Cell.row(forEverybody(check), personal(check)) : forEverybody(check));
    }
    return rows;
  }

  private List<String> forEverybody(Check check) {
    Fact.CheckOpened opened = check.opened();
    Optional<Check.GivenVerdict> verdict = check.verdict();
    return Cell.row(
        List.of(
            String.valueOf(check.number()),
            Cell.time(check.at()),
            check.phase().word(),
            Cell.text(opened.bib()),
            Cell.text(opened.division()),
            String.valueOf(opened.attempt()),
            check.outcome().map(outcome -> outcome.word()).orElse(""),
            verdict.map(given -> Cell.time(given.at())).orElse(""),
            verdict.map(given -> String.valueOf(given.sequence())).orElse(""),
            String.valueOf(check.shots().stream().filter(TakenShot::isSettled).count())),
        Cell.quantity(fastest(check).orElse(null)),
        List.of(
            check.inQuestion() ? "yes" : "",
            opened.protest() == null ? "" : String.valueOf(opened.protest()),
            disputes(check),
            counts(check),
            corrections(check)));
  }

  /** The protests against this check. */
  private String disputes(Check check) {
    return evidence.standing().docket().protestsOf(check.number()).stream()
        .filter(protest -> protest.fact().check() == check.number())
        .map(protest -> String.valueOf(protest.number()))
        .collect(Collectors.joining(" "));
  }

  /**
   * Whether its outcome counts: yes, no, or no with the check that counts in its place. A recheck
   * counts only by a ruling.
   */
  private String counts(Check check) {
    Docket docket = evidence.standing().docket();
    Optional<Long> instead = docket.instead(check.number());
    if (instead.isPresent()) {
      return "no: check " + instead.get() + " does";
    }
    boolean waits =
        check.opened().protest() != null
            && docket.protestsOf(check.number()).stream()
                .noneMatch(protest -> protest.ruling().isPresent());
    return check.inQuestion() || waits || check.outcome().isEmpty() ? "no" : "yes";
  }

  /** The confirmed corrections of this check. */
  private String corrections(Check check) {
    return evidence.standing().docket().correctionsOf(check.number()).stream()
        .filter(correction -> !correction.isOpen())
        .map(correction -> String.valueOf(correction.number()))
        .collect(Collectors.joining(" "));
  }

  /** The fastest speed that keeps the limit of this bow and arrow, where a limit applies. */
  private Optional<Speed> fastest(Check check) {
    return evidence
        .standing()
        .ruleBook(check.ruleBook())
        .flatMap(book -> book.division(check.opened().division()))
        .map(Division::rule)
        .flatMap(rule -> rule.fastest(check.setUp()));
  }

  private List<String> personal(Check check) {
    boolean open = check.verdict().isEmpty();
    String signer = check.verdict().map(Check.GivenVerdict::signer).orElse(check.signer());
    return Cell.row(
        List.of(
            Cell.text(check.opened().name()),
            Cell.text(open ? "" : CheckRow.reason(check)),
            Cell.text(CheckRow.follows(check)),
            Cell.text(open ? CheckRow.reason(check) : ""),
            Cell.text(check.opened().grounds())),
        Cell.quantity(check.setUp().arrowMass()),
        Cell.quantity(check.setUp().drawWeight()),
        Cell.quantity(check.setUp().certifiedDrawWeight()),
        List.of(Cell.text(edition.official(signer))));
  }
}
