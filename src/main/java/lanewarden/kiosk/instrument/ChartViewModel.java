package lanewarden.kiosk.instrument;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.metrology.ChartPoint;
import lanewarden.quantity.SpeedUnit;
import lanewarden.station.InstrumentChart;
import lanewarden.station.VerificationView;

/** The control charts of the station's instrument; used on the screen's thread. */
public final class ChartViewModel {

  /** More shots are not named one by one. */
  private static final int MOST_NAMED = 6;

  private final Texts texts;
  private final ObjectProperty<ChartPage> page;

  /** Charts that nothing is known for yet, as long as the ledger is verified. */
  public ChartViewModel(Texts texts) {
    this.texts = texts;
    page =
        new SimpleObjectProperty<>(new ChartPage(Optional.empty(), texts.of("ledger.verifying")));
  }

  /** Takes how far the instrument can be believed now. */
  public void take(VerificationView view) {
    page.set(
        view.chart()
            .map(this::page)
            .orElseGet(
                () ->
                    new ChartPage(
                        Optional.empty(),
                        texts.of(view.planned() ? "chart.too-few" : "chart.unplanned"))));
  }

  /** What is shown. */
  public ObjectProperty<ChartPage> page() {
    return page;
  }

  private ChartPage page(InstrumentChart chart) {
    ChartPoint last = chart.averages().get(chart.averages().size() - 1);
    return new ChartPage(
        Optional.of(
            new ChartPage.Charts(
                chart,
                said(chart.singles(), chart.singles().get(0), chart.unit()),
                said(chart.averages(), last, chart.unit()))),
        chart.brokenOff() == 0 ? "" : texts.of("chart.left-out", chart.brokenOff()));
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
