package lanewarden.command;

import java.io.IOException;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/** Where typed lines come from. */
@FunctionalInterface
interface LineSource {

  /** The next line; empty at the end. */
  Optional<String> next() throws IOException;

  /** Lines that were written down before. */
  static LineSource of(List<String> lines) {
    Iterator<String> left = lines.iterator();
    return () -> left.hasNext() ? Optional.of(left.next()) : Optional.empty();
  }
}
