package lanewarden.metrology;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Check models for tests: a plain one to vary, and many of all kinds. */
final class SampleModels {
  static final double THRESHOLD = 91.44;

  private SampleModels() {}

  /** No spread limit, no voids, no rounding, no re-checks. */
  static CheckModel plain(DecidingFigure figure, Dispersion dispersion) {
    return new CheckModel(
        figure,
        new Threshold(THRESHOLD, true),
        OptionalDouble.empty(),
        new ShotAllowance(figure.readings(), 0, 0),
        ReadingRounding.NONE,
        dispersion,
        0);
  }

  static CheckModel withSpread(CheckModel m, double spread) {
    return new CheckModel(
        m.figure(),
        m.threshold(),
        OptionalDouble.of(spread),
        m.shots(),
        m.rounding(),
        m.dispersion(),
        m.rechecks());
  }

  static CheckModel withShots(CheckModel m, ShotAllowance shots) {
    return new CheckModel(
        m.figure(), m.threshold(), m.spread(), shots, m.rounding(), m.dispersion(), m.rechecks());
  }

  static CheckModel withRounding(CheckModel m, ReadingRounding rounding) {
    return new CheckModel(
        m.figure(), m.threshold(), m.spread(), m.shots(), rounding, m.dispersion(), m.rechecks());
  }

  static CheckModel withRechecks(CheckModel m, int rechecks) {
    return new CheckModel(
        m.figure(), m.threshold(), m.spread(), m.shots(), m.rounding(), m.dispersion(), rechecks);
  }

  static CheckModel withThreshold(CheckModel m, Threshold threshold) {
    return new CheckModel(
        m.figure(), threshold, m.spread(), m.shots(), m.rounding(), m.dispersion(), m.rechecks());
  }

  static CheckModel withDispersion(CheckModel m, Dispersion dispersion) {
    return new CheckModel(
        m.figure(), m.threshold(), m.spread(), m.shots(), m.rounding(), dispersion, m.rechecks());
  }

  static List<DecidingFigure> figures() {
    return List.of(
        DecidingFigure.mean(1),
        DecidingFigure.mean(3),
        DecidingFigure.highest(3),
        DecidingFigure.median(3),
        DecidingFigure.median(4),
        DecidingFigure.median(6),
        DecidingFigure.withinCount(2, 5),
        DecidingFigure.withinCount(4, 5),
        DecidingFigure.firstWithin(3),
        DecidingFigure.mean(8));
  }

  /** So many models of every figure with parts drawn at random, the same ones every time. */
  static List<CheckModel> many(int ofEachFigure, Predicate<CheckModel> wanted) {
    SplittableRandom random = new SplittableRandom(20261125);
    List<CheckModel> models = new ArrayList<>();
    for (DecidingFigure figure : figures()) {
      Stream.generate(() -> drawn(figure, random))
          .filter(wanted)
          .limit(ofEachFigure)
          .forEach(models::add);
    }
    return models;
  }

  private static CheckModel drawn(DecidingFigure figure, SplittableRandom random) {
    double[] deviations = {0, 0.02, 0.1, 0.3, 0.6};
    ReadingRounding[] roundings = {
      ReadingRounding.NONE,
      ReadingRounding.NONE,
      new ReadingRounding(ReadingRounding.Way.NEAREST, 0.3048),
      new ReadingRounding(ReadingRounding.Way.DOWN, 0.3048)
    };
    boolean limited = random.nextInt(3) == 0;
    int n = figure.readings();
    return new CheckModel(
        figure,
        new Threshold(THRESHOLD, random.nextBoolean()),
        limited ? OptionalDouble.of(0.2 + random.nextDouble()) : OptionalDouble.empty(),
        new ShotAllowance(
            n + random.nextInt(3), random.nextInt(3), random.nextInt(2) * random.nextDouble() / 2),
        roundings[random.nextInt(roundings.length)],
        new Dispersion(
            deviations[1 + random.nextInt(4)],
            deviations[random.nextInt(3)],
            deviations[random.nextInt(5)]),
        random.nextInt(3));
  }
}
