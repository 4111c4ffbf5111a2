package lanewarden.written;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/**
 * A key of which two TOML files say different things.
 *
 * @param key with its tables before it, for example {@code sentence.most} or {@code gate[2].agree}
 * @param before its value in the one file as TOML writes it; empty where it is not there
 * @param after the same in the other
 */
public record KeyChange(String key, Optional<String> before, Optional<String> after) {

  /**
   * Every key that differs, in the order of the alphabet. Comments, order and layout say nothing.
   *
   * @throws WrittenRefused if one of them is too large or not TOML
   */
  public static List<KeyChange> between(String before, String after) throws WrittenRefused {
    Map<String, String> one = keys("the text before", before);
    Map<String, String> other = keys("the text after", after);
    TreeSet<String> all = new TreeSet<>(one.keySet());
    all.addAll(other.keySet());
    return all.stream()
        .filter(key -> !Objects.equals(one.get(key), other.get(key)))
        .map(
            key ->
                new KeyChange(
                    key, Optional.ofNullable(one.get(key)), Optional.ofNullable(other.get(key))))
        .toList();
  }

  private static Map<String, String> keys(String name, String text) throws WrittenRefused {
    String checked = WrittenText.of(name, text.getBytes(StandardCharsets.UTF_8));
    Map<String, String> keys = new TreeMap<>();
    collect("", TomlPage.parse(name, checked), keys);
    return keys;
  }

  private static void collect(String path, TomlTable table, Map<String, String> into) {
    for (String key : table.keySet()) {
      Object value = Objects.requireNonNull(table.get(List.of(key)));
      if (value instanceof TomlTable inner) {
        collect(path + key + ".", inner, into);
      } else if (value instanceof TomlArray array && isOfTables(array)) {
        for (int i = 0; i < array.size(); i++) {
          collect(path + key + "[" + (i + 1) + "].", array.getTable(i), into);
        }
      } else {
        into.put(path + key, written(value));
      }
    }
  }

  private static boolean isOfTables(TomlArray array) {
    return !array.isEmpty() && array.toList().stream().allMatch(item -> item instanceof TomlTable);
  }

  private static String written(Object value) {
    if (value instanceof String text) {
      return Literal.text(text).toml();
    }
    if (value instanceof TomlArray array) {
      List<String> items = new ArrayList<>();
      array.toList().forEach(item -> items.add(written(item)));
      return items.stream().collect(Collectors.joining(", ", "[", "]"));
    }
    return value instanceof TomlTable table ? table.toToml() : value.toString();
  }
}
