package lanewarden.station;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.metrology.CheckModel;
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
public record Effect(Optional<RuleCurve> curve, String inWords, List<WorkedCase> cases) {

  /** Copies the list. */
  public Effect {
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
      String beside = beside(division.rule(), supposed);
      double slowest = from;
      double fastest = to;
      Optional<RuleCurve> curve =
          effects.get(i).map(e -> RuleCurve.of(e, slowest, fastest, supposed, beside));
      together.add(
          new Effect(
              curve,
              curve.map(RuleCurve::inWords).orElseGet(() -> whyNone(division, supposed)),
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

  private static String whyNone(Division division, Supposed supposed) {
    Rule rule = division.rule();
    if (rule.speed().isEmpty() && rule.energy().isEmpty()) {
      return "There is no limit, so no shot is measured.";
    }
    if (!isMeasured(division) || rule.shooting().isEmpty()) {
      return "The limit holds, but nobody is measured: at the line nobody passes or is failed.";
    }
    return light(rule, supposed)
        .map(
            light ->
                "No limit applies to the supposed arrow of "
                    + supposed.setUp(rule).arrowMass()
                    + ": it holds only for "
                    + light
                    + ". To see what it does, suppose a lighter arrow, or leave the arrow out.")
        .orElse("No limit applies to the supposed bow and arrow.");
  }

  /** To which arrows alone the speed limit applies, in words. */
  private static Optional<String> light(Rule rule, Supposed supposed) {
    return rule.speed()
        .flatMap(SpeedLimit::onlyBelow)
        .flatMap(
            ratio ->
                supposed
                    .unlimitedFrom(rule)
                    .map(from -> "one of less than " + ratio + ", here less than " + from));
  }

  /** What the numbers hold for. */
  private static String beside(Rule rule, Supposed supposed) {
    return atTheBow(rule)
        + risk(rule, supposed)
        + doubts(rule)
        + rechecks(rule.aftermath())
        + light(rule, supposed)
            .map(
                light ->
                    " The supposed arrow has "
                        + supposed.setUp(rule).arrowMass()
                        + ": the speed limit holds only for "
                        + light
                        + ".")
            .orElse("");
  }

  /** What the guard band is worth with the instrument that is supposed. */
  private static String risk(Rule rule, Supposed supposed) {
    double standard = Math.hypot(supposed.reading().siDouble(), supposed.calibration().siDouble());
    String risk = rule.speed().map(limit -> limit.risk(standard)).orElse("");
    return risk.isEmpty() ? "" : " " + risk;
  }

  private static String atTheBow(Rule rule) {
    return rule.shooting().filter(how -> how.treatment().toBow().isPresent()).isPresent()
        ? " These are speeds at the bow, to which the readings are raised."
        : "";
  }

  private static String doubts(Rule rule) {
    return rule.shooting().filter(how -> how.screening().asks()).isPresent()
        ? " Every reading that the official is asked about is taken to be let count."
        : "";
  }

  private static String rechecks(Aftermath after) {
    if (after.rechecks() == 0) {
      return "";
    }
    boolean everyFail =
        after.onFail(Phase.BEFORE) == Consequence.RECHECK
            && after.bands().stream().allMatch(b -> b.consequence() == Consequence.RECHECK);
    if (!everyFail) {
      return " No re-check is counted, as not every fail before the event brings one.";
    }
    if (after.rechecks() > CheckModel.MOST_RECHECKS) {
      return " Of the "
          + after.rechecks()
          + " re-checks that the rule allows before the event, "
          + CheckModel.MOST_RECHECKS
          + " are counted.";
    }
    return after.rechecks() == 1
        ? " The re-check that the rule allows before the event is counted."
        : " The "
            + after.rechecks()
            + " re-checks that the rule allows before the event are counted.";
  }
}
