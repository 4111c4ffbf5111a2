package lanewarden.kiosk.look;

import java.util.Optional;
import lanewarden.journal.Check;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import lanewarden.station.CheckView;

/**
 * The reading that is the largest thing on a screen.
 *
 * @param value its digits as read
 * @param unit its unit as read
 * @param converted the same in the rule's unit where that is another, for the eye only
 * @param counts whether the reading stands; a void one is struck through
 */
public record Figure(String value, String unit, Optional<String> converted, boolean counts) {

  /** Decimals of a conversion, unless more are needed to see on which side of the limit it is. */
  private static final int DECIMALS = 1;

  /** The reading taken last, if one was. */
  public static Optional<Figure> last(CheckView view) {
    return view.check().shots().stream()
        .reduce((first, second) -> second)
        .map(shot -> of(shot, view.allowed()));
  }

  private static Figure of(Check.TakenShot shot, Speed allowed) {
    Speed speed = shot.reading().speed();
    return new Figure(
        speed.value().toPlainString(),
        speed.unit().toString(),
        converted(speed, allowed),
        shot.stands());
  }

  /** The speed in the unit of the bound, never rounded across it; empty if it is in it already. */
  public static Optional<String> converted(Speed speed, Speed bound) {
    SpeedUnit unit = bound.unit();
    if (speed.unit() == unit) {
      return Optional.empty();
    }
    int side = Integer.signum(speed.compareTo(bound));
    int decimals = DECIMALS;
    Speed shown = speed.to(unit, decimals);
    while (Integer.signum(shown.compareTo(bound)) != side) {
      decimals++;
      shown = speed.to(unit, decimals);
    }
    return Optional.of(shown.toString());
  }
}
