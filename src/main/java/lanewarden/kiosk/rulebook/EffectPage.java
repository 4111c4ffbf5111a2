package lanewarden.kiosk.rulebook;

import java.util.List;
import java.util.Optional;
import lanewarden.rules.WorkedCase;
import lanewarden.station.RuleCurve;

/**
 * What is shown of what a rule does.
 *
 * @param first the rule that is open; empty until it was right once
 * @param second the rule beside it, where one was chosen and is right
 * @param note why something is not shown or not of this moment; blank if all is
 */
public record EffectPage(Optional<Shown> first, Optional<Shown> second, String note) {

  /**
   * One rule.
   *
   * @param name whose rule it is
   * @param sentences the rule in words
   * @param cases made-up checks with their verdicts
   * @param curve its effect; empty where no shot is measured with this bow and arrow
   */
  public record Shown(
      String name, List<String> sentences, List<WorkedCase> cases, Optional<RuleCurve> curve) {}
}
