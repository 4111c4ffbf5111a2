package lanewarden.written;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewarden.quantity.QuantityException;
import lanewarden.written.TomlPage.Place;
import org.jspecify.annotations.Nullable;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * A table of a TOML file being read.
 *
 * <p>Every getter notes a fault on the page and returns empty when the value is missing or wrong;
 * the optional getters return empty without a fault when it is missing. Keys are plain names, not
 * dotted.
 */
public final class Section {

  /** More than a person writes in one list. */
  private static final int MOST_ITEMS = 100;

  private final TomlPage page;
  private final TomlTable table;
  private final TablePath path;
  private final Place start;
  private final Set<String> asked = new LinkedHashSet<>();

  Section(TomlPage page, TomlTable table, TablePath path, Place start) {
    this.page = page;
    this.table = table;
    this.path = path;
    this.start = start;
  }

  /** Whether nothing at all stands in it. */
  public boolean isEmpty() {
    return table.isEmpty();
  }

  /** Whether the key stands in this section. */
  public boolean has(String key) {
    return ask(key) != null;
  }

  /** Whether the key holds exactly this text. */
  public boolean is(String key, String text) {
    return text.equals(ask(key));
  }

  /** Notes a fault where the key stands, since something else in this section rules it out. */
  public void leftOut(String key, String because) {
    Object raw = ask(key);
    if (raw != null) {
      fault(key, "left out: " + because, describe(raw), "take it out");
    }
  }

  /** A text that must be there and not be blank. */
  public Optional<String> text(String key) {
    return required(key, "a text", optionalText(key));
  }

  /** A text that may be missing, but not blank. */
  public Optional<String> optionalText(String key) {
    Object raw = ask(key);
    if (raw == null) {
      return Optional.empty();
    }
    if (raw instanceof String text && !text.isBlank()) {
      return Optional.of(text);
    }
    fault(key, "a text in double quotes", describe(raw), "write " + key + " = \"…\"");
    return Optional.empty();
  }

  /** A whole number that must be there, from {@code least} to {@code most}. */
  public OptionalInt whole(String key, int least, int most) {
    OptionalInt whole = optionalWhole(key, least, most);
    if (raw(key) == null) {
      missing(key, "a whole number from " + least + " to " + most);
    }
    return whole;
  }

  /** A whole number that may be missing, from {@code least} to {@code most}. */
  public OptionalInt optionalWhole(String key, int least, int most) {
    OptionalLong count = optionalCount(key, least, most);
    return count.isPresent()
        ? OptionalInt.of(Math.toIntExact(count.getAsLong()))
        : OptionalInt.empty();
  }

  /** A whole number of any size that may be missing, from {@code least} to {@code most}. */
  public OptionalLong optionalCount(String key, long least, long most) {
    Object raw = ask(key);
    if (raw == null) {
      return OptionalLong.empty();
    }
    if (raw instanceof Long whole && whole >= least && whole <= most) {
      return OptionalLong.of(whole);
    }
    fault(
        key,
        "a whole number from " + least + " to " + most,
        describe(raw),
        raw instanceof String
            ? "write the number without quotes"
            : "write a number such as " + key + " = " + least);
    return OptionalLong.empty();
  }

  /** A yes or no, written as true or false; no where the key is missing. */
  public boolean flag(String key) {
    Object raw = ask(key);
    if (raw != null && !(raw instanceof Boolean)) {
      fault(key, "true or false", describe(raw), "write " + key + " = true, without quotes");
    }
    return Boolean.TRUE.equals(raw);
  }

  /** A day, written as a TOML local date without quotes; may be missing. */
  public Optional<LocalDate> optionalDate(String key) {
    Object raw = ask(key);
    if (raw == null) {
      return Optional.empty();
    }
    if (raw instanceof LocalDate date) {
      return Optional.of(date);
    }
    String mend =
        raw instanceof String text && text.strip().matches("[0-9]{4}-[0-9]{2}-[0-9]{2}")
            ? "write it without quotes"
            : "write year, month and day without quotes, such as " + key + " = 2026-03-01";
    fault(key, "a date such as 2026-03-01", describe(raw), mend);
    return Optional.empty();
  }

  /**
   * A list of texts that {@code parser} reads one by one; no values where the key is missing. An
   * empty list is a fault, since it says what a missing key says. Each faulty item is a fault of
   * its own, at its own place, named as {@code key[2]} for the second.
   *
   * @param expected what a right item looks like, for the fault
   * @param parser throws {@link IllegalArgumentException}, whose message becomes the mend
   */
  public <T> List<Item<T>> optionalItems(String key, String expected, Function<String, T> parser) {
    Object raw = ask(key);
    if (raw == null) {
      return List.of();
    }
    if (!(raw instanceof TomlArray array)) {
      fault(key, "a list of texts", describe(raw), "write " + key + " = [\"…\", \"…\"]");
      return List.of();
    }
    if (array.isEmpty()) {
      fault(
          key,
          "a list of one item or more",
          "an empty list",
          "write what belongs in it, or take the line out");
    }
    if (array.size() > MOST_ITEMS) {
      fault(
          key,
          "a list of at most " + MOST_ITEMS + " items",
          array.size() + " items",
          "keep those that are needed");
      return List.of();
    }
    List<Item<T>> items = new ArrayList<>();
    for (int i = 0; i < array.size(); i++) {
      int number = i + 1;
      Spot item = spotOf(key, array, number);
      if (array.get(i) instanceof String text && text.isBlank()) {
        fault(item, expected, describe(text), "write it out, or take it out of the list");
      } else {
        parse(item, array.get(i), expected, parser)
            .ifPresent(value -> items.add(new Item<>(number, value)));
      }
    }
    return items;
  }

  /**
   * An item of a list.
   *
   * @param number which one of the list as written, from 1
   */
  public record Item<T>(int number, T value) {}

  /** A text that must be there and that {@code parser} reads. */
  public <T> Optional<T> value(String key, String expected, Function<String, T> parser) {
    return required(key, expected, optionalValue(key, expected, parser));
  }

  /**
   * A text that may be missing and that {@code parser} reads.
   *
   * @param expected what a right value looks like, for the fault
   * @param parser throws {@link IllegalArgumentException}, whose message becomes the mend
   */
  public <T> Optional<T> optionalValue(String key, String expected, Function<String, T> parser) {
    Object raw = ask(key);
    return raw == null ? Optional.empty() : parse(spotOf(key), raw, expected, parser);
  }

  private <T> Optional<T> parse(
      Spot spot, Object raw, String expected, Function<String, T> parser) {
    if (!(raw instanceof String text)) {
      fault(spot, expected, describe(raw), "write it in double quotes");
      return Optional.empty();
    }
    try {
      return Optional.of(parser.apply(text));
    } catch (QuantityException e) {
      fault(spot, e.expected(), e.found(), e.mend());
      return Optional.empty();
    } catch (IllegalArgumentException e) {
      fault(spot, expected, describe(raw), String.valueOf(e.getMessage()));
      return Optional.empty();
    }
  }

  /** One of a closed set of words, that must be there. */
  public <E> Optional<E> choice(String key, Map<String, E> words) {
    return required(key, oneOf(words.keySet()), optionalChoice(key, words));
  }

  /** One of a closed set of words, that may be missing. */
  public <E> Optional<E> optionalChoice(String key, Map<String, E> words) {
    Object raw = ask(key);
    if (raw == null) {
      return Optional.empty();
    }
    if (raw instanceof String text) {
      E chosen = words.get(text);
      if (chosen != null) {
        return Optional.of(chosen);
      }
      String mend =
          NearMatch.of(text, words.keySet())
              .map(near -> "did you mean \"" + near + "\"?")
              .orElse("take one of them");
      fault(key, oneOf(words.keySet()), describe(raw), mend);
      return Optional.empty();
    }
    fault(key, oneOf(words.keySet()), describe(raw), "write the word in double quotes");
    return Optional.empty();
  }

  /** A table that must be there. */
  public Optional<Section> section(String key) {
    Object raw = ask(key);
    if (raw instanceof TomlTable inner) {
      return Optional.of(new Section(page, inner, TablePath.of(below(key)), placeOf(key)));
    }
    if (raw == null) {
      fault(key, "a table", "nothing", "add a section [" + below(key) + "]");
    } else {
      fault(key, "a table", describe(raw), "write [" + below(key) + "] on a line of its own");
    }
    return Optional.empty();
  }

  /** The tables written as {@code [[key]]}, in the order of the file; none where there are none. */
  public List<Section> sections(String key) {
    Object raw = ask(key);
    List<Section> sections = new ArrayList<>();
    if (raw instanceof TomlArray array
        && (array.toList().stream().allMatch(TomlTable.class::isInstance))) {
      for (int i = 0; i < array.size(); i++) {
        TomlPosition at = array.inputPositionOf(i);
        sections.add(
            new Section(
                page,
                array.getTable(i),
                TablePath.nth(below(key), i + 1),
                new Place(at.line(), at.column())));
      }
    } else if (raw != null) {
      fault(key, "tables", describe(raw), "write [[" + key + "]] on a line of its own");
    }
    return sections;
  }

  /**
   * Ends this section: every key that was not asked for is a fault, with the nearest known one or,
   * failing that, those that share a word with it.
   */
  public void closed() {
    for (String key : table.keySet()) {
      if (!asked.contains(key)) {
        fault(key, knownKeys(), "the unknown key " + key, mendOfUnknown(key));
      }
    }
  }

  /** All of them only where they can be read at a glance. */
  private String knownKeys() {
    return asked.size() <= 10 ? oneOf(asked) : "one of the " + asked.size() + " keys known here";
  }

  private String mendOfUnknown(String key) {
    Optional<String> near = NearMatch.of(key, asked);
    if (near.isPresent()) {
      return "did you mean " + near.get() + "?";
    }
    List<String> words = List.of(key.split("[-_ ]", -1));
    String alike =
        asked.stream()
            .filter(known -> Stream.of(known.split("-", -1)).anyMatch(words::contains))
            .collect(Collectors.joining(", "));
    return alike.isEmpty() ? "take the line out" : "take the line out, or write one of " + alike;
  }

  /** Notes a fault at a key, or at the section's start where the key is missing. */
  public void fault(String key, String expected, String found, String mend) {
    fault(spotOf(key), expected, found, mend);
  }

  /** Notes a fault at an item of a key's list, counted from 1; 0 for the key as a whole. */
  public void fault(String key, int item, String expected, String found, String mend) {
    Spot spot =
        item > 0 && raw(key) instanceof TomlArray list ? spotOf(key, list, item) : spotOf(key);
    fault(spot, expected, found, mend);
  }

  private void fault(Spot spot, String expected, String found, String mend) {
    Place at = spot.at();
    page.fault(
        new WrittenFault(page.file(), at.line(), at.column(), spot.place(), expected, found, mend));
  }

  private <T> Optional<T> required(String key, String expected, Optional<T> value) {
    if (raw(key) == null) {
      missing(key, expected);
    }
    return value;
  }

  private void missing(String key, String expected) {
    fault(key, expected, "nothing", "add " + key + " = … to this section");
  }

  private @Nullable Object ask(String key) {
    asked.add(key);
    return raw(key);
  }

  private @Nullable Object raw(String key) {
    return table.get(List.of(key));
  }

  private Place placeOf(String key) {
    TomlPosition at = raw(key) == null ? null : table.inputPositionOf(List.of(key));
    return at == null ? start : new Place(at.line(), at.column());
  }

  private static String oneOf(Set<String> words) {
    return "one of " + String.join(", ", words);
  }

  private static String describe(Object raw) {
    if (raw instanceof String text) {
      return "\"" + (text.length() > 60 ? text.substring(0, 60) + "…" : text) + "\"";
    }
    if (raw instanceof TomlTable) {
      return "a table";
    }
    return raw instanceof TomlArray ? "a list" : String.valueOf(raw);
  }

  private Spot spotOf(String key) {
    return new Spot(new KeyPlace(path, key, 0), placeOf(key));
  }

  private Spot spotOf(String key, TomlArray list, int item) {
    return new Spot(new KeyPlace(path, key, item), page.itemFrom(list.inputPositionOf(item - 1)));
  }

  /** The path of a table within this one. */
  private String below(String key) {
    return path.name() == null ? key : path + "." + key;
  }

  /** What a fault is about: a key, or an item of its list, and where that stands. */
  private record Spot(KeyPlace place, Place at) {}
}
