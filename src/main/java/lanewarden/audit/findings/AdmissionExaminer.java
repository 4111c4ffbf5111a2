package lanewarden.audit.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.Check;
import lanewarden.journal.Obstacle;
import lanewarden.journal.PastChecks;
import lanewarden.journal.Standing;
import lanewarden.rules.Consequence;
import lanewarden.rules.Division;

/**
 * Asks of every check whether the rule called for it, or let it happen on the grounds signed.
 *
 * <p>Owned by one thread.
 */
final class AdmissionExaminer {
  private final Standing standing;
  private final List<Finding> findings;

  AdmissionExaminer(Standing standing, List<Finding> findings) {
    this.standing = standing;
    this.findings = findings;
  }

  /** Looks at a check that was just opened. */
  void opened(Check now, PastChecks past, Division division) {
    String grounds = now.opened().grounds();
    Optional<Obstacle> obstacle =
        Obstacle.to(division, now.opened().bib(), past, standing.draw(division.code()));
    if (obstacle
        .filter(o -> grounds == null || !o.givesWayTo(grounds, division.rule()))
        .isPresent()) {
      against(now, past, division, obstacle.get());
    }
    if (grounds != null) {
      findings.add(
          Finding.of(
              Kind.GROUNDS,
              Wording.check(now) + ": " + Wording.quoted(grounds) + ".",
              now.number()));
    }
  }

  private void against(Check now, PastChecks past, Division division, Obstacle obstacle) {
    List<Long> entries = new ArrayList<>(List.of(now.number()));
    String opened = Wording.check(now) + " was opened ";
    String words =
        switch (obstacle) {
          case NOT_MEASURED -> "although division " + division.code() + " is not measured.";
          case NOTHING_TO_CHECK ->
              "although nothing of division " + division.code() + " is checked.";
          case PASS_STANDS -> {
            long pass = past.pass(division).map(Check::number).orElseThrow();
            entries.add(pass);
            yield "although check " + pass + " had ended within.";
          }
          case FAIL_FOLLOWED ->
              "although after the last fail follows: "
                  + past.consequence().map(Consequence::phrase).orElseThrow()
                  + ".";
          case RECHECKS_USED -> {
            past.fails().forEach(fail -> entries.add(fail.number()));
            yield "after "
                + Wording.count(past.fails().size(), "fail")
                + "; the rule allows "
                + Wording.count(division.rule().aftermath().rechecks(), "re-check")
                + ".";
          }
          case NO_DRAW -> "although division " + division.code() + " had not been drawn.";
          case NOT_DRAWN ->
              "without grounds, although the competitor was not drawn in division "
                  + division.code()
                  + ".";
          case NOT_NAMED ->
              "without grounds, although a judge names whom to check in division "
                  + division.code()
                  + ".";
        };
    findings.add(new Finding(Kind.ADMISSION, entries, opened + words));
  }
}
