package lanewarden.written;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlTable;

/** Random files, each changed in every way: the parser reads back the change and nothing else. */
class WrittenTomlPropertyTest {

  private static final List<String> TEXTS =
      List.of(
          "300 ft/s",
          "a \"b\" # c",
          "é🏹",
          "two\nlines\t\u0007\u007f\u0085\u2028",
          "\\",
          "",
          "x".repeat(60));

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aKeyThatIsSetReadsBackAndNothingElseChanges(long seed) throws WrittenRefused {
    RandomBook book = new RandomBook(seed);
    Random random = new Random(~seed);
    for (TablePath table : tables(book)) {
      for (String key : twoKeys(random)) {
        Literal literal = literal(random);
        List<String> order = random.nextBoolean() ? RandomBook.KEYS : List.of();
        WrittenToml changed;
        try {
          changed = read(book).set(table, key, literal, order);
        } catch (WrittenRefused refused) {
          assertTrue(refused.getMessage().contains("a list with one item a line"), book::text);
          continue;
        }
        Map<String, Object> expected = tree(book.text());
        table(expected, table).put(key, literal.value());
        assertEquals(expected, tree(text(book, changed)), () -> told(book, table, key, literal));
        String[] around = book.around(table, key);
        if (around == null) {
          assertTrue(
              oneLineMore(book.text(), text(book, changed)), () -> told(book, table, key, literal));
        } else {
          assertTrue(
              text(book, changed).startsWith(around[0]), () -> told(book, table, key, literal));
          assertTrue(
              text(book, changed).endsWith(around[1]), () -> told(book, table, key, literal));
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aKeyThatIsRemovedIsGoneAndEveryOtherLineStays(long seed) throws WrittenRefused {
    RandomBook book = new RandomBook(seed);
    Random random = new Random(~seed);
    for (TablePath table : tables(book)) {
      for (String key : twoKeys(random)) {
        WrittenToml changed = read(book).remove(table, key);
        Map<String, Object> expected = tree(book.text());
        table(expected, table).remove(key);
        assertEquals(expected, tree(text(book, changed)), () -> told(book, table, key, ""));
        if (book.around(table, key) == null) {
          assertEquals(book.text(), text(book, changed));
        }
        assertKeeps(book.text(), text(book, changed), book.saidBut(table, key));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aKeyThatIsSetAndRemovedLeavesTheFileAsItWas(long seed) throws WrittenRefused {
    RandomBook book = new RandomBook(seed);
    for (TablePath table : tables(book)) {
      WrittenToml with = read(book).set(table, "fresh", Literal.whole(1), List.of());
      assertEquals(
          book.text(), text(book, with.remove(table, "fresh")), () -> told(book, table, "", ""));
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void anAddedTableIsEmptyAndComesWhereItIsWanted(long seed) throws WrittenRefused {
    RandomBook book = new RandomBook(seed);
    WrittenToml read = read(book);
    for (int n = 1; n <= book.divisions(); n++) {
      TablePath nth = TablePath.nth("division", n);
      Map<String, Object> expected = tree(book.text());
      list(expected).add(n, new HashMap<>());
      WrittenToml changed = n == book.divisions() ? read.add("division") : read.addAfter(nth);
      assertEquals(expected, tree(text(book, changed)), () -> told(book, nth, "", ""));
      assertKeeps(text(book, changed), book.text(), book.text().lines().toList());
    }
    WrittenToml more = read.add("extra");
    assertEquals(List.of(Map.of()), tree(text(book, more)).get("extra"));
    assertEquals(book.text(), text(book, more.remove(TablePath.nth("extra", 1))), book::text);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aCopiedTableIsTwiceThere(long seed) throws WrittenRefused {
    RandomBook book = new RandomBook(seed);
    for (int n = 1; n <= book.divisions(); n++) {
      TablePath nth = TablePath.nth("division", n);
      Map<String, Object> expected = tree(book.text());
      list(expected).add(n, list(expected).get(n - 1));
      WrittenToml changed = read(book).copy(nth);
      assertEquals(expected, tree(text(book, changed)), () -> told(book, nth, "", ""));
      assertKeeps(text(book, changed), book.text(), book.text().lines().toList());
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aRemovedTableIsGoneAndEveryOtherLineStays(long seed) throws WrittenRefused {
    RandomBook book = new RandomBook(seed);
    for (int n = 1; n <= book.divisions(); n++) {
      TablePath nth = TablePath.nth("division", n);
      Map<String, Object> expected = tree(book.text());
      list(expected).remove(n - 1);
      if (list(expected).isEmpty()) {
        expected.remove("division");
      }
      WrittenToml changed = read(book).remove(nth);
      assertEquals(expected, tree(text(book, changed)), () -> told(book, nth, "", ""));
      assertKeeps(book.text(), text(book, changed), book.saidBut(nth, ""));
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aFileThatIsOnlyReadIsTheSameBytes(long seed) throws WrittenRefused {
    RandomBook book = new RandomBook(seed);
    assertArrayEquals(bytes(book), read(book).utf8());
  }

  /** The shorter has only lines of the longer, in their order, and has all that are named. */
  private static void assertKeeps(String longer, String shorter, List<String> named) {
    assertTrue(isWithin(shorter.lines().toList(), longer.lines().toList()), longer);
    assertTrue(isWithin(named, shorter.lines().toList()), longer);
  }

  private static boolean isWithin(List<String> few, List<String> many) {
    int found = 0;
    for (String line : many) {
      found += found < few.size() && few.get(found).equals(line) ? 1 : 0;
    }
    return found == few.size();
  }

  private static boolean oneLineMore(String before, String after) {
    List<String> was = before.lines().toList();
    List<String> is = after.lines().toList();
    return is.size() == was.size() + 1
        && isWithin(was, is)
        && before.contains("\r\n") == after.contains("\r\n")
        && before.endsWith("\n") == after.endsWith("\n");
  }

  private static List<String> twoKeys(Random random) {
    List<String> keys = new ArrayList<>(RandomBook.KEYS);
    Collections.shuffle(keys, random);
    return keys.subList(0, 2);
  }

  private static Literal literal(Random random) {
    return switch (random.nextInt(4)) {
      case 0 -> Literal.text(TEXTS.get(random.nextInt(TEXTS.size())));
      case 1 -> Literal.whole(random.nextInt());
      case 2 -> Literal.day(LocalDate.of(random.nextInt(10_000), 2, 28));
      default ->
          Literal.texts(
              random
                  .ints(random.nextInt(5), 0, 3)
                  .mapToObj(i -> List.of("a", "b", "c # ]").get(i))
                  .toList());
    };
  }

  private static List<TablePath> tables(RandomBook book) {
    List<TablePath> tables = new ArrayList<>(List.of(TablePath.top(), TablePath.of("event")));
    for (int n = 1; n <= book.divisions(); n++) {
      tables.add(TablePath.nth("division", n));
    }
    return tables;
  }

  private static WrittenToml read(RandomBook book) throws WrittenRefused {
    return WrittenToml.read("book.toml", bytes(book));
  }

  private static byte[] bytes(RandomBook book) {
    return (book.mark() + book.text()).getBytes(StandardCharsets.UTF_8);
  }

  /** The changed text, behind the byte-order mark that it must still have. */
  private static String text(RandomBook book, WrittenToml changed) {
    String text = new String(changed.utf8(), StandardCharsets.UTF_8);
    assertEquals(book.mark(), text.startsWith("\uFEFF") ? "\uFEFF" : "");
    return text.substring(book.mark().length());
  }

  private static String told(RandomBook book, TablePath table, String key, Object value) {
    return table + "." + key + " = " + value + " in\n" + book.text();
  }

  /** What the parser reads, as plain maps and lists. */
  private static Map<String, Object> tree(String text) {
    TomlParseResult toml = Toml.parse(text);
    assertFalse(toml.hasErrors(), () -> toml.errors() + " in\n" + text);
    return plain(toml);
  }

  private static Map<String, Object> plain(TomlTable table) {
    Map<String, Object> plain = new HashMap<>();
    table.keySet().forEach(key -> plain.put(key, plain(table.get(List.of(key)))));
    return plain;
  }

  private static Object plain(Object value) {
    if (value instanceof TomlTable table) {
      return plain(table);
    }
    if (value instanceof TomlArray array) {
      List<Object> items = new ArrayList<>();
      array.toList().forEach(item -> items.add(plain(item)));
      return items;
    }
    return value;
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> table(Map<String, Object> tree, TablePath path) {
    if (path.name() == null) {
      return tree;
    }
    return path.nth() == 0
        ? (Map<String, Object>) tree.get(path.name())
        : (Map<String, Object>) list(tree).get(path.nth() - 1);
  }

  @SuppressWarnings("unchecked")
  private static List<Object> list(Map<String, Object> tree) {
    return (List<Object>) tree.get("division");
  }
}
