package lanewarden.kiosk.look;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The bundle of texts against the sources that ask for them. */
class TextsTest {
  private static final Pattern QUOTED = Pattern.compile("\"([a-z]+(?:[.-][a-z-]+)*)\"");
  private static final Pattern ASKED = Pattern.compile("(?:\\.of|caution)\\(\\s*\"([a-z.-]+)\"");

  private final Texts texts = Texts.in(Language.ENGLISH);

  @Test
  void everyTextThatIsAskedForIsThere() throws Exception {
    Set<String> missing = found(ASKED);
    missing.removeAll(texts.keys());
    assertEquals(Set.of(), missing);
  }

  @Test
  void everyTextIsUsed() throws Exception {
    Set<String> unused = new TreeSet<>(texts.keys());
    unused.removeAll(found(QUOTED));
    assertEquals(Set.of(), unused);
  }

  @Test
  void numbersAreWrittenWithoutGrouping() {
    assertEquals("Line, 12345 not written yet", texts.of("line.unwritten", "Line", 12345));
  }

  private static Set<String> found(Pattern pattern) throws Exception {
    Set<String> keys = new TreeSet<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java/lanewarden/kiosk"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        Matcher matcher = pattern.matcher(Files.readString(file));
        while (matcher.find()) {
          keys.add(matcher.group(1));
        }
      }
    }
    return keys;
  }
}
