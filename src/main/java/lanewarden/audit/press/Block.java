package lanewarden.audit.press;

import java.io.IOException;
import java.util.Optional;

/**
 * Something that stands on a page under what came before it; lengths in points.
 *
 * <p>Owned by one thread.
 */
interface Block {
  /** The white above it; of two that meet, the larger one holds. */
  float above();

  /** The white below it. */
  float below();

  /** Lays it out to this width; comes before every question about its height. */
  void fit(float width) throws IOException;

  /** How high it is, the white around it left out. */
  float height();

  /** How much of it must stand on the page where it begins. */
  float least();

  /** Whether it must stand on the page of what follows. */
  default boolean withNext() {
    return false;
  }

  /** What is said again on top of a page where it begins or goes on. */
  default Optional<Block> again() {
    return Optional.empty();
  }

  /**
   * Draws as much of it as there is room for.
   *
   * @param x of its upper left corner
   * @param y of it, downwards
   * @return what had no room, laid out as it was
   */
  Optional<Block> draw(Sheet sheet, float x, float y, float room) throws IOException;
}
