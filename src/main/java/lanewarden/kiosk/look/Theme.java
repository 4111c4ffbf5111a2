package lanewarden.kiosk.look;

import java.net.URL;
import java.util.List;
import java.util.Objects;

/** The colours for one kind of light; the structure is the same in all. */
public enum Theme {
  /** A roofed table or an overcast sky. */
  DAY("day"),
  /** Dusk and indoor ranges. */
  NIGHT("night"),
  /** The sun on the screen: contrast of 7:1 or more everywhere. */
  SUNLIGHT("sunlight");

  private static final String STRUCTURE = "/lanewarden/kiosk/structure.css";

  private final String word;

  Theme(String word) {
    this.word = word;
  }

  /** The theme's name in the file names and texts. */
  public String word() {
    return word;
  }

  /** The one that follows when the official turns through them. */
  public Theme next() {
    return values()[(ordinal() + 1) % values().length];
  }

  /** The file with the palette, a list of named colours. */
  public URL palette() {
    return resource("/lanewarden/kiosk/" + word + ".css");
  }

  /** What a scene takes: the structure, then the palette. */
  public List<String> stylesheets() {
    return List.of(resource(STRUCTURE).toExternalForm(), palette().toExternalForm());
  }

  private static URL resource(String path) {
    return Objects.requireNonNull(Theme.class.getResource(path), path);
  }
}
