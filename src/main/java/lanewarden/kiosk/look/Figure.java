package lanewarden.kiosk.look;

import java.util.Optional;
import lanewarden.journal.TakenShot;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import lanewarden.station.CheckView;

/**
 * The reading that is the largest thing on a screen.
 *
 * @param value its digits as read, with the decimal sign of the language
 * @param unit its unit as read
 * @param converted the same in the rule's unit where that is another, for the eye only
 * @param counts whether the reading counts; one that does not is struck through
 */
public record Figure(String value, String unit, Optional<String> converted, boolean counts) {

  /** Decimals of a conversion, unless more are needed to see on which side of the limit it is. */
  private static final int DECIMALS = 1;

  /** The reading taken last, if one was. */
  public static Optional<Figure> last(CheckView view, Texts texts) {
    return view.check().shots().stream()
        .reduce((first, second) -> second)
        .map(shot -> of(shot, view, texts));
  }

  private static Figure of(TakenShot shot, CheckView view, Texts texts) {
    Speed speed = shot.reading().speed();
    return new Figure(
        texts.number(speed.value()),
        speed.unit().symbol(),
        converted(speed, view, texts),
        shot.counts());
  }

  /** The speed in the unit of the bound, never rounded across it; empty if it is in it already. */
  public static Optional<String> converted(Speed speed, CheckView view, Texts texts) {
    SpeedUnit unit = view.unit();
    if (speed.unit() == unit) {
      return Optional.empty();
    }
    return Optional.of(
        texts.quantity(
            view.fastest()
                .map(bound -> onItsSide(speed, bound))
                .orElseGet(() -> speed.to(unit, DECIMALS))));
  }

  private static Speed onItsSide(Speed speed, Speed bound) {
    SpeedUnit unit = bound.unit();
    int side = Integer.signum(speed.compareTo(bound));
    int decimals = DECIMALS;
    Speed shown = speed.to(unit, decimals);
    while (Integer.signum(shown.compareTo(bound)) != side) {
      decimals++;
      shown = speed.to(unit, decimals);
    }
    return shown;
  }
}
