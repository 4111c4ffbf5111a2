package lanewarden.kiosk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import lanewarden.kiosk.look.Appearance;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Theme;
import lanewarden.station.RuleDraft;

/**
 * From a key typed into the studio's form to words, cases, curve and numbers drawn anew, against
 * one frame of a display of 60 Hz. Headless: the whole scene is drawn into memory, by software.
 */
public final class StudioBenchmark {
  private static final int WARM_UP = 200;
  private static final int KEYS = 200;
  private static final double FRAME = 1000.0 / 60;

  private StudioBenchmark() {}

  /** Prints the median and its ratio to a frame. */
  public static void main(String[] arguments) throws Exception {
    Booth.startToolkit();
    Path file =
        Files.copy(
            Path.of("demo-data/rule-book.toml"),
            Files.createTempDirectory("studio").resolve("rules.toml"));
    ExecutorService work = Executors.newSingleThreadExecutor();
    Scene scene = Booth.call(() -> opened(RuleDraft.open(file), work));
    double[] took = new double[KEYS];
    for (int i = -WARM_UP; i < KEYS; i++) {
      double millis = oneKey(scene, work, i);
      if (i >= 0) {
        took[i] = millis;
      }
    }
    Arrays.sort(took);
    System.out.printf(
        Locale.ROOT,
        "key to redraw: median %.1f ms, 95 %% within %.1f ms; %.2f frames of 60 Hz%n",
        took[KEYS / 2],
        took[KEYS * 95 / 100],
        took[KEYS / 2] / FRAME);
    work.shutdown();
    Platform.exit();
  }

  private static Scene opened(RuleDraft draft, ExecutorService work) {
    Appearance look = new Appearance(Theme.DAY, Language.ENGLISH);
    Texts texts = Texts.in(Language.ENGLISH);
    Shell shell = new Shell(look, texts);
    shell.show(
        Studio.over(
            shell,
            draft,
            texts,
            ThemeButton.of(look.theme(), texts),
            Optional::empty,
            Optional.empty(),
            () -> {},
            new Studio.Threads(Clock.systemUTC(), work, work, Platform::runLater)));
    Stage stage = new Stage();
    stage.setScene(shell.scene());
    stage.setWidth(1280);
    stage.setHeight(800);
    stage.show();
    return shell.scene();
  }

  /** Types other digits, and waits until the whole scene with the new curve is drawn. */
  private static double oneKey(Scene scene, ExecutorService work, int key) throws Exception {
    long begun = System.nanoTime();
    Booth.call(
        () -> {
          TextField limit = (TextField) scene.lookup("#field-limit").lookup(".text-field");
          limit.setText((key % 2 == 0 ? "30" : "31") + Math.floorMod(key / 2, 10) + " ft/s");
          return true;
        });
    work.submit(() -> {}).get();
    Booth.call(() -> scene.snapshot(null));
    return (System.nanoTime() - begun) / 1e6;
  }
}
