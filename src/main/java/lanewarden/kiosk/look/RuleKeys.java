package lanewarden.kiosk.look;

import lanewarden.metrology.Guarding;
import lanewarden.rules.Afterwards;
import lanewarden.rules.Demand;
import lanewarden.rules.Lapse;
import lanewarden.rules.Odds;
import lanewarden.rules.Worked;
import lanewarden.station.Reckoned;

/** Under which key the screens have what a rule demands and what it does to archers. */
final class RuleKeys {

  private RuleKeys() {}

  static String of(Demand demand) {
    return switch (demand) {
      case AT_MOST -> "demand.at-most";
      case BELOW -> "demand.below";
      case ALWAYS -> "demand.always";
      case TO_LIGHT_ARROWS -> "demand.to-light-arrows";
      case NO_LIMIT -> "demand.no-limit";
      case NOTHING -> "demand.nothing";
      case ENERGY_AT_MOST -> "demand.energy-at-most";
      case ENERGY_BELOW -> "demand.energy-below";
      case LEAST_ARROW -> "demand.least-arrow";
      case LEAST_DRAW -> "demand.least-draw";
      case MOST_DRAW -> "demand.most-draw";
      case ONE_READING -> "demand.one-reading";
      case MEAN -> "demand.mean";
      case HIGHEST -> "demand.highest";
      case HIGHEST_AT_ONCE -> "demand.highest-at-once";
      case HIGHEST_BANDED -> "demand.highest-banded";
      case MEDIAN -> "demand.median";
      case MEDIAN_OF_EVEN -> "demand.median-of-even";
      case WITHIN_COUNT -> "demand.within-count";
      case FIRST_WITHIN -> "demand.first-within";
      case ONE_WITHIN -> "demand.one-within";
      case HOW_FAR_OVER -> "demand.how-far-over";
      case EACH_FIRST -> "demand.each-first";
      case SPREAD -> "demand.spread";
      case ONE_SHOT -> "demand.one-shot";
      case SHOTS -> "demand.shots";
      case NO_VOID -> "demand.no-void";
      case ONE_VOID -> "demand.one-void";
      case VOIDS -> "demand.voids";
      case JUMP -> "demand.jump";
      case OUTLIER -> "demand.outlier";
      case UNASKED_FIRST -> "demand.unasked-first";
      case UNASKED_TWO -> "demand.unasked-two";
      case WITHIN -> "demand.within";
      case OVER -> "demand.over";
      case OVER_FOR_CERTAIN -> "demand.over-for-certain";
      case UNSCREENED_ONE -> "demand.unscreened-one";
      case UNSCREENED_FEW -> "demand.unscreened-few";
      case UNSCREENED -> "demand.unscreened";
      case FURTHER_READING -> "demand.further-reading";
      case FURTHER_MEAN -> "demand.further-mean";
      case FURTHER_HIGHEST -> "demand.further-highest";
      case FURTHER_MEDIAN -> "demand.further-median";
      case FURTHER_COUNT -> "demand.further-count";
      case TICKED -> "demand.ticked";
      case TICKED_UNLESS_UNLIMITED -> "demand.ticked-unless-unlimited";
      case EVERYONE -> "demand.everyone";
      case SHARE -> "demand.share";
      case ON_REQUEST -> "demand.on-request";
      case NAMED_BY_JUDGE -> "demand.named-by-judge";
      case NOT_MEASURED -> "demand.not-measured";
      case ORIGIN -> "demand.origin";
      case ORIGIN_FROM -> "demand.origin-from";
      case IN_EFFECT -> "demand.in-effect";
      case EDITION -> "demand.edition";
    };
  }

  static String of(Afterwards afterwards) {
    return switch (afterwards) {
      case NO_RECHECK -> "afterwards.no-recheck";
      case ONE_BEFORE -> "afterwards.one-before";
      case SOME_BEFORE -> "afterwards.some-before";
      case ONE_WHERE_BROUGHT -> "afterwards.one-where-brought";
      case SOME_WHERE_BROUGHT -> "afterwards.some-where-brought";
      case OVER_BY -> "afterwards.over-by";
      case FAIL_BEFORE -> "afterwards.fail-before";
      case FAIL_DURING -> "afterwards.fail-during";
      case FAIL_AFTER -> "afterwards.fail-after";
      case OTHER_BEFORE -> "afterwards.other-before";
      case OTHER_DURING -> "afterwards.other-during";
      case OTHER_AFTER -> "afterwards.other-after";
      case LAPSES_WITH -> "afterwards.lapses-with";
      case LAPSES_WITH_TWO -> "afterwards.lapses-with-two";
      case LAPSES_WITH_THREE -> "afterwards.lapses-with-three";
    };
  }

  static String of(Lapse lapse) {
    return switch (lapse) {
      case ANOTHER_BOW -> "lapse.another-bow";
      case ANOTHER_ARROW -> "lapse.another-arrow";
      case ANOTHER_CLASS -> "lapse.another-class";
    };
  }

  static String of(Worked worked) {
    return switch (worked) {
      case INSIDE -> "worked.inside";
      case EDGE -> "worked.edge";
      case OUTSIDE -> "worked.outside";
      case FURTHER_OUTSIDE -> "worked.further-outside";
      case OUTSIDE_HEAVY -> "worked.outside-heavy";
      case HEAVY_ARROW -> "worked.heavy-arrow";
      case LIGHTEST_ARROW -> "worked.lightest-arrow";
      case ARROW_TOO_LIGHT -> "worked.arrow-too-light";
      case BOW_TOO_WEAK -> "worked.bow-too-weak";
      case BOW_TOO_STRONG -> "worked.bow-too-strong";
      case ARROW -> "worked.arrow";
      case DRAW_WEIGHT -> "worked.draw-weight";
      case CERTIFIED -> "worked.certified";
      case READINGS -> "worked.readings";
      case ADMITTED -> "worked.admitted";
      case WITHIN -> "worked.within";
      case OVER -> "worked.over";
      case OVER_IN_BAND -> "worked.over-in-band";
      case NOT_DECIDED -> "worked.not-decided";
      case NOT_ADMITTED -> "worked.not-admitted";
      case CASE -> "worked.case";
    };
  }

  static String of(Odds odds) {
    return switch (odds) {
      case RISKS -> "odds.risks";
      case SELDOM -> "odds.seldom";
      case NEARLY_ALWAYS -> "odds.nearly-always";
      case OFTEN -> "odds.often";
    };
  }

  static String of(Guarding guarding) {
    return switch (guarding) {
      case SIMPLE -> "guarding.simple";
      case ACCEPTANCE -> "guarding.acceptance";
      case REJECTION -> "guarding.rejection";
    };
  }

  static String of(Reckoned reckoned) {
    return switch (reckoned) {
      case NO_LIMIT -> "reckoned.no-limit";
      case NOBODY_MEASURED -> "reckoned.nobody-measured";
      case HEAVY_ARROW -> "reckoned.heavy-arrow";
      case UNLIMITED -> "reckoned.unlimited";
      case AT_THE_BOW -> "reckoned.at-the-bow";
      case LET_COUNT -> "reckoned.let-count";
      case NO_RECHECK -> "reckoned.no-recheck";
      case SOME_RECHECKS -> "reckoned.some-rechecks";
      case ONE_RECHECK -> "reckoned.one-recheck";
      case ALL_RECHECKS -> "reckoned.all-rechecks";
      case LIGHT_ARROW -> "reckoned.light-arrow";
      case CALCULATED -> "reckoned.calculated";
      case SIMULATED -> "reckoned.simulated";
    };
  }
}
