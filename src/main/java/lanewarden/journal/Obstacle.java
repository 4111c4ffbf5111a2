package lanewarden.journal;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lanewarden.rules.Division;
import lanewarden.rules.Lapse;
import lanewarden.rules.Rule;
import lanewarden.rules.Who;

/** What stands against calling a competitor to a check. */
public enum Obstacle {
  /** The rule holds, but nobody is measured at this event. */
  NOT_MEASURED,
  /** The rule has no clause that a check could judge. */
  NOTHING_TO_CHECK,
  /** The last check ended within, and nothing made that lapse. */
  PASS_STANDS,
  /** Something else than a re-check follows the last fail. */
  FAIL_FOLLOWED,
  /** As many re-checks as the rule allows were used. */
  RECHECKS_USED,
  /** Those to be checked are drawn, and no draw was made. */
  NO_DRAW,
  /** Those to be checked were drawn, and the competitor was not. */
  NOT_DRAWN,
  /** A judge names those to be checked. */
  NOT_NAMED;

  /**
   * What stands against the next check of a competitor; empty where the rule calls for it or lets
   * it happen.
   *
   * @param division the competitor's, by the rule book in force
   * @param draw the last one of the division
   */
  public static Optional<Obstacle> to(
      Division division, String bib, PastChecks past, Optional<Standing.Draw> draw) {
    Rule rule = division.rule();
    if (division.coverage().who() == Who.NOT_MEASURED) {
      return Optional.of(NOT_MEASURED);
    }
    if (!rule.checksAnything()) {
      return Optional.of(NOTHING_TO_CHECK);
    }
    if (past.pass(division).isPresent()) {
      return Optional.of(PASS_STANDS);
    }
    if (past.consequence().isPresent()) {
      return Optional.of(FAIL_FOLLOWED);
    }
    if (past.fails().size() > rule.aftermath().rechecks()) {
      return Optional.of(RECHECKS_USED);
    }
    return past.goesOn(division) ? Optional.empty() : coverage(division, bib, draw);
  }

  private static Optional<Obstacle> coverage(
      Division division, String bib, Optional<Standing.Draw> draw) {
    return switch (division.coverage().who()) {
      case EVERYONE, ON_REQUEST, NOT_MEASURED -> Optional.empty();
      case NAMED_BY_JUDGE -> Optional.of(NOT_NAMED);
      case RANDOM_SHARE -> {
        if (draw.isEmpty()) {
          yield Optional.of(NO_DRAW);
        }
        boolean drawn = draw.get().fact().drawn().contains(bib);
        yield drawn ? Optional.empty() : Optional.of(NOT_DRAWN);
      }
    };
  }

  /**
   * Whether it gives way to grounds that are signed with the call: a pass to the word of one of the
   * {@linkplain #lapses rule's lapses}, a draw and a judge's choice to any words.
   */
  public boolean givesWayTo(String grounds, Rule rule) {
    return switch (this) {
      case PASS_STANDS -> lapse(grounds, rule).isPresent();
      case NOT_DRAWN, NOT_NAMED -> !grounds.isBlank();
      case NOT_MEASURED, NOTHING_TO_CHECK, FAIL_FOLLOWED, RECHECKS_USED, NO_DRAW -> false;
    };
  }

  private static Optional<Lapse> lapse(String grounds, Rule rule) {
    return Lapse.ofWord(grounds.strip().toLowerCase(Locale.ROOT)).filter(lapses(rule)::contains);
  }

  /**
   * The lapses of a rule that open a pass which stands, in the order of their kind. Another class
   * is none of them: where the rule has it, a pass of another division stands no longer, and one of
   * the same division was shot in the same class.
   */
  public static List<Lapse> lapses(Rule rule) {
    return rule.aftermath().lapses().stream()
        .filter(lapse -> lapse != Lapse.ANOTHER_CLASS)
        .sorted()
        .toList();
  }
}
