package lanewarden.audit.press;

import java.io.InputStream;
import java.util.Objects;

/** The cuts of the typeface that reports are set in (DejaVu, freely licensed). */
public enum Cut {
  /** Plain text. */
  TEXT("DejaVuSansCondensed.ttf"),
  /** Headings and outcomes. */
  BOLD("DejaVuSansCondensed-Bold.ttf"),
  /** Hashes, thumbprints and files. */
  FIXED("DejaVuSansMono.ttf");

  private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";

  private final String file;

  Cut(String file) {
    this.file = file;
  }

  /** The TrueType file; the caller closes it. */
  public InputStream bytes() {
    return Objects.requireNonNull(
        Cut.class.getResourceAsStream(FOLDER + file), file + " is missing from the program");
  }
}
