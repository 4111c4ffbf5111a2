package lanewarden.kiosk;

import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.input.KeyCode;
import lanewarden.station.EventFolder;

/** Draws the officials, the ways between the screens, and what is told of waits. */
final class PeoplePictures {
  private final Sketchbook book;

  PeoplePictures(Sketchbook book) {
    this.book = book;
  }

  void play(int width, int height) throws Exception {
    Path temp = Files.createTempDirectory("pictures");
    EventFolder event = BoothEvent.event(temp.resolve("made"));
    Path settings = event.path().resolve("station.toml");
    Files.writeString(
        settings,
        Files.readString(settings).replace("[place]", "sign_out_after = \"1 min\"\n[place]"));
    try (Booth booth = Booth.on(event, temp, width, height)) {
      String size = "-" + width + "x" + height;
      for (int i = 0; i < 5; i++) {
        booth.type("four grey geese");
        booth.press(KeyCode.ENTER);
      }
      book.take(booth, "wait" + size);
      booth.press(KeyCode.INSERT);
      book.take(booth, "ways" + size);
      booth.press(KeyCode.F3);
      book.take(booth, "people" + size);
      booth.press(KeyCode.F2);
      book.take(booth, "people-enrol" + size);
      booth.press(KeyCode.ESCAPE);
      booth.press(KeyCode.F8);
      book.take(booth, "people-change" + size);
      booth.press(KeyCode.ESCAPE);
      elsewhere(booth, temp.resolve("stick.key"), size);
      booth.press(KeyCode.F3);
      booth.type("1");
      booth.press(KeyCode.ENTER);
      booth.type(BoothEvent.ORGANIZER_PASSPHRASE);
      booth.press(KeyCode.ENTER);
      book.take(booth, "people-suspended" + size);
      booth.press(KeyCode.ESCAPE);
      booth.press(KeyCode.DOWN);
      booth.type(Booth.PASSPHRASE);
      booth.press(KeyCode.ENTER);
      booth.scan("103");
      book.take(booth, "line-idle" + size);
      booth.press(KeyCode.INSERT);
      book.take(booth, "ways-line" + size);
    }
  }

  /** The organizer's key is kept elsewhere: where is asked, and what is no key is refused. */
  private void elsewhere(Booth booth, Path stick, String size) throws Exception {
    Files.move(booth.folder.organizerKey(), stick);
    booth.press(KeyCode.F8);
    book.take(booth, "people-change-elsewhere" + size);
    booth.press(KeyCode.ESCAPE);
    booth.press(KeyCode.F2);
    String letter = Files.writeString(stick.resolveSibling("letter.txt"), "Dear all").toString();
    RecordsScreenTest.answer(
        booth, letter, "Zora Quist", "2", "seven slow herons", "seven slow herons", "a long oak");
    book.take(booth, "people-enrol-elsewhere" + size);
    booth.press(KeyCode.ESCAPE);
    Files.move(stick, booth.folder.organizerKey());
  }
}
