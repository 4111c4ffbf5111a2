package lanewarden.station;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import lanewarden.chronograph.Capture;
import lanewarden.quantity.Speed;
import lanewarden.station.VerificationView.Round;

/**
 * What is shot through the simulated instrument while it is verified: one arrow for each shot that
 * is asked for.
 *
 * <p>Where the capture has a section {@code verification}, its chunks, one a shot, for each
 * verification anew; behind the last the official types. Else arrows about the speed that the
 * reference is known to have. For one thread.
 */
final class ReferenceBow {
  private static final String LABEL = "verification";

  /** A bow kept for the purpose hardly scatters: the standard deviation as a share of its speed. */
  private static final double SPREAD = 0.0005;

  private final Optional<List<Capture.Chunk>> captured;
  private long round;
  private int shot = -1;

  ReferenceBow(Optional<Capture> capture) {
    this.captured =
        capture.filter(c -> c.labels().contains(LABEL)).map(c -> c.section(LABEL).chunks());
  }

  /**
   * What comes next, if anything does. Nothing while the second instrument's value is to be typed;
   * nor twice for one shot, since what the station did not take once it would not take again.
   */
  Optional<Archer.Next> next(Round now) {
    int taken = now.taken().size();
    if (now.awaitsReference() || (round == now.number() && shot == taken)) {
      return Optional.empty();
    }
    if (captured.isPresent()) {
      return captured.get().stream()
          .skip(taken)
          .findFirst()
          .map(chunk -> new Archer.Next.Bytes(chunk.afterMillis(), chunk.bytes()));
    }
    return Optional.of(new Archer.Next.Arrow(Archer.DRAWING, speed(now)));
  }

  /** It came. */
  void came(Round now) {
    round = now.number();
    shot = now.taken().size();
  }

  private static Speed speed(Round now) {
    Speed about = now.known().orElse(Archer.ORDINARY);
    Random invented = new Random(Objects.hash(now.number(), now.taken().size()));
    double share = 1 + SPREAD * invented.nextGaussian();
    return Speed.of(
        about.value().multiply(BigDecimal.valueOf(share)).setScale(1, RoundingMode.HALF_EVEN),
        about.unit());
  }
}
