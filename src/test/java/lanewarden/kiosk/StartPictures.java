package lanewarden.kiosk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javafx.stage.Window;
import lanewarden.station.DemoEvent;
import lanewarden.station.EventFolder;

/** Draws the start of the program, a new event with and without faults, and practice. */
final class StartPictures {
  private static final String HEADER = "Start number;Club;Who;Bow class;Arrow weight\n";

  private final Sketchbook book;

  StartPictures(Sketchbook book) {
    this.book = book;
  }

  void play(int width, int height) throws Exception {
    Path temp = Files.createTempDirectory("pictures");
    String size = "-" + width + "x" + height;
    try (Doorstep door = new Doorstep(temp, width, height, Optional.empty())) {
      book.take(door, "start-first" + size);
      door.user.lastEvents().add(temp.resolve("spring-meadow"));
      door.user
          .lastEvents()
          .add(BoothEvent.copied(BoothEvent.PLAIN.path(), temp.resolve("hollow-oak")));
      door.chosen.add(temp);
      door.press(KeyCode.F3);
      book.take(door, "start-trouble" + size);
      door.press(KeyCode.F4);
      door.press(KeyCode.ESCAPE);
      book.take(door, "start-list" + size);
      otherwise(door, size);
      without(door, size);
      looked(door, temp, size);
      BoothEvent.onPort(temp.resolve("hollow-oak"), "/dev/ttyUSB0");
      door.press(KeyCode.F8);
      book.take(door, "start-port" + size);
      door.press(KeyCode.ESCAPE);
      door.press(KeyCode.F4);
      door.press(KeyCode.ENTER);
      book.take(door, "make-place-faults" + size);
      door.chosen.add(temp.resolve("my-event"));
      door.press(KeyCode.F4);
      door.focus("field-station");
      door.type("North gate");
      door.press(KeyCode.ENTER);
      door.press(KeyCode.F5);
      roster(door, temp, size);
      door.press(KeyCode.ENTER);
      book.take(door, "make-instrument-faults" + size);
      door.pick("field-kind", "make.kind.typed");
      door.press(KeyCode.ENTER);
      door.person(0, "Orla Finch", "a long oak");
      door.focus("field-person-1-name");
      door.type("Wanda Okafor-Lind");
      door.press(KeyCode.ENTER);
      book.take(door, "make-people-faults" + size);
      door.focus("field-person-1-passphrase");
      door.type("a long elm");
      door.focus("field-person-1-again");
      door.type("a long elm");
      door.press(KeyCode.ENTER);
      book.take(door, "made" + size);
      door.press(KeyCode.ESCAPE);
      practise(door, width, height, size);
    }
    wayOut(temp, width, height, size);
  }

  /** The full screen is to be left, and the organizer's key is kept elsewhere. */
  private void wayOut(Path temp, int width, int height, String size) throws Exception {
    Path event = BoothEvent.copied(BoothEvent.PLAIN.path(), temp.resolve("full"));
    Path stick = temp.resolve("stick.key");
    Files.move(new EventFolder(event).organizerKey(), stick);
    try (Doorstep door = new Doorstep(temp, width, height, Optional.of(event))) {
      sized(door, width, height);
      door.press(KeyCode.INSERT);
      door.press(KeyCode.F11);
      sized(door, width, height);
      door.press(KeyCode.INSERT);
      door.press(KeyCode.F11);
      door.type("4");
      door.press(KeyCode.ENTER);
      door.type(stick.toString());
      door.press(KeyCode.ENTER);
      book.take(door, "way-out" + size);
    }
  }

  private static void sized(Doorstep door, int width, int height) throws Exception {
    Booth.call(
        () -> {
          Window window = door.entrance.windows().orElseThrow().front().official().getWindow();
          window.setWidth(width);
          window.setHeight(height);
          return true;
        });
  }

  /** A port for one opening, and a pace that serves nobody then. */
  private void otherwise(Doorstep door, String size) throws Exception {
    door.press(KeyCode.F11);
    book.take(door, "start-otherwise" + size);
    door.focus("form-pace");
    door.type("0.5");
    door.focus("form-port");
    door.type("/dev/ttyUSB0");
    door.press(KeyCode.ENTER);
    book.take(door, "start-otherwise-refused" + size);
    door.press(KeyCode.ESCAPE);
  }

  /** What is done without an event. */
  private void without(Doorstep door, String size) throws Exception {
    door.press(KeyCode.INSERT);
    book.take(door, "without" + size);
    door.press(KeyCode.F5);
    door.focus("form-rules");
    door.type("demo-data/rules.toml");
    door.press(KeyCode.ENTER);
    book.take(door, "without-rules" + size);
    door.chosen.add(Path.of("demo-data", "rule-book.toml"));
    door.touch("choose-rules");
    door.press(KeyCode.ENTER);
    door.type("350");
    door.focus("prospect-speed");
    door.type("300");
    door.focus("prospect-draw");
    door.type("60");
    door.press(KeyCode.ENTER);
    book.take(door, "without-prospects" + size);
    door.press(KeyCode.INSERT);
    door.press(KeyCode.F9);
    door.focus("form-shots");
    door.type("demo-data/practice.csv");
    book.take(door, "without-practice" + size);
    door.focus("form-rules");
    door.type("demo-data/rule-book.toml");
    door.press(KeyCode.ENTER);
    book.take(door, "without-compared" + size);
    door.press(KeyCode.PAGE_DOWN);
    book.take(door, "without-compared-below" + size);
    door.press(KeyCode.F8);
    book.take(door, "without-write" + size);
    door.press(KeyCode.ESCAPE);
    door.press(KeyCode.INSERT);
    door.press(KeyCode.F8);
    book.take(door, "without-records" + size);
    door.press(KeyCode.F8);
    door.type("1");
    book.take(door, "without-report" + size);
    door.focus("form-ledger");
    door.type(BoothEvent.PLAIN.path().toString());
    door.press(KeyCode.ENTER);
    book.take(door, "without-reported" + size);
    door.press(KeyCode.ESCAPE);
    door.press(KeyCode.INSERT);
    door.press(KeyCode.DELETE);
    book.take(door, "without-port" + size);
    door.press(KeyCode.ESCAPE);
    door.press(KeyCode.INSERT);
    door.press(KeyCode.F6);
    door.focus("form-capture");
    door.type("demo-data/gate-timer.capture");
    door.focus("form-profile");
    book.take(door, "without-capture" + size);
    door.type("1");
    door.press(KeyCode.ENTER);
    while (door.text("listen-turn").isEmpty()) {
      Thread.sleep(20);
      door.settle();
    }
    Thread.sleep(500);
    book.take(door, "without-wire" + size);
    door.press(KeyCode.ESCAPE);
    door.press(KeyCode.ESCAPE);
    checkUp(door, size);
  }

  /** Of the event that is picked, which does not open. */
  private void checkUp(Doorstep door, String size) throws Exception {
    Path settings = door.user.lastEvents().read().events().get(0).folder().resolve("station.toml");
    String before = Files.readString(settings);
    Files.writeString(settings, before + "[instrument\n");
    door.press(KeyCode.INSERT);
    door.press(KeyCode.END);
    book.take(door, "without-checked" + size);
    door.press(KeyCode.ENTER);
    book.take(door, "without-checkup" + size);
    door.press(KeyCode.F8);
    book.take(door, "without-bundle" + size);
    door.press(KeyCode.ESCAPE);
    door.press(KeyCode.ESCAPE);
    Files.writeString(settings, before);
  }

  private static Path list(Path temp) throws IOException {
    return Files.writeString(
        temp.resolve("list.csv"),
        HEADER
            + "11;Elm Meadow;Ines Wetherholt;OC;352 gr\n"
            + "12;Elm Meadow;Goran Pellinor;OX;352\n12;Old Mill;Mbali Thornquist;TR;\n");
  }

  /** A list of competitors that is only looked at. */
  private void looked(Doorstep door, Path temp, String size) throws Exception {
    door.press(KeyCode.INSERT);
    door.press(KeyCode.F4);
    book.take(door, "without-list" + size);
    door.chosen.add(list(temp));
    door.press(KeyCode.F4);
    door.focus("field-column-name");
    door.press(KeyCode.RIGHT, 3);
    door.chosen.add(Path.of("config", "rule-book.toml").toAbsolutePath());
    door.press(KeyCode.F6);
    door.press(KeyCode.ENTER);
    book.take(door, "without-list-faults" + size);
    door.press(KeyCode.ESCAPE);
  }

  private void roster(Doorstep door, Path temp, String size) throws Exception {
    Path list = list(temp);
    door.chosen.add(list);
    door.press(KeyCode.F4);
    door.press(KeyCode.ENTER);
    book.take(door, "make-roster-column" + size);
    door.focus("field-column-name");
    door.press(KeyCode.RIGHT, 3);
    book.take(door, "make-roster-faults" + size);
    Files.writeString(
        list,
        HEADER
            + "11;Elm Meadow;Ines Wetherholt;OC;352 gr\n"
            + "12;Elm Meadow;Goran Pellinor;OC;352 gr\n13;Old Mill;Mbali Thornquist;TR;\n");
    door.press(KeyCode.F5);
    door.press(KeyCode.ENTER);
  }

  private void practise(Doorstep door, int width, int height, String size) throws Exception {
    door.press(KeyCode.F2);
    Booth.call(
        () -> {
          Stage stage =
              (Stage) door.entrance.windows().orElseThrow().front().official().getWindow();
          stage.setWidth(width);
          stage.setHeight(height);
          Stage board = new Stage();
          board.setScene(door.entrance.windows().orElseThrow().front().board());
          board.setWidth(width);
          board.setHeight(height);
          board.show();
          return true;
        });
    book.take(door, "practice-sign-in" + size);
    door.press(KeyCode.DOWN);
    door.type(DemoEvent.PASSPHRASE);
    door.press(KeyCode.ENTER);
    door.type("106");
    door.press(KeyCode.ENTER);
    for (int i = 0;
        i < 100
            && door.line.station().orElseThrow().view().check().orElseThrow().outcome().isEmpty();
        i++) {
      Thread.sleep(200);
    }
    door.settle();
    book.take(door, "practice-line" + size);
    book.takeBoard(door, "practice-board" + size);
    Booth.call(
        () -> {
          door.entrance.windows().orElseThrow().front().board().getWindow().hide();
          return true;
        });
    door.line.station().orElseThrow().signOut();
    door.settle();
  }
}
