package lanewarden.kiosk.audit;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import lanewarden.kiosk.form.Answers;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.FormViewModel;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.Panels;
import lanewarden.kiosk.look.Texts;

/** The panels that ask what an errand with a ledger alone needs to know. */
final class LedgerPanels {
  private static final String EDITION = "edition";
  private static final String PLACE = "place";
  private static final String LEDGER = "ledger";
  private static final String WITNESSES = "witnesses";
  private static final String HEADS = "heads";
  private static final String CODE = "code";
  private static final String ENTRIES = "entries";
  private static final String MEANT = "meant";
  private static final String WHICH = "which";
  private static final String SETTINGS = "settings";
  private static final String SPEED = "speed";

  private final LedgerViewModel model;
  private final Texts texts;
  private final Panels panels;
  private final Supplier<Optional<Chooser>> chooser;
  private final ReportPanels reports;
  private final InsightPanels insights;

  LedgerPanels(
      LedgerViewModel model, Texts texts, Panels panels, Supplier<Optional<Chooser>> chooser) {
    this.model = model;
    this.texts = texts;
    this.panels = panels;
    this.chooser = chooser;
    reports = new ReportPanels(this, model.report(), texts);
    insights = new InsightPanels(this, model.insight(), texts, panels);
  }

  /** Without an event it is asked whose settings are meant. */
  void accuracy() {
    Question settings = words(SETTINGS, "records.ask.settings").place(Question.Place.FILE);
    FormViewModel form =
        form(
            Stream.concat(
                    Stream.of(settings).filter(asked -> model.asksLedger()),
                    Stream.of(words(SPEED, "records.ask.speed")))
                .toList(),
            (answers, done, missed) ->
                model.accuracy(
                    model.asksLedger() ? answers.words(SETTINGS) : "",
                    answers.words(SPEED),
                    done,
                    missed));
    form.text(SPEED).set(texts.of("records.ask.speed.usual"));
    open(
        "accuracy-panel",
        form,
        new FormPanel.Wording(
            texts.of("records.accuracy"),
            texts.of("records.accuracy.words"),
            texts.of("records.accuracy.act")));
  }

  void report() {
    model.askPrinters(reports::open);
  }

  void check() {
    insights.check();
  }

  void chart() {
    insights.chart();
  }

  /** The code is typed, or scanned: a reader ends it with Enter. */
  FormPanel slip() {
    return open(
        "slip-panel",
        form(
            List.of(words(CODE, "records.ask.code"), ledger()),
            (answers, done, missed) ->
                model.find(answers.words(CODE), answers.words(LEDGER), done, missed)),
        new FormPanel.Wording(
            texts.of("records.slip"),
            texts.of("records.slip.words"),
            texts.of("records.slip.act")));
  }

  /** A slip is written of a check that is named. */
  void write() {
    model.askPrinters(this::write);
  }

  private void write(List<String> printers) {
    PrinterQuestion paper = new PrinterQuestion(printers);
    open(
        "write-panel",
        form(
            List.of(
                ledger(),
                Question.choice(
                        MEANT,
                        texts.of("records.ask.meant"),
                        List.of(
                            texts.of("records.ask.meant.bib"), texts.of("records.ask.meant.check")))
                    .usually(0),
                words(WHICH, "records.ask.which"),
                paper.asked(texts),
                place("records.ask.file")),
            (answers, done, missed) ->
                model.write(
                    new LedgerViewModel.SlipWish(
                        answers.words(LEDGER),
                        answers.choice(MEANT) == 1,
                        answers.words(WHICH),
                        paper.answered(answers),
                        answers.words(PLACE)),
                    done,
                    missed)),
        new FormPanel.Wording(
            texts.of("records.write"),
            texts.of("records.write.words"),
            texts.of("records.write.act")));
  }

  void docket() {
    open(
        "docket-panel",
        form(
            List.of(ledger()),
            (answers, done, missed) -> model.docket(answers.words(LEDGER), done, missed)),
        new FormPanel.Wording(
            texts.of("records.docket"),
            texts.of("records.docket.words"),
            texts.of("records.docket.act")));
  }

  void verify() {
    open(
        "verify-panel",
        form(
            List.of(
                ledger(),
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
            List.of(edition(), ledger(), place("records.ask.folder")),
            (answers, done, missed) ->
                model.export(
                    answers.words(LEDGER), isWhole(answers), answers.words(PLACE), done, missed)),
        new FormPanel.Wording(
            texts.of("records.export"),
            texts.of("records.export.words"),
            texts.of("records.export.act")));
  }

  void bringIn() {
    open(
        "import-panel",
        new FormViewModel(
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
                    missed),
            panels::close),
        new FormPanel.Wording(
            texts.of("records.import"),
            texts.of("records.import.words"),
            texts.of("records.import.act")));
  }

  /** Whether names are to stand in it. */
  Question edition() {
    return Question.choice(
        EDITION,
        texts.of("records.ask.edition"),
        List.of(texts.of("records.ask.edition.whole"), texts.of("records.ask.edition.public")));
  }

  static boolean isWhole(Answers answers) {
    return answers.choice(EDITION) == 0;
  }

  /** Which ledger; the event's own where it stays open. */
  Question ledger() {
    return model.asksLedger()
        ? words(LEDGER, "records.ask.any-ledger").place(Question.Place.FILE)
        : words(LEDGER, "records.ask.ledger").mayStayOpen().place(Question.Place.FILE);
  }

  static String ledger(Answers answers) {
    return answers.words(LEDGER);
  }

  /** Where what is made goes, if not to its usual place. */
  Question place(String label) {
    return words(PLACE, label).mayStayOpen().place(Question.Place.NEW);
  }

  static String place(Answers answers) {
    return answers.words(PLACE);
  }

  Question words(String name, String label) {
    return Question.words(name, texts.of(label), List.of());
  }

  /** A form; where it asks for a ledger that has to be named, the one named last stands there. */
  FormViewModel form(List<Question> questions, FormViewModel.Handover handover) {
    FormViewModel form = new FormViewModel(questions, handover, panels::close);
    if (questions.stream().anyMatch(question -> question.name().equals(LEDGER))) {
      form.text(LEDGER).set(model.last());
    }
    return form;
  }

  FormPanel open(String id, FormViewModel form, FormPanel.Wording wording) {
    FormPanel panel = new FormPanel(id, form, wording, texts, chooser.get(), panels::close);
    panels.open(panel);
    return panel;
  }
}
