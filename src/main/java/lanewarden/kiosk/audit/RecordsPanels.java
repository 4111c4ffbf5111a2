package lanewarden.kiosk.audit;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.FormViewModel;
import lanewarden.kiosk.form.OrganizersKey;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.Panels;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.DueDraw;

/** The panels that ask what an errand at the station needs to know. */
final class RecordsPanels {
  private static final String STATION = "station";
  private static final String HEAD = "head";
  private static final String DIVISION = "division";
  private static final String DIGITS = "digits";

  private final RecordsViewModel model;
  private final OrganizersKey key;
  private final Texts texts;
  private final Panels panels;
  private final Supplier<Optional<Chooser>> chooser;

  RecordsPanels(
      RecordsViewModel model,
      OrganizersKey key,
      Texts texts,
      Panels panels,
      Supplier<Optional<Chooser>> chooser) {
    this.key = key;
    this.chooser = chooser;
    this.model = model;
    this.texts = texts;
    this.panels = panels;
  }

  void witness() {
    open(
        "witness-panel",
        form(
            List.of(words(STATION, "records.ask.station"), words(HEAD, "records.ask.head")),
            (answers, done, missed) ->
                model.witness(answers.words(STATION), answers.words(HEAD), done, missed)),
        new FormPanel.Wording(
            texts.of("records.witness"),
            texts.of("records.witness.words"),
            texts.of("records.witness.act")));
  }

  void draw() {
    model.askForDraws(this::draw);
  }

  private void draw(List<DueDraw> due) {
    open(
        "draw-panel",
        form(
            List.of(
                Question.choice(
                    DIVISION,
                    texts.of("records.ask.draw"),
                    due.stream()
                        .map(
                            one ->
                                texts.of(
                                    "records.draw.choice", one.division(), one.share(), one.pool()))
                        .toList()),
                words(DIGITS, "records.ask.digits")),
            (answers, done, missed) ->
                model.draw(
                    due.get(answers.choice(DIVISION)).division(),
                    answers.words(DIGITS),
                    done,
                    missed)),
        new FormPanel.Wording(
            texts.of("records.draw"),
            texts.of("records.draw.words"),
            texts.of("records.draw.act")));
  }

  void makeSeal() {
    open(
        "make-seal-panel",
        key.form(
            List.of(),
            texts,
            (answers, organizer, done, missed) -> model.makeSeal(organizer, done, missed),
            panels::close),
        new FormPanel.Wording(
            texts.of("records.seal"),
            texts.of("records.seal.words"),
            texts.of("records.seal.act")));
  }

  private Question words(String name, String label) {
    return Question.words(name, texts.of(label), List.of());
  }

  private FormViewModel form(List<Question> questions, FormViewModel.Handover handover) {
    return new FormViewModel(questions, handover, panels::close);
  }

  private FormPanel open(String id, FormViewModel form, FormPanel.Wording wording) {
    FormPanel panel = new FormPanel(id, form, wording, texts, chooser.get(), panels::close);
    panels.open(panel);
    return panel;
  }
}
