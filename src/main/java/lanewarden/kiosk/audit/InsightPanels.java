package lanewarden.kiosk.audit;

import java.util.List;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.instrument.ChartPanel;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Panels;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.protest.DossierPanel;

/** The panels that ask what is looked into in a ledger, and those that show it. */
final class InsightPanels {
  private static final String WHICH = "which";

  private final LedgerPanels panels;
  private final InsightViewModel model;
  private final Texts texts;
  private final Panels over;

  InsightPanels(LedgerPanels panels, InsightViewModel model, Texts texts, Panels over) {
    this.panels = panels;
    this.model = model;
    this.texts = texts;
    this.over = over;
  }

  /** What stands there is the same as for an open event. */
  void check() {
    panels.open(
        "check-panel",
        panels.form(
            List.of(panels.ledger(), panels.words(WHICH, "records.check.which")),
            (answers, done, missed) ->
                model.checks(
                    LedgerPanels.ledger(answers),
                    answers.words(WHICH),
                    found -> {
                      done.run();
                      over.open(
                          new DossierPanel(
                              texts.of("records.check"),
                              found.cautions(),
                              found.pages(),
                              texts,
                              over::close));
                    },
                    missed)),
        new FormPanel.Wording(
            texts.of("records.check"),
            texts.of("records.check.words"),
            texts.of("records.check.act")));
  }

  /** The same charts as those of an open event. */
  void chart() {
    panels.open(
        "chart-of-panel",
        panels.form(
            List.of(panels.ledger()),
            (answers, done, missed) ->
                model.chart(
                    LedgerPanels.ledger(answers),
                    charts -> {
                      done.run();
                      over.open(
                          new ChartPanel(
                              charts,
                              texts,
                              List.of(
                                  new KeyButton(
                                      texts.of("panel.back"), KeyCode.ESCAPE, over::close))));
                    },
                    missed)),
        new FormPanel.Wording(
            texts.of("records.chart"),
            texts.of("records.chart.words"),
            texts.of("records.chart.act")));
  }
}
