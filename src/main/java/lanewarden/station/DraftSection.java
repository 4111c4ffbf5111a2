package lanewarden.station;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a person typed into one section of a rule book since it was opened or saved.
 *
 * @param savedAs which section of the saved file it was, counted from 1; 0 where it is new
 * @param typed what was typed for a key
 */
record DraftSection(int savedAs, Map<RuleKey, Typed> typed) {

  /**
   * @param text as typed
   * @param missed why it could not be written into the file
   */
  record Typed(String text, Optional<RuleFault> missed) {}

  DraftSection {
    typed = Map.copyOf(typed);
  }

  static DraftSection saved(int as) {
    return new DraftSection(as, Map.of());
  }

  static DraftSection fresh() {
    return saved(0);
  }

  /** The same text in a section that is not saved yet. */
  DraftSection copy() {
    return new DraftSection(0, typed);
  }

  DraftSection with(RuleKey key, String text, Optional<RuleFault> missed) {
    Map<RuleKey, Typed> more = new EnumMap<>(RuleKey.class);
    more.putAll(typed);
    more.put(key, new Typed(text, missed));
    return new DraftSection(savedAs, more);
  }

  Optional<String> typed(RuleKey key) {
    return Optional.ofNullable(typed.get(key)).map(Typed::text);
  }

  Stream<RuleFault> missed() {
    return typed.values().stream().map(Typed::missed).flatMap(Optional::stream);
  }
}
