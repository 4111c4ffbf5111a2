package lanewarden.kiosk.rulebook;

import java.util.List;
import java.util.Optional;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.FormViewModel;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.Texts;

/** Asks for another rule book, whose division of the same code then stands beside the open one. */
final class BesidePanel {
  private static final String FILE = "beside-file";

  private BesidePanel() {}

  /**
   * The panel.
   *
   * @param chooser with what the file is chosen, if there is anything
   * @param leave closes it
   */
  static FormPanel of(
      EffectViewModel effect, Texts texts, Optional<Chooser> chooser, Runnable leave) {
    return new FormPanel(
        "beside-panel",
        new FormViewModel(
            List.of(
                Question.words(FILE, texts.of("beside.book.file"), List.of())
                    .place(Question.Place.FILE)),
            (answers, done, missed) -> effect.putBeside(answers.words(FILE), done, missed),
            leave),
        new FormPanel.Wording(
            texts.of("beside.book"), texts.of("beside.book.words"), texts.of("beside.book.act")),
        texts,
        chooser,
        leave);
  }
}
