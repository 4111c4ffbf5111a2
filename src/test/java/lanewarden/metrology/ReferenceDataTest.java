package lanewarden.metrology;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lanewarden.quantity.MeanSpeed;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The statistical reference datasets of NIST (StRD, univariate), with the certified values that
 * stand in the files as the test archive of commons-math3 3.6.1 carries them.
 */
class ReferenceDataTest {
  private static final Path FOLDER = Path.of("src/test/resources/lanewarden/metrology/nist");

  /** A speed is never negative: the deflections of Lew, −579 to 300, are raised by this. */
  private static final BigDecimal RAISED = new BigDecimal(1000);

  /**
   * The digits of the certified values; where the data are ten digits alike (NumAcc3, NumAcc4), a
   * double holds each of them to about 1e-16 of itself, and a deviation can be no better.
   */
  @ParameterizedTest
  @CsvSource({
    "Lew, 1e-13, 1e-13",
    "Lottery, 1e-14, 1e-14",
    "Mavro, 1e-14, 1e-11",
    "Michelso, 1e-14, 1e-12",
    "NumAcc1, 1e-15, 1e-15",
    "NumAcc2, 1e-14, 1e-13",
    "NumAcc3, 1e-14, 1e-8",
    "NumAcc4, 1e-14, 1e-7",
    "PiDigits, 1e-14, 1e-14"
  })
  void meanAndDeviationAreTheCertifiedOnes(String set, double meanOff, double deviationOff)
      throws IOException {
    List<String> lines = Files.readAllLines(FOLDER.resolve(set + ".txt"));
    BigDecimal raised = set.equals("Lew") ? RAISED : BigDecimal.ZERO;
    BigDecimal certifiedMean = value(lines.get(1), "mean").add(raised);
    double certifiedDeviation = value(lines.get(2), "deviation").doubleValue();
    List<Speed> speeds =
        lines.stream()
            .skip(3)
            .flatMap(line -> Stream.of(line.split(" ", -1)))
            .map(digits -> new BigDecimal(digits).add(raised))
            .map(value -> Speed.of(value, SpeedUnit.METRES_PER_SECOND))
            .toList();
    Spread spread = Spread.of(speeds);
    assertEquals(1, spread.mean() / certifiedMean.doubleValue(), meanOff);
    assertEquals(1, spread.deviation() / certifiedDeviation, deviationOff);
    // the mean that verdicts rest on is exact: as many decimals as NIST certifies, or as it has
    assertEquals(
        0,
        MeanSpeed.of(speeds)
            .to(SpeedUnit.METRES_PER_SECOND, certifiedMean.scale())
            .value()
            .compareTo(certifiedMean));
  }

  private static BigDecimal value(String line, String name) {
    String[] parts = line.split(" ", -1);
    assertEquals(name, parts[0]);
    return new BigDecimal(parts[1]);
  }
}
