package lanewarden.kiosk;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.desk.Desk;
import lanewarden.kiosk.desk.SideTable;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.form.Places;
import lanewarden.kiosk.instrument.ChartPanel;
import lanewarden.kiosk.instrument.ChartViewModel;
import lanewarden.kiosk.instrument.ListeningPanels;
import lanewarden.kiosk.instrument.ListeningViewModel;
import lanewarden.kiosk.instrument.WirePanel;
import lanewarden.kiosk.instrument.WireViewModel;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.EventFolder;
import lanewarden.station.LineView;
import lanewarden.station.Station;

/**
 * The event's instrument: its charts, what it says, and another that is only listened to; on the
 * screen's thread.
 */
final class InstrumentRoom {
  private final Shell shell;
  private final Texts texts;
  private final ChartViewModel chart;
  private final WireViewModel wire;
  private final ListeningPanels listening;

  /**
   * @param chooser with which files are chosen, if there is one at the time
   */
  InstrumentRoom(
      Desk desk,
      Shell shell,
      Texts texts,
      EventFolder folder,
      Front.Threads threads,
      Supplier<Optional<Chooser>> chooser) {
    this.shell = shell;
    this.texts = texts;
    ZoneId zone = ZoneId.systemDefault();
    chart = new ChartViewModel(texts, zone);
    wire =
        new WireViewModel(
            (answer, missed) -> desk.ask(Station::wire, answer, missed),
            "wire.counted",
            texts,
            zone);
    listening =
        new ListeningPanels(
            new ListeningViewModel(
                threads.here(),
                new Places(folder),
                new SideTable(threads.report(), threads.screen()),
                texts,
                zone),
            texts,
            shell,
            chooser);
  }

  /** What became of the line. */
  void take(LineView view) {
    chart.take(view.verification());
    wire.changed();
  }

  /** Shows the charts. */
  void openChart() {
    KeyButton wires = new KeyButton(texts.of("act.listen"), KeyCode.F2, this::openWire);
    wires.setId("to-wire");
    shell.open(
        new ChartPanel(
            chart,
            texts,
            List.of(wires, new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, shell::close))));
  }

  /** Shows what it says. */
  void openWire() {
    KeyButton charts = new KeyButton(texts.of("act.chart"), KeyCode.F2, this::openChart);
    charts.setId("to-chart");
    shell.open(
        new WirePanel(
            wire,
            texts,
            List.of(
                charts,
                new KeyButton(texts.of("act.other-port"), KeyCode.F3, listening::askPort),
                new KeyButton(texts.of("way.capture"), KeyCode.F4, listening::askCapture),
                new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, shell::close)),
            () -> {}));
  }
}
