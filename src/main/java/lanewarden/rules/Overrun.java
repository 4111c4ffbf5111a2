package lanewarden.rules;

import java.util.List;
import java.util.Optional;
import lanewarden.metrology.DecidingFigure;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import org.jspecify.annotations.Nullable;

/**
 * A check that is over, of an arrow that was weighed: what the archer may want to know more about.
 * No verdict is made from it.
 *
 * @param rule that judged it
 * @param setUp bow and arrow, its arrow mass known
 * @param readings that count, as they were taken
 * @param uncertainty the largest standard uncertainty among them, where the instrument's is stated
 */
public record Overrun(Rule rule, SetUp setUp, List<Speed> readings, Optional<Speed> uncertainty) {

  /**
   * @throws IllegalArgumentException if nothing was weighed or read, or no limit applies
   */
  public Overrun {
    readings = List.copyOf(readings);
    if (setUp.arrowMass() == null || readings.isEmpty() || rule.fastest(setUp).isEmpty()) {
      throw new IllegalArgumentException("an overrun is of a weighed arrow, read, with a limit");
    }
  }

  /** Of the arrow that was weighed. */
  public Mass arrow() {
    return known(setUp.arrowMass());
  }

  /** The fastest speed that keeps the limit with this arrow. */
  public Speed limit() {
    return rule.fastest(setUp).orElseThrow();
  }

  /** Whether it is a speed that is limited, and not the energy of this arrow. */
  public boolean isOfSpeed() {
    return rule.speed().filter(clause -> clause.allowed().equals(limit())).isPresent();
  }

  /** The figure of a check that decides. */
  public DecidingFigure deciding() {
    return shooting().deciding();
  }

  /** The mean of the readings as they were compared, m/s: raised and rounded as the rule says. */
  public double meanCompared() {
    return readings.stream()
        .map(shooting().treatment()::of)
        .mapToDouble(Speed::siDouble)
        .average()
        .orElseThrow();
  }

  /** What of a further check must be within, for a sentence. */
  public Sentence further() {
    int counted = shooting().plan().counted();
    return counted == 1
        ? Sentence.of(Demand.FURTHER_READING)
        : shooting().decision().ofFurther(counted);
  }

  private Shooting shooting() {
    return rule.shooting().orElseThrow();
  }

  private static Mass known(@Nullable Mass mass) {
    if (mass == null) {
      throw new IllegalStateException("an overrun without an arrow mass");
    }
    return mass;
  }
}
