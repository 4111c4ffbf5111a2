package lanewarden.kiosk.rulebook;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.Panels;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.Trouble;

/** Asks the organizer for the reason and the signature that put a rule book in force. */
final class AdoptPanel {
  private static final String REASON = "reason";

  private AdoptPanel() {}

  /**
   * The panel.
   *
   * @param chooser with what the key's file is chosen, if there is anything
   * @param adopted runs when it is in force, with what there is to remark on it
   */
  static FormPanel of(
      Adoption adoption,
      Texts texts,
      Optional<Chooser> chooser,
      Panels panels,
      Consumer<Optional<Trouble>> adopted) {
    return new FormPanel(
        "adopt-panel",
        adoption
            .key()
            .form(
                List.of(Question.words(REASON, texts.of("adopt.reason"), List.of())),
                texts,
                (answers, organizer, done, missed) ->
                    adoption.adopt(
                        organizer,
                        answers.words(REASON),
                        remark -> {
                          done.run();
                          adopted.accept(remark);
                        },
                        missed),
                panels::close),
        new FormPanel.Wording(
            texts.of("adopt.title"), texts.of("adopt.words"), texts.of("adopt.act")),
        texts,
        chooser,
        panels::close);
  }
}
