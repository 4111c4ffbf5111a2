package lanewarden.bench;

import java.util.List;
import lanewarden.quantity.Mass;
import lanewarden.quantity.SpeedUnit;

/**
 * The shots of one bow with one arrow: a set-up.
 *
 * @param bow what is known of it
 * @param arrow its owner's name for it
 * @param mass of the whole arrow, as weighed
 * @param shots in the order of the file, one or more
 */
public record Series(PracticeBow bow, String arrow, Mass mass, List<PracticeShot> shots) {
  /** Copies the list. */
  public Series {
    shots = List.copyOf(shots);
  }

  /** For example {@code Heron + light shaft}. */
  public String name() {
    return name(bow.label(), arrow);
  }

  /** The name of a bow and an arrow together. */
  static String name(String bow, String arrow) {
    return bow + " + " + arrow;
  }

  /** Whether a set-up is this bow and arrow, by their names. */
  public boolean isOf(PracticeSetUp setUp) {
    return bow.label().equals(setUp.bow()) && arrow.equals(setUp.arrow());
  }

  /** The unit in which its first shot is written, and its figures are shown. */
  public SpeedUnit unit() {
    return shots.get(0).speed().unit();
  }
}
