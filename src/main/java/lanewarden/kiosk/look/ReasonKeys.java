package lanewarden.kiosk.look;

import lanewarden.bow.BowLimit;
import lanewarden.journal.Sequel;
import lanewarden.metrology.OutlierTest;
import lanewarden.rules.Because;
import lanewarden.rules.Consequence;
import lanewarden.rules.Doubt;

/** Under which key the screens have why a check stands as it does, and what follows. */
final class ReasonKeys {

  private ReasonKeys() {}

  static String of(Because because) {
    return switch (because) {
      case READING -> "because.reading";
      case MEAN -> "because.mean";
      case HIGHEST -> "because.highest";
      case MEDIAN -> "because.median";
      case MEDIAN_AT_MOST -> "because.median-at-most";
      case MEDIAN_AT_LEAST -> "because.median-at-least";
      case ENOUGH_WITHIN -> "because.enough-within";
      case TOO_MANY_OVER -> "because.too-many-over";
      case FIRST_WITHIN -> "because.first-within";
      case NONE_WITHIN -> "because.none-within";
      case SHOWN -> "because.shown";
      case BESIDE -> "because.beside";
      case AGAINST -> "because.against";
      case LIMIT -> "because.limit";
      case LIMIT_BELOW -> "because.limit-below";
      case PLUS -> "because.plus";
      case PLUS_ACCURACY -> "because.plus-accuracy";
      case COMES_TO -> "because.comes-to";
      case LIMIT_ROUNDED_DOWN -> "because.limit-rounded-down";
      case LIMIT_ROUNDED_NEAREST -> "because.limit-rounded-nearest";
      case LESS_GUARD -> "because.less-guard";
      case PLUS_GUARD -> "because.plus-guard";
      case FOR_ARROW -> "because.for-arrow";
      case TREATED -> "because.treated";
      case RAISED -> "because.raised";
      case RAISED_THEN -> "because.raised-then";
      case ROUNDED_DOWN -> "because.rounded-down";
      case ROUNDED_NEAREST -> "because.rounded-nearest";
      case NOT_ROUNDED -> "because.not-rounded";
      case HOW_FAR_OVER -> "because.how-far-over";
      case THE_MEAN -> "because.the-mean";
      case THE_HIGHEST -> "because.the-highest";
      case THE_MEDIAN -> "because.the-median";
      case THE_SLOWEST -> "because.the-slowest";
      case THE_SLOWEST_BUT -> "because.the-slowest-but";
      case ARROW_MASS -> "because.arrow-mass";
      case DRAW_AS_SET -> "because.draw-as-set";
      case DRAW_CERTIFIED -> "because.draw-certified";
      case DRAW_GREATER -> "because.draw-greater";
      case FIGURE -> "because.figure";
      case TOO_LITTLE -> "because.too-little";
      case TOO_MUCH -> "because.too-much";
      case ARROW_TOO_LIGHT -> "because.arrow-too-light";
      case NOTHING_LIMITED -> "because.nothing-limited";
      case AS_ASKED -> "because.as-asked";
      case HEAVY_ENOUGH -> "because.heavy-enough";
      case ONE_MORE_READING -> "because.one-more-reading";
      case MORE_READINGS -> "because.more-readings";
      case SHOT_LEFT -> "because.shot-left";
      case SHOTS_LEFT -> "because.shots-left";
      case VOID_READING -> "because.void-reading";
      case VOID_READINGS -> "because.void-readings";
      case TOO_FAR_APART -> "because.too-far-apart";
      case TO_BE_STATED -> "because.to-be-stated";
      case TO_BE_TICKED -> "because.to-be-ticked";
      case IN_DOUBT -> "because.in-doubt";
      case NOT_MEASURED -> "because.not-measured";
      case OF_SHOT -> "because.of-shot";
      case JUMPED -> "because.jumped";
      case STANDS_OUT -> "because.stands-out";
      case OTHERS -> "because.others";
      case OTHERS_UNASKED -> "because.others-unasked";
    };
  }

  static String of(Consequence consequence) {
    return switch (consequence) {
      case RECHECK -> "follows.recheck";
      case BARRED -> "follows.barred";
      case STRUCK -> "follows.struck";
      case JUDGE -> "follows.judge";
    };
  }

  static String of(Sequel sequel) {
    return switch (sequel) {
      case ANOTHER_SET_UP -> "follows.another-set-up";
      case RULING -> "follows.ruling";
      case IN_QUESTION -> "follows.in-question";
      case NONE_LEFT -> "follows.none-left";
      case ONE_LEFT -> "follows.one-left";
      case SOME_LEFT -> "follows.some-left";
    };
  }

  static String of(Doubt.Kind kind) {
    return switch (kind) {
      case IMPOSSIBLE -> "doubt.impossible";
      case JUMP -> "doubt.jump";
      case OUTLIER -> "doubt.outlier";
    };
  }

  static String of(BowLimit.Need need) {
    return switch (need) {
      case IMPOSSIBLE -> "doubt.needs-more";
      case POSSIBLE -> "doubt.needs-less";
    };
  }

  static String of(OutlierTest.Name name) {
    return switch (name) {
      case GRUBBS -> "doubt.grubbs";
      case DIXON -> "doubt.dixon";
    };
  }
}
