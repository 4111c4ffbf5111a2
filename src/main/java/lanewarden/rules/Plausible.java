package lanewarden.rules;

import lanewarden.bow.GrainsPerPound;
import lanewarden.metrology.Deviation;
import lanewarden.quantity.Energy;
import lanewarden.quantity.Force;
import lanewarden.quantity.Percent;
import lanewarden.quantity.QuantityException;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;

/**
 * Between which figures a rule's figure lies; what lies outside is a misprint.
 *
 * <p>The ranges are wide on purpose: from a child's bow to a crossbow, and common practice of the
 * trade well inside them.
 *
 * @param range tells both ends
 * @param least still plausible
 * @param most still plausible
 */
record Plausible<Q extends Comparable<? super Q>>(BookTold range, Q least, Q most) {

  static final Plausible<Speed> LIMIT = speed("10 ft/s", "1000 ft/s");
  static final Plausible<Speed> STEP = speed("0.001 ft/s", "10 ft/s");
  static final Plausible<Speed> SPREAD = speed("0.1 ft/s", "100 ft/s");
  static final Plausible<Energy> ENERGY =
      new Plausible<>(BookTold.ENERGY_FROM, Energy.parse("1 J"), Energy.parse("1000 J"));
  static final Plausible<Force> DRAW_WEIGHT =
      new Plausible<>(BookTold.DRAW_WEIGHT_FROM, Force.parse("1 lbf"), Force.parse("500 lbf"));
  static final Plausible<GrainsPerPound> ARROW =
      new Plausible<>(
          BookTold.PER_POUND_FROM,
          GrainsPerPound.parse("0.5 gr/lb"),
          GrainsPerPound.parse("50 gr/lb"));

  static final Plausible<Speed> JUMP = speed("1 ft/s", "100 ft/s");
  static final Plausible<Speed> GAP = speed("0.1 ft/s", "50 ft/s");
  static final Plausible<Percent> TO_BOW = share("0.001 %", "10 %");

  private static final Plausible<Percent> TOLERANCE_SHARE = share("0 %", "25 %");
  private static final Plausible<Speed> TOLERANCE_SPEED = speed("0 ft/s", "50 ft/s");
  private static final Plausible<Percent> ACCURACY_SHARE = share("0.001 %", "10 %");
  private static final Plausible<Speed> ACCURACY_SPEED = speed("0.001 ft/s", "20 ft/s");
  private static final Plausible<Percent> BAND_SHARE = share("0.001 %", "100 %");
  private static final Plausible<Speed> BAND_SPEED = speed("0.001 ft/s", "300 ft/s");

  private static Plausible<Speed> speed(String least, String most) {
    return new Plausible<>(BookTold.SPEED_FROM, Speed.parse(least), Speed.parse(most));
  }

  private static Plausible<Percent> share(String least, String most) {
    return new Plausible<>(BookTold.PERCENTAGE_FROM, Percent.parse(least), Percent.parse(most));
  }

  /**
   * The figure itself.
   *
   * @throws QuantityException if it lies outside
   */
  Q of(Q figure) {
    if (figure.compareTo(least) < 0 || figure.compareTo(most) > 0) {
      throw new QuantityException(
          Sentence.of(range, least, most),
          "\"" + figure + "\"",
          Sentence.of(BookTold.CHECK_FIGURE));
    }
    return figure;
  }

  /**
   * A tolerance itself.
   *
   * @throws QuantityException if its share or speed lies outside
   */
  static Tolerance tolerance(Tolerance written) {
    return within(written, TOLERANCE_SHARE, TOLERANCE_SPEED);
  }

  /**
   * An instrument's accuracy itself.
   *
   * @throws QuantityException if its share or speed lies outside
   */
  static Tolerance accuracy(Tolerance written) {
    return within(written, ACCURACY_SHARE, ACCURACY_SPEED);
  }

  /**
   * A guard band itself.
   *
   * @throws QuantityException if it lies outside what an instrument's accuracy can be
   */
  static Deviation guard(Deviation written) {
    if (written instanceof Deviation.Share share) {
      ACCURACY_SHARE.of(share.percent());
    } else if (written instanceof Deviation.Fixed fixed) {
      ACCURACY_SPEED.of(fixed.speed());
    }
    return written;
  }

  /** The widest guard band about a limit: no instrument in use is off by more. */
  static Speed widestGuard(Speed limit) {
    return Speed.of(limit.value().movePointLeft(1), limit.unit());
  }

  /**
   * A band itself.
   *
   * @throws QuantityException if it reaches to a share or speed that lies outside
   */
  static Band band(Band written) {
    within(written.width(), BAND_SHARE, BAND_SPEED);
    return written;
  }

  private static Tolerance within(
      Tolerance written, Plausible<Percent> share, Plausible<Speed> speed) {
    if (written instanceof Tolerance.Share percentage) {
      share.of(percentage.percent());
    }
    written.speed().ifPresent(speed::of);
    return written;
  }
}
