package lanewarden.kiosk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.property.ObjectProperty;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.look.Appearance;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Theme;
import lanewarden.kiosk.rulebook.RuleBookScreen;
import lanewarden.kiosk.sound.Loudspeaker;
import lanewarden.kiosk.start.NewEventScreen;
import lanewarden.kiosk.start.NewEventViewModel;
import lanewarden.kiosk.start.OpeningPanel;
import lanewarden.kiosk.start.PortPanel;
import lanewarden.kiosk.start.StartScreen;
import lanewarden.kiosk.start.StartViewModel;
import lanewarden.kiosk.trouble.FaultPanel;
import lanewarden.station.CurrentLine;
import lanewarden.station.DemoEvent;
import lanewarden.station.EventFolder;
import lanewarden.station.InstrumentPort;
import lanewarden.station.RuleDraft;
import lanewarden.station.Station;
import lanewarden.station.StationException;
import lanewarden.station.Trouble;
import lanewarden.station.UserFolder;

/**
 * The window that the program opens with, and the windows of the event that is opened from it, in
 * whose place it comes back; on the screen's thread.
 */
final class Entrance implements Kiosk.Opened {
  private final Appearance look;
  private final Stage stage = new Stage();
  private final CurrentLine line;
  private final Makers makers;
  private final Front.Threads threads;
  private final Runnable closed;
  private final StartViewModel model;
  private final NewEventViewModel newEvent;
  private final Chooser chooser;
  private Texts texts;
  private Shell shell;
  private final Loudspeaker speaker;
  private StartScreen start;
  private Forecourt forecourt;
  private Optional<Windows> windows = Optional.empty();
  private Optional<RuleBookScreen> studio = Optional.empty();

  /**
   * @param closed runs when the window is closed and no event is open
   */
  Entrance(
      CurrentLine line,
      UserFolder user,
      Makers makers,
      Front.Threads threads,
      Appearance look,
      Runnable closed) {
    this(line, user, makers, threads, look, closed, Optional.empty());
  }

  /**
   * @param chooser in place of the system's own windows to choose files
   */
  Entrance(
      CurrentLine line,
      UserFolder user,
      Makers makers,
      Front.Threads threads,
      Appearance look,
      Runnable closed,
      Optional<Chooser> chooser) {
    this.line = line;
    this.makers = makers;
    this.threads = threads;
    this.look = look;
    this.closed = closed;
    this.chooser = chooser.orElseGet(() -> new SystemChooser(() -> stage));
    model =
        new StartViewModel(
            line,
            user,
            threads.desk(),
            threads.screen(),
            new StartViewModel.Handover() {
              @Override
              public void line(Station station, EventFolder folder, boolean practice) {
                show(station, folder, practice);
              }

              @Override
              public void port(InstrumentPort port, List<String> here) {
                show(port, here);
              }

              @Override
              public void otherwise(Optional<Path> event, List<String> here) {
                shell.open(
                    OpeningPanel.of(
                        event, here, model, texts, Entrance.this.chooser, shell::close));
              }

              @Override
              public void rules(RuleDraft draft) {
                show(draft);
              }
            });
    newEvent = new NewEventViewModel(line.here(), threads.desk(), threads.screen());
    speaker = new Loudspeaker(threads.sound(), threads.screen());
    texts = Texts.in(look.language().get());
    shell = new Shell(look, texts);
    forecourt = forecourt();
    start = startScreen();
    fill();
    Windows.prepare(stage);
    stage.setOnCloseRequest(
        e -> {
          if (studio.filter(RuleBookScreen::isChanged).isPresent()) {
            e.consume();
            studio.get().askLeave();
          }
        });
    stage.setOnHidden(e -> closeIfNothingIsOpen());
    look.language().subscribe((before, now) -> speak());
  }

  private StartScreen startScreen() {
    KeyButton language = new KeyButton(texts.of("act.language"), KeyCode.F9, this::openLanguages);
    language.setId("language");
    return new StartScreen(
        model,
        texts,
        chooser,
        new StartScreen.Doors(
            ThemeButton.of(look.theme(), texts),
            language,
            new KeyButton(texts.of("act.comfort"), KeyCode.F10, this::openComfort),
            this::makeEvent,
            () -> forecourt.open(),
            new KeyButton(texts.of("act.leave"), KeyCode.F12, this::leave)),
        line.here().program());
  }

  private Forecourt forecourt() {
    return new Forecourt(
        shell,
        texts,
        chooser,
        () -> ThemeButton.of(look.theme(), texts),
        makers,
        threads,
        model::picked,
        this::goHome);
  }

  private void fill() {
    stage.setTitle(texts.of("window.start"));
    stage.setScene(shell.scene());
  }

  private void openLanguages() {
    shell.open(new LanguagePanel(texts, look.language()::set, shell::close));
  }

  private void openComfort() {
    shell.open(new ComfortPanel(look, speaker, texts, shell::close));
  }

  /** Everything is made anew in the language chosen now. */
  private void speak() {
    texts = Texts.in(look.language().get());
    shell = new Shell(look, texts);
    forecourt = forecourt();
    start = startScreen();
    fill();
    goHome();
  }

  /**
   * Opens the window.
   *
   * @param event is opened from it at once, if there is one
   */
  void open(Optional<Path> event) {
    goHome();
    stage.show();
    event.ifPresent(model::open);
  }

  /** The scene of its window. */
  Scene scene() {
    return shell.scene();
  }

  /** The colours of its window. */
  ObjectProperty<Theme> theme() {
    return look.theme();
  }

  /** The windows of the event that is open, if one is. */
  Optional<Windows> windows() {
    return windows;
  }

  private void goHome() {
    studio = Optional.empty();
    model.refresh();
    shell.show(start);
  }

  private void makeEvent() {
    newEvent.begin();
    shell.show(
        new NewEventScreen(
            newEvent,
            texts,
            shell,
            chooser,
            new NewEventScreen.Doors(
                ThemeButton.of(look.theme(), texts), this::goHome, this::openMade)));
  }

  private void openMade(Path folder) {
    goHome();
    model.open(folder);
  }

  private void show(Station station, EventFolder folder, boolean practice) {
    Optional<String> hint =
        practice
            ? Optional.of(texts.of("start.hint", DemoEvent.OFFICIAL, DemoEvent.PASSPHRASE))
            : Optional.empty();
    Windows opened =
        Windows.open(
            Post.of(station, folder, Training.at(station, hint)),
            makers,
            threads,
            look,
            this::leaveLine);
    windows = Optional.of(opened);
    stage.hide();
  }

  /** The line is left off the screen's thread; whatever came of it, the start is there again. */
  private void leaveLine() {
    stage.show();
    goHome();
    model.busy().set(true);
    threads
        .desk()
        .execute(
            () -> {
              Optional<Trouble> trouble = Optional.empty();
              try {
                line.leave();
              } catch (StationException | RuntimeException | Error e) {
                trouble = Optional.of(Trouble.of(e));
              }
              Optional<Trouble> told = trouble;
              threads.screen().execute(() -> left(told));
            });
  }

  private void left(Optional<Trouble> trouble) {
    windows = Optional.empty();
    model.busy().set(false);
    model.refresh();
    trouble.ifPresent(t -> model.trouble().set(Optional.of(t)));
    if (!stage.isShowing()) {
      closed.run();
    }
  }

  private void show(InstrumentPort port, List<String> here) {
    shell.open(PortPanel.of(port, here, model, texts, shell::close));
  }

  private void show(RuleDraft draft) {
    RuleBookScreen screen =
        Studio.over(
            shell,
            draft,
            texts,
            ThemeButton.of(look.theme(), texts),
            () -> Optional.of(chooser),
            Optional.empty(),
            this::goHome,
            new Studio.Threads(
                threads.clock(), threads.studio(), threads.studio(), threads.screen()));
    studio = Optional.of(screen);
    shell.show(screen);
  }

  /** Hidden because an event is shown in its place, it is not closed. */
  private void closeIfNothingIsOpen() {
    if (windows.isEmpty()) {
      closed.run();
    }
  }

  @Override
  public void fault(Throwable thrown) {
    Platform.runLater(
        () -> {
          if (windows.isPresent() && !stage.isShowing()) {
            windows.get().fault(thrown);
          } else {
            shell.open(
                new FaultPanel(
                    Trouble.of(thrown), texts, Faults::copy, shell::close, Optional.empty()));
          }
        });
  }

  @Override
  public void leave() {
    windows.ifPresent(Windows::leave);
    stage.hide();
  }
}
