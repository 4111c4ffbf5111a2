package lanewarden.kiosk.protest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lanewarden.journal.Check;
import lanewarden.journal.Correction;
import lanewarden.journal.Protest;
import lanewarden.journal.ProtestFact;
import lanewarden.journal.TakenShot;
import lanewarden.kiosk.form.Answers;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.FormViewModel;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.Panels;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Wording;
import lanewarden.station.CheckView;
import lanewarden.station.Dossier;
import lanewarden.station.KeyOffice;

/** The panels that open over the docket. */
final class ProtestPanels {
  private static final String NAME = "name";
  private static final String PASSPHRASE = "passphrase";
  private static final String REASON = "reason";

  private final ProtestViewModel model;
  private final Texts texts;
  private final Panels panels;

  ProtestPanels(ProtestViewModel model, Texts texts, Panels panels) {
    this.model = model;
    this.texts = texts;
    this.panels = panels;
  }

  void file() {
    model.dossier().ifPresent(this::file);
  }

  private void file(Dossier dossier) {
    long check = dossier.check().check().number();
    List<ProtestFact.Cause> causes = List.of(ProtestFact.Cause.values());
    List<Question> questions = new ArrayList<>();
    questions.add(
        Question.choice(
            "cause",
            texts.of("file.cause"),
            causes.stream().map(cause -> DocketWords.cause(cause, texts)).toList()));
    questions.add(
        Question.words(
            "by",
            texts.of("file.by"),
            List.of(
                texts.of("file.by.archer"),
                texts.of("file.by.captain"),
                texts.of("file.by.judge"))));
    questions.add(
        Question.words(
            "ground",
            texts.of("file.ground"),
            List.of(
                texts.of("file.ground.fast"),
                texts.of("file.ground.bow"),
                texts.of("file.ground.light"),
                texts.of("file.ground.winner"))));
    open(
        "file-panel",
        signedByOfficial(questions),
        answers ->
            protests ->
                protests
                    .file(
                        check,
                        causes.get(answers.choice("cause")),
                        answers.words("by"),
                        answers.words("ground"))
                    .fact()
                    .check(),
        new FormPanel.Wording(
            texts.of("file.title", check, who(dossier)),
            texts.of("file.words"),
            texts.of("file.act")));
  }

  void rule() {
    model.dossier().ifPresent(dossier -> model.protest().ifPresent(p -> rule(p, dossier)));
  }

  private void rule(Protest protest, Dossier dossier) {
    List<ProtestFact.Answer> given = List.of(ProtestFact.Answer.values());
    List<Long> numbers = dossier.mayCount(protest).stream().map(Check::number).toList();
    List<Question> questions =
        List.of(
            Question.choice(NAME, texts.of("rule.judge"), names(judges())),
            Question.choice(
                "answer",
                texts.of("rule.answer"),
                given.stream().map(answer -> DocketWords.answer(answer, texts)).toList()),
            Question.choice(
                "stands",
                texts.of("rule.stands"),
                dossier.checks().stream()
                    .filter(view -> numbers.contains(view.check().number()))
                    .map(this::named)
                    .toList()),
            Question.words(
                "consequence",
                texts.of("rule.consequence"),
                List.of(
                    texts.of("rule.consequence.on"),
                    texts.of("rule.consequence.out"),
                    texts.of("rule.consequence.again"))),
            Question.words(
                REASON,
                texts.of("rule.reason"),
                List.of(texts.of("rule.reason.recheck"), texts.of("rule.reason.ground"))),
            Question.secret(PASSPHRASE, texts.of("rule.passphrase")));
    open(
        "rule-panel",
        questions,
        answers ->
            protests ->
                protests
                    .rule(
                        protest.number(),
                        given.get(answers.choice("answer")),
                        numbers.get(answers.choice("stands")),
                        answers.words("consequence"),
                        answers.words(REASON))
                    .fact()
                    .check(),
        new FormPanel.Wording(
            texts.of("rule.title", protest.number(), who(dossier)),
            texts.of("rule.words"),
            texts.of("rule.act")));
  }

  void correct() {
    model.dossier().ifPresent(this::correct);
  }

  private void correct(Dossier dossier) {
    List<Wrong> wrongs = dossier.checks().stream().flatMap(this::wrongs).toList();
    List<Question> questions =
        List.of(
            Question.choice(
                "part", texts.of("correct.part"), wrongs.stream().map(Wrong::words).toList()),
            Question.words("right", texts.of("correct.right"), List.of()),
            Question.words(
                REASON,
                texts.of("correct.reason"),
                List.of(
                    texts.of("correct.reason.called"),
                    texts.of("correct.reason.entered"),
                    texts.of("correct.reason.typed"))));
    open(
        "correct-panel",
        signedByOfficial(questions),
        answers ->
            protests ->
                wrongs
                    .get(answers.choice("part"))
                    .correct(protests, answers.words("right"), answers.words(REASON))
                    .fact()
                    .check(),
        new FormPanel.Wording(
            texts.of("correct.title", dossier.check().check().number(), who(dossier)),
            texts.of("correct.words"),
            texts.of("correct.act")));
  }

  /** What of a check can have been written down wrongly: measured readings cannot. */
  private Stream<Wrong> wrongs(CheckView view) {
    Check check = view.check();
    long number = check.number();
    Stream<Wrong> parts =
        Stream.of(
            new Wrong(
                texts.of("correct.bib", number, check.opened().bib()),
                (protests, right, reason) -> protests.correctBib(number, right, reason)),
            new Wrong(
                texts.of("correct.division", number, check.opened().division()),
                (protests, right, reason) -> protests.correctDivision(number, right, reason)));
    return Stream.concat(
        parts,
        check.shots().stream()
            .map(TakenShot::reading)
            .filter(reading -> reading.source().equals(Correction.TYPED))
            .map(
                reading ->
                    new Wrong(
                        texts.of(
                            "correct.shot", number, reading.shot(), reading.speed().toString()),
                        (protests, right, reason) ->
                            protests.correctReading(
                                number, reading.shot(), texts.typed(right), reason))));
  }

  void confirm() {
    model.dossier().ifPresent(dossier -> model.correction().ifPresent(c -> confirm(c, dossier)));
  }

  private void confirm(Correction correction, Dossier dossier) {
    List<KeyOffice.Official> others =
        model.signers().stream().filter(one -> dossier.mayConfirm(one, correction)).toList();
    open(
        "confirm-panel",
        List.of(
            Question.choice(NAME, texts.of("confirm.name"), names(others)),
            Question.secret(PASSPHRASE, texts.of("confirm.passphrase"))),
        answers -> protests -> protests.confirm(correction.number()).fact().check(),
        new FormPanel.Wording(
            texts.of("confirm.title", correction.number(), who(dossier)),
            texts.of(
                "confirm.words",
                correction.before(),
                correction.after(),
                correction.fact().reason(),
                dossier.nameOf(correction.signer())),
            texts.of("confirm.act")));
  }

  /** Only judges rule; where none is enrolled the station says so. */
  private List<KeyOffice.Official> judges() {
    List<KeyOffice.Official> judges =
        model.signers().stream().filter(KeyOffice.Official::judge).toList();
    return judges.isEmpty() ? model.signers() : judges;
  }

  private static List<String> names(List<KeyOffice.Official> officials) {
    return officials.stream().map(KeyOffice.Official::name).toList();
  }

  /** While nobody is on duty, whoever signs says who it is. */
  private List<Question> signedByOfficial(List<Question> questions) {
    if (model.official().isPresent()) {
      return questions;
    }
    List<Question> more = new ArrayList<>(questions);
    more.add(Question.choice(NAME, texts.of("sign.name"), names(model.signers())));
    more.add(Question.secret(PASSPHRASE, texts.of("sign.passphrase")));
    return more;
  }

  /** What is to be signed, once the questions are answered. */
  @FunctionalInterface
  private interface Answered {
    ProtestViewModel.Deed deed(Answers answers);
  }

  private void open(
      String id, List<Question> questions, Answered answered, FormPanel.Wording wording) {
    FormViewModel form =
        new FormViewModel(
            questions,
            (answers, done, missed) ->
                model.sign(by(questions, answers), answered.deed(answers), done, missed),
            panels::close);
    panels.open(new FormPanel(id, form, wording, texts, panels::close));
  }

  private static Optional<ProtestViewModel.Signature> by(
      List<Question> questions, Answers answers) {
    return questions.stream()
        .filter(question -> question.name().equals(NAME))
        .findFirst()
        .map(
            names ->
                new ProtestViewModel.Signature(
                    names.options().get(answers.choice(NAME)), answers.secret(PASSPHRASE)));
  }

  private String named(CheckView view) {
    return texts.of(
        view.isRecheck() ? "rule.stands.recheck" : "rule.stands.check",
        view.check().number(),
        Wording.outcome(view, texts));
  }

  private String who(Dossier dossier) {
    return texts.of(
        "dossier.who",
        dossier.check().check().opened().bib(),
        dossier.check().check().opened().name());
  }
}
