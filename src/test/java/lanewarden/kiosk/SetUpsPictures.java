package lanewarden.kiosk;

import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.input.KeyCode;

/** Draws set-ups that are shot beside each other. */
final class SetUpsPictures {
  private final Sketchbook book;

  SetUpsPictures(Sketchbook book) {
    this.book = book;
  }

  void play(int width, int height) throws Exception {
    Path temp = Files.createTempDirectory("pictures");
    String size = "-" + width + "x" + height;
    try (Booth booth = new Booth(temp, width, height, Booth.REPORTS)) {
      booth.press(KeyCode.INSERT);
      book.take(booth, "setups-ways" + size);
      booth.press(KeyCode.F9);
      book.take(booth, "setups-empty" + size);
      booth.press(KeyCode.F2);
      booth.type("Heron");
      booth.focusField("form-arrow");
      booth.type("short shaft");
      booth.focusField("form-mass");
      booth.type("350 lbf");
      booth.press(KeyCode.ENTER);
      book.take(booth, "setups-state" + size);
      booth.focusField("form-mass");
      booth.type("350");
      booth.press(KeyCode.ENTER);
      booth.press(KeyCode.F4);
      booth.shoot("298.0 ft/s", "390.0 ft/s", "301.0 ft/s", "301.0 ft/s");
      book.take(booth, "setups-shooting" + size);
      booth.press(KeyCode.F5);
      booth.type("2");
      book.take(booth, "setups-mark" + size);
      booth.press(KeyCode.ESCAPE);
      booth.press(KeyCode.F3);
      booth.type(Path.of("demo-data/practice.csv").toAbsolutePath().toString());
      booth.press(KeyCode.ENTER);
      book.take(booth, "setups" + size);
      booth.press(KeyCode.PAGE_DOWN);
      booth.press(KeyCode.PAGE_DOWN);
      book.take(booth, "setups-differences" + size);
      for (int turn = 0; turn < 3; turn++) {
        booth.press(KeyCode.PAGE_DOWN);
      }
      book.take(booth, "setups-margins" + size);
      for (int turn = 0; turn < 6; turn++) {
        booth.press(KeyCode.PAGE_DOWN);
      }
      book.take(booth, "setups-notes" + size);
      booth.press(KeyCode.F8);
      booth.type("1");
      book.take(booth, "setups-write" + size);
      booth.press(KeyCode.ESCAPE);
      booth.press(KeyCode.F9);
      booth.type("Club evening");
      book.take(booth, "setups-keep" + size);
    }
  }
}
