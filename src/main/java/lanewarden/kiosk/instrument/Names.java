package lanewarden.kiosk.instrument;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The names of level lines beside a picture, moved apart where their lines lie too close. */
final class Names {

  /**
   * A name in its place.
   *
   * @param y of its middle, pixels from the top
   */
  record Name(double y, String words) {}

  private final ChartField field;
  private final double apart;
  private final List<Name> wanted = new ArrayList<>();

  /**
   * @param apart how far from each other names stand at least, pixels
   */
  Names(ChartField field, double apart) {
    this.field = field;
    this.apart = apart;
  }

  /** Wants a name beside a difference in m/s. */
  void add(double metresASecond, String words) {
    wanted.add(new Name(field.y(metresASecond), words));
  }

  /** All of them, from the top, none over another and none below the field. */
  List<Name> placed() {
    List<Name> order = wanted.stream().sorted(Comparator.comparingDouble(Name::y)).toList();
    double[] at = new double[order.size()];
    double above = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < at.length; i++) {
      at[i] = Math.max(order.get(i).y(), above + apart);
      above = at[i];
    }
    double below = field.bottom() + apart;
    for (int i = at.length - 1; i >= 0; i--) {
      at[i] = Math.min(at[i], below - apart);
      below = at[i];
    }
    List<Name> placed = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      placed.add(new Name(at[i], order.get(i).words()));
    }
    return placed;
  }
}
