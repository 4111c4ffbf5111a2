package lanewarden.chronograph;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lanewarden.written.WrittenRefused;

/**
 * Bytes recorded from a wire with their timing, in labelled sections.
 *
 * <p>The file is UTF-8 text, a line each: {@code # comment}, {@code @ label} which begins a
 * section, or {@code <milliseconds since the chunk before> <bytes>}, the bytes escaped as {@link
 * RawBytes#escaped} writes them. The first chunk's milliseconds count from the opening of the link.
 * Immutable.
 */
public final class Capture {
  /**
   * Bytes that came together.
   *
   * @param afterMillis how long after the chunk before; for the first, after the link opened
   * @param bytes what came
   */
  public record Chunk(int afterMillis, RawBytes bytes) {
    /**
     * @throws IllegalArgumentException if the time is outside 0 to {@link #LONGEST_WAIT} ms, or
     *     there are no bytes
     */
    public Chunk {
      if (afterMillis < 0 || afterMillis > LONGEST_WAIT || bytes.length() == 0) {
        throw new IllegalArgumentException(
            "a chunk has at least one byte and 0 to " + LONGEST_WAIT + " ms before it");
      }
    }

    /** The longest time between two chunks, in milliseconds: one hour. */
    public static final int LONGEST_WAIT = 3_600_000;
  }

  /** The label of chunks that stand before the first label. */
  private static final String UNLABELLED = "";

  private final Map<String, List<Chunk>> sections;

  Capture(Map<String, List<Chunk>> sections) {
    Map<String, List<Chunk>> copy = new LinkedHashMap<>();
    sections.forEach((label, chunks) -> copy.put(label, List.copyOf(chunks)));
    this.sections = copy;
  }

  /** A capture of one unlabelled run of chunks. */
  public static Capture of(List<Chunk> chunks) {
    return new Capture(Map.of(UNLABELLED, chunks));
  }

  /**
   * Reads a capture file.
   *
   * @param file its name, for the faults
   * @throws WrittenRefused with every fault found; a faulty capture is never half-read
   */
  public static Capture read(String file, byte[] utf8) throws WrittenRefused {
    return WrittenCapture.read(file, utf8);
  }

  /** The labels, in the order of the file. */
  public List<String> labels() {
    return sections.keySet().stream().filter(label -> !label.equals(UNLABELLED)).toList();
  }

  /** Every chunk, in the order of the file. */
  public List<Chunk> chunks() {
    List<Chunk> all = new ArrayList<>();
    sections.values().forEach(all::addAll);
    return all;
  }

  /**
   * The part under one label.
   *
   * @throws IllegalArgumentException if there is no such label
   */
  public Capture section(String label) {
    List<Chunk> chunks = sections.get(label);
    if (chunks == null || label.equals(UNLABELLED)) {
      throw new IllegalArgumentException(
          "no section \"" + label + "\"; there are: " + String.join(", ", labels()));
    }
    return new Capture(Map.of(label, chunks));
  }

  /** The capture as a file's text: reads back as an equal capture, comments apart. */
  public String text() {
    StringBuilder text = new StringBuilder();
    CaptureRecord written = new CaptureRecord(text);
    sections.forEach(
        (label, chunks) -> {
          if (!label.equals(UNLABELLED)) {
            written.label(label);
          }
          chunks.forEach(written::chunk);
        });
    return text.toString();
  }
}
