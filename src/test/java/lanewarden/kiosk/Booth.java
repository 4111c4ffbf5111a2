package lanewarden.kiosk;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import lanewarden.audit.AuditReport;
import lanewarden.chronograph.RawBytes;
import lanewarden.chronograph.SimulatedInstrument;
import lanewarden.journal.Check;
import lanewarden.kiosk.audit.ReportMaker;
import lanewarden.kiosk.look.Appearance;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Theme;
import lanewarden.kiosk.look.Typeface;
import lanewarden.quantity.Speed;
import lanewarden.station.EventFolder;
import lanewarden.station.SignedPapers;
import lanewarden.station.Station;
import lanewarden.station.StationException;
import lanewarden.station.Surroundings;

/** The real screens over a real station on a folder of its own, worked by keys alone. */
final class Booth implements AutoCloseable {
  static final String PASSPHRASE = "three grey geese";
  static final String OFFICIAL = "Wanda Okafor-Lind";

  /** Real reports. */
  static final ReportMaker REPORTS = new AuditReport(Clock.systemUTC(), SignedPapers::of)::write;

  final EventFolder folder;
  final Station station;
  final SimulatedInstrument instrument;
  final Front front;
  private final ExecutorService desk = Executors.newSingleThreadExecutor();
  private final ExecutorService studio = Executors.newSingleThreadExecutor();
  private final ExecutorService reports = Executors.newSingleThreadExecutor();
  private final Stage stage;
  private final Stage board;
  final BoothWindows windows = new BoothWindows();

  Booth(Path temp, double width, double height, ReportMaker maker) throws Exception {
    this(BoothEvent.PLAIN, temp, width, height, BoothEvent.with(maker));
  }

  Booth(EventFolder event, Path temp, double width, double height, Makers makers) throws Exception {
    this(event, temp, width, height, makers, Sketchbook.language(), false);
  }

  private Booth(
      EventFolder event,
      Path temp,
      double width,
      double height,
      Makers makers,
      Language language,
      boolean training)
      throws Exception {
    folder = new EventFolder(BoothEvent.copied(event.path(), temp.resolve("event")));
    instrument = new SimulatedInstrument(folder.profile(), Clock.systemUTC());
    station = open(folder, instrument);
    startToolkit();
    front =
        call(
            () ->
                new Front(
                    Post.of(
                        station,
                        folder,
                        new Training(
                            training,
                            Optional.of(
                                "Demonstration: every passphrase is \"" + PASSPHRASE + "\"."))),
                    makers,
                    windows,
                    new Front.Threads(
                        desk,
                        reports,
                        studio,
                        Runnable::run,
                        Platform::runLater,
                        new Surroundings(
                            Clock.systemUTC(),
                            System::nanoTime,
                            new SecureRandom(),
                            "Lanewarden test")),
                    new Appearance(Theme.DAY, language)));
    stage = call(() -> shown(front.official(), width, height));
    call(
        () -> {
          front.look().textSize().set(Sketchbook.textSize());
          return true;
        });
    board = call(() -> shown(front.board(), width, height));
    call(
        () -> {
          stage.requestFocus();
          return true;
        });
    settle();
  }

  Booth(Path temp) throws Exception {
    this(temp, 1280, 800, REPORTS);
  }

  /** On the event whose rules ask for more than arrow speed. */
  static Booth ofClauses(Path temp, double width, double height) throws Exception {
    return on(BoothEvent.CLAUSES, temp, width, height);
  }

  /** In another language, on a copy of an event of the test's own. */
  static Booth in(Language language, EventFolder event, Path temp, double width, double height)
      throws Exception {
    return new Booth(event, temp, width, height, BoothEvent.MAKERS, language, false);
  }

  /** The same under the band that says that nothing counts. */
  static Booth training(
      Language language, EventFolder event, Path temp, double width, double height)
      throws Exception {
    return new Booth(event, temp, width, height, BoothEvent.MAKERS, language, true);
  }

  /** On a copy of an event of the test's own. */
  static Booth on(EventFolder event, Path temp, double width, double height) throws Exception {
    return new Booth(event, temp, width, height, BoothEvent.MAKERS);
  }

  private static Stage shown(Scene scene, double width, double height) {
    Stage stage = new Stage();
    stage.setScene(scene);
    stage.setWidth(width);
    stage.setHeight(height);
    stage.show();
    return stage;
  }

  static Station open(EventFolder folder, SimulatedInstrument instrument) throws StationException {
    return Station.open(folder, instrument, "Lanewarden test", Clock.systemUTC(), System::nanoTime);
  }

  static void startToolkit() throws Exception {
    try {
      Platform.startup(() -> {});
      Platform.setImplicitExit(false);
    } catch (IllegalStateException e) {
      // Another test of this run has started it already; there is one toolkit a process
      Platform.setImplicitExit(false);
    }
    call(
        () -> {
          Typeface.load();
          return true;
        });
  }

  /** Runs on the screen's thread and waits. */
  static <T> T call(Callable<T> task) throws Exception {
    FutureTask<T> future = new FutureTask<>(task);
    Platform.runLater(future);
    return future.get(20, TimeUnit.SECONDS);
  }

  /** Waits until the instrument, the desk, the report and the screen have nothing left to do. */
  void settle() throws Exception {
    for (int i = 0; i < 3; i++) {
      instrument.settle();
      desk.submit(() -> {}).get(20, TimeUnit.SECONDS);
      reports.submit(() -> {}).get(20, TimeUnit.SECONDS);
      studio.submit(() -> {}).get(20, TimeUnit.SECONDS);
      call(() -> true);
    }
  }

  /** Presses a key and waits for all that follows. */
  void press(KeyCode code) throws Exception {
    pressWithoutWaiting(code);
    settle();
  }

  /** Presses a key. */
  void pressWithoutWaiting(KeyCode code) throws Exception {
    Keyboard.press(front.official(), code);
  }

  /** Types text, as fingers and readers do. */
  void type(String text) throws Exception {
    Keyboard.type(front.official(), text);
    settle();
  }

  /** Types text while the board's window has the keyboard. */
  void typeIntoBoard(String text) throws Exception {
    Keyboard.type(front.board(), text);
    settle();
  }

  /** Types text and presses enter, all at once, as a barcode reader does. */
  void scan(String bib) throws Exception {
    Keyboard.scan(front.official(), bib);
    settle();
  }

  /** Puts the focus in a form's field and picks out what stands there, as the tabulator does. */
  void focusField(String id) throws Exception {
    call(
        () -> {
          input(id).requestFocus();
          input(id).selectAll();
          return true;
        });
  }

  /** What stands in a form's field. */
  String fieldText(String id) throws Exception {
    return call(() -> input(id).getText());
  }

  private TextInputControl input(String id) {
    Node field = front.official().lookup("#" + id);
    return (TextInputControl)
        (field instanceof TextInputControl ? field : field.lookup(".text-input"));
  }

  /** What the ledger says of the check at the line. */
  Check check() {
    return station.view().check().orElseThrow().check();
  }

  void signIn() throws Exception {
    press(KeyCode.DOWN);
    type(PASSPHRASE);
    press(KeyCode.ENTER);
  }

  void shoot(String... speeds) throws Exception {
    for (String speed : speeds) {
      instrument.shoot(Speed.parse(speed));
      settle();
    }
  }

  void emit(String escaped) throws Exception {
    instrument.emit(RawBytes.parse(escaped));
    settle();
  }

  /** The text of a node in the official's scene, if it is there and visible. */
  String text(String id) throws Exception {
    return call(() -> text(front.official(), id));
  }

  /** The text of a node on the board. */
  String boardText(String id) throws Exception {
    return call(() -> text(front.board(), id));
  }

  private static String text(Scene scene, String id) {
    Node node = scene.lookup("#" + id);
    if (node == null || !seen(node)) {
      return "";
    }
    if (node instanceof Labeled labeled) {
      return labeled.getText();
    }
    if (node instanceof TextInputControl input) {
      return input.getText();
    }
    return String.valueOf(node.getAccessibleText());
  }

  /** Whether a node is visible, and all that it stands in. */
  static boolean seen(Node node) {
    for (Node at = node; at != null; at = at.getParent()) {
      if (!at.isVisible()) {
        return false;
      }
    }
    return true;
  }

  /** Whether a node is there and visible. */
  boolean shows(String id) throws Exception {
    return call(
        () -> {
          Node node = front.official().lookup("#" + id);
          return node != null && seen(node);
        });
  }

  /** Whether words are shown whole: not shortened, and within all that they stand in. */
  boolean isWhole(String id) throws Exception {
    return call(
        () -> {
          layOut(front.official());
          return isWhole((Label) front.official().lookup("#" + id));
        });
  }

  /** What of something that is shown is not whole: itself, or any of the words in it. */
  List<String> cutOff(String id) throws Exception {
    return call(() -> cutOff(front.official(), id));
  }

  /** The same on the board. */
  List<String> boardCutOff(String id) throws Exception {
    return call(() -> cutOff(front.board(), id));
  }

  private static List<String> cutOff(Scene scene, String id) {
    layOut(scene);
    Node node = scene.lookup("#" + id);
    Stream<String> words =
        node.lookupAll(".label").stream()
            .map(Label.class::cast)
            .filter(label -> label.isManaged() && seen(label) && !isWhole(label))
            .map(Label::getText);
    return Stream.concat(isInside(node) ? Stream.empty() : Stream.of(id), words).toList();
  }

  private static void layOut(Scene scene) {
    scene.getRoot().applyCss();
    scene.getRoot().layout();
  }

  private static boolean isWhole(Label label) {
    return label.getHeight() >= Math.floor(label.prefHeight(label.getWidth())) && isInside(label);
  }

  private static boolean isInside(Node node) {
    Bounds bounds = node.localToScene(node.getLayoutBounds());
    boolean inside = true;
    for (Node at = node.getParent(); at != null; at = at.getParent()) {
      // What is scrolled reaches beyond its holder, which hides nothing: the viewport does
      boolean hides =
          at.getParent() == null || !at.getParent().getStyleClass().contains("viewport");
      inside &= !hides || at.localToScene(at.getLayoutBounds()).contains(bounds);
    }
    return inside;
  }

  /** Whether a button is greyed. */
  boolean isDisabled(String id) throws Exception {
    return call(() -> front.official().lookup("#" + id).isDisabled());
  }

  /** Fires a button by its id, as a finger does. */
  void touch(String id) throws Exception {
    call(
        () -> {
          ((Button) front.official().lookup("#" + id)).fire();
          return true;
        });
    settle();
  }

  @Override
  public void close() {
    try {
      call(
          () -> {
            stage.hide();
            board.hide();
            return true;
          });
      station.close();
      desk.shutdown();
      reports.shutdown();
      studio.shutdown();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (Exception e) {
      throw new IllegalStateException("the booth could not be closed", e);
    }
  }
}
