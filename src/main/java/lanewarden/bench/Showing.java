package lanewarden.bench;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lanewarden.bow.Arrow;
import lanewarden.metrology.Estimate;
import lanewarden.metrology.Interval;
import lanewarden.metrology.SampleMean;
import lanewarden.quantity.Energy;
import lanewarden.quantity.Momentum;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * What a set-up showed on a practice day.
 *
 * @param series its shots
 * @param counted those that count, in the order of the file
 * @param leftOut those that do not
 */
public record Showing(Series series, List<PracticeShot> counted, List<LeftOut> leftOut) {
  /** Shots from the hand scatter by no less, whatever a few of them seem (common practice). */
  static final Speed LEAST_SCATTER = Speed.parse("1 ft/s");

  static Showing of(Series series) {
    Sifting sifting = Sifting.of(series);
    return new Showing(series, sifting.counted(), sifting.leftOut());
  }

  /** Whether any shot counts. */
  public boolean hasMean() {
    return !counted.isEmpty();
  }

  /** Whether enough shots count to say how far the mean may be off. */
  public boolean hasInterval() {
    return counted.size() >= SampleMean.FEWEST;
  }

  /**
   * Mean and scatter of the shots that count, with the step of the display: a unit of the last
   * decimal that any of them is written with. Where they seem to scatter less than shots do, the
   * mean is taken to be known no better than if they scattered by {@link #LEAST_SCATTER}.
   *
   * @throws IllegalArgumentException if none counts
   */
  SampleMean sample() {
    return SampleMean.of(
        counted.stream().map(PracticeShot::speed).toList(), step(), LEAST_SCATTER.siDouble());
  }

  private double step() {
    int decimals =
        counted.stream()
            .mapToInt(shot -> Math.max(0, shot.speed().value().scale()))
            .max()
            .orElse(0);
    return series.unit().inSi().movePointLeft(decimals).doubleValue();
  }

  /** The mean, m/s; empty where no shot counts. */
  public OptionalDouble mean() {
    return hasMean() ? OptionalDouble.of(sample().spread().mean()) : OptionalDouble.empty();
  }

  /** The standard deviation of the shots that count, m/s; empty for fewer than two. */
  public OptionalDouble deviation() {
    return hasInterval()
        ? OptionalDouble.of(sample().spread().deviation())
        : OptionalDouble.empty();
  }

  /** The mean in m/s and how well it is known; empty for fewer than two shots that count. */
  public Optional<Estimate> estimate() {
    return hasInterval() ? Optional.of(sample().estimate()) : Optional.empty();
  }

  /** From where to where the mean lies, m/s, 95 times in 100; empty for fewer than two shots. */
  public Optional<Interval> interval() {
    return estimate().map(mean -> mean.interval(Comparison.CONFIDENCE));
  }

  /** The mean as a speed, m/s; empty where no shot counts. */
  public Optional<Speed> meanSpeed() {
    OptionalDouble mean = mean();
    return mean.isEmpty()
        ? Optional.empty()
        : Optional.of(Speed.ofSi(mean.getAsDouble(), SpeedUnit.METRES_PER_SECOND));
  }

  /** Kinetic energy of the arrow at the mean, J; empty where no shot counts. */
  public Optional<Energy> energy() {
    return meanSpeed().map(new Arrow(series.mass())::kineticEnergyAt);
  }

  /** Momentum of the arrow at the mean, kg·m/s; empty where no shot counts. */
  public Optional<Momentum> momentum() {
    return meanSpeed().map(new Arrow(series.mass())::momentumAt);
  }

  /** What the bow's rating makes one expect; empty where rating or draw is not stated. */
  public Optional<Rating.Expected> expected() {
    return series.bow().rating().flatMap(rating -> rating.scaledTo(series.bow(), series.mass()));
  }
}
