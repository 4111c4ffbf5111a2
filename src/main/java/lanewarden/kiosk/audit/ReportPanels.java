package lanewarden.kiosk.audit;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.kiosk.form.Answers;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.FormViewModel;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.Texts;

/** The panels that ask which report is wanted, and what seals it. */
final class ReportPanels {
  private static final String SEAL = "seal";
  private static final String VERIFIER = "verifier";
  private static final String FOLDER = "folder";
  private static final String KEY = "seal-key";
  private static final String AUTHORITY = "authority";
  private static final String PASSPHRASE = "organizer";

  private final LedgerPanels panels;
  private final ReportViewModel model;
  private final Texts texts;

  ReportPanels(LedgerPanels panels, ReportViewModel model, Texts texts) {
    this.panels = panels;
    this.model = model;
    this.texts = texts;
  }

  void open(List<String> printers) {
    PrinterQuestion paper = new PrinterQuestion(printers);
    FormPanel unused =
        panels.open(
            "report-panel",
            panels.form(
                List.of(
                    panels.edition(),
                    choice(SEAL, "records.ask.seal", "records.ask.seal.no", "records.ask.seal.yes"),
                    choice(
                        VERIFIER,
                        "records.ask.verifier",
                        "records.ask.verifier.no",
                        "records.ask.verifier.yes"),
                    paper.asked(texts),
                    panels.ledger(),
                    panels.place("records.ask.file"),
                    panels
                        .words(FOLDER, "records.ask.folder")
                        .mayStayOpen()
                        .place(Question.Place.NEW)),
                (answers, done, missed) -> {
                  ReportViewModel.Wish wish = wish(answers, paper);
                  if (answers.choice(SEAL) == 1) {
                    model.checkSealed(
                        wish,
                        asked -> {
                          done.run();
                          seal(wish, asked);
                        },
                        missed);
                  } else {
                    model.check(
                        wish,
                        () -> {
                          done.run();
                          model.make(wish, Optional.empty());
                        },
                        missed);
                  }
                }),
            new FormPanel.Wording(
                texts.of("records.report"),
                texts.of("records.report.words"),
                texts.of("records.report.act")));
  }

  private static ReportViewModel.Wish wish(Answers answers, PrinterQuestion paper) {
    return new ReportViewModel.Wish(
        LedgerPanels.ledger(answers),
        LedgerPanels.isWhole(answers),
        folder(answers),
        paper.answered(answers),
        LedgerPanels.place(answers));
  }

  /** Whoever names the folder wants it. */
  private static Optional<String> folder(Answers answers) {
    Optional<String> named = answers.wordsIfAny(FOLDER);
    return answers.choice(VERIFIER) == 1 ? Optional.of(named.orElse("")) : named;
  }

  private void seal(ReportViewModel.Wish wish, ReportViewModel.Sealing asked) {
    List<Question> questions = new ArrayList<>();
    Question key = panels.words(KEY, "records.ask.seal-key").place(Question.Place.FILE);
    if (asked.away()) {
      questions.add(key);
    }
    questions.add(panels.words(AUTHORITY, "records.ask.authority").mayStayOpen());
    questions.add(Question.secret(PASSPHRASE, texts.of("people.organizer")));
    FormViewModel form =
        panels.form(
            questions,
            (answers, done, missed) ->
                model.openSeal(
                    asked,
                    answers.wordsIfAny(KEY),
                    answers.secret(PASSPHRASE),
                    answers.wordsIfAny(AUTHORITY),
                    held -> {
                      done.run();
                      model.make(wish, Optional.of(held));
                    },
                    missed));
    if (asked.away()) {
      form.text(KEY).set(asked.key());
    } else {
      form.askLater(key, asked.key(), () -> !Files.isRegularFile(asked.place()));
    }
    form.text(AUTHORITY).set(asked.authority());
    FormPanel unused =
        panels.open(
            "seal-panel",
            form,
            new FormPanel.Wording(
                texts.of("records.seal-it"),
                texts.of("records.seal-it.words"),
                texts.of("records.report.act")));
  }

  private Question choice(String name, String label, String no, String yes) {
    return Question.choice(name, texts.of(label), List.of(texts.of(no), texts.of(yes))).usually(0);
  }
}
