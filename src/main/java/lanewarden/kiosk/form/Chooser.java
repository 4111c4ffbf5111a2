package lanewarden.kiosk.form;

import java.nio.file.Path;
import java.util.Optional;

/** Lets a person choose a file or folder; waits for it, and answers with nothing if none was. */
public interface Chooser {

  /** A folder that is there. */
  Optional<Path> folder(String title);

  /** A file that is there. */
  Optional<Path> file(String title);

  /**
   * A file that need not be there yet.
   *
   * @param name what it may be called
   */
  Optional<Path> newFile(String title, String name);
}
