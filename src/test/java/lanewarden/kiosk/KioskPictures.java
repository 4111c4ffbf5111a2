package lanewarden.kiosk;

import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.input.KeyCode;
import lanewarden.station.EventFolder;

/** Draws the screens of the line, the studio and the instrument, in every theme. */
final class KioskPictures {
  private final Sketchbook book;

  KioskPictures(Sketchbook book) {
    this.book = book;
  }

  /** The charts and the wire: nothing yet, good, drifting, and a wrong profile. */
  void playInstrument(int width, int height) throws Exception {
    Path temp = Files.createTempDirectory("pictures");
    EventFolder event = ProvingScreenTest.verifying(temp.resolve("made"));
    try (Booth booth = Booth.on(event, temp, width, height)) {
      String size = "-" + width + "x" + height;
      take(booth, "instrument-sign-in" + size);
      booth.press(KeyCode.DELETE);
      take(booth, "instrument-wire-quiet" + size);
      booth.emit("268.8\\r\\n");
      booth.emit("271.2\\r\\n");
      booth.emit("270.4\\r\\n");
      take(booth, "instrument-wire-misfit" + size);
      booth.press(KeyCode.F2);
      take(booth, "instrument-chart-none" + size);
      booth.press(KeyCode.ESCAPE);
      booth.signIn();
      take(booth, "instrument-line" + size);
      verify(booth, "296.0 ft/s", "296.9 ft/s");
      take(booth, "instrument-chart-two" + size);
      booth.press(KeyCode.ESCAPE);
      for (int i = 0; i < 4; i++) {
        verify(booth, "296.1 ft/s", "296.6 ft/s");
        booth.press(KeyCode.ESCAPE);
        verify(booth, "296.3 ft/s", "296.5 ft/s");
        booth.press(KeyCode.ESCAPE);
      }
      verify(booth, "297.4 ft/s", "296.5 ft/s");
      booth.press(KeyCode.ESCAPE);
      verify(booth, "297.3 ft/s", "298.4 ft/s");
      take(booth, "instrument-chart-outside" + size);
      booth.emit("$PLWT,00003,0304.1,F,006578,A*00\\r\\n");
      booth.press(KeyCode.F2);
      take(booth, "instrument-wire" + size);
    }
  }

  private static void verify(Booth booth, String... speeds) throws Exception {
    booth.press(KeyCode.END);
    booth.shoot(speeds);
    booth.press(KeyCode.ESCAPE);
    booth.press(KeyCode.DELETE);
  }

  /** What rules show that ask for more than arrow speed. */
  void playClauses(int width, int height) throws Exception {
    try (Booth booth = Booth.ofClauses(Files.createTempDirectory("pictures"), width, height)) {
      String size = "-" + width + "x" + height;
      booth.signIn();
      booth.scan("101");
      booth.type("372");
      booth.press(KeyCode.ENTER);
      take(booth, "set-up" + size);
      booth.press(KeyCode.ESCAPE);
      take(booth, "line-missing" + size);
      booth.station.endCheck("bow too light");
      booth.settle();
      booth.scan("102");
      booth.shoot("305.0 ft/s", "306.1 ft/s", "306.3 ft/s");
      take(booth, "line-unticked" + size);
      booth.press(KeyCode.F6);
      booth.press(KeyCode.ESCAPE);
      take(booth, "line-not-clear-full" + size);
      booth.press(KeyCode.F6);
      booth.press(KeyCode.F11);
      booth.press(KeyCode.F11);
      take(booth, "line-follows" + size);
      advice(booth, size);
      booth.scan("103");
      take(booth, "line-not-admitted" + size);
      booth.press(KeyCode.F10);
      take(booth, "set-up-known" + size);
      booth.press(KeyCode.ESCAPE);
      booth.scan("202");
      take(booth, "line-no-limit" + size);
      booth.scan("401");
      take(booth, "line-grounds" + size);
      booth.press(KeyCode.INSERT);
      take(booth, "grounds" + size);
      booth.press(KeyCode.ESCAPE);
      booth.press(KeyCode.HOME);
      take(booth, "phase" + size);
    }
  }

  /** What would bring a set-up inside: of a speed, of an energy, and where a limit vanishes. */
  private void advice(Booth booth, String size) throws Exception {
    state(booth, "376");
    take(booth, "line-advice" + size);
    booth.scan("301");
    booth.shoot("376.1 ft/s");
    take(booth, "line-advice-weigh" + size);
    state(booth, "401");
    take(booth, "line-advice-energy" + size);
    booth.scan("201");
    booth.shoot("285.2 ft/s");
    state(booth, "290");
    take(booth, "line-advice-free" + size);
  }

  private static void state(Booth booth, String arrow) throws Exception {
    booth.press(KeyCode.F10);
    booth.type(arrow);
    while (booth.shows("set-up-panel")) {
      booth.press(KeyCode.ENTER);
    }
  }

  /** The instrument being verified, the line held, and an archer who is to come again. */
  void playProving(int width, int height) throws Exception {
    Path temp = Files.createTempDirectory("pictures");
    EventFolder event = ProvingScreenTest.verifying(temp.resolve("made"));
    try (Booth booth = Booth.on(event, temp, width, height)) {
      String size = "-" + width + "x" + height;
      booth.signIn();
      take(booth, "line-verify-first" + size);
      booth.press(KeyCode.END);
      booth.shoot("296.0 ft/s");
      take(booth, "verification" + size);
      booth.shoot("296.9 ft/s");
      booth.press(KeyCode.ESCAPE);
      booth.scan("101");
      booth.shoot("299.8 ft/s", "300.1 ft/s", "300.1 ft/s");
      take(booth, "line-verified" + size);
      booth.press(KeyCode.F6);
      take(booth, "line-stopped" + size);
      booth.type("1");
      booth.press(KeyCode.ENTER);
      take(booth, "line-not-clear" + size);
      booth.press(KeyCode.F6);
      take(booth, "line-clear-again" + size);
      booth.press(KeyCode.F11);
      booth.press(KeyCode.PAGE_DOWN);
      take(booth, "hold" + size);
      booth.type("1");
      booth.press(KeyCode.ENTER);
      take(booth, "line-in-question" + size);
      booth.press(KeyCode.END);
      booth.shoot("299.0 ft/s", "299.1 ft/s");
      take(booth, "verification-out" + size);
      booth.press(KeyCode.ESCAPE);
      take(booth, "line-held" + size);
    }
  }

  void play(int width, int height) throws Exception {
    Path temp = Files.createTempDirectory("pictures");
    try (Booth booth = new Booth(temp, width, height, Booth.REPORTS)) {
      String size = "-" + width + "x" + height;
      take(booth, "sign-in" + size);
      booth.type("wrong words");
      booth.press(KeyCode.ENTER);
      take(booth, "sign-in-wrong" + size);
      studio(booth, size);
      booth.signIn();
      take(booth, "line-clear" + size);
      booth.type("il");
      booth.press(KeyCode.DOWN);
      take(booth, "line-search" + size);
      booth.press(KeyCode.ESCAPE);
      booth.scan("102");
      take(booth, "line-called" + size);
      booth.shoot("300.1 ft/s", "301.4 ft/s");
      booth.emit("$PLWT,00003,0304.1,F,006578,A*00\\r\\n");
      take(booth, "line-refused" + size);
      booth.press(KeyCode.F3);
      take(booth, "void" + size);
      booth.type("2");
      booth.press(KeyCode.ENTER);
      take(booth, "line-void" + size);
      booth.press(KeyCode.F2);
      take(booth, "typed" + size);
      booth.type("fast");
      booth.press(KeyCode.ENTER);
      take(booth, "typed-wrong" + size);
      booth.press(KeyCode.ESCAPE);
      booth.press(KeyCode.F4);
      take(booth, "end" + size);
      booth.press(KeyCode.ESCAPE);
      booth.shoot("300.6 ft/s", "299.9 ft/s");
      take(booth, "line-within" + size);
      booth.press(KeyCode.ENTER);
      take(booth, "line-clear-after" + size);
      booth.scan("103");
      booth.shoot("312.4 ft/s", "310.0 ft/s", "311.2 ft/s");
      take(booth, "line-over" + size);
      booth.scan("205");
      booth.shoot("214.8 ft/s");
      booth.instrument.unplug();
      booth.settle();
      booth.scan("999");
      take(booth, "line-lost" + size);
      booth.press(KeyCode.F9);
      take(booth, "sign-out" + size);
      booth.press(KeyCode.ESCAPE);
      Booth.call(
          () -> {
            booth.front.fault(new IllegalStateException("an arrow out of nowhere"));
            return true;
          });
      take(booth, "fault" + size);
    }
  }

  /** All at once under the band that says that nothing counts, and an arrow that nobody weighed. */
  void playCrowded(int width, int height) throws Exception {
    String size = "-" + width + "x" + height;
    Path temp = Files.createTempDirectory("pictures");
    EventFolder event = ProvingScreenTest.verifying(temp.resolve("made"));
    try (Booth booth = Booth.training(Sketchbook.language(), event, temp, width, height)) {
      booth.signIn();
      CrowdedLineTest.crowd(booth);
      take(booth, "line-crowded" + size);
    }
    temp = Files.createTempDirectory("pictures");
    EventFolder unplaced = BoothEvent.unplaced(temp.resolve("made"));
    try (Booth booth = Booth.training(Sketchbook.language(), unplaced, temp, width, height)) {
      booth.signIn();
      CrowdedLineTest.shootUnweighed(booth);
      take(booth, "line-unweighed" + size);
    }
  }

  /** The rule studio: a good rule, a fault, two rules beside each other, a simulated one, lanes. */
  private void studio(Booth booth, String size) throws Exception {
    booth.press(KeyCode.F10);
    take(booth, "studio" + size);
    booth.focusField("field-limit");
    booth.type("305");
    booth.focusField("field-tolerance");
    booth.type("much");
    take(booth, "studio-faulty" + size);
    booth.focusField("field-limit");
    booth.type("305 ft/s");
    booth.focusField("field-tolerance");
    booth.type("1 %");
    booth.press(KeyCode.F9);
    take(booth, "studio-pick" + size);
    booth.touch("pick-1");
    take(booth, "studio-beside" + size);
    Path other = booth.folder.path().resolve("hill.toml");
    String written = Files.readString(booth.folder.ruleBookFile());
    Files.writeString(other, written.replaceFirst("300 ft/s", "290 ft/s"));
    BesideRuleTest.typeAnotherRuleBook(booth, "hill.toml");
    take(booth, "studio-beside-ask" + size);
    booth.press(KeyCode.ENTER);
    take(booth, "studio-beside-book" + size);
    booth.focusField("field-spread");
    booth.type("3 ft/s");
    booth.focusField("field-round-reading");
    booth.type("down to 1 ft/s");
    take(booth, "studio-simulated" + size);
    booth.press(KeyCode.F8);
    take(booth, "studio-lanes" + size);
    booth.press(KeyCode.ESCAPE);
    booth.press(KeyCode.F4);
    take(booth, "studio-remove" + size);
    booth.press(KeyCode.ESCAPE);
    booth.press(KeyCode.F5);
    take(booth, "studio-saved" + size);
    booth.press(KeyCode.F10);
    take(booth, "studio-adopt" + size);
    booth.press(KeyCode.ESCAPE);
    Path stick = booth.folder.path().resolveSibling("stick.key");
    Files.move(booth.folder.organizerKey(), stick);
    booth.press(KeyCode.F10);
    RecordsScreenTest.answer(booth, stick.toString());
    take(booth, "studio-adopt-elsewhere" + size);
    booth.press(KeyCode.ESCAPE);
    Files.move(stick, booth.folder.organizerKey());
    booth.press(KeyCode.F12);
  }

  private void take(Booth booth, String name) throws Exception {
    book.take(booth, name);
  }
}
