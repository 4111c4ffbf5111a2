package lanewarden.written;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewarden.quantity.Sentence;
import org.jspecify.annotations.Nullable;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/** How a value or a word of a TOML file is told in a fault. */
final class RawValue {
  private static final int LONGEST_SHOWN = 60;

  /** So many keys can be read at a glance. */
  private static final int FEW = 10;

  private RawValue() {}

  /** What stands there; null where nothing does. */
  static Sentence found(@Nullable Object raw) {
    if (raw == null) {
      return Sentence.of(FileTold.NOTHING);
    }
    if (raw instanceof TomlTable) {
      return Sentence.of(TomlTold.TABLE);
    }
    return raw instanceof TomlArray ? Sentence.of(TomlTold.LIST) : Sentence.verbatim(shown(raw));
  }

  private static String shown(Object raw) {
    return raw instanceof String text
        ? "\""
            + (text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "…" : text)
            + "\""
        : String.valueOf(raw);
  }

  /** One of a closed set of words. */
  static Sentence oneOf(Collection<String> words) {
    return Sentence.of(TomlTold.ONE_OF, String.join(", ", words));
  }

  /** The mend for a value that is none of the words. */
  static Sentence mendOf(Object raw, Set<String> words) {
    return raw instanceof String text
        ? NearMatch.of(text, words)
            .map(near -> Sentence.of(FileTold.NEAR_TEXT, near))
            .orElse(Sentence.of(TomlTold.TAKE_ONE))
        : Sentence.of(TomlTold.WORD_QUOTED);
  }

  /** The keys that may stand there; all of them only where they can be read at a glance. */
  static Sentence known(Set<String> keys) {
    return keys.size() <= FEW ? oneOf(keys) : Sentence.of(TomlTold.KNOWN, keys.size());
  }

  /** The mend for an unknown key: the nearest known one, or those that share a word with it. */
  static Sentence mendOfKey(String key, Set<String> keys) {
    Optional<String> near = NearMatch.of(key, keys);
    if (near.isPresent()) {
      return Sentence.of(FileTold.NEAR, near.get());
    }
    List<String> words = List.of(key.split("[-_ ]", -1));
    String alike =
        keys.stream()
            .filter(known -> Stream.of(known.split("-", -1)).anyMatch(words::contains))
            .collect(Collectors.joining(", "));
    return alike.isEmpty()
        ? Sentence.of(TomlTold.LINE_OUT)
        : Sentence.of(TomlTold.LINE_OUT_OR, alike);
  }
}
