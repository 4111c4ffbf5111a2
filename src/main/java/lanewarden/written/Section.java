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
import lanewarden.quantity.QuantityException;
import lanewarden.quantity.Sentence;
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
  public void leftOut(String key, Sentence because) {
    Object raw = ask(key);
    if (raw != null) {
      fault(
          key,
          Sentence.of(TomlTold.LEFT_OUT, because),
          RawValue.found(raw),
          Sentence.of(TomlTold.TAKE_OUT));
    }
  }

  /** The same where only the English is known. */
  public void leftOut(String key, String because) {
    leftOut(key, Sentence.verbatim(because));
  }

  /** A text that must be there and not be blank. */
  public Optional<String> text(String key) {
    return required(key, Sentence.of(TomlTold.TEXT), optionalText(key));
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
    fault(key, TomlTold.TEXT_QUOTED, raw, Sentence.of(TomlTold.WRITE_TEXT, key));
    return Optional.empty();
  }

  /** A whole number that must be there, from {@code least} to {@code most}. */
  public OptionalInt whole(String key, int least, int most) {
    OptionalInt whole = optionalWhole(key, least, most);
    if (raw(key) == null) {
      missing(key, Sentence.of(TomlTold.WHOLE, least, most));
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
        Sentence.of(TomlTold.WHOLE, least, most),
        RawValue.found(raw),
        raw instanceof String
            ? Sentence.of(TomlTold.WITHOUT_QUOTES)
            : Sentence.of(TomlTold.NUMBER_LIKE, key, least));
    return OptionalLong.empty();
  }

  /** A yes or no, written as true or false; no where the key is missing. */
  public boolean flag(String key) {
    Object raw = ask(key);
    if (raw != null && !(raw instanceof Boolean)) {
      fault(key, TomlTold.TRUE_OR_FALSE, raw, Sentence.of(TomlTold.WRITE_TRUE, key));
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
    Sentence mend =
        raw instanceof String text && text.strip().matches("[0-9]{4}-[0-9]{2}-[0-9]{2}")
            ? Sentence.of(TomlTold.DATE_UNQUOTED)
            : Sentence.of(TomlTold.DATE_LIKE, key);
    fault(key, TomlTold.DATE, raw, mend);
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
  public <T> List<Item<T>> optionalItems(
      String key, Sentence expected, Function<String, T> parser) {
    Object raw = ask(key);
    if (raw == null) {
      return List.of();
    }
    if (!(raw instanceof TomlArray array)) {
      fault(key, TomlTold.TEXTS, raw, Sentence.of(TomlTold.WRITE_TEXTS, key));
      return List.of();
    }
    if (array.isEmpty()) {
      fault(
          key,
          Sentence.of(TomlTold.ONE_OR_MORE),
          Sentence.of(TomlTold.EMPTY_LIST),
          Sentence.of(TomlTold.WRITE_ITEMS));
    }
    if (array.size() > MOST_ITEMS) {
      fault(
          key,
          Sentence.of(TomlTold.ITEMS_AT_MOST, MOST_ITEMS),
          Sentence.of(TomlTold.ITEMS, array.size()),
          Sentence.of(TomlTold.KEEP_NEEDED));
      return List.of();
    }
    List<Item<T>> items = new ArrayList<>();
    for (int i = 0; i < array.size(); i++) {
      int number = i + 1;
      Spot item = spotOf(key, array, number);
      if (array.get(i) instanceof String text && text.isBlank()) {
        fault(item, expected, RawValue.found(text), Sentence.of(TomlTold.BLANK_ITEM));
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
  public <T> Optional<T> value(String key, Sentence expected, Function<String, T> parser) {
    return required(key, expected, optionalValue(key, expected, parser));
  }

  /** The same where only the English is known. */
  public <T> Optional<T> value(String key, String expected, Function<String, T> parser) {
    return value(key, Sentence.verbatim(expected), parser);
  }

  /**
   * A text that may be missing and that {@code parser} reads.
   *
   * @param expected what a right value looks like, for the fault
   * @param parser throws {@link IllegalArgumentException}, whose message becomes the mend
   */
  public <T> Optional<T> optionalValue(String key, Sentence expected, Function<String, T> parser) {
    Object raw = ask(key);
    return raw == null ? Optional.empty() : parse(spotOf(key), raw, expected, parser);
  }

  /** The same where only the English is known. */
  public <T> Optional<T> optionalValue(String key, String expected, Function<String, T> parser) {
    return optionalValue(key, Sentence.verbatim(expected), parser);
  }

  private <T> Optional<T> parse(
      Spot spot, Object raw, Sentence expected, Function<String, T> parser) {
    if (!(raw instanceof String text)) {
      fault(spot, expected, RawValue.found(raw), Sentence.of(TomlTold.QUOTED));
      return Optional.empty();
    }
    try {
      return Optional.of(parser.apply(text));
    } catch (QuantityException e) {
      fault(spot, e.expected(), e.found(), e.mend());
      return Optional.empty();
    } catch (ValueRefused e) {
      fault(spot, expected, RawValue.found(raw), e.mend());
      return Optional.empty();
    } catch (IllegalArgumentException e) {
      String mend = String.valueOf(e.getMessage());
      fault(spot, expected, RawValue.found(raw), Sentence.verbatim(mend));
      return Optional.empty();
    }
  }

  /** One of a closed set of words, that must be there. */
  public <E> Optional<E> choice(String key, Map<String, E> words) {
    return required(key, RawValue.oneOf(words.keySet()), optionalChoice(key, words));
  }

  /** One of a closed set of words, that may be missing. */
  public <E> Optional<E> optionalChoice(String key, Map<String, E> words) {
    Object raw = ask(key);
    if (raw == null) {
      return Optional.empty();
    }
    Optional<E> chosen =
        raw instanceof String text ? Optional.ofNullable(words.get(text)) : Optional.empty();
    if (chosen.isEmpty()) {
      fault(
          key,
          RawValue.oneOf(words.keySet()),
          RawValue.found(raw),
          RawValue.mendOf(raw, words.keySet()));
    }
    return chosen;
  }

  /** A table that must be there. */
  public Optional<Section> section(String key) {
    Object raw = ask(key);
    if (raw instanceof TomlTable inner) {
      return Optional.of(new Section(page, inner, TablePath.of(below(key)), placeOf(key)));
    }
    TomlTold mend = raw == null ? TomlTold.ADD_SECTION : TomlTold.OWN_LINE;
    fault(key, TomlTold.TABLE, raw, Sentence.of(mend, below(key)));
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
      fault(key, TomlTold.TABLES, raw, Sentence.of(TomlTold.OWN_LINES, key));
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
        fault(
            key,
            RawValue.known(asked),
            Sentence.of(TomlTold.UNKNOWN, key),
            RawValue.mendOfKey(key, asked));
      }
    }
  }

  /** Notes a fault at a key, or at the section's start where the key is missing. */
  public void fault(String key, Sentence expected, Sentence found, Sentence mend) {
    fault(spotOf(key), expected, found, mend);
  }

  /** The same where only the English is known. */
  public void fault(String key, String expected, String found, String mend) {
    fault(key, Sentence.verbatim(expected), Sentence.verbatim(found), Sentence.verbatim(mend));
  }

  private void fault(String key, TomlTold expected, @Nullable Object found, Sentence mend) {
    fault(key, Sentence.of(expected), RawValue.found(found), mend);
  }

  /** Notes a fault at an item of a key's list, counted from 1; 0 for the key as a whole. */
  public void fault(String key, int item, Sentence expected, Sentence found, Sentence mend) {
    Spot spot =
        item > 0 && raw(key) instanceof TomlArray list ? spotOf(key, list, item) : spotOf(key);
    fault(spot, expected, found, mend);
  }

  private void fault(Spot spot, Sentence expected, Sentence found, Sentence mend) {
    Place at = spot.at();
    page.fault(
        new WrittenFault(page.file(), at.line(), at.column(), spot.place(), expected, found, mend));
  }

  private <T> Optional<T> required(String key, Sentence expected, Optional<T> value) {
    if (raw(key) == null) {
      missing(key, expected);
    }
    return value;
  }

  private void missing(String key, Sentence expected) {
    fault(key, expected, Sentence.of(FileTold.NOTHING), Sentence.of(TomlTold.ADD_KEY, key));
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
