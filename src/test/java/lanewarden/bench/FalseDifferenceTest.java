package lanewarden.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Practice days on which all set-ups are alike, whole numbers of ft/s: no more than 5 in 100 may
 * show a difference that is called real. A few shots are often alike by chance.
 */
class FalseDifferenceTest {
  private static final int DAYS = 500;

  /** Three standard errors of a share of 5 % in so many days. */
  private static final double ERROR = 3 * Math.sqrt(0.05 * 0.95 / DAYS);

  static Stream<Arguments> days() {
    return Stream.of(2, 3, 4, 6)
        .flatMap(
            shots ->
                Stream.of(1.0, 1.5, 2.0)
                    .flatMap(
                        scatter ->
                            Stream.of(2, 8).map(setUps -> Arguments.of(shots, scatter, setUps))));
  }

  @ParameterizedTest
  @MethodSource("days")
  void alikeSetUpsAreCalledUnlikeOnNoMoreThanFiveDaysInAHundred(
      int shots, double scatter, int setUps) throws Exception {
    Random random = new Random(16);
    int wrong = 0;
    for (int day = 0; day < DAYS; day++) {
      double mean = 280 + random.nextDouble();
      StringBuilder file = new StringBuilder("bow,arrow,arrow-mass,speed\n");
      for (int setUp = 0; setUp < setUps; setUp++) {
        for (int shot = 0; shot < shots; shot++) {
          long reading = Math.round(mean + scatter * random.nextGaussian());
          file.append("B" + setUp + ",short,350 gr," + reading + " ft/s\n");
        }
      }
      Comparison comparison =
          Comparison.of(
              Practice.read("day.csv", file.toString().getBytes(StandardCharsets.UTF_8)),
              Optional.empty());
      wrong +=
          comparison.pairs().stream().anyMatch(p -> p.sense() == PairDifference.Sense.REAL) ? 1 : 0;
    }
    assertTrue(wrong / (double) DAYS <= 0.05 + ERROR, wrong + " of " + DAYS);
  }
}
