package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javafx.stage.Window;
import lanewarden.journal.ProtestFact;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.CurrentLine;
import lanewarden.station.EventFolder;
import lanewarden.station.LineOpening;
import lanewarden.station.StationException;
import lanewarden.station.Surroundings;
import lanewarden.station.UserFolder;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The front door: it blocks while the window is open, and says plainly where none can be. */
class KioskTest {
  private static final String TITLE = "TRAINING: Lanewarden: check-in line";

  private static final List<KeyCode> KEYS_THAT_LEAD_ELSEWHERE =
      List.of(
          KeyCode.F1,
          KeyCode.F2,
          KeyCode.F3,
          KeyCode.F4,
          KeyCode.F5,
          KeyCode.F6,
          KeyCode.F7,
          KeyCode.F8,
          KeyCode.F9,
          KeyCode.F10,
          KeyCode.F11,
          KeyCode.INSERT);

  @TempDir Path temp;

  private final Surroundings here =
      new Surroundings(Clock.systemUTC(), System::nanoTime, new SecureRandom(), "Lanewarden test");
  private final CurrentLine line = new CurrentLine(here);

  @AfterEach
  void end() throws Exception {
    line.end();
  }

  private CompletableFuture<Void> shown(EventFolder folder) {
    LineOpening opening = new LineOpening(line, folder, Optional.empty(), 0);
    UserFolder user = new UserFolder(temp.resolve("user"));
    return CompletableFuture.runAsync(
        () -> {
          try {
            new Kiosk(BoothEvent.MAKERS, here, user, new EarlyStart())
                .show(opening, Optional.empty(), false);
          } catch (NoDisplayException | StationException e) {
            throw new CompletionException(e);
          }
        });
  }

  private static void hide(Stage window) throws Exception {
    Booth.call(
        () -> {
          window.hide();
          return true;
        });
  }

  @Test
  void returnsWhenTheOfficialsWindowIsClosedAndLeavesTheStationOpen() throws Exception {
    Booth.startToolkit();
    CompletableFuture<Void> shown = shown(BoothEvent.event(temp.resolve("event")));
    Stage window = await(TITLE);
    await(() -> line.station().isPresent());
    assertFalse(shown.isDone());
    hide(window);

    shown.get(20, TimeUnit.SECONDS);
    assertEquals("Hollow Oak Open", line.station().orElseThrow().view().event());
  }

  @Test
  void somebodySignsInWhileTheLedgerIsStillVerified() throws Exception {
    Booth.startToolkit();
    EventFolder folder = BoothEvent.event(temp.resolve("event"));
    CompletableFuture<Void> shown;
    Stage window;
    synchronized (line) { // It cannot open as long as this is held
      shown = shown(folder);
      window = await(TITLE);
      Scene scene = window.getScene();
      assertTrue(text(scene, "place").startsWith("The ledger is being verified"));
      for (KeyCode key : KEYS_THAT_LEAD_ELSEWHERE) {
        Keyboard.press(scene, key);
        Keyboard.press(scene, KeyCode.ESCAPE);
        assertEquals("", text(scene, "fault-code"), "after " + key);
      }
      while (Booth.call(() -> scene.lookup("#sign-in-screen")) == null) {
        Keyboard.press(scene, KeyCode.ESCAPE);
      }
      Keyboard.press(scene, KeyCode.DOWN);
      Keyboard.type(scene, Booth.PASSPHRASE);
      Keyboard.press(scene, KeyCode.ENTER);
      assertEquals(Optional.empty(), line.station());
    }
    await(() -> line.station().flatMap(station -> station.view().official()).isPresent());
    assertEquals(
        Optional.of(Booth.OFFICIAL), line.station().flatMap(station -> station.view().official()));
    hide(window);
    shown.get(20, TimeUnit.SECONDS);
  }

  /** An event in whose ledger a protest waits. */
  private EventFolder disputed() throws Exception {
    try (Booth booth = new Booth(temp)) {
      booth.signIn();
      booth.scan("103");
      booth.shoot("312.4 ft/s", "310.0 ft/s", "311.2 ft/s");
      booth.press(KeyCode.ENTER);
      long check = booth.station.records().search("103", 1).get(0).check().number();
      booth.station.protests().file(check, ProtestFact.Cause.PROTEST, "captain", "it glared");
      return booth.folder;
    }
  }

  @Test
  void whileTheLedgerIsVerifiedNoScreenSaysThatNothingIsInItAndThenTheDocketComesByItself()
      throws Exception {
    EventFolder folder = disputed();
    String verifying = Texts.in(Language.ENGLISH).of("ledger.verifying");
    CompletableFuture<Void> shown;
    Stage window;
    Scene scene;
    synchronized (line) { // It cannot open as long as this is held
      shown = shown(folder);
      window = await(TITLE);
      scene = window.getScene();
      Keyboard.press(scene, KeyCode.F3);
      assertEquals(verifying, text(scene, "people-none"));
      Keyboard.press(scene, KeyCode.ESCAPE);
      Keyboard.press(scene, KeyCode.DELETE);
      assertEquals("Not listening yet", text(scene, "wire-title"));
      assertTrue(text(scene, "wire-nothing").contains("wait before you shoot"));
      Keyboard.press(scene, KeyCode.ESCAPE);
      Keyboard.press(scene, KeyCode.F1);
      assertEquals(verifying, text(scene, "protest-none"));
      assertFalse(Booth.call(() -> scene.lookup("#protest-heading").isVisible()));
    }
    await(() -> text(scene, "protest-heading").equals("Docket: 1 waiting, 0 done"));
    assertEquals("Docket: 1 waiting, 0 done", text(scene, "protest-heading"));
    assertTrue(Booth.call(() -> scene.lookup("#protest-heading").isVisible()));
    assertEquals(1, Booth.call(() -> ((ListView<?>) scene.lookup("#docket")).getItems().size()));
    hide(window);
    shown.get(20, TimeUnit.SECONDS);
  }

  @Test
  void whatIsWrongWithTheLedgerIsThrownAndNoWindowStays() throws Exception {
    Booth.startToolkit();
    EventFolder folder = BoothEvent.event(temp.resolve("event"));
    Files.writeString(folder.ledger(), "no ledger");
    CompletableFuture<Void> shown = shown(folder);
    ExecutionException thrown =
        assertThrows(ExecutionException.class, () -> shown.get(20, TimeUnit.SECONDS));
    StationException refused = assertInstanceOf(StationException.class, thrown.getCause());
    assertEquals("LEDGER-FOREIGN", refused.trouble().code());
    assertEquals(Optional.empty(), Booth.call(() -> stage(TITLE)));
    assertEquals(Optional.empty(), line.station());
  }

  private static String text(Scene scene, String id) throws Exception {
    return Booth.call(() -> scene.lookup("#" + id) instanceof Labeled label ? label.getText() : "");
  }

  private static Optional<Stage> stage(String title) {
    return Window.getWindows().stream()
        .filter(w -> w instanceof Stage s && title.equals(s.getTitle()))
        .map(w -> (Stage) w)
        .findFirst();
  }

  private static void await(Callable<Boolean> met) throws Exception {
    for (int i = 0; i < 1_000 && !met.call(); i++) {
      Thread.sleep(20);
    }
  }

  private static Stage await(String title) throws Exception {
    while (true) {
      Optional<Stage> found = Booth.call(() -> stage(title));
      if (found.isPresent()) {
        return found.get();
      }
      Thread.sleep(20);
    }
  }

  /** Runs in a process of its own, because a toolkit starts once a process. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void withoutADisplayOneExceptionSaysSoAndNothingElseIsPrinted() throws Exception {
    Path out = temp.resolve("out");
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    if (Runtime.version().feature() >= 22) {
      command.add("--enable-native-access=ALL-UNNAMED");
    }
    command.addAll(
        List.of(
            "-Djava.awt.headless=true",
            "-cp",
            System.getProperty("java.class.path"),
            NoDisplayProbe.class.getName()));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().keySet().removeAll(List.of("DISPLAY", "WAYLAND_DISPLAY"));
    Process process =
        builder
            .redirectErrorStream(true)
            .redirectOutput(new File(out.toString()))
            .directory(temp.toFile())
            .start();
    assertTrue(process.waitFor(60, TimeUnit.SECONDS), "a thread kept the process up");

    List<String> lines = Files.readAllLines(out);
    assertEquals(1, lines.size(), String.join("\n", lines));
    assertTrue(lines.get(0).startsWith("no display: "), lines.get(0));
  }
}
