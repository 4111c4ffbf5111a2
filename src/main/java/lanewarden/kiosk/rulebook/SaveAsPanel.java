package lanewarden.kiosk.rulebook;

import java.util.List;
import java.util.Optional;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.FormViewModel;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.Texts;

/** Asks for another name to save the open rule book under. */
final class SaveAsPanel {
  private static final String NAME = "save-name";

  private SaveAsPanel() {}

  /**
   * The panel.
   *
   * @param chooser with what the place is chosen, if there is anything
   * @param leave closes it
   */
  static FormPanel of(
      RuleBookViewModel book, Texts texts, Optional<Chooser> chooser, Runnable leave) {
    FormViewModel form =
        new FormViewModel(
            List.of(
                Question.words(NAME, texts.of("save-as.field"), List.of())
                    .place(Question.Place.NEW)),
            (answers, done, missed) -> book.saveAs(answers.words(NAME), done, missed),
            leave);
    form.text(NAME).set(String.valueOf(book.draft().get().file().getFileName()));
    return new FormPanel(
        "save-as-panel",
        form,
        new FormPanel.Wording(
            texts.of("save-as.title"), texts.of("save-as.words"), texts.of("studio.save")),
        texts,
        chooser,
        leave);
  }
}
