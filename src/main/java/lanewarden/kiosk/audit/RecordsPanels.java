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

/** The panels that ask what an errand needs to know. */
final class RecordsPanels {
  private static final String EDITION = "edition";
  private static final String SEAL = "seal";
  private static final String VERIFIER = "verifier";
  private static final String PRINT = "print";
  private static final String PLACE = "place";
  private static final String LEDGER = "ledger";
  private static final String WITNESSES = "witnesses";
  private static final String HEADS = "heads";
  private static final String CODE = "code";
  private static final String ENTRIES = "entries";
  private static final String STATION = "station";
  private static final String HEAD = "head";
  private static final String ORGANIZER = "organizer";
  private static final String SPEED = "speed";
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

  void report() {
    model.open();
    List<String> seals =
        model.sealed().get()
            ? List.of(texts.of("records.ask.seal.no"), texts.of("records.ask.seal.yes"))
            : List.of(texts.of("records.ask.seal.no"));
    open(
        "report-panel",
        form(
            List.of(
                edition(),
                Question.choice(SEAL, texts.of("records.ask.seal"), seals).usually(0),
                Question.choice(
                        VERIFIER,
                        texts.of("records.ask.verifier"),
                        List.of(
                            texts.of("records.ask.verifier.no"),
                            texts.of("records.ask.verifier.yes")))
                    .usually(0),
                Question.choice(
                        PRINT,
                        texts.of("records.ask.print"),
                        List.of(
                            texts.of("records.ask.print.no"), texts.of("records.ask.print.yes")))
                    .usually(0),
                words(PLACE, "records.ask.file").mayStayOpen().place(Question.Place.NEW)),
            (answers, done, missed) -> {
              RecordsViewModel.Wish wish =
                  new RecordsViewModel.Wish(
                      answers.choice(EDITION) == 0,
                      answers.choice(VERIFIER) == 1,
                      answers.choice(PRINT) == 1,
                      answers.words(PLACE));
              boolean sealed = answers.choice(SEAL) == 1;
              model.check(
                  wish,
                  () -> {
                    done.run();
                    if (sealed) {
                      seal(wish);
                    } else {
                      model.report(wish, Optional.empty());
                    }
                  },
                  missed);
            }),
        new FormPanel.Wording(
            texts.of("records.report"),
            texts.of("records.report.words"),
            texts.of("records.report.act")));
  }

  private void seal(RecordsViewModel.Wish wish) {
    open(
        "seal-panel",
        form(
            List.of(organizers()),
            (answers, done, missed) ->
                model.openSeal(
                    answers.secret(ORGANIZER),
                    seal -> {
                      done.run();
                      model.report(wish, Optional.of(seal));
                    },
                    missed)),
        new FormPanel.Wording(
            texts.of("records.seal-it"),
            texts.of("records.seal-it.words"),
            texts.of("records.report.act")));
  }

  /** The code is typed, or scanned: a reader ends it with Enter. */
  FormPanel slip() {
    return open(
        "slip-panel",
        form(
            List.of(
                words(CODE, "records.ask.code"),
                words(LEDGER, "records.ask.ledger").mayStayOpen().place(Question.Place.FILE)),
            (answers, done, missed) ->
                model.find(answers.words(CODE), answers.words(LEDGER), done, missed)),
        new FormPanel.Wording(
            texts.of("records.slip"),
            texts.of("records.slip.words"),
            texts.of("records.slip.act")));
  }

  void verify() {
    open(
        "verify-panel",
        form(
            List.of(
                words(LEDGER, "records.ask.ledger").mayStayOpen().place(Question.Place.FILE),
                words(WITNESSES, "records.ask.witnesses").mayStayOpen(),
                words(HEADS, "records.ask.heads").mayStayOpen()),
            (answers, done, missed) ->
                model.verify(
                    answers.words(LEDGER),
                    answers.words(WITNESSES),
                    answers.words(HEADS),
                    done,
                    missed)),
        new FormPanel.Wording(
            texts.of("records.verify"),
            texts.of("records.verify.words"),
            texts.of("records.verify.act")));
  }

  void export() {
    open(
        "export-panel",
        form(
            List.of(
                edition(),
                words(PLACE, "records.ask.folder").mayStayOpen().place(Question.Place.NEW)),
            (answers, done, missed) ->
                model.export(answers.choice(EDITION) == 0, answers.words(PLACE), done, missed)),
        new FormPanel.Wording(
            texts.of("records.export"),
            texts.of("records.export.words"),
            texts.of("records.export.act")));
  }

  void bringIn() {
    open(
        "import-panel",
        form(
            List.of(
                words(ENTRIES, "records.ask.entries").place(Question.Place.FILE),
                words(LEDGER, "records.ask.new-ledger").place(Question.Place.NEW),
                words(HEADS, "records.ask.heads").mayStayOpen()),
            (answers, done, missed) ->
                model.bringIn(
                    answers.words(ENTRIES),
                    answers.words(LEDGER),
                    answers.words(HEADS),
                    done,
                    missed)),
        new FormPanel.Wording(
            texts.of("records.import"),
            texts.of("records.import.words"),
            texts.of("records.import.act")));
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

  void accuracy() {
    FormViewModel form =
        form(
            List.of(words(SPEED, "records.ask.speed")),
            (answers, done, missed) -> model.accuracy(answers.words(SPEED), done, missed));
    form.text(SPEED).set(texts.of("records.ask.speed.usual"));
    open(
        "accuracy-panel",
        form,
        new FormPanel.Wording(
            texts.of("records.accuracy"),
            texts.of("records.accuracy.words"),
            texts.of("records.accuracy.act")));
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

  private Question edition() {
    return Question.choice(
        EDITION,
        texts.of("records.ask.edition"),
        List.of(texts.of("records.ask.edition.whole"), texts.of("records.ask.edition.public")));
  }

  private Question organizers() {
    return Question.secret(ORGANIZER, texts.of("people.organizer"));
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
