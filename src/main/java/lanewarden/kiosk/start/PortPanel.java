package lanewarden.kiosk.start;

import java.util.List;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.FormViewModel;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.InstrumentPort;

/** Asks which port the instrument of an event is on, with those that are here to pick from. */
public final class PortPanel {
  private static final String PORT = "port";

  private PortPanel() {}

  /**
   * The panel.
   *
   * @param here the ports that are here now
   * @param leave closes it
   */
  public static FormPanel of(
      InstrumentPort port, List<String> here, StartViewModel model, Texts texts, Runnable leave) {
    String event = String.valueOf(port.event().path().getFileName());
    String found = here.isEmpty() ? "start.port.none" : "start.port.some";
    return new FormPanel(
        "port-panel",
        new FormViewModel(
            List.of(Question.port(PORT, texts.of("start.port.other"), here)),
            (answers, done, missed) -> model.changePort(port, answers.words(PORT), done, missed),
            leave),
        new FormPanel.Wording(
            texts.of("start.port.title", event),
            texts.of("start.port.words", port.now(), texts.of(found)),
            texts.of("start.port.act")),
        texts,
        leave);
  }
}
