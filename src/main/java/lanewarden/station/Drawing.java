package lanewarden.station;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lanewarden.journal.Fact;
import lanewarden.journal.Standing;
import lanewarden.metrology.PublicDraw;
import lanewarden.quantity.Percent;
import lanewarden.rules.Division;

/**
 * The draw of those of a division who are to be checked, by the recipe of {@link PublicDraw}.
 *
 * <p>A division is drawn once under each rule book: who could throw again until it suits would not
 * draw, but choose. After another rule book was put in force the draw before holds until another is
 * made.
 *
 * @param division of the rule book in force
 * @param pool the bibs of the division, as the roster in force has them
 */
record Drawing(Division division, List<String> pool) {

  /**
   * The draw as it is to be signed.
   *
   * @param before the last draw of the division
   * @param ruleBook hash of the rule book in force
   * @param seed as it was thrown
   * @param due what else is to be drawn
   * @throws StationException if nobody is to be drawn, it was drawn already, or the seed will not
   *     do
   */
  Fact.DrawMade made(
      Optional<Standing.Draw> before, String ruleBook, String seed, List<DueDraw> due)
      throws StationException {
    Percent share = division.coverage().share();
    if (share == null) {
      throw refused(
          "NO-SHARE",
          "The rule book draws nobody in division " + division.code() + ".",
          "Only a division with who = \"random share\" is drawn. " + inWords(due));
    }
    if (before.filter(draw -> draw.ruleBook().equals(ruleBook)).isPresent()) {
      throw refused(
          "DRAWN-ALREADY",
          "Division " + division.code() + " was drawn in entry " + before.get().sequence() + ".",
          "A division is drawn once under a rule book. Whoever else must be checked is called with"
              + " a judge's grounds.");
    }
    String thrown = Reason.of(seed);
    try {
      List<String> drawn = PublicDraw.of(thrown, share, pool).drawn();
      return new Fact.DrawMade(division.code(), thrown, share.toString(), pool, drawn);
    } catch (IllegalArgumentException e) {
      throw refused(
          "DRAW-SEED",
          "For this draw: " + e.getMessage() + ".",
          "Throw the dice before witnesses.");
    }
  }

  private static String inWords(List<DueDraw> due) {
    return due.isEmpty()
        ? "None is due."
        : "To be drawn: "
            + due.stream()
                .map(one -> one.division() + ", " + one.share() + " of " + one.pool())
                .collect(Collectors.joining("; "))
            + ".";
  }

  private static StationException refused(String code, String why, String remedy) {
    return StationException.misstep(code, "No draw was made.", why, remedy);
  }
}
