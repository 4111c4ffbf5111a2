package lanewarden.kiosk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import lanewarden.kiosk.checkup.CheckUpScreen;
import lanewarden.kiosk.checkup.CheckUpViewModel;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.FormViewModel;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.CheckUp;
import lanewarden.station.EventFolder;

/**
 * A check-up of an event that need not be open, nor open at all: what keeps it from that is what
 * most wants to be found; on the screen's thread.
 */
final class CheckUpCorner {
  private static final String FOLDER = "folder";

  private final Forecourt.Ground ground;
  private final CheckUp checkUp;
  private final Supplier<Optional<Path>> picked;
  private Optional<Path> last = Optional.empty();

  /**
   * @param picked the folder that is meant before anybody named one
   */
  CheckUpCorner(Forecourt.Ground ground, CheckUp checkUp, Supplier<Optional<Path>> picked) {
    this.ground = ground;
    this.checkUp = checkUp;
    this.picked = picked;
  }

  /** Asks for an event's folder, and looks it over. */
  void open() {
    Texts texts = ground.texts();
    FormViewModel form =
        new FormViewModel(
            List.of(
                Question.words(FOLDER, texts.of("start.open.choose"), List.of())
                    .place(Question.Place.FOLDER)),
            (answers, done, missed) ->
                ground
                    .table()
                    .ask(
                        () -> ground.places().folder(answers.words(FOLDER)),
                        folder -> {
                          done.run();
                          show(folder);
                        },
                        missed),
            ground.shell()::close);
    picked.get().or(() -> last).ifPresent(folder -> form.text(FOLDER).set(folder.toString()));
    ground.ask(
        "checked-event",
        form,
        new FormPanel.Wording(
            texts.of("checkup.ask"), texts.of("checkup.ask.words"), texts.of("checkup.ask.act")));
  }

  private void show(Path folder) {
    last = Optional.of(folder);
    CheckUpViewModel model =
        new CheckUpViewModel(
            checkUp, Optional.empty(), new EventFolder(folder), ground.table(), ground.texts());
    CheckUpScreen screen =
        new CheckUpScreen(
            model,
            ground.texts(),
            ground.shell(),
            new CheckUpScreen.Doors(ground.theme().get(), ground.goTo(), ground.home()));
    model.look();
    ground.shell().show(screen);
  }
}
