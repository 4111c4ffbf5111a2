package lanewarden.kiosk;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Queue;
import lanewarden.kiosk.form.Chooser;

/**
 * Answers with what a test chose beforehand, one after the other; with nothing after the last.
 *
 * @param chosen what the test chose
 */
record ChosenBefore(Queue<Path> chosen) implements Chooser {
  @Override
  public Optional<Path> folder(String title) {
    return Optional.ofNullable(chosen.poll());
  }

  @Override
  public Optional<Path> file(String title) {
    return Optional.ofNullable(chosen.poll());
  }

  @Override
  public Optional<Path> newFile(String title, String name) {
    return Optional.ofNullable(chosen.poll());
  }
}
