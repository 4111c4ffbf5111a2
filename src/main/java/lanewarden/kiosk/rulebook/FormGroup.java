package lanewarden.kiosk.rulebook;

import java.util.List;
import lanewarden.station.RuleKey;

/** What belongs together in the form, in the order in which a person thinks of it. */
enum FormGroup {
  DIVISION(
      "group.division",
      line(RuleKey.CODE, "rule.code", "rule.code.example"),
      line(RuleKey.NAME, "rule.name", "rule.name.example"),
      line(RuleKey.EDITION, "rule.event-edition", "rule.event-edition.example")),
  LIMIT(
      "group.limit",
      line(RuleKey.LIMIT, "rule.limit", "rule.limit.example"),
      line(RuleKey.BOUND, "rule.bound", "rule.bound.example"),
      line(RuleKey.ONLY_BELOW, "rule.only-below", "rule.only-below.example"),
      line(RuleKey.ENERGY, "rule.energy", "rule.energy.example"),
      line(RuleKey.ENERGY_BOUND, "rule.energy-bound", "rule.bound.example")),
  TOLERANCE(
      "group.tolerance",
      line(RuleKey.TOLERANCE, "rule.tolerance", "rule.tolerance.example"),
      line(RuleKey.ACCURACY, "rule.accuracy", "rule.accuracy.example"),
      line(RuleKey.FACTOR, "rule.factor", "rule.factor.example"),
      line(RuleKey.ROUND_LIMIT, "rule.round-limit", "rule.round.example"),
      line(RuleKey.ACCEPTANCE, "rule.acceptance", "rule.acceptance.example"),
      line(RuleKey.GUARD, "rule.guard", "rule.guard.example")),
  WHO(
      "group.who",
      line(RuleKey.WHO, "rule.who", "rule.who.example"),
      line(RuleKey.SHARE, "rule.share", "rule.share.example")),
  SHOTS(
      "group.shots",
      line(RuleKey.DECIDE, "rule.decide", "rule.decide.example"),
      line(RuleKey.WITHIN, "rule.within", "rule.within.example"),
      line(RuleKey.COUNTED, "rule.counted", "rule.counted.example"),
      line(RuleKey.SHOTS, "rule.shots", "rule.shots.example"),
      line(RuleKey.VOIDS, "rule.voids", "rule.voids.example"),
      line(RuleKey.ROUND_READING, "rule.round-reading", "rule.round.example"),
      line(RuleKey.BOW_CORRECTION, "rule.bow-correction", "rule.bow-correction.example"),
      line(RuleKey.SPREAD, "rule.spread", "rule.spread.example")),
  DOUBT(
      "group.doubt",
      line(RuleKey.JUMP, "rule.jump", "rule.jump.example"),
      line(RuleKey.OUTLIER, "rule.outlier", "rule.outlier.example"),
      line(RuleKey.OUTLIER_LEAST, "rule.outlier-least", "rule.outlier-least.example")),
  BOW(
      "group.bow",
      line(RuleKey.LEAST_ARROW, "rule.least-arrow", "rule.least-arrow.example"),
      line(RuleKey.LEAST_DRAW_WEIGHT, "rule.least-draw", "rule.least-draw.example"),
      line(RuleKey.MOST_DRAW_WEIGHT, "rule.most-draw", "rule.most-draw.example"),
      line(RuleKey.DRAW_WEIGHT, "rule.draw-weight", "rule.draw-weight.example")),
  AFTER(
      "group.after",
      line(RuleKey.RECHECKS, "rule.rechecks", "rule.rechecks.example"),
      line(RuleKey.FAIL_BEFORE, "rule.fail-before", "rule.fail.example"),
      line(RuleKey.FAIL_DURING, "rule.fail-during", "rule.fail.example"),
      line(RuleKey.FAIL_AFTER, "rule.fail-after", "rule.fail.example"),
      line(RuleKey.BANDS, "rule.bands", "rule.bands.example"),
      line(RuleKey.LAPSES, "rule.lapses", "rule.lapses.example")),
  CONDITIONS(
      "group.conditions", line(RuleKey.CONDITIONS, "rule.conditions", "rule.conditions.example")),
  ORIGIN(
      "group.origin",
      line(RuleKey.BODY, "rule.body", "rule.body.example"),
      line(RuleKey.SOURCE, "rule.source", "rule.source.example"),
      line(RuleKey.EDITION, "rule.edition", "rule.edition.example"),
      line(RuleKey.EFFECTIVE, "rule.effective", "rule.effective.example"));

  /**
   * One field.
   *
   * @param name the key of its name on the screen
   * @param example the key of what may stand in it
   */
  record Line(RuleKey key, String name, String example) {}

  private final String title;
  private final List<Line> lines;

  FormGroup(String title, Line... lines) {
    this.title = title;
    this.lines = List.of(lines);
  }

  private static Line line(RuleKey key, String name, String example) {
    return new Line(key, name, example);
  }

  /** The key of its title on the screen. */
  String title() {
    return title;
  }

  List<Line> lines() {
    return lines;
  }
}
