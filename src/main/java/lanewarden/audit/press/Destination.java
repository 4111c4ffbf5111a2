package lanewarden.audit.press;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;

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
   * @throws IOException saying what is wrong with the place and what to do
   */
  public static Destination of(Path pdf, Path ledger) throws IOException {
    if (Files.exists(pdf) && Files.exists(ledger) && Files.isSameFile(pdf, ledger)) {
      throw refused(pdf, "is the ledger itself.", "Choose another name.");
    }
    return of(pdf);
  }

  /** The same where no ledger is read. */
  public static Destination of(Path pdf) throws IOException {
    Destination destination = in(pdf);
    if (Files.exists(destination.file)) {
      if (!Files.isWritable(destination.file)) {
        throw refused(pdf, "may not be written.", "Choose another name.");
      }
      if (!isReport(destination.file)) {
        throw refused(
            pdf, "is there already and is no PDF.", "Choose another name, so that it is kept.");
      }
    }
    return destination;
  }

  /** The same for a file that replaces none. */
  public static Destination fresh(Path place) throws IOException {
    Destination destination = in(place);
    if (Files.exists(destination.file)) {
      throw refused(place, "is there already.", "Choose another name, so that it is kept.");
    }
    return destination;
  }

  private static Destination in(Path place) throws IOException {
    Path file = place.toAbsolutePath().normalize();
    Path folder = file.getParent();
    if (folder == null || Files.isDirectory(file)) {
      throw refused(place, "is a folder.", "Give the name of a file to write.");
    }
    if (!Files.isDirectory(folder)) {
      throw refused(place, "lies in a folder that does not exist.", "Make the folder first.");
    }
    if (!Files.isWritable(folder)) {
      throw refused(place, "lies in a folder that cannot be written.", "Choose another folder.");
    }
    return new Destination(file, folder);
  }

  private static boolean isReport(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] start = in.readNBytes(PDF.length);
      return start.length == 0 || Arrays.equals(start, PDF);
    }
  }

  private static IOException refused(Path pdf, String why, String remedy) {
    return new IOException("The report was not written: " + pdf + " " + why + " " + remedy);
  }

  /** Writes the file; when anything fails, what was there before is untouched. */
  public void deliver(Writer writer) throws IOException {
    // A folder, not a file: a temporary file would keep its narrow permissions after the move.
    Path workshop = Files.createTempDirectory(folder, ".report-");
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

  private void moveInto(Path draft) throws IOException {
    try {
      Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
