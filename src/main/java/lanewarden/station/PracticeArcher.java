package lanewarden.station;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import lanewarden.bench.PracticeSetUp;
import lanewarden.bench.PracticeShot;
import lanewarden.bench.Series;
import lanewarden.quantity.Mass;
import lanewarden.quantity.MassUnit;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * Who shoots a practice day's set-ups through the simulated instrument: so many arrows with each,
 * the same ones each time, about what the bow's rating lets expect. For one thread.
 */
final class PracticeArcher {
  /** With so many a set-up, a difference of a few feet a second comes out of the noise. */
  static final int ARROWS = 6;

  /** How far one bow is from another and one arrow from the next, as standard deviations. */
  private static final double BOWS = 0.012;

  private static final double SPREAD = 0.003;

  /** The arrow that leaves with {@link Archer#ORDINARY} where no rating says how fast. */
  private static final Mass ORDINARY = Mass.of("400", MassUnit.GRAIN);

  /** What is to be shot next: nothing is shot twice for it. */
  private record Turn(String setUp, int shots) {}

  private Turn last = new Turn("", 0);

  /** What comes next, if anything does. */
  Optional<Archer.Next> next(PracticeView view) {
    PracticeSetUp setUp = view.setUp().orElseThrow();
    if (turn(view).equals(last) || good(view) >= ARROWS) {
      return Optional.empty();
    }
    return Optional.of(new Archer.Next.Arrow(Archer.DRAWING, speed(setUp, turn(view))));
  }

  /** It came. */
  void came(PracticeView view) {
    last = turn(view);
  }

  private static Turn turn(PracticeView view) {
    return new Turn(
        view.file() + view.setUp().orElseThrow().name(),
        series(view).map(series -> series.shots().size()).orElse(0));
  }

  /** How many were shot that nobody called a misread. */
  private static long good(PracticeView view) {
    return series(view).stream()
        .flatMap(series -> series.shots().stream())
        .filter(shot -> shot.word() != PracticeShot.Word.MISREAD)
        .count();
  }

  private static Optional<Series> series(PracticeView view) {
    PracticeSetUp setUp = view.setUp().orElseThrow();
    return view.practice().stream()
        .flatMap(practice -> practice.series().stream())
        .filter(series -> series.isOf(setUp))
        .findFirst();
  }

  private static Speed speed(PracticeSetUp setUp, Turn turn) {
    double bow = 1 + BOWS * new Random(setUp.bow().hashCode()).nextGaussian();
    Random arrow = new Random(Objects.hash(setUp.name(), turn.shots()));
    double feet = middle(setUp) * bow * (1 + SPREAD * arrow.nextGaussian());
    return Speed.of(
        BigDecimal.valueOf(feet).setScale(1, RoundingMode.HALF_EVEN).toPlainString(),
        SpeedUnit.FEET_PER_SECOND);
  }

  /** What the rating lets expect, else what an ordinary bow's energy gives the arrow, ft/s. */
  private static double middle(PracticeSetUp setUp) {
    return setUp
        .expected()
        .map(expected -> expected.usual() / SpeedUnit.FEET_PER_SECOND.inSi().doubleValue())
        .orElseGet(() -> ordinary(setUp));
  }

  private static double ordinary(PracticeSetUp setUp) {
    double share = ORDINARY.siDouble() / setUp.mass().orElseThrow().siDouble();
    return Archer.ORDINARY.value().doubleValue() * Math.sqrt(share);
  }
}
