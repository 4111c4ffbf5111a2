package lanewarden.station;

import java.util.List;
import lanewarden.journal.Check;
import lanewarden.journal.Obstacle;
import lanewarden.journal.PastChecks;
import lanewarden.roster.Competitor;
import lanewarden.rules.Consequence;
import lanewarden.rules.Division;
import lanewarden.rules.Lapse;

/** A competitor who is not called, and what is said about it. */
record Turned(Competitor competitor, Division division, PastChecks past) {

  /** The trouble that tells what stands against the call. */
  StationException away(Obstacle obstacle) {
    return switch (obstacle) {
      case NOT_MEASURED ->
          refused(
              "NOT-MEASURED",
              "The limit of division " + division.code() + " holds, but is not measured here.",
              "Send the archer on; a judge may still act on the rule.");
      case NOTHING_TO_CHECK ->
          refused(
              "NOTHING-TO-CHECK",
              "Division " + division.code() + " has no limit and asks nothing of bow or arrow.",
              "Send the archer on.");
      case PASS_STANDS -> passStands();
      case FAIL_FOLLOWED ->
          refused(
              "NO-RECHECK",
              "After the last fail the rule says: "
                  + past.consequence().map(Consequence::phrase).orElseThrow()
                  + ".",
              "Send the archer to a judge.");
      case RECHECKS_USED ->
          refused(
              "NO-RECHECK-LEFT",
              "Re-checks that the division allows after a fail: "
                  + division.rule().aftermath().rechecks()
                  + ". All are used.",
              "Send the archer to a judge.");
      case NO_DRAW ->
          refused(
              "DRAW-MISSING",
              "A random share of division "
                  + division.code()
                  + " is checked, and it was not drawn yet.",
              "Make the draw before witnesses first: at the screens in Records, in a"
                  + " terminal with draw "
                  + division.code()
                  + " SEED.");
      case NOT_DRAWN ->
          refused(
              "GROUNDS-MISSING",
              "The competitor was not among those drawn in division " + division.code() + ".",
              "Send the archer on; or call all the same, with the grounds a judge has.");
      case NOT_NAMED ->
          refused(
              "GROUNDS-MISSING",
              "In division " + division.code() + " a judge names those who are checked.",
              "Call with the judge's name as the grounds: it is signed with the call.");
    };
  }

  private StationException passStands() {
    long number = past.pass(division).map(Check::number).orElseThrow();
    List<String> lapses = lapses(division);
    return refused(
        "ALREADY-WITHIN",
        "Check " + number + " already ended within.",
        byWord(lapses)
            + (division.rule().aftermath().lapses().contains(Lapse.ANOTHER_CLASS)
                ? " It lapses by itself once the roster has the archer in another division: another"
                    + " class is no grounds in the same one."
                : ""));
  }

  private static String byWord(List<String> lapses) {
    return lapses.isEmpty()
        ? "Check the bib; if it is right, the archer may go."
        : "The pass lapses with "
            + String.join(" or ", lapses)
            + ": then call with that as the grounds. Else the archer may go.";
  }

  /** What opens a pass of the division that stands, in the words that must be signed. */
  static List<String> lapses(Division division) {
    return Obstacle.lapses(division.rule()).stream().map(Lapse::word).toList();
  }

  private StationException refused(String code, String why, String remedy) {
    return StationException.misstep(
        code, competitor.bib() + " " + competitor.name() + " was not called.", why, remedy);
  }
}
