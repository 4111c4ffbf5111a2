package lanewarden.chronograph;

import java.util.List;
import lanewarden.written.WrittenRefused;

/** Recorded bytes with their timing. */
@SuppressWarnings("DoNotCallSuggester")
public final class Capture {
  private Capture() {}

  /** Reads a capture file. */
  public static Capture read(String file, byte[] utf8) throws WrittenRefused {
    throw new UnsupportedOperationException();
  }

  /** The labels, in the order of the file. */
  public List<String> labels() {
    throw new UnsupportedOperationException();
  }

  /** The part under one label. */
  public Capture section(String label) {
    throw new UnsupportedOperationException();
  }
}
