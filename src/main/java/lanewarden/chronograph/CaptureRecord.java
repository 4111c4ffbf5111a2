package lanewarden.chronograph;

import java.io.IOException;
import java.io.UncheckedIOException;

/**
 * Writes a capture file while the bytes come in; see {@link Capture} for its form. For one thread.
 */
public final class CaptureRecord {
  private final Appendable out;

  /** A record that goes to {@code out}, which the caller closes; write it as UTF-8. */
  public CaptureRecord(Appendable out) {
    this.out = out;
  }

  /**
   * Writes a comment for people.
   *
   * @throws UncheckedIOException if it cannot be written
   */
  public void comment(String words) {
    words.lines().forEach(line -> write("# " + line));
  }

  /**
   * Begins a section.
   *
   * @throws IllegalArgumentException if the label is blank or has a line break
   * @throws UncheckedIOException if it cannot be written
   */
  public void label(String label) {
    if (label.isBlank() || !label.equals(label.strip()) || label.lines().count() > 1) {
      throw new IllegalArgumentException("a label is one line, without spaces around it");
    }
    write("@ " + label);
  }

  /**
   * Writes bytes that came together.
   *
   * @throws UncheckedIOException if it cannot be written
   */
  public void chunk(Capture.Chunk chunk) {
    write(chunk.afterMillis() + " " + chunk.bytes().escaped());
  }

  private void write(String line) {
    try {
      out.append(line).append('\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
