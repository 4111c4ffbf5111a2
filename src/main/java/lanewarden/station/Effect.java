package lanewarden.station;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lanewarden.metrology.CheckModel;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Sentence;
import lanewarden.rules.Aftermath;
import lanewarden.rules.Consequence;
import lanewarden.rules.Division;
import lanewarden.rules.Phase;
import lanewarden.rules.Rule;
import lanewarden.rules.RuleEffect;
import lanewarden.rules.SpeedLimit;
import lanewarden.rules.Who;
import lanewarden.rules.WorkedCase;

/**
 * What a division's rule does to archers.
 *
 * @param curve empty where no shot is measured, or no limit applies to the supposed arrow
 * @param inWords the numbers that sum it up, or why there are none
 * @param cases made-up checks with the rule's own verdicts; none where nobody is checked
 */
public record Effect(Optional<RuleCurve> curve, List<Sentence> inWords, List<WorkedCase> cases) {

  /** Copies the lists. */
  public Effect {
    inWords = List.copyOf(inWords);
    cases = List.copyOf(cases);
  }

  /** The effects of several divisions, their curves over the same speeds. */
  public static List<Effect> together(List<Division> divisions, Supposed supposed) {
    List<Optional<RuleEffect>> effects = new ArrayList<>();
    double from = Double.POSITIVE_INFINITY;
    double to = 0;
    for (Division division : divisions) {
      Optional<RuleEffect> effect = effect(division, supposed);
      effects.add(effect);
      from = Math.min(from, effect.map(RuleEffect::from).orElse(from));
      to = Math.max(to, effect.map(RuleEffect::to).orElse(to));
    }
    List<Effect> together = new ArrayList<>();
    for (int i = 0; i < divisions.size(); i++) {
      Division division = divisions.get(i);
      List<Sentence> beside = beside(division.rule(), supposed);
      double slowest = from;
      double fastest = to;
      Optional<RuleCurve> curve =
          effects.get(i).map(e -> RuleCurve.of(e, slowest, fastest, supposed, beside));
      together.add(
          new Effect(
              curve,
              curve.map(RuleCurve::inWords).orElseGet(() -> List.of(whyNone(division, supposed))),
              isMeasured(division) ? division.workedCases() : List.of()));
    }
    return together;
  }

  private static boolean isMeasured(Division division) {
    return division.coverage().who() != Who.NOT_MEASURED;
  }

  private static Optional<RuleEffect> effect(Division division, Supposed supposed) {
    return isMeasured(division)
        ? RuleEffect.of(
            division.rule(),
            supposed.setUp(division.rule()),
            new RuleEffect.Supposed(
                supposed.arrows(), supposed.reading(), supposed.calibration(), supposed.voids()))
        : Optional.empty();
  }

  private static Sentence whyNone(Division division, Supposed supposed) {
    Rule rule = division.rule();
    if (rule.speed().isEmpty() && rule.energy().isEmpty()) {
      return Sentence.of(Reckoned.NO_LIMIT);
    }
    if (!isMeasured(division) || rule.shooting().isEmpty()) {
      return Sentence.of(Reckoned.NOBODY_MEASURED);
    }
    return light(Reckoned.HEAVY_ARROW, rule, supposed).orElse(Sentence.of(Reckoned.UNLIMITED));
  }

  /** The supposed arrow, and to which arrows alone the speed limit applies. */
  private static Optional<Sentence> light(Reckoned form, Rule rule, Supposed supposed) {
    Mass arrow = supposed.setUp(rule).arrowMass();
    return arrow == null
        ? Optional.empty()
        : rule.speed()
            .flatMap(SpeedLimit::onlyBelow)
            .flatMap(
                ratio ->
                    supposed
                        .unlimitedFrom(rule)
                        .map(from -> Sentence.of(form, arrow, ratio, from)));
  }

  /** What the numbers hold for. */
  private static List<Sentence> beside(Rule rule, Supposed supposed) {
    return Stream.of(
            atTheBow(rule),
            risk(rule, supposed),
            doubts(rule),
            rechecks(rule.aftermath()),
            light(Reckoned.LIGHT_ARROW, rule, supposed))
        .flatMap(Optional::stream)
        .toList();
  }

  /** What the guard band is worth with the instrument that is supposed. */
  private static Optional<Sentence> risk(Rule rule, Supposed supposed) {
    double standard = Math.hypot(supposed.reading().siDouble(), supposed.calibration().siDouble());
    return rule.speed().flatMap(limit -> limit.risk(standard));
  }

  private static Optional<Sentence> atTheBow(Rule rule) {
    return rule.shooting()
        .filter(how -> how.treatment().toBow().isPresent())
        .map(how -> Sentence.of(Reckoned.AT_THE_BOW));
  }

  private static Optional<Sentence> doubts(Rule rule) {
    return rule.shooting()
        .filter(how -> how.screening().asks())
        .map(how -> Sentence.of(Reckoned.LET_COUNT));
  }

  private static Optional<Sentence> rechecks(Aftermath after) {
    int allowed = after.rechecks();
    if (allowed == 0) {
      return Optional.empty();
    }
    boolean everyFail =
        after.onFail(Phase.BEFORE) == Consequence.RECHECK
            && after.bands().stream().allMatch(b -> b.consequence() == Consequence.RECHECK);
    if (!everyFail) {
      return Optional.of(Sentence.of(Reckoned.NO_RECHECK));
    }
    if (allowed > CheckModel.MOST_RECHECKS) {
      return Optional.of(Sentence.of(Reckoned.SOME_RECHECKS, allowed, CheckModel.MOST_RECHECKS));
    }
    return Optional.of(
        allowed == 1
            ? Sentence.of(Reckoned.ONE_RECHECK)
            : Sentence.of(Reckoned.ALL_RECHECKS, allowed));
  }
}
