package lanewarden.audit.press;

import com.samskivert.mustache.Mustache;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/**
 * A page of HTML with gaps, packed with the program.
 *
 * @param home the class beside which its files lie
 * @param name of the file, without its ending
 * @param ink how text is written into the gaps
 */
public record Template(Class<?> home, String name, Ink ink) {

  /** The page with these members in its gaps; every text in it is escaped. */
  public String fill(Object members) throws IOException {
    try {
      return Mustache.compiler()
          .emptyStringIsFalse(true)
          .zeroIsFalse(true)
          .withEscaper(ink::escape)
          .withLoader(this::part)
          .compile(part(name))
          .execute(members);
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private Reader part(String name) {
    try {
      return new StringReader(text(home, name.contains(".") ? name : name + ".html"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The text of a file that is packed with the program, beside a class. */
  static String text(Class<?> home, String file) throws IOException {
    try (InputStream in =
        Objects.requireNonNull(home.getResourceAsStream(file), file + " is missing")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
