package lanewarden.station;

import java.util.Optional;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.Objection;
import lanewarden.journal.Protest;
import lanewarden.journal.Standing;
import lanewarden.rules.SetUp;

/**
 * A check that is to stand beside another one, under a protest.
 *
 * @param protest that is open
 * @param original the check in dispute
 */
record Recheck(Protest protest, Check original) {

  /**
   * @throws StationException if there is no such protest, it has no effect or was ruled on, or a
   *     recheck settled it
   */
  static Recheck under(long number, Standing standing) throws StationException {
    Protest protest = known(number, standing);
    if (protest.objection().isPresent()) {
      throw StationException.stuck(Objected.trouble(Objection.NO_PROTEST));
    }
    if (!protest.isOpen()) {
      throw StationException.misstep(
          "PROTEST-RULED",
          "No recheck was begun.",
          "A judge ruled on protest " + number + ".",
          "If there is something new, file another protest.");
    }
    Optional<Check> settled =
        protest.rechecks().stream()
            .flatMap(check -> standing.find(check).stream())
            .filter(Protest::settles)
            .findFirst();
    if (settled.isPresent()) {
      throw StationException.misstep(
          "RECHECK-SETTLED",
          "No recheck was begun.",
          "Recheck "
              + settled.get().number()
              + " under protest "
              + number
              + " ended "
              + settled.get().outcome().orElseThrow().word()
              + ".",
          "Have a judge rule on it. Nobody is checked until the outcome suits.");
    }
    return new Recheck(
        protest,
        standing
            .find(protest.fact().check())
            .orElseThrow(() -> new IllegalStateException("protest against no check")));
  }

  /** The protest of this number. */
  static Protest known(long number, Standing standing) throws StationException {
    Optional<Protest> protest = standing.docket().protest(number);
    if (protest.isEmpty()) {
      throw StationException.misstep(
          "NO-SUCH-PROTEST",
          "Nothing was signed.",
          "The ledger has no protest " + number + ".",
          "Take the number that was told when it was filed.");
    }
    return protest.get();
  }

  String division() {
    return original.opened().division();
  }

  /** The same archer, division and attempt, with bow and arrow as stated last. */
  Fact.CheckOpened opening() {
    Fact.CheckOpened was = original.opened();
    SetUp now = original.setUp();
    return new Fact.CheckOpened(
        was.bib(),
        was.name(),
        was.division(),
        was.attempt(),
        now.arrowMass(),
        now.drawWeight(),
        now.certifiedDrawWeight(),
        now.drawLength(),
        now.braceHeight(),
        null,
        protest.number());
  }
}
