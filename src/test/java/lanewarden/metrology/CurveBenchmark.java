package lanewarden.metrology;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/**
 * What an organizer waits for while typing a rule: the calculated curve of 200 speeds against one
 * frame of a 60 Hz screen; and the simulation's draws a second against a bare loop of the same
 * generator.
 *
 * <p>Arguments: redraws of each curve (400), archers of each simulation (2000000), rounds (5).
 */
final class CurveBenchmark {
  private static final double FRAME = 1000.0 / 60;
  private static final int POINTS = 200;
  private static final Dispersion TYPICAL = new Dispersion(0.3, 0.15, 0.15);

  private double sink;

  private record Case(String name, CheckModel model) {}

  private static final List<Case> CASES =
      List.of(
          new Case("mean of 3", SampleModels.plain(DecidingFigure.mean(3), TYPICAL)),
          new Case(
              "highest of 3, voids, a re-check",
              SampleModels.withRechecks(
                  SampleModels.withShots(
                      SampleModels.plain(DecidingFigure.highest(3), TYPICAL),
                      new ShotAllowance(5, 1, 0.05)),
                  1)),
          new Case("median of 6", SampleModels.plain(DecidingFigure.median(6), TYPICAL)),
          new Case(
              "2 of 3 with a spread limit",
              SampleModels.withSpread(
                  SampleModels.plain(DecidingFigure.withinCount(2, 3), TYPICAL), 0.6)));

  public static void main(String[] arguments) {
    int redraws = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 400;
    int archers = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 2_000_000;
    int rounds = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 5;
    CurveBenchmark benchmark = new CurveBenchmark();
    for (Case one : CASES) {
      benchmark.redraw(one, redraws);
    }
    for (Case one : CASES) {
      benchmark.simulate(one, archers, rounds);
    }
    if (Double.isNaN(benchmark.sink)) {
      throw new IllegalStateException("a chance is not a number");
    }
  }

  private void redraw(Case one, int redraws) {
    double[] milliseconds = new double[redraws];
    for (int i = -redraws; i < redraws; i++) {
      // a new limit each time, as typing brings it: nothing may be kept from the redraw before
      CheckModel typed =
          SampleModels.withThreshold(
              one.model(), new Threshold(SampleModels.THRESHOLD + i * 1e-4, true));
      long start = System.nanoTime();
      List<CurvePoint> curve = new OperatingCharacteristic(typed, 1, 1).curve(89, 94, POINTS);
      double taken = (System.nanoTime() - start) / 1e6;
      sink += curve.get(POINTS / 2).ending().within();
      if (i >= 0) {
        milliseconds[i] = taken;
      }
    }
    Arrays.sort(milliseconds);
    double median = milliseconds[redraws / 2];
    double slow = milliseconds[Math.min(redraws - 1, redraws * 99 / 100)];
    System.out.printf(
        Locale.ROOT,
        "%s: %d points in %.3f ms, 99th percentile %.3f ms: %.3f and %.3f of a frame of %.2f ms%n",
        one.name(),
        POINTS,
        median,
        slow,
        median / FRAME,
        slow / FRAME,
        FRAME);
  }

  private void simulate(Case one, int archers, int rounds) {
    CheckSimulation simulation = new CheckSimulation(one.model());
    Counting counting = new Counting();
    curve(simulation, archers, counting);
    double[] ratios = new double[rounds];
    double[] ours = new double[rounds];
    double[] bare = new double[rounds];
    for (int round = -2; round < rounds; round++) {
      long start = System.nanoTime();
      sink += bare(counting.normal, counting.uniform, new SplittableRandom(1));
      long between = System.nanoTime();
      sink += curve(simulation, archers, new SplittableRandom(1));
      long end = System.nanoTime();
      if (round >= 0) {
        long draws = counting.normal + counting.uniform;
        bare[round] = draws / ((between - start) / 1e9);
        ours[round] = draws / ((end - between) / 1e9);
        ratios[round] = ours[round] / bare[round];
      }
    }
    Arrays.sort(ratios);
    Arrays.sort(ours);
    Arrays.sort(bare);
    System.out.printf(
        Locale.ROOT,
        "%s: simulated %.1f million draws/s, bare loop %.1f, ratio %.2f (aim 0.5)%n",
        one.name(),
        ours[rounds / 2] / 1e6,
        bare[rounds / 2] / 1e6,
        ratios[rounds / 2]);
  }

  /** The curve that is drawn, at 50 of its speeds. */
  private static double curve(CheckSimulation simulation, int archers, RandomGenerator random) {
    double sum = 0;
    for (int i = 0; i < 50; i++) {
      sum += simulation.at(89 + 0.1 * i, archers / 50, random).ending().within();
    }
    return sum;
  }

  /** The same draws and nothing else; those that make a shot void are uniform. */
  private static double bare(long normal, long uniform, SplittableRandom random) {
    double sum = 0;
    for (long i = 0; i < normal; i++) {
      sum += random.nextGaussian();
    }
    for (long i = 0; i < uniform; i++) {
      sum += random.nextDouble();
    }
    return sum;
  }

  private static final class Counting implements RandomGenerator {
    private final SplittableRandom random = new SplittableRandom(1);
    private long normal;
    private long uniform;

    @Override
    public long nextLong() {
      return random.nextLong();
    }

    @Override
    public double nextGaussian() {
      normal++;
      return random.nextGaussian();
    }

    @Override
    public double nextDouble() {
      uniform++;
      return random.nextDouble();
    }
  }
}
