package lanewarden.written;

import org.jspecify.annotations.Nullable;

/**
 * Which table of a TOML file: the top level, {@code [name]}, or the n-th {@code [[name]]}.
 *
 * @param name none for the top level
 * @param nth from 1; 0 where the table is not one of several
 */
public record TablePath(@Nullable String name, int nth) {

  /** The keys above the first {@code [table]}. */
  public static TablePath top() {
    return new TablePath(null, 0);
  }

  /** {@code [name]}. */
  public static TablePath of(String name) {
    return new TablePath(name, 0);
  }

  /**
   * The n-th {@code [[name]]}, counted from 1.
   *
   * @throws IndexOutOfBoundsException if {@code nth} is less than 1
   */
  public static TablePath nth(String name, int nth) {
    if (nth < 1) {
      throw new IndexOutOfBoundsException("tables are counted from 1, not " + nth);
    }
    return new TablePath(name, nth);
  }

  /** As faults name it: {@code event} or {@code division[2]}; empty for the top level. */
  @Override
  public String toString() {
    return name == null ? "" : nth == 0 ? name : name + "[" + nth + "]";
  }
}
