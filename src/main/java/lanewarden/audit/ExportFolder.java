package lanewarden.audit;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.stream.Stream;

/**
 * A new folder that appears with all its files or not at all. Until then they lie in a folder of
 * their own beside its place.
 */
final class ExportFolder implements AutoCloseable {
  private final Path folder;
  private final Path workshop;
  private final Path draft;

  private ExportFolder(Path folder, Path workshop) throws IOException {
    this.folder = folder;
    this.workshop = workshop;
    // Inside the workshop, whose narrow permissions would stay with it after the move
    this.draft = Files.createDirectory(workshop.resolve("draft"));
  }

  /**
   * A place for a new folder.
   *
   * @throws IOException of the kind that says what is wrong with the place
   */
  static ExportFolder at(Path place) throws IOException {
    Path folder = place.toAbsolutePath().normalize();
    Path around = folder.getParent();
    if (around == null || !Files.isDirectory(around)) {
      throw new NoSuchFileException(String.valueOf(around), null, "This folder does not exist.");
    }
    if (Files.exists(folder) && !isEmptyFolder(folder)) {
      throw new FileAlreadyExistsException(
          place.toString(), null, "It is there already and is no empty folder.");
    }
    if (!Files.isWritable(around)) {
      throw new AccessDeniedException(around.toString());
    }
    return new ExportFolder(folder, Files.createTempDirectory(around, ".export-"));
  }

  private static boolean isEmptyFolder(Path path) throws IOException {
    if (!Files.isDirectory(path)) {
      return false;
    }
    try (Stream<Path> inside = Files.list(path)) {
      return inside.findAny().isEmpty();
    }
  }

  /** A new file in it. */
  OutputStream file(String name) throws IOException {
    return new BufferedOutputStream(
        Files.newOutputStream(draft.resolve(name), StandardOpenOption.CREATE_NEW));
  }

  /** Puts the folder in its place. */
  void deliver() throws IOException {
    Files.deleteIfExists(folder);
    Files.move(draft, folder);
  }

  @Override
  public void close() throws IOException {
    if (Files.exists(draft)) {
      try (Stream<Path> left = Files.list(draft)) {
        for (Path each : left.toList()) {
          Files.delete(each);
        }
      }
      Files.delete(draft);
    }
    Files.delete(workshop);
  }
}
