package lanewarden.audit.press;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Objects;

/**
 * Where a report goes: the file appears whole or not at all.
 *
 * <p>It is written in a folder of its own beside its place, then moved.
 */
public final class Destination {
  private static final byte[] PDF = "%PDF".getBytes(StandardCharsets.US_ASCII);

  private final Path file;
  private final Path folder;

  private Destination(Path file, Path folder) {
    this.file = file;
    this.folder = folder;
  }

  /** Writes the whole content of the file. */
  @FunctionalInterface
  public interface Writer {
    void write(OutputStream out) throws IOException;
  }

  /**
   * A place that can be written, as far as can be told before.
   *
   * @param ledger is never overwritten
   * @throws IOException of the kind that says what is wrong with the place
   */
  public static Destination of(Path pdf, Path ledger) throws IOException {
    if (Files.exists(pdf) && Files.exists(ledger) && Files.isSameFile(pdf, ledger)) {
      throw taken(pdf, "It is the ledger itself.");
    }
    return of(pdf);
  }

  /** The same where no ledger is read. */
  public static Destination of(Path pdf) throws IOException {
    Destination destination = in(pdf);
    if (Files.exists(destination.file)) {
      if (!Files.isWritable(destination.file)) {
        throw new AccessDeniedException(pdf.toString());
      }
      if (!isReport(destination.file)) {
        throw taken(pdf, "It is there already and is no PDF.");
      }
    }
    return destination;
  }

  /** The same for a file that replaces none. */
  public static Destination fresh(Path place) throws IOException {
    Destination destination = in(place);
    if (Files.exists(destination.file)) {
      throw taken(place, "It is there already, and is kept.");
    }
    return destination;
  }

  private static Destination in(Path place) throws IOException {
    Path file = place.toAbsolutePath().normalize();
    Path folder = file.getParent();
    if (folder == null || Files.isDirectory(file)) {
      throw taken(place, "A folder has this name.");
    }
    if (!Files.isDirectory(folder)) {
      throw new NoSuchFileException(folder.toString(), null, "This folder does not exist.");
    }
    if (!Files.isWritable(folder)) {
      throw new AccessDeniedException(folder.toString());
    }
    return new Destination(file, folder);
  }

  private static boolean isReport(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] start = in.readNBytes(PDF.length);
      return start.length == 0 || Arrays.equals(start, PDF);
    }
  }

  private static IOException taken(Path place, String why) {
    return new FileAlreadyExistsException(place.toString(), null, why);
  }

  /** Writes the file; when anything fails, what was there before is untouched. */
  public void deliver(Writer writer) throws IOException {
    // A folder, not a file: a temporary file would keep its narrow permissions after the move.
    Path workshop = workshop();
    try {
      Path draft = workshop.resolve("report.pdf");
      try (OutputStream out = Files.newOutputStream(draft, StandardOpenOption.CREATE_NEW)) {
        writer.write(out);
      }
      try (FileChannel channel = FileChannel.open(draft, StandardOpenOption.WRITE)) {
        channel.force(true);
      }
      moveInto(draft);
    } finally {
      Files.deleteIfExists(workshop.resolve("report.pdf"));
      Files.deleteIfExists(workshop);
    }
  }

  private Path workshop() throws IOException {
    try {
      return Files.createTempDirectory(folder, ".report-");
    } catch (FileSystemException e) {
      // Whoever named the file knows nothing of a folder beside it
      String why = Objects.requireNonNullElse(e.getReason(), "its folder takes no new file");
      FileSystemException told = new FileSystemException(file.toString(), null, why);
      told.initCause(e);
      throw told;
    }
  }

  private void moveInto(Path draft) throws IOException {
    try {
      Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
