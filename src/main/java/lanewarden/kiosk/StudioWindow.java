package lanewarden.kiosk;

import java.util.Optional;
import javafx.application.Platform;
import javafx.stage.Stage;
import lanewarden.kiosk.look.Appearance;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.rulebook.RuleBookScreen;
import lanewarden.kiosk.trouble.FaultPanel;
import lanewarden.station.RuleDraft;
import lanewarden.station.Trouble;

/** The rule studio in a window of its own, without an event; on the screen's thread. */
final class StudioWindow implements Kiosk.Opened {
  private final Texts texts;
  private final Shell shell;
  private final Stage stage = new Stage();

  private StudioWindow(RuleDraft draft, Studio.Threads threads, Appearance look, Runnable closed) {
    texts = Texts.in(look.language().get());
    shell = new Shell(look, texts);
    RuleBookScreen screen =
        Studio.over(
            shell,
            draft,
            texts,
            ThemeButton.of(look.theme(), texts),
            () -> Optional.of(new SystemChooser(() -> stage)),
            Optional.empty(),
            stage::hide,
            threads);
    shell.show(screen);
    stage.setTitle(texts.of("window.studio"));
    stage.setScene(shell.scene());
    Windows.prepare(stage);
    stage.setOnCloseRequest(
        e -> {
          if (screen.isChanged()) {
            e.consume();
            screen.askLeave();
          }
        });
    stage.setOnHidden(e -> closed.run());
  }

  /**
   * Opens the window.
   *
   * @param closed runs when it is closed
   */
  static StudioWindow open(
      RuleDraft draft, Studio.Threads threads, Appearance look, Runnable closed) {
    StudioWindow window = new StudioWindow(draft, threads, look, closed);
    window.stage.show();
    return window;
  }

  @Override
  public void fault(Throwable thrown) {
    Platform.runLater(
        () ->
            shell.open(
                new FaultPanel(
                    Trouble.of(thrown), texts, Faults::copy, shell::close, Optional.empty())));
  }

  @Override
  public void leave() {
    stage.hide();
  }
}
