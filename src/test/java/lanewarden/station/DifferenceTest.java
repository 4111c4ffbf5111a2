package lanewarden.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lanewarden.quantity.Sentence;
import lanewarden.rules.Division;
import lanewarden.rules.RuleBook;
import org.junit.jupiter.api.Test;

/** What differs between the same division of two rule books. */
class DifferenceTest {
  private static Division first(String written) throws Exception {
    return RuleBook.read("rules.toml", written.getBytes(StandardCharsets.UTF_8)).divisions().get(0);
  }

  @Test
  void whatOnlyOneOfThemDemandsIsToldOfEach() throws Exception {
    String written = Files.readString(Path.of("demo-data/rule-book.toml"));
    Division here = first(written);
    Division there = first(written.replaceFirst("300 ft/s", "290 ft/s"));
    Difference difference = Difference.between(here, there);
    assertEquals(
        List.of("At most 300 ft/s plus 3 % (309 ft/s)."),
        difference.onlyFirst().stream().map(Sentence::toString).toList());
    assertEquals(
        List.of("At most 290 ft/s plus 3 % (298.7 ft/s)."),
        difference.onlySecond().stream().map(Sentence::toString).toList());
    assertFalse(difference.isNone());
    assertTrue(Difference.between(here, first(written)).isNone());
  }
}
