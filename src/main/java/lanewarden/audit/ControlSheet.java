package lanewarden.audit;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import lanewarden.audit.press.Ink;
import lanewarden.audit.press.Typeface;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.InstrumentVerification;
import lanewarden.journal.Standing;
import lanewarden.metrology.ChartPoint;
import lanewarden.metrology.EwmaChart;
import lanewarden.metrology.IndividualsChart;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * The instrument's control charts: how far it was from its reference, shot after shot.
 *
 * @param words what the charts show
 * @param svg the picture
 */
record ControlSheet(String words, String svg) {
  private static final int DECIMALS = 2;

  /** The charts of all verifications that were not broken off; nothing for fewer than two shots. */
  static Optional<ControlSheet> of(Standing standing, Typeface face, Ink ink) throws IOException {
    List<InstrumentVerification.Shot> shots = new ArrayList<>();
    SortedMap<Integer, Long> rounds = new TreeMap<>();
    for (InstrumentVerification round : standing.verifications()) {
      List<InstrumentVerification.Shot> compared =
          round.shots().stream().filter(shot -> shot.reference() != null).toList();
      if (!round.isBrokenOff() && !compared.isEmpty()) {
        rounds.put(shots.size(), round.number());
        shots.addAll(compared);
      }
    }
    List<Double> values = shots.stream().map(ControlSheet::difference).toList();
    if (values.size() < 2) {
      return Optional.empty();
    }
    SpeedUnit unit = shots.get(shots.size() - 1).fact().speed().unit();
    IndividualsChart singles = IndividualsChart.of(values);
    List<ChartPoint> points = singles.points(values);
    List<ChartPoint> averages = EwmaChart.beside(singles).points(values);
    String words =
        Wording.count(values.size(), "shot")
            + " of verifications: station minus reference "
            + shown(singles.centre(), unit)
            + " on average, control limits "
            + shown(singles.lower(), unit)
            + " and "
            + shown(singles.upper(), unit)
            + ". "
            + outside(points)
            + " of the single values and "
            + outside(averages)
            + " of the moving averages lie outside their limits.";
    return Optional.of(
        new ControlSheet(
            words,
            new ControlPicture(unit, singles.centre(), points, averages, rounds, face)
                .svg(ink.escape("Control charts of the instrument. " + words))));
  }

  private static Double difference(InstrumentVerification.Shot shot) {
    Speed reference = shot.reference();
    BigDecimal station = shot.fact().speed().si();
    return reference == null ? 0 : station.subtract(reference.si()).doubleValue();
  }

  private static long outside(List<ChartPoint> points) {
    return points.stream().filter(ChartPoint::isOutside).count();
  }

  private static String shown(double si, SpeedUnit unit) {
    return Wording.signed(si / unit.inSi().doubleValue(), DECIMALS) + " " + unit.symbol();
  }
}
