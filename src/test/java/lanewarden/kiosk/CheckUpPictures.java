package lanewarden.kiosk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import javafx.scene.input.KeyCode;

/** Draws the check-up of a station: nothing wrong, something wrong, and the bundle. */
final class CheckUpPictures {
  private final Sketchbook book;

  CheckUpPictures(Sketchbook book) {
    this.book = book;
  }

  void play(int width, int height) throws Exception {
    Path temp = Files.createTempDirectory("pictures");
    String size = "-" + width + "x" + height;
    try (Booth booth = new Booth(temp, width, height, Booth.REPORTS)) {
      booth.press(KeyCode.INSERT);
      book.take(booth, "ways" + size);
      booth.press(KeyCode.END);
      book.take(booth, "checkup" + size);
      booth.press(KeyCode.ESCAPE);
      booth.signIn();
      booth.scan("102");
      Files.writeString(
          booth.folder.path().resolve("roster.csv"),
          "999,Eve Quiver,NONE\n",
          StandardOpenOption.APPEND);
      CheckUpScreenTest.open(booth);
      book.take(booth, "checkup-wrong" + size);
      booth.press(KeyCode.F8);
      book.take(booth, "checkup-bundle" + size);
    }
  }
}
