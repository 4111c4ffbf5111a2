package lanewarden.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewarden.written.WrittenRefused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The books in {@code config} are read as they are, and teach every key there is. */
class ExampleBooksTest {
  private static final Path TO_COPY = Path.of("config/rule-book.toml");
  private static final Pattern LINE = Pattern.compile("(# )?([a-z-]+) = .*");
  private static final Pattern KNOWN = Pattern.compile("one of the ([0-9]+) keys known here");

  static List<Path> books() throws IOException {
    try (Stream<Path> themes = Files.list(Path.of("config/rule-books"))) {
      return Stream.concat(Stream.of(TO_COPY), themes.sorted()).toList();
    }
  }

  @ParameterizedTest
  @MethodSource("books")
  void exampleIsReadAndSaysItself(Path book) throws Exception {
    for (Division division : RuleBook.read(book.toString(), Files.readAllBytes(book)).divisions()) {
      assertTrue(
          division.sentences().stream().allMatch(s -> s.toString().endsWith(".")),
          division.inWords());
    }
  }

  @Test
  void everyKeyIsUsedInSomeExample() throws Exception {
    Set<String> used = new TreeSet<>();
    for (Path book : books()) {
      Files.readAllLines(book).stream()
          .filter(line -> !line.startsWith("#"))
          .forEach(line -> key(line).ifPresent(used::add));
    }
    used.remove("format");
    assertEquals(keysToCopy(), used);
  }

  @Test
  void exampleToCopyExplainsExactlyTheKeysThereAre() throws Exception {
    Set<String> explained = keysToCopy();
    for (String key : explained) {
      List<String> faults = faults(division(key + " = \"\"\n"));
      assertTrue(faults.stream().noneMatch(f -> f.contains("the unknown key")), faults::toString);
    }
    String fault = String.join("\n", faults(division("zzzzzz = 1\n")));
    Matcher known = KNOWN.matcher(fault);
    assertTrue(known.find(), fault);
    assertEquals(Integer.parseInt(known.group(1)), explained.size());
  }

  /**
   * Bands and a guard band are set about a speed limit alone, so there are two ways to use all the
   * rest.
   */
  @ParameterizedTest
  @ValueSource(strings = {"energy", "bands|acceptance|guard"})
  void everyLineOfTheExampleToCopyCanBeUsedAsItStands(String but) throws Exception {
    List<String> lines = new ArrayList<>();
    for (String line : Files.readAllLines(TO_COPY)) {
      String key = key(line).orElse("");
      boolean kept = !line.startsWith("# ") || key.isEmpty() || key.matches("(" + but + ").*");
      if (!kept) {
        lines.removeIf(active -> active.startsWith(key + " = ") && key.equals("tolerance"));
      }
      lines.add(kept ? line : line.substring(2));
    }
    String book = String.join("\n", lines);
    assertEquals(List.of(), faults(book), book);
  }

  /** Every key of a division, once; the event has no others. */
  static Set<String> keysToCopy() throws IOException {
    Set<String> keys = new TreeSet<>();
    for (String line : Files.readAllLines(TO_COPY)) {
      key(line).ifPresent(keys::add);
    }
    keys.remove("format");
    return keys;
  }

  private static Optional<String> key(String line) {
    Matcher matcher = LINE.matcher(line);
    return matcher.matches() ? Optional.of(matcher.group(2)) : Optional.empty();
  }

  private static String division(String more) {
    return "format = 1\n[event]\nname = \"E\"\nedition = \"1\"\n[[division]]\n" + more;
  }

  private static List<String> faults(String book) {
    try {
      RuleBook.read("test", book.getBytes(StandardCharsets.UTF_8));
      return List.of();
    } catch (WrittenRefused e) {
      return e.faults().stream().map(Object::toString).collect(Collectors.toList());
    }
  }
}
