package lanewarden.kiosk.rulebook;

import java.util.List;
import java.util.Optional;
import lanewarden.quantity.Sentence;
import lanewarden.station.Difference;
import lanewarden.station.Effect;
import lanewarden.station.RuleCurve;

/**
 * What is shown of what a rule does.
 *
 * @param first the rule that is open; empty until it was right once
 * @param second the rule beside it, where one was chosen and is right
 * @param difference what the two do not both demand; empty where there is no second
 * @param note why something is not shown or not of this moment; blank if all is
 */
public record EffectPage(
    Optional<Shown> first, Optional<Shown> second, Optional<Difference> difference, String note) {

  /**
   * One rule.
   *
   * @param name whose rule it is
   * @param sentences the rule in words, and what there is to know of it
   * @param effect what it does to archers
   */
  public record Shown(String name, List<Sentence> sentences, Effect effect) {

    /** The effect drawn; empty where there is none to draw. */
    Optional<RuleCurve> curve() {
      return effect.curve();
    }
  }
}
