package lanewarden.chronograph;

import lanewarden.written.WrittenRefused;

/** How an instrument speaks. */
@SuppressWarnings("DoNotCallSuggester")
public final class SentenceProfile {
  private SentenceProfile() {}

  /** Reads a profile. */
  public static SentenceProfile read(String fileName, byte[] utf8) throws WrittenRefused {
    throw new UnsupportedOperationException();
  }

  /** The instrument's name. */
  public String name() {
    throw new UnsupportedOperationException();
  }

  /** The speeds that are plausible. */
  public SpeedRange plausible() {
    throw new UnsupportedOperationException();
  }

  /** The file's whole text. */
  public String text() {
    throw new UnsupportedOperationException();
  }
}
