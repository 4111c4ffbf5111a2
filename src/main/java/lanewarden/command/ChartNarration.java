package lanewarden.command;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import lanewarden.audit.wording.Wording;
import lanewarden.metrology.ChartPoint;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import lanewarden.station.InstrumentChart;
import lanewarden.station.VerificationView.Round;
import lanewarden.station.VerificationView.Shot;

/** Tells the instrument's control charts in words and figures; machines get m/s. */
final class ChartNarration {
  private static final int DECIMALS = 2;

  private ChartNarration() {}

  /** Every shot, and what the charts say. */
  static List<Notice> of(InstrumentChart chart) {
    List<Notice> told = new ArrayList<>();
    SpeedUnit unit = chart.unit();
    for (int i = 0; i < chart.compared().size(); i++) {
      told.add(
          shot(chart.compared().get(i), chart.singles().get(i), chart.averages().get(i), unit));
    }
    double mean = chart.centre().doubleValue();
    told.add(Notice.of("mean", shown(mean, unit) + ", station minus reference").with("mean", mean));
    told.add(limits("single", chart.singles(), chart.singles().get(0), unit));
    told.add(
        limits(
            "average", chart.averages(), chart.averages().get(chart.averages().size() - 1), unit));
    told.add(
        Notice.of(
                "bias",
                "a verification passes with a mean of at most ±"
                    + Wording.plain(
                        Speed.of(chart.mostBias().toPlainString(), SpeedUnit.METRES_PER_SECOND)
                            .to(unit, DECIMALS)))
            .with("most", chart.mostBias()));
    if (chart.brokenOff() > 0) {
      told.add(
          Notice.of(
                  "left out",
                  Wording.count(chart.brokenOff(), "shot") + " of verifications broken off")
              .with("leftOut", chart.brokenOff()));
    }
    return told;
  }

  private static Notice shot(
      InstrumentChart.Compared compared, ChartPoint single, ChartPoint average, SpeedUnit unit) {
    Round round = compared.round();
    Shot shot = compared.shot();
    Speed reference = shot.reference().orElseThrow();
    return Notice.of(
            "shot",
            single.number()
                + ": "
                + shown(single.value(), unit)
                + outside(single)
                + ", average "
                + shown(average.value(), unit)
                + outside(average)
                + "; "
                + shot.speed()
                + " against "
                + reference
                + ", "
                + shot.source()
                + ", verification "
                + round.number()
                + " ("
                + round.occasion()
                + ", "
                + Wording.time(round.at())
                + ")")
        .with("number", single.number())
        .with("verification", round.number())
        .with("shot", shot.number())
        .with("speed", shot.speed().toString())
        .with("reference", reference.toString())
        .with("difference", single.value())
        .with("outside", single.isOutside())
        .with("average", average.value())
        .with("averageLower", average.lower())
        .with("averageUpper", average.upper())
        .with("averageOutside", average.isOutside());
  }

  private static String outside(ChartPoint point) {
    return point.isOutside() ? " OUTSIDE" : "";
  }

  /**
   * @param limits a point whose limits are named
   */
  private static Notice limits(
      String kind, List<ChartPoint> points, ChartPoint limits, SpeedUnit unit) {
    List<Integer> outside =
        points.stream().filter(ChartPoint::isOutside).map(ChartPoint::number).toList();
    String named =
        outside.isEmpty()
            ? "INSIDE: all " + points.size()
            : "OUTSIDE: shot "
                + outside.stream().map(String::valueOf).collect(Collectors.joining(", "));
    return Notice.of(
            kind,
            named
                + "; the limits are "
                + shown(limits.lower(), unit)
                + " and "
                + shown(limits.upper(), unit))
        .with("outside", outside)
        .with("lower", limits.lower())
        .with("upper", limits.upper());
  }

  private static String shown(double metresASecond, SpeedUnit unit) {
    return Wording.signed(metresASecond / unit.inSi().doubleValue(), DECIMALS)
        + " "
        + unit.symbol();
  }
}
