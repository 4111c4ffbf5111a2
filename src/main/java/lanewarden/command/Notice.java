package lanewarden.command;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One thing that happened at the line, for a terminal or a machine.
 *
 * @param kind its word, the first on the line
 * @param words the rest of the line
 * @param members the same for machines
 */
record Notice(String kind, String words, Map<String, Object> members) {
  private static final int COLUMN = 9;

  static Notice of(String kind, String words) {
    return new Notice(kind, words, Map.of());
  }

  /** With one more member for machines. */
  Notice with(String member, Object value) {
    Map<String, Object> more = new LinkedHashMap<>(members);
    more.put(member, value);
    return new Notice(kind, words, more);
  }

  /** One line for people. */
  String line() {
    return kind + " ".repeat(Math.max(1, COLUMN - kind.length())) + words;
  }

  /** One JSON object for machines. */
  String json() {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("kind", kind);
    all.put("words", words);
    all.putAll(members);
    return JsonLine.of(all);
  }
}
