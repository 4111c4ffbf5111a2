package lanewarden.kiosk.instrument;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Wording;
import lanewarden.metrology.ChartPoint;
import lanewarden.quantity.SpeedUnit;
import lanewarden.station.InstrumentChart;
import lanewarden.station.LedgerRecords;
import lanewarden.station.VerificationView;

/** The control charts of the station's instrument; used on the screen's thread. */
public final class ChartViewModel {

  /** More shots are not named one by one. */
  private static final int MOST_NAMED = 6;

  private final Texts texts;
  private final DateTimeFormatter clock;
  private final ObjectProperty<ChartPage> page;

  /**
   * Charts that nothing is known for yet, as long as the ledger is verified.
   *
   * @param zone in which times are shown
   */
  public ChartViewModel(Texts texts, ZoneId zone) {
    this.texts = texts;
    this.clock = Wording.clock(zone);
    page =
        new SimpleObjectProperty<>(new ChartPage(Optional.empty(), texts.of("ledger.verifying")));
  }

  /** Takes how far the instrument can be believed now. */
  public void take(VerificationView view) {
    show(view.chart(), texts.of(view.planned() ? "chart.too-few" : "chart.unplanned"), "");
  }

  /** Takes what a ledger says of its instrument; of one that is not sound nothing is proved. */
  public void take(LedgerRecords found) {
    show(
        found.chart(),
        texts.of("chart.too-few.ledger", found.verifications().size()),
        found.sound() ? "" : texts.of("records.told.docket-unproved"));
  }

  private void show(Optional<InstrumentChart> chart, String none, String caution) {
    String note = chart.map(this::leftOut).orElse(none);
    page.set(
        new ChartPage(
            chart.map(this::charts),
            Stream.of(caution, note)
                .filter(words -> !words.isBlank())
                .collect(Collectors.joining("\n"))));
  }

  private String leftOut(InstrumentChart chart) {
    return chart.brokenOff() == 0 ? "" : texts.of("chart.left-out", chart.brokenOff());
  }

  /** What is shown. */
  public ObjectProperty<ChartPage> page() {
    return page;
  }

  private ChartPage.Charts charts(InstrumentChart chart) {
    ChartPoint last = chart.averages().get(chart.averages().size() - 1);
    List<ChartPage.Shot> shots = new ArrayList<>();
    for (int i = chart.compared().size() - 1; i >= 0; i--) {
      shots.add(shot(chart, i));
    }
    return new ChartPage.Charts(
        chart,
        said(chart.singles(), chart.singles().get(0), chart.unit()),
        said(chart.averages(), last, chart.unit()),
        List.copyOf(shots));
  }

  private ChartPage.Shot shot(InstrumentChart chart, int at) {
    ChartPoint single = chart.singles().get(at);
    ChartPoint average = chart.averages().get(at);
    VerificationView.Round round = chart.compared().get(at).round();
    VerificationView.Shot shot = chart.compared().get(at).shot();
    return new ChartPage.Shot(
        single.isOutside() || average.isOutside() ? Sign.OVER : Sign.WITHIN,
        texts.of("chart.row", single.number(), figure(single, chart.unit()))
            + "\n"
            + texts.of("chart.row.average", figure(average, chart.unit())),
        texts.of(
                "chart.row.words",
                shot.speed(),
                shot.reference().orElseThrow(),
                Wording.source(shot.source(), texts))
            + "\n"
            + texts.of(
                "chart.row.of",
                round.number(),
                Wording.occasion(round.occasion(), texts),
                clock.format(round.at())));
  }

  private String figure(ChartPoint point, SpeedUnit unit) {
    String written = inUnit(point.value(), unit, texts) + "\u00a0" + unit.symbol();
    return point.isOutside() ? texts.of("chart.row.outside", written) : written;
  }

  /**
   * @param limits a point whose limits are named
   */
  private ChartPage.Said said(List<ChartPoint> points, ChartPoint limits, SpeedUnit unit) {
    List<ChartPoint> outside = points.stream().filter(ChartPoint::isOutside).toList();
    String lower = inUnit(limits.lower(), unit, texts);
    String upper = inUnit(limits.upper(), unit, texts) + " " + unit.symbol();
    if (outside.isEmpty()) {
      return new ChartPage.Said(Sign.WITHIN, texts.of("chart.inside", points.size(), lower, upper));
    }
    String named =
        outside.stream()
            .limit(MOST_NAMED)
            .map(p -> texts.of("chart.shot", p.number(), inUnit(p.value(), unit, texts)))
            .collect(Collectors.joining(", "));
    int more = outside.size() - MOST_NAMED;
    return new ChartPage.Said(
        Sign.OVER,
        texts.of(
            "chart.outside", more > 0 ? texts.of("chart.more", named, more) : named, lower, upper));
  }

  /** A difference in the unit shown, always with its sign. */
  static String inUnit(double metresASecond, SpeedUnit unit, Texts texts) {
    String written = String.format(Locale.ROOT, "%+.2f", metresASecond / unit.inSi().doubleValue());
    return texts.number(written).replace('-', '\u2212').replace("\u22120.00", "+0.00");
  }
}
