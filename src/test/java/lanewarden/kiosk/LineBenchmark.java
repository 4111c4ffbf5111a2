package lanewarden.kiosk;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Pane;
import lanewarden.chronograph.PseudoTerminal;
import lanewarden.station.CheckInLine;
import lanewarden.station.EventFolder;
import lanewarden.station.Surroundings;

/**
 * At the end of a full day, with 2,000 competitors on the roster: from the last byte of a sentence
 * on a real (pseudo-terminal) wire to the frame that draws the reading, signed and on the disk; and
 * from a key of a search to the frame that draws its matches. In frames of a display of 60 Hz.
 *
 * <p>Argument: how many entries the ledger has; 10,000 if none.
 */
public final class LineBenchmark {
  private static final double FRAME = 1000.0 / 60;
  private static final int CHECKS = 100;
  private static final int WARM_UP = 20;
  private static final int SHOTS = 3;
  private static final Duration PATIENCE = Duration.ofSeconds(20);

  private final CheckInLine line;
  private final Scene scene;
  private final PseudoTerminal wire;
  private int number;

  private LineBenchmark(CheckInLine line, Scene scene, PseudoTerminal wire) {
    this.line = line;
    this.scene = scene;
    this.wire = wire;
  }

  /** Prints medians and 99th percentiles. */
  public static void main(String[] arguments) throws Exception {
    int entries = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 10_000;
    Booth.startToolkit();
    ExecutorService work = Executors.newCachedThreadPool();
    EventFolder event = FullDay.morning();
    try (PseudoTerminal wire = PseudoTerminal.open()) {
      FullDay.shoot(event, entries);
      Surroundings here = FullDay.here();
      long begun = System.nanoTime();
      try (CheckInLine line =
          CheckInLine.open(event, Optional.of(wire.path().toString()), 0, here)) {
        System.out.printf(
            Locale.ROOT,
            "ledger of %d entries opened in %.0f ms%n",
            line.station().view().head().sequence(),
            (System.nanoTime() - begun) / 1e6);
        ExecutorService desk = Executors.newSingleThreadExecutor();
        Scene scene =
            Booth.call(
                () ->
                    FullDay.shown(
                            line,
                            event,
                            new Front.Threads(desk, work, work, work, Platform::runLater, here))
                        .official());
        line.station().signIn(Booth.OFFICIAL, Booth.PASSPHRASE.toCharArray());
        new LineBenchmark(line, scene, wire).run();
        desk.shutdown();
      }
    } finally {
      FullDay.delete(event);
    }
    work.shutdown();
    Platform.exit();
  }

  private void run() throws Exception {
    TimeUnit.SECONDS.sleep(2); // Until the wire was seen silent, and the screens stand
    say("key of a search to its matches on the screen", searches());
    say("last byte on the wire to the reading on the screen", readings());
  }

  private double[] searches() throws Exception {
    String[] typed = {"fen", "12", "quill", "1999", "mar", "vane-1", "heddle", "zzz"};
    double[] took = new double[200];
    for (int i = -WARM_UP; i < took.length; i++) {
      String text = typed[Math.floorMod(i, typed.length)];
      set("");
      untilDrawn(() -> matches().getChildren().isEmpty());
      long begun = System.nanoTime();
      set(text);
      boolean none = text.equals("zzz");
      double millis = untilDrawn(() -> none || !matches().getChildren().isEmpty(), begun);
      if (i >= 0) {
        took[i] = millis;
      }
    }
    set("");
    return took;
  }

  private double[] readings() throws Exception {
    double[] took = new double[CHECKS * SHOTS];
    int at = -WARM_UP * SHOTS;
    for (int bib = 2_999; at < took.length; bib--) {
      line.station().call("" + bib);
      for (int shot = 0; shot < SHOTS; shot++) {
        // Like archers: far enough apart that no reading passes for an echo of the one before
        TimeUnit.MILLISECONDS.sleep(700);
        String tenths = String.format(Locale.ROOT, "%04d.%d", 280 + number % 15, number % 10);
        String sentence = sentence(tenths);
        long begun = System.nanoTime();
        wire.write(sentence);
        double millis = untilDrawn(() -> reading().startsWith(tenths.substring(1)), begun);
        if (at >= 0) {
          took[at] = millis;
        }
        at++;
      }
      line.station().next();
    }
    return took;
  }

  /** A sentence of the gate timer, whose gates are 609.6 mm apart. */
  private String sentence(String speed) {
    number++;
    long micros = Math.round(609.6e3 / 304.8 / Double.parseDouble(speed) * 1e3);
    String covered = String.format(Locale.ROOT, "PLWT,%05d,%s,F,%06d,A", number, speed, micros);
    int checksum = 0;
    for (byte b : covered.getBytes(StandardCharsets.US_ASCII)) {
      checksum ^= b;
    }
    return String.format(Locale.ROOT, "$%s*%02X\r\n", covered, checksum);
  }

  private TextField field() {
    return (TextField) scene.lookup("#call-field");
  }

  private Pane matches() {
    return (Pane) scene.lookup("#matches");
  }

  private String reading() {
    return scene.lookup("#reading") instanceof Labeled label ? label.getText() : "";
  }

  private void set(String text) throws Exception {
    Booth.call(
        () -> {
          field().setText(text);
          Event.fireEvent(
              field(),
              new KeyEvent(
                  KeyEvent.KEY_RELEASED, "", "", KeyCode.UNDEFINED, false, false, false, false));
          return true;
        });
  }

  private void untilDrawn(BooleanSupplier there) throws Exception {
    untilDrawn(there, System.nanoTime());
  }

  /** Milliseconds until the end of the first frame in which it is there. */
  private double untilDrawn(BooleanSupplier there, long begun) throws Exception {
    CountDownLatch drawn = new CountDownLatch(1);
    long[] end = new long[1];
    Runnable afterFrame =
        () -> {
          if (end[0] == 0 && there.getAsBoolean()) {
            end[0] = System.nanoTime();
            drawn.countDown();
          }
        };
    // Pulses come only while something asks for them
    AnimationTimer ticks =
        new AnimationTimer() {
          @Override
          public void handle(long now) {
            Platform.requestNextPulse();
          }
        };
    Booth.call(
        () -> {
          scene.addPostLayoutPulseListener(afterFrame);
          ticks.start();
          return true;
        });
    boolean seen = drawn.await(PATIENCE.toMillis(), TimeUnit.MILLISECONDS);
    Booth.call(
        () -> {
          scene.removePostLayoutPulseListener(afterFrame);
          ticks.stop();
          return true;
        });
    if (!seen) {
      throw new IllegalStateException(
          "nothing was drawn within " + PATIENCE + ": " + line.station().view());
    }
    return (end[0] - begun) / 1e6;
  }

  private static void say(String what, double[] took) {
    Arrays.sort(took);
    double median = took[took.length / 2];
    double most = took[took.length * 99 / 100];
    System.out.printf(
        Locale.ROOT,
        "%s: median %.1f ms (%.2f frames), 99 %% within %.1f ms (%.2f frames), of %d%n",
        what,
        median,
        median / FRAME,
        most,
        most / FRAME,
        took.length);
  }
}
