package lanewarden.kiosk.setups;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.FormViewModel;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.Trouble;

/** Asks what is to be written of what was found, and where. */
final class WritePanel {
  private static final String COPY = "copy";
  private static final String FILE = "file";

  private WritePanel() {}

  /** Writes it. */
  @FunctionalInterface
  interface Writing {
    /**
     * Answers through one of the two.
     *
     * @param typed the file, or blank for the usual
     */
    void write(Copy copy, String typed, Runnable taken, Consumer<Trouble> refused);
  }

  /**
   * The panel.
   *
   * @param copies what can be written
   * @param words where it goes where no file is named
   * @param leave closes it
   */
  static FormPanel of(
      List<Copy> copies,
      Writing writing,
      String words,
      Texts texts,
      Optional<Chooser> chooser,
      Runnable leave) {
    return new FormPanel(
        "write-panel",
        new FormViewModel(
            List.of(
                Question.choice(
                    COPY,
                    texts.of("setups.ask.copy"),
                    copies.stream().map(copy -> copy.named(texts)).toList()),
                Question.words(FILE, texts.of("setups.ask.target"), List.of())
                    .mayStayOpen()
                    .place(Question.Place.NEW)),
            (answers, done, missed) ->
                writing.write(copies.get(answers.choice(COPY)), answers.words(FILE), done, missed),
            leave),
        new FormPanel.Wording(texts.of("setups.write"), words, texts.of("setups.write.act")),
        texts,
        chooser,
        leave);
  }
}
