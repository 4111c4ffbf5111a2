package lanewarden.kiosk;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Stage;
import lanewarden.kiosk.form.Chooser;

/**
 * The windows that the system has to choose files and folders.
 *
 * @param over the window that they stand over
 */
record SystemChooser(Supplier<Stage> over) implements Chooser {

  @Override
  public Optional<Path> folder(String title) {
    DirectoryChooser dialog = new DirectoryChooser();
    dialog.setTitle(title);
    return Optional.ofNullable(dialog.showDialog(over.get())).map(File::toPath);
  }

  @Override
  public Optional<Path> file(String title) {
    return Optional.ofNullable(dialog(title).showOpenDialog(over.get())).map(File::toPath);
  }

  @Override
  public Optional<Path> newFile(String title, String name) {
    FileChooser dialog = dialog(title);
    dialog.setInitialFileName(name);
    return Optional.ofNullable(dialog.showSaveDialog(over.get())).map(File::toPath);
  }

  private static FileChooser dialog(String title) {
    FileChooser dialog = new FileChooser();
    dialog.setTitle(title);
    return dialog;
  }
}
