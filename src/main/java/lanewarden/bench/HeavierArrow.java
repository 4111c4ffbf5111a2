package lanewarden.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import lanewarden.bow.MeasuredBow;
import lanewarden.metrology.Interval;
import lanewarden.quantity.Mass;
import lanewarden.quantity.MassUnit;
import lanewarden.rules.Overrun;
import lanewarden.rules.SetUp;

/**
 * What a heavier arrow does for a check that is over.
 *
 * @param option the heavier arrow in words; empty where none helps
 * @param note why, or what else is to be known; empty where nothing is
 */
record HeavierArrow(Optional<String> option, Optional<String> note) {

  static HeavierArrow of(Overrun over, MeasuredBow bow, double confidence) {
    if (!over.isOfSpeed()) {
      return new HeavierArrow(
          Optional.empty(),
          Optional.of(
              "A heavier arrow does not help against a limit of energy: it takes more of it along."
                  + " A lighter one is harder on the bow."));
    }
    Interval needed = bow.arrowFor(over.limit(), confidence);
    Mass enough = Mass.of(grains(needed.high(), RoundingMode.CEILING), MassUnit.GRAIN);
    Optional<Mass> free = over.rule().unlimitedFrom(over.setUp());
    if (free.filter(from -> from.isAtMost(enough)).isPresent()) {
      return new HeavierArrow(
          free.map(
              from ->
                  "an arrow of "
                      + from
                      + " or more, to which no speed limit applies at this draw weight"),
          Optional.empty());
    }
    if (isLimitedByEnergy(over, enough)) {
      return new HeavierArrow(
          Optional.empty(),
          Optional.of(
              "An arrow heavy enough for the speed limit is over the energy limit: it takes more"
                  + " of the bow's energy along."));
    }
    return new HeavierArrow(
        Optional.of(words(needed, over.arrow())),
        free.map(
            from ->
                "From " + from + " on, no speed limit applies to an arrow at this draw weight."));
  }

  private static boolean isLimitedByEnergy(Overrun over, Mass heavier) {
    SetUp setUp = over.setUp();
    SetUp changed =
        new SetUp(
            heavier,
            setUp.drawWeight(),
            setUp.certifiedDrawWeight(),
            setUp.drawLength(),
            setUp.braceHeight());
    return over.rule().fastest(changed).filter(over.limit()::isMoreThan).isPresent();
  }

  /** Rounded away from each other, so that the greater one is enough. */
  private static String words(Interval needed, Mass arrow) {
    BigDecimal least = grains(needed.low() - arrow.siDouble(), RoundingMode.FLOOR);
    BigDecimal most = grains(needed.high() - arrow.siDouble(), RoundingMode.CEILING);
    BigDecimal now = arrow.si().divide(MassUnit.GRAIN.inSi(), 1, RoundingMode.HALF_EVEN);
    boolean surely = least.signum() > 0;
    return "an arrow "
        + (surely ? least.toPlainString() + " to " : "up to ")
        + most.toPlainString()
        + " gr heavier ("
        + (surely ? plain(now.add(least)) + " to " : "")
        + plain(now.add(most))
        + " gr)";
  }

  private static String plain(BigDecimal grains) {
    return grains.setScale(0, RoundingMode.CEILING).toPlainString();
  }

  private static BigDecimal grains(double kilograms, RoundingMode way) {
    return BigDecimal.valueOf(kilograms).divide(MassUnit.GRAIN.inSi(), 0, way);
  }
}
