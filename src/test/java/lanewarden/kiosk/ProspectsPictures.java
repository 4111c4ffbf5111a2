package lanewarden.kiosk;

import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.input.KeyCode;

/** Draws what awaits a set-up. */
final class ProspectsPictures {
  private final Sketchbook book;

  ProspectsPictures(Sketchbook book) {
    this.book = book;
  }

  void play(int width, int height) throws Exception {
    Path temp = Files.createTempDirectory("pictures");
    try (Booth booth = Booth.ofClauses(temp, width, height)) {
      String size = "-" + width + "x" + height;
      booth.press(KeyCode.INSERT);
      booth.press(KeyCode.F5);
      book.take(booth, "prospects-empty" + size);
      booth.type("350");
      booth.focusField("prospect-speed");
      booth.type("300");
      booth.press(KeyCode.ENTER);
      book.take(booth, "prospects-lacking" + size);
      booth.focusField("prospect-draw");
      booth.type("60");
      booth.focusField("prospect-certified");
      booth.type("60");
      booth.press(KeyCode.ENTER);
      book.take(booth, "prospects" + size);
      booth.focusField("prospect-draw");
      booth.type("60 gr");
      booth.press(KeyCode.ENTER);
      book.take(booth, "prospects-trouble" + size);
      booth.press(KeyCode.F2);
      booth.type("350");
      booth.focusField("prospect-shots");
      booth.type("350 gr: 284 284 284");
      booth.focusField("prospect-other-shots");
      booth.type("377.5 gr: 272 272 272");
      booth.focusField("prospect-curve");
      booth.type("7 0, 9 22, 11 60, 24 60, 28 15");
      booth.press(KeyCode.ENTER);
      book.take(booth, "prospects-measured" + size);
    }
  }
}
