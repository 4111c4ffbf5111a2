package lanewarden.audit.press;

import java.io.IOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Every cut of the program's typeface, opened once for one document. Owned by one thread. */
public final class Typefaces implements AutoCloseable {
  private final Map<Cut, Typeface> faces = new EnumMap<>(Cut.class);

  private Typefaces() {}

  /** Opens every cut; the caller closes them. */
  public static Typefaces open() throws IOException {
    Typefaces all = new Typefaces();
    for (Cut cut : Cut.values()) {
      all.faces.put(cut, Typeface.open(cut));
    }
    return all;
  }

  /** The typeface of a cut, as long as they are open. */
  public Typeface of(Cut cut) {
    return Objects.requireNonNull(faces.get(cut));
  }

  /** Writes text so that it can be shown in each of them. */
  public Ink ink() {
    return new Ink(List.copyOf(faces.values()));
  }

  @Override
  public void close() throws IOException {
    for (Typeface face : faces.values()) {
      face.close();
    }
  }
}
