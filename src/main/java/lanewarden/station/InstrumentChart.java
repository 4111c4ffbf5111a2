package lanewarden.station;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import lanewarden.metrology.ChartPoint;
import lanewarden.metrology.Deviation;
import lanewarden.metrology.EwmaChart;
import lanewarden.metrology.IndividualsChart;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * Station minus reference of every shot of every verification, in order, on two control charts; all
 * figures in m/s.
 *
 * @param centre the mean of the single values and the start of the averages
 * @param compared the shots, one for each value
 * @param singles each value against three standard deviations, taken from the moving range
 * @param averages the exponentially weighted moving average after each value
 * @param unit of the reference
 * @param mostBias how far the mean of the verification begun last might be off, either way
 * @param brokenOff how many shots are left out, because their verification was broken off
 */
public record InstrumentChart(
    BigDecimal centre,
    List<Compared> compared,
    List<ChartPoint> singles,
    List<ChartPoint> averages,
    SpeedUnit unit,
    BigDecimal mostBias,
    long brokenOff) {

  /** A shot against its reference, and the verification that it was taken in. */
  public record Compared(VerificationView.Round round, VerificationView.Shot shot) {}

  /** Copies the lists. */
  public InstrumentChart {
    compared = List.copyOf(compared);
    singles = List.copyOf(singles);
    averages = List.copyOf(averages);
  }

  static Optional<InstrumentChart> of(List<VerificationView.Round> rounds) {
    List<VerificationView.Round> counted =
        rounds.stream().filter(r -> r.state() != VerificationView.State.BROKEN_OFF).toList();
    List<Compared> compared =
        counted.stream()
            .flatMap(round -> round.taken().stream().map(shot -> new Compared(round, shot)))
            .filter(one -> one.shot().reference().isPresent())
            .toList();
    List<Double> values =
        compared.stream()
            .flatMap(one -> one.shot().bias().stream())
            .map(BigDecimal::doubleValue)
            .toList();
    if (values.size() < 2) {
      return Optional.empty();
    }
    VerificationView.Round last =
        counted.stream()
            .filter(round -> !references(round).isEmpty())
            .reduce((before, after) -> after)
            .orElseThrow();
    List<Speed> references = references(last);
    Speed reference = references.get(references.size() - 1);
    IndividualsChart chart = IndividualsChart.of(values);
    EwmaChart ewma = EwmaChart.beside(chart);
    return Optional.of(
        new InstrumentChart(
            BigDecimal.valueOf(chart.centre()),
            compared,
            chart.points(values),
            ewma.points(values),
            reference.unit(),
            Deviation.parse(last.mostBias()).siAt(reference.si()),
            rounds.stream()
                .filter(r -> r.state() == VerificationView.State.BROKEN_OFF)
                .mapToLong(r -> r.taken().size())
                .sum()));
  }

  private static List<Speed> references(VerificationView.Round round) {
    return round.taken().stream().flatMap(shot -> shot.reference().stream()).toList();
  }
}
