package lanewarden.kiosk;

import java.security.SecureRandom;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.scene.Scene;
import javafx.scene.input.InputEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import lanewarden.kiosk.desk.Desk;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.line.CheckPage;
import lanewarden.kiosk.line.GlanceViewModel;
import lanewarden.kiosk.line.GlanceViewModel.Looking;
import lanewarden.kiosk.line.LinePage;
import lanewarden.kiosk.line.LineViewModel;
import lanewarden.kiosk.look.Appearance;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.signin.IdleViewModel;
import lanewarden.kiosk.signin.SignInScreen;
import lanewarden.kiosk.signin.SignInViewModel;
import lanewarden.kiosk.sound.Cue;
import lanewarden.kiosk.sound.Listener;
import lanewarden.kiosk.sound.Loudspeaker;
import lanewarden.station.LineView;
import lanewarden.station.Station;
import lanewarden.station.Surroundings;
import lanewarden.station.Trouble;
import org.jspecify.annotations.Nullable;

/** All screens of one station and what leads from one to the other; on the screen's thread. */
final class Front implements Doors.Rooms {

  /** The windows that the screens stand in. */
  interface Windows {
    /** Shows or hides the board. */
    void turnBoard();

    /** Shows everything in another language. */
    void speak(Language language);

    /** Fills the screen whole, or asks the way out of that. */
    void turnFull();

    /** Whether the screen is filled whole, and left only with a passphrase. */
    boolean isFull();

    /** The system's windows for choosing files; none where the screen is not to be left. */
    Optional<Chooser> chooser();

    /** Makes a sound. */
    void play(Cue cue);

    /** What makes the sounds. */
    Loudspeaker speaker();

    /** Closes everything; out of the full screen only with a passphrase. */
    void end();
  }

  /**
   * Where work is done, and when.
   *
   * @param desk one task after the other, for the station
   * @param report for the audit report
   * @param studio one task after the other, for the rule studio
   * @param sound for sounds
   * @param screen the screen's thread
   * @param here gives files that are kept their time, and keys and seals their chance
   */
  record Threads(
      Executor desk,
      Executor report,
      Executor studio,
      Executor sound,
      Executor screen,
      Surroundings here) {

    Clock clock() {
      return here.clock();
    }

    SecureRandom random() {
      return here.random();
    }
  }

  private final Texts texts;
  private final Appearance look;
  private final Windows windows;
  private final Post post;
  private final Desk desk;
  private final IdleViewModel idle;
  private final Shell shell;
  private final GlanceViewModel glance;
  private final Late<LineRoom> line;
  private final Late<BoardScene> board;
  private final Faults faults;
  private final Late<InstrumentRoom> instrument;
  private final Doors doors;
  private final Annex side;
  private final WayOut wayOut;
  private final Listener listener = new Listener();
  private SignInScreen signIn;
  private final StudioDoor studio;
  private Optional<String> official = Optional.empty();
  private @Nullable LinePage latest;

  Front(Post post, Makers makers, Windows windows, Threads threads, Appearance look) {
    this.windows = windows;
    this.look = look;
    texts = Texts.in(look.language().get());
    this.post = post;
    Training training = post.training();
    glance = new GlanceViewModel(texts);
    idle = new IdleViewModel(threads.clock(), texts);
    Ribbon ribbon = new Ribbon(idle);
    shell = new Shell(look, texts, training.above(texts, ribbon), training.height());
    board = new Late<>(() -> new BoardScene(training, texts, look, shell));
    faults = new Faults(shell, texts, windows);
    desk = new Desk(post.station(), threads.desk(), threads.screen());
    doors = new Doors(this, shell, texts, look.theme());
    studio =
        new StudioDoor(
            post,
            shell,
            desk,
            texts,
            windows::chooser,
            doors::theme,
            threads,
            () -> !isOnDuty(),
            this::goHome,
            faults::refuse);
    wayOut = new WayOut(desk, post.key(), shell, texts, threads.random());
    line = new Late<>(() -> LineRoom.of(desk, shell, texts, doors, faults));
    instrument =
        new Late<>(
            () -> new InstrumentRoom(desk, shell, texts, post.folder(), threads, windows::chooser));
    side =
        new Annex(
            () ->
                new SideRooms(
                    desk,
                    shell,
                    texts,
                    doors,
                    post,
                    makers,
                    threads,
                    this::head,
                    windows::chooser,
                    this::goHome));
    shell.scene().addEventFilter(InputEvent.ANY, this::stir);
    shell.otherwise(KeyCode.INSERT, doors::open);
    shell.urgent(
        KeyCode.F6, () -> official.ifPresent(on -> line.get().screen().stop(this::goHome)));
    shell.whenTurned(this::turned);
    glance.glance().addListener((all, before, now) -> ribbon.show(now));
    signIn = signInScreen();
    shell.show(signIn);
    desk.listen(this::take);
  }

  private String head() {
    return latest == null ? "" : latest.head();
  }

  /** Makes, while there is time, what else would be waited for when it is gone to. */
  void furnish() {
    side.furnish();
  }

  /** The official's scene. */
  Scene official() {
    return shell.scene();
  }

  /** The archer's scene. */
  Scene board() {
    return board.get().scene();
  }

  /** How all scenes look. */
  Appearance look() {
    return look;
  }

  Texts texts() {
    return texts;
  }

  /** Opens the window for a fault that nobody expected. */
  void fault(Throwable thrown) {
    faults.show(Trouble.of(thrown));
  }

  /** Asks who goes out of the full screen, and lets them. */
  void askOut(Runnable go) {
    wayOut.ask(go);
  }

  private void take(LineView view) {
    listener.hear(view).ifPresent(windows::play);
    LinePage page = LinePage.of(view, texts);
    latest = page;
    line.get().model().take(page);
    glance.take(page, view.official().isPresent());
    side.take(view);
    idle.take(view);
    board.get().take(view);
    instrument.get().take(view);
    signIn.show(page.place(), page.trouble());
    if (!view.official().equals(official)) {
      official = view.official();
      turnPage();
    }
  }

  /** A key or a finger on the screen keeps whoever is about to be signed out for doing nothing. */
  private void stir(InputEvent event) {
    boolean meant =
        event.getEventType() == KeyEvent.KEY_PRESSED
            || event.getEventType() == MouseEvent.MOUSE_PRESSED;
    if (meant && idle.words().get().isPresent()) {
      desk.act(Station::stir, () -> {}, faults::showIfUnexpected);
    }
  }

  /** Whoever looks at something else is told of the line above it. */
  private void turned() {
    boolean atLine = line.isMade() && shell.shows(line.get().screen());
    side.turned();
    if (atLine || shell.shows(signIn)) {
      glance.look(shell.hasPanel() && atLine ? Looking.PANEL : Looking.LINE);
    } else {
      glance.look(Looking.ELSEWHERE);
    }
  }

  /** To the line while an official is on duty, else to signing in. */
  @Override
  public void goHome() {
    if (official.isPresent()) {
      shell.show(line.get().screen());
    } else {
      askWho();
    }
  }

  /** A screen of its own each time: who may sign in can have changed. */
  private void askWho() {
    signIn = signInScreen();
    if (latest != null) {
      signIn.show(latest.place(), latest.trouble());
    }
    shell.show(signIn);
  }

  @Override
  public void openPeople() {
    side.rooms().openPeople();
  }

  @Override
  public void openProspects() {
    side.rooms().openProspects();
  }

  @Override
  public void openSetUps() {
    side.rooms().openSetUps();
  }

  /** Somebody may protest against what was decided just now. */
  @Override
  public void openProtests() {
    LineViewModel model = line.get().model();
    side.rooms().openProtests(model.check().or(model.leftLast()::get).map(CheckPage::number));
  }

  /** The line while an official is on duty, signing in while none is. */
  private void turnPage() {
    if (official.isPresent()) {
      line.get().model().dismiss();
    }
    goHome();
  }

  private SignInScreen signInScreen() {
    return new SignInScreen(
        new SignInViewModel(desk, post.officials()),
        texts,
        post.training().hint(),
        doors.protests(),
        doors.people(),
        doors.theme(),
        List.of(doors.records(), doors.rules(), doors.instrument()),
        doors.goTo(),
        doors.leave());
  }

  @Override
  public void openRecords() {
    side.rooms().openRecords();
  }

  @Override
  public void openCheckUp() {
    side.rooms().openCheckUp();
  }

  /** Its charts at the line; what it says before anybody signed in. */
  @Override
  public void openInstrument() {
    if (isOnDuty()) {
      instrument.get().openChart();
    } else {
      instrument.get().openWire();
    }
  }

  @Override
  public void openRules() {
    studio.open();
  }

  @Override
  public void turnBoard() {
    windows.turnBoard();
  }

  @Override
  public void openLanguages() {
    shell.open(new LanguagePanel(texts, windows::speak, shell::close));
  }

  @Override
  public void openComfort() {
    shell.open(new ComfortPanel(look, windows.speaker(), texts, shell::close));
  }

  @Override
  public void turnFull() {
    windows.turnFull();
  }

  @Override
  public boolean isFull() {
    return windows.isFull();
  }

  /** A report that is being made would end unseen. */
  @Override
  public boolean isWriting() {
    return side.isBusy();
  }

  /** Nothing is shown here any more. */
  void close() {
    side.close();
    desk.leave();
  }

  @Override
  public void leave() {
    windows.end();
  }

  @Override
  public boolean isOnDuty() {
    return official.isPresent();
  }

  /** Whether everything may be closed; if not, the official is asked. */
  @Override
  public boolean mayClose() {
    return studio.mayClose();
  }
}
