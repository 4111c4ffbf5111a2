package lanewarden.kiosk.instrument;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.input.KeyCode;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.FormViewModel;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Panels;
import lanewarden.kiosk.look.Texts;

/** Asks what is to be listened to, and shows what comes. */
public final class ListeningPanels {
  private static final String PORT = "port";
  private static final String PROFILE = "profile";
  private static final String CAPTURE = "capture";
  private static final String PACE = "pace";

  private final ListeningViewModel model;
  private final Texts texts;
  private final Panels panels;
  private final Supplier<Optional<Chooser>> chooser;

  /**
   * @param chooser with which files are chosen, if there is one at the time
   */
  public ListeningPanels(
      ListeningViewModel model, Texts texts, Panels panels, Supplier<Optional<Chooser>> chooser) {
    this.model = model;
    this.texts = texts;
    this.panels = panels;
    this.chooser = chooser;
  }

  /** Asks for a serial port, with those that are here to pick from. */
  public void askPort() {
    model.lookForPorts(this::askPort);
  }

  private void askPort(List<String> here) {
    open(
        "listen-port",
        List.of(Question.port(PORT, texts.of("listen.ask.port"), here), profile()),
        (answers, done, missed) ->
            model.toPort(answers.words(PORT), answers.words(PROFILE), done, missed),
        new FormPanel.Wording(
            texts.of("listen.port"),
            texts.of(
                "listen.port.words",
                texts.of(here.isEmpty() ? "start.port.none" : "start.port.some")),
            texts.of("listen.port.act")));
  }

  /** Asks for a capture. */
  public void askCapture() {
    open(
        "listen-capture",
        List.of(
            Question.words(CAPTURE, texts.of("listen.ask.capture"), List.of())
                .place(Question.Place.FILE),
            profile(),
            Question.words(PACE, texts.of("listen.ask.pace"), List.of()).mayStayOpen()),
        (answers, done, missed) ->
            model.toCapture(
                answers.words(CAPTURE), answers.words(PROFILE), answers.words(PACE), done, missed),
        new FormPanel.Wording(
            texts.of("listen.capture"),
            texts.of("listen.capture.words"),
            texts.of("listen.capture.act")));
  }

  private Question profile() {
    return Question.words(PROFILE, texts.of("listen.ask.profile"), model.profiles())
        .place(Question.Place.FILE);
  }

  private void open(
      String id,
      List<Question> questions,
      FormViewModel.Handover handover,
      FormPanel.Wording wording) {
    panels.open(
        new FormPanel(
            id,
            new FormViewModel(questions, handover, this::show),
            wording,
            texts,
            chooser.get(),
            panels::close));
  }

  private void show() {
    KeyButton turn =
        new KeyButton(
            words(),
            KeyCode.F5,
            () -> {
              if (model.on().get()) {
                model.end();
              } else {
                model.again();
              }
            });
    turn.setId("listen-turn");
    model.on().addListener((all, before, now) -> turn.rename(words()));
    panels.open(
        new WirePanel(
            model.wire(),
            texts,
            List.of(turn, new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, panels::close)),
            model::end));
  }

  private String words() {
    return texts.of(model.on().get() ? "listen.stop" : "listen.again");
  }
}
