package lanewarden.kiosk.start;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.FormViewModel;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.Texts;

/** Asks what holds for one opening alone, which begins with the answers. */
public final class OpeningPanel {
  private static final String WHICH = "which";
  private static final String FOLDER = "folder";
  private static final String PACE = "pace";
  private static final String PORT = "port";

  private OpeningPanel() {}

  /**
   * The panel.
   *
   * @param event the one that is picked, if there is one; whoever names the folder of another wants
   *     that
   * @param here the ports that are here now
   * @param chooser with which a folder is chosen instead of typed
   * @param leave closes it
   */
  public static FormPanel of(
      Optional<Path> event,
      List<String> here,
      StartViewModel model,
      Texts texts,
      Chooser chooser,
      Runnable leave) {
    List<String> which = new ArrayList<>();
    event.map(Path::getFileName).map(String::valueOf).ifPresent(which::add);
    which.add(texts.of("start.otherwise.invented"));
    int invented = which.size() - 1;
    return new FormPanel(
        "otherwise-panel",
        new FormViewModel(
            List.of(
                Question.choice(WHICH, texts.of("start.otherwise.which"), which).usually(0),
                Question.words(FOLDER, texts.of("start.otherwise.folder"), List.of())
                    .mayStayOpen()
                    .place(Question.Place.FOLDER),
                Question.words(PACE, texts.of("start.otherwise.pace"), List.of()).mayStayOpen(),
                Question.port(PORT, texts.of("start.otherwise.port"), here).mayStayOpen()),
            (answers, done, missed) ->
                model.openOtherwise(
                    event.filter(picked -> answers.choice(WHICH) != invented),
                    answers.words(FOLDER),
                    answers.words(PORT),
                    texts.typed(answers.words(PACE)),
                    done,
                    missed),
            leave),
        new FormPanel.Wording(
            texts.of("start.otherwise"),
            texts.of(
                "start.otherwise.words",
                texts.of(here.isEmpty() ? "start.port.none" : "start.port.some")),
            texts.of("start.otherwise.act")),
        texts,
        Optional.of(chooser),
        leave);
  }
}
