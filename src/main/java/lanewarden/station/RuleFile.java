package lanewarden.station;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * A file that is written whole or not at all, with what stood there before kept beside it under a
 * name with the time.
 *
 * <p>The new bytes are on the disk under another name before the file is touched, and take its
 * place in one step; so whatever fails, one whole file has the name.
 */
final class RuleFile {
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

  /** Puts bytes into a new file and onto the disk. */
  @FunctionalInterface
  interface Disk {
    void put(Path newFile, byte[] bytes) throws IOException;
  }

  private final Path path;
  private final Optional<byte[]> seen;
  private final Disk disk;

  private RuleFile(Path path, Optional<byte[]> seen, Disk disk) {
    this.path = path;
    this.seen = seen;
    this.disk = disk;
  }

  /** The file as it is now, whether it is there or not. */
  static RuleFile at(Path file, Disk disk) throws IOException {
    Path path = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath().normalize();
    return new RuleFile(path, bytesAt(path), disk);
  }

  private static Optional<byte[]> bytesAt(Path path) throws IOException {
    return Files.exists(path) ? Optional.of(Files.readAllBytes(path)) : Optional.empty();
  }

  Path path() {
    return path;
  }

  /** What stood in it when it was last read or written here; empty if it was not there. */
  Optional<byte[]> seen() {
    return seen.map(byte[]::clone);
  }

  /**
   * Puts bytes in place of what was seen.
   *
   * @throws StationException if something else stands there by now, or the disk refuses; then the
   *     file is as it was
   */
  RuleFile replace(byte[] bytes, Clock clock) throws StationException {
    try {
      requireFolder();
      Optional<byte[]> now = bytesAt(path);
      if (now.isEmpty() && seen.isPresent()) {
        throw trouble(
            "RULES-GONE",
            "It was moved or deleted since it was opened here.",
            "Put it back, or save under another name.",
            Trouble.Kind.USAGE);
      }
      if (now.isPresent() && !Arrays.equals(now.get(), seen.orElse(null))) {
        throw trouble(
            "RULES-CHANGED",
            "Somebody else changed the file since it was opened here.",
            "Save under another name, then compare the two; nothing typed here is lost.",
            Trouble.Kind.USAGE);
      }
      if (now.isPresent() && Arrays.equals(now.get(), bytes)) {
        return this;
      }
      String stamp = STAMP.format(clock.instant());
      Path draft = free("saving-" + stamp);
      try {
        disk.put(draft, bytes);
        if (now.isPresent()) {
          disk.put(free(stamp), now.get());
        }
        Files.move(draft, path, StandardCopyOption.ATOMIC_MOVE);
      } finally {
        Files.deleteIfExists(draft);
      }
      forceFolderOf(path);
    } catch (IOException e) {
      throw refused(e, bytes.length);
    }
    return new RuleFile(path, Optional.of(bytes.clone()), disk);
  }

  /** Gives the file, if it is there, a name with the time, so that its own name is free again. */
  RuleFile retire(Clock clock) throws IOException {
    if (Files.exists(path)) {
      Files.move(path, free(STAMP.format(clock.instant())), StandardCopyOption.ATOMIC_MOVE);
    }
    return new RuleFile(path, Optional.empty(), disk);
  }

  private void requireFolder() throws StationException {
    Path folder = path.getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw trouble(
          "RULES-FOLDER",
          "Its folder is not there any more.",
          "Plug its disk in again or make the folder, or save under another name.",
          Trouble.Kind.ENVIRONMENT);
    }
  }

  /** A name beside the file that nothing has yet. */
  private Path free(String mark) {
    String name = String.valueOf(path.getFileName());
    String plain = name.endsWith(".toml") ? name.substring(0, name.length() - 5) : name;
    Path free = path.resolveSibling(plain + "." + mark + ".toml");
    for (int i = 2; Files.exists(free); i++) {
      free = path.resolveSibling(plain + "." + mark + "-" + i + ".toml");
    }
    return free;
  }

  private StationException refused(IOException e, long bytes) {
    if (e instanceof AccessDeniedException) {
      return trouble(
          "RULES-DENIED",
          "This user may not write in its folder.",
          "Allow it, or save under another name in another folder.",
          Trouble.Kind.ENVIRONMENT);
    }
    if (Trouble.isFull(e) || isFull(bytes)) {
      return trouble(
          "RULES-DISK-FULL",
          "The disk is full.",
          "Make room on it and save again, or save under another name on another disk.",
          Trouble.Kind.ENVIRONMENT);
    }
    return trouble(
        "RULES-NOT-SAVED",
        "The disk answers: " + e.getMessage() + ".",
        "Check that it is plugged in and may be written, or save under another name.",
        Trouble.Kind.ENVIRONMENT);
  }

  private boolean isFull(long bytes) {
    try {
      Path folder = path.getParent();
      return folder != null && Files.getFileStore(folder).getUsableSpace() < bytes;
    } catch (IOException e) {
      // a disk that cannot even be asked is not known to be full; the first fault is told
      return false;
    }
  }

  StationException trouble(String code, String why, String remedy, Trouble.Kind kind) {
    return StationException.stuck(
        new Trouble(path.getFileName() + " was not saved.", why, remedy, code, kind));
  }

  /** On the disk when this returns. */
  static void put(Path newFile, byte[] bytes) throws IOException {
    FileChannel channel =
        FileChannel.open(newFile, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    try (channel) {
      ByteBuffer left = ByteBuffer.wrap(bytes);
      while (left.hasRemaining()) {
        channel.write(left);
      }
      channel.force(true);
    } catch (IOException e) {
      Files.deleteIfExists(newFile);
      throw e;
    }
  }

  /** Makes the new name durable, where the system lets a folder be opened for that. */
  static void forceFolderOf(Path file) throws IOException {
    Path folder = file.getParent();
    if (folder != null && folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
        channel.force(true);
      }
    }
  }
}
