package lanewarden.rules;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanewarden.metrology.Conformance;
import lanewarden.metrology.DecisionRule;
import lanewarden.metrology.Deviation;
import lanewarden.quantity.Percent;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;

/**
 * A band between what is allowed and what passes, for the doubt that every reading carries (JCGM
 * 106:2012, 8). It stands in the rule book as a figure, so that a verdict can be recomputed.
 *
 * @param rule on which side the band lies; simple acceptance has none
 * @param band nothing with simple acceptance, more than nothing else; a share is of the limit
 */
public record Guard(DecisionRule rule, Deviation band) {

  /** The written word of a decision rule. */
  private static String word(DecisionRule rule) {
    return switch (rule) {
      case SIMPLE_ACCEPTANCE -> "simple";
      case GUARDED_ACCEPTANCE -> "guarded acceptance";
      case GUARDED_REJECTION -> "guarded rejection";
    };
  }

  /** The decision rules by their words, in the order in which a fault lists them. */
  static Map<String, DecisionRule> words() {
    Map<String, DecisionRule> words = new LinkedHashMap<>();
    for (DecisionRule rule : DecisionRule.values()) {
      words.put(word(rule), rule);
    }
    return words;
  }

  /** How the rule book writes the decision rules. */
  public static List<String> written() {
    return List.copyOf(words().keySet());
  }

  /** No band: what is allowed passes, and the risk is shared. */
  public static Guard none() {
    return new Guard(
        DecisionRule.SIMPLE_ACCEPTANCE, new Deviation.Share(new Percent(BigDecimal.ZERO)));
  }

  /** Whether what is allowed is what passes. */
  public boolean isNone() {
    return rule == DecisionRule.SIMPLE_ACCEPTANCE;
  }

  /** The band's width at a limit, in the limit's unit, exact. */
  Speed width(Speed limit) {
    BigDecimal width =
        band instanceof Deviation.Fixed fixed
            ? fixed.speed().value()
            : limit.value().multiply(((Deviation.Share) band).percent().fraction());
    return Speed.of(width, limit.unit());
  }

  /**
   * The speed that passes, exact.
   *
   * @param allowed limit plus tolerance
   * @throws IllegalArgumentException if the band leaves nothing of it
   */
  Speed of(Speed allowed, Speed limit) {
    BigDecimal width = width(limit).value();
    BigDecimal edge =
        switch (rule) {
          case SIMPLE_ACCEPTANCE -> allowed.value();
          case GUARDED_ACCEPTANCE -> allowed.value().subtract(width);
          case GUARDED_REJECTION -> allowed.value().add(width);
        };
    if (edge.signum() <= 0) {
      throw new IllegalArgumentException("the guard band leaves nothing of the limit");
    }
    return Speed.of(edge, allowed.unit());
  }

  /**
   * The risk that the band leaves, in words; empty where there is no band, or no doubt about the
   * readings.
   *
   * @param standard uncertainty of a reading, m/s
   */
  Optional<Sentence> risk(Speed limit, double standard) {
    return isNone() || standard == 0
        ? Optional.empty()
        : Optional.of(new Conformance(rule, width(limit).siDouble() / standard).inWords());
  }

  /** The sum about which the band lies, and what passes with it. */
  Sentence after(Sentence sum, Speed passes) {
    return switch (rule) {
      case SIMPLE_ACCEPTANCE -> sum;
      case GUARDED_ACCEPTANCE -> Sentence.of(Because.LESS_GUARD, sum, band(), passes);
      case GUARDED_REJECTION -> Sentence.of(Because.PLUS_GUARD, sum, band(), passes);
    };
  }
}
