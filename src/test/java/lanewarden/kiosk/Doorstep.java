package lanewarden.kiosk;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.stage.Window;
import lanewarden.audit.slip.Slips;
import lanewarden.kiosk.desk.Printing;
import lanewarden.kiosk.look.Appearance;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Theme;
import lanewarden.kiosk.protest.SlipMaker;
import lanewarden.station.CurrentLine;
import lanewarden.station.SignedPapers;
import lanewarden.station.Surroundings;
import lanewarden.station.UserFolder;

/** The program as it is opened from a menu, worked by keys alone. */
final class Doorstep implements AutoCloseable {
  final UserFolder user;
  final CurrentLine line;
  final Entrance entrance;

  final Appearance look = new Appearance(Theme.DAY, Sketchbook.language());

  /** What the next windows to choose files answer. */
  final Deque<Path> chosen = new ArrayDeque<>();

  private final ExecutorService desk = Executors.newSingleThreadExecutor();
  private final ExecutorService studio = Executors.newSingleThreadExecutor();
  private final ExecutorService reports = Executors.newSingleThreadExecutor();
  private final ExecutorService sound = Executors.newSingleThreadExecutor();
  volatile boolean closed;

  Doorstep(Path temp, double width, double height, Optional<Path> event) throws Exception {
    user = new UserFolder(temp.resolve("user"));
    line =
        new CurrentLine(
            new Surroundings(
                Clock.systemUTC(), System::nanoTime, new SecureRandom(), "Lanewarden test"));
    Booth.startToolkit();
    look.textSize().set(Sketchbook.textSize());
    entrance =
        Booth.call(
            () ->
                new Entrance(
                    line,
                    user,
                    new Makers(
                        Booth.REPORTS,
                        SlipMaker.of(new Slips(Clock.systemUTC(), SignedPapers::of)),
                        Printing.onSystem(),
                        BoothEvent.CHECK_UP),
                    new Front.Threads(
                        desk, reports, studio, sound, Platform::runLater, line.here()),
                    look,
                    () -> closed = true,
                    Optional.of(new ChosenBefore(chosen))));
    Booth.call(
        () -> {
          entrance.open(event);
          Window window = entrance.scene().getWindow();
          window.setWidth(width);
          window.setHeight(height);
          return true;
        });
    settle();
  }

  Doorstep(Path temp) throws Exception {
    this(temp, 1280, 800, Optional.empty());
  }

  /** Waits until nothing is left to do. */
  void settle() throws Exception {
    for (int i = 0; i < 4; i++) {
      desk.submit(() -> {}).get(60, TimeUnit.SECONDS);
      studio.submit(() -> {}).get(20, TimeUnit.SECONDS);
      reports.submit(() -> {}).get(20, TimeUnit.SECONDS);
      Booth.call(() -> true);
    }
  }

  /** The scene that has the keys: the event's, if one is open. */
  Scene scene() throws Exception {
    return Booth.call(
        () ->
            entrance.windows().map(Windows::front).map(Front::official).orElseGet(entrance::scene));
  }

  void press(KeyCode code) throws Exception {
    Keyboard.press(scene(), code);
    settle();
  }

  void press(KeyCode code, int times) throws Exception {
    for (int i = 0; i < times; i++) {
      press(code);
    }
  }

  void type(String text) throws Exception {
    Keyboard.type(scene(), text);
    settle();
  }

  /** Puts the focus into a field, as the tabulator does. */
  void focus(String id) throws Exception {
    Scene scene = scene();
    Booth.call(
        () -> {
          Node field = scene.lookup("#" + id);
          Node input = field.lookup(".text-input");
          (input == null ? field : input).requestFocus();
          return true;
        });
  }

  /** Presses a button that has no key. */
  void touch(String id) throws Exception {
    Scene scene = scene();
    Booth.call(
        () -> {
          ((ButtonBase) scene.lookup("#" + id)).fire();
          return true;
        });
    settle();
  }

  /** Picks the word with this key, of those of a field, as the space bar does on it. */
  void pick(String id, String key) throws Exception {
    String word = Texts.in(look.language().get()).of(key);
    Scene scene = scene();
    Booth.call(
        () -> {
          scene.lookup("#" + id).lookupAll(".toggle-button").stream()
              .map(ToggleButton.class::cast)
              .filter(button -> button.getText().equals(word))
              .forEach(
                  button -> {
                    button.requestFocus();
                    button.fire();
                  });
          return true;
        });
    settle();
  }

  /** Writes a person's name, and the passphrase twice. */
  void person(int place, String name, String passphrase) throws Exception {
    focus("field-person-" + place + "-name");
    type(name);
    focus("field-person-" + place + "-passphrase");
    type(passphrase);
    focus("field-person-" + place + "-again");
    type(passphrase);
  }

  /** What a visible node says; blank if there is none. */
  String text(String id) throws Exception {
    return text(scene(), id);
  }

  /** What stands in a field of the form. */
  String label(String id) throws Exception {
    Scene scene = scene();
    return Booth.call(
        () -> {
          Node field = scene.lookup("#" + id);
          Node input = field.lookup(".text-input");
          return input == null ? ((Labeled) field).getText() : ((TextInputControl) input).getText();
        });
  }

  /** The lines of a box of labels. */
  List<String> lines(String id) throws Exception {
    Scene scene = scene();
    return Booth.call(
        () ->
            ((VBox) scene.lookup("#" + id))
                .getChildren().stream().map(node -> ((Labeled) node).getText()).toList());
  }

  /** All that a panel says; blank if it is not open. */
  String words(String id) throws Exception {
    return words(scene(), id);
  }

  static String words(Scene scene, String id) throws Exception {
    return Booth.call(
        () -> {
          Node panel = scene.lookup("#" + id);
          return panel == null
              ? ""
              : panel.lookupAll(".label").stream()
                  .map(node -> ((Labeled) node).getText())
                  .collect(Collectors.joining("\n"));
        });
  }

  static String text(Scene scene, String id) throws Exception {
    return Booth.call(
        () -> {
          Node node = scene.lookup("#" + id);
          if (node == null || !Booth.seen(node)) {
            return "";
          }
          if (node instanceof Labeled labeled) {
            return labeled.getText();
          }
          return node instanceof TextInputControl input
              ? input.getText()
              : String.valueOf(node.getAccessibleText());
        });
  }

  /** The titles of the windows that are open. */
  List<String> titles() throws Exception {
    return Booth.call(
        () ->
            Window.getWindows().stream()
                .filter(w -> w instanceof Stage)
                .map(w -> String.valueOf(((Stage) w).getTitle()))
                .toList());
  }

  @Override
  public void close() throws Exception {
    Booth.call(
        () -> {
          entrance.leave();
          return true;
        });
    settle();
    Booth.call(
        () -> {
          entrance.leave();
          return true;
        });
    line.end();
    desk.shutdown();
    studio.shutdown();
    reports.shutdown();
    sound.shutdown();
  }
}
