package lanewarden.kiosk.setups;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import lanewarden.bench.PracticeShot;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.FormViewModel;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.Panels;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.PracticeSetUpText;

/** The panels that open over the set-ups. */
final class SetUpsPanels {
  private static final String BOW = "bow";
  private static final String ARROW = "arrow";
  private static final String MASS = "mass";
  private static final String DRAW = "draw";
  private static final String LENGTH = "length";
  private static final String BRACE = "brace";
  private static final String RATING = "rating";
  private static final String READING = "reading";
  private static final String SHOT = "shot";
  private static final String WORD = "word";
  private static final String FILE = "file";
  private static final String TITLE = "title";
  private static final String OFFICIAL = "official";
  private static final String PASSPHRASE = "passphrase";

  private final SetUpsViewModel model;
  private final Texts texts;
  private final Panels panels;
  private final Supplier<Optional<Chooser>> chooser;

  SetUpsPanels(
      SetUpsViewModel model, Texts texts, Panels panels, Supplier<Optional<Chooser>> chooser) {
    this.chooser = chooser;
    this.model = model;
    this.texts = texts;
    this.panels = panels;
  }

  /** Which bow and arrow is shot next; what is known of either need not be typed again. */
  void state() {
    open(
        "state-panel",
        List.of(
            words(BOW, "setups.ask.bow"),
            words(ARROW, "setups.ask.arrow"),
            words(MASS, "setups.ask.mass").mayStayOpen(),
            words(DRAW, "setups.ask.draw").mayStayOpen(),
            words(LENGTH, "setups.ask.length").mayStayOpen(),
            words(BRACE, "setups.ask.brace").mayStayOpen(),
            words(RATING, "setups.ask.rating").mayStayOpen()),
        (answers, done, missed) ->
            model.state(
                new PracticeSetUpText(
                    answers.words(BOW),
                    answers.words(ARROW),
                    texts.typed(answers.words(MASS)),
                    texts.typed(answers.words(DRAW)),
                    texts.typed(answers.words(LENGTH)),
                    texts.typed(answers.words(BRACE)),
                    answers.words(RATING)),
                done,
                missed),
        new FormPanel.Wording(
            texts.of("setups.state"),
            texts.of("setups.state.words"),
            texts.of("setups.state.act")));
  }

  FormPanel type() {
    return open(
        "type-panel",
        List.of(words(READING, "setups.ask.reading")),
        (answers, done, missed) -> model.type(texts.typed(answers.words(READING)), done, missed),
        new FormPanel.Wording(
            texts.of("setups.type"), texts.of("setups.type.words"), texts.of("setups.type.act")));
  }

  void mark() {
    model.chosen().get().ifPresent(this::mark);
  }

  private void mark(SetUpRow row) {
    List<PracticeShot.Word> said = List.of(PracticeShot.Word.values());
    open(
        "mark-panel",
        List.of(
            Question.choice(
                SHOT,
                texts.of("setups.ask.shot", row.line().setUp()),
                row.shots().stream()
                    .map(
                        shot ->
                            row.leftOut().contains(shot)
                                ? texts.of("setups.shot.left-out", shot.speed())
                                : texts.quantity(shot.speed()))
                    .toList()),
            Question.choice(
                WORD, texts.of("setups.ask.word"), said.stream().map(this::worded).toList())),
        (answers, done, missed) ->
            model.mark(
                row.shots().get(answers.choice(SHOT)),
                said.get(answers.choice(WORD)),
                done,
                missed),
        new FormPanel.Wording(
            texts.of("setups.mark"), texts.of("setups.mark.words"), texts.of("setups.mark.act")));
  }

  private String worded(PracticeShot.Word word) {
    return switch (word) {
      case NONE -> texts.of("setups.word.none");
      case MISREAD -> texts.of("setups.word.misread");
      case GOOD -> texts.of("setups.word.good");
    };
  }

  void begin() {
    open(
        "begin-panel",
        List.of(words(FILE, "setups.ask.file").mayStayOpen().place(Question.Place.FILE)),
        (answers, done, missed) -> model.begin(answers.words(FILE), done, missed),
        new FormPanel.Wording(
            texts.of("setups.begin"),
            texts.of("setups.begin.words"),
            texts.of("setups.begin.act")));
  }

  void write() {
    panels.open(
        WritePanel.of(
            List.of(Copy.values()),
            model::write,
            texts.of("setups.write.words"),
            texts,
            chooser.get(),
            panels::close));
  }

  /** Whoever is on duty signs; else an official who comes for it. */
  void keep() {
    List<Question> questions = new ArrayList<>();
    questions.add(words(TITLE, "setups.ask.title"));
    List<String> officials = model.officials();
    boolean visitor = !model.onDuty().get();
    if (visitor) {
      questions.add(Question.choice(OFFICIAL, texts.of("setups.ask.official"), officials));
      questions.add(Question.secret(PASSPHRASE, texts.of("setups.ask.passphrase")));
    }
    open(
        "keep-panel",
        questions,
        (answers, done, missed) -> {
          if (visitor) {
            model.keep(
                officials.get(answers.choice(OFFICIAL)),
                answers.secret(PASSPHRASE),
                answers.words(TITLE),
                done,
                missed);
          } else {
            model.keep(answers.words(TITLE), done, missed);
          }
        },
        new FormPanel.Wording(
            texts.of("setups.keep"), texts.of("setups.keep.words"), texts.of("setups.keep.act")));
  }

  private Question words(String name, String label) {
    return Question.words(name, texts.of(label), List.of());
  }

  private FormPanel open(
      String id,
      List<Question> questions,
      FormViewModel.Handover handover,
      FormPanel.Wording wording) {
    FormPanel panel =
        new FormPanel(
            id,
            new FormViewModel(questions, handover, panels::close),
            wording,
            texts,
            chooser.get(),
            panels::close);
    panels.open(panel);
    return panel;
  }
}
