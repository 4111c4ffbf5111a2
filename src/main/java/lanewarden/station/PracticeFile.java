package lanewarden.station;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import lanewarden.bench.Practice;

/**
 * The file of a practice day in the event's folder, whole after every shot. What lay there before
 * has another name, and is never touched.
 */
record PracticeFile(Path path) {
  private static final String NAME = "practice-";
  private static final String ENDING = ".csv";

  /** One with a name that is free. */
  static PracticeFile fresh(Path folder) {
    int number = 1;
    while (Files.exists(folder.resolve(NAME + number + ENDING))) {
      number++;
    }
    return new PracticeFile(folder.resolve(NAME + number + ENDING));
  }

  /** Puts the day into it, whole or not at all. */
  void write(Practice practice) throws IOException {
    Path draft = path.resolveSibling(path.getFileName() + ".writing");
    try {
      Files.deleteIfExists(draft);
      RuleFile.put(draft, practice.utf8());
      Files.move(draft, path, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(draft);
    }
  }

  /** Puts the day into a file that is not there yet. */
  static void copy(Practice practice, Path to) throws StationException {
    try {
      if (Files.exists(to)) {
        throw new FileAlreadyExistsException(to.toString());
      }
      new PracticeFile(to.toAbsolutePath()).write(practice);
    } catch (IOException e) {
      throw StationException.of(e);
    }
  }
}
