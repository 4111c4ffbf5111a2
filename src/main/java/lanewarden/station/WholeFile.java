package lanewarden.station;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * Puts a file in its place whole or not at all: the bytes are on the disk under another name first,
 * so that whatever fails, one whole file has the name.
 */
final class WholeFile {

  private WholeFile() {}

  /**
   * Puts bytes in place of what the file held, if it was there; its folder must be.
   *
   * @throws IOException if the disk refuses; then the file is as it was
   */
  static void put(Path file, byte[] bytes) throws IOException {
    Path place = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
    Path draft = free(place);
    try {
      RuleFile.put(draft, bytes);
      Files.move(draft, place, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(draft);
    }
    RuleFile.forceFolderOf(place);
  }

  private static Path free(Path place) {
    Path free = place.resolveSibling(place.getFileName() + ".new");
    for (int i = 2; Files.exists(free); i++) {
      free = place.resolveSibling(place.getFileName() + ".new-" + i);
    }
    return free;
  }
}
