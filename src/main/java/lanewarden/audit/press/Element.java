package lanewarden.audit.press;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * An element of a page, as far as its look depends on it: two of the same names and classes in the
 * same place are one.
 *
 * <p>Owned by one thread.
 */
final class Element {
  private final String name;
  private final Set<String> words;
  private final @Nullable Element parent;
  private final Map<String, Element> inside = new HashMap<>();

  private Element(String name, Set<String> words, @Nullable Element parent) {
    this.name = name;
    this.words = words;
    this.parent = parent;
  }

  /** The outermost element of a page. */
  static Element root(String name) {
    return new Element(name, Set.of(name), null);
  }

  /**
   * An element inside this one.
   *
   * @param classes with spaces between them; empty where it has none
   */
  Element inside(String childName, String classes) {
    return inside.computeIfAbsent(
        childName + " " + classes,
        key -> {
          Set<String> itsWords = new HashSet<>(Set.of(childName));
          List.of(classes.split(" ", -1)).forEach(one -> itsWords.add("." + one));
          return new Element(childName, itsWords, this);
        });
  }

  String name() {
    return name;
  }

  /** Its name, and its classes with a dot in front. */
  Set<String> words() {
    return words;
  }

  @Nullable Element parent() {
    return parent;
  }
}
