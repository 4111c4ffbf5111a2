package lanewarden.written;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What two TOML files say differently. That writings are the same value is TOML 1.0.0's word. */
class KeyChangeTest {
  private static List<KeyChange> between(String before, String after) throws WrittenRefused {
    return KeyChange.between(before.replace('|', '\n'), after.replace('|', '\n'));
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '^',
      value = {
        // Keys: dotted keys and tables; strings: basic and literal; integers: underscores, hex
        "[a]|b = 1,a.b = 1",
        "a = 'x',a = \"x\"",
        "a = \"\\u0041\",a = \"A\"",
        "a = 1_000,a = 0x3E8",
        "a = { b = 1 },[a]|b = 1",
        "# one|a = 1|b = 2,b = 2 # two||a=1",
        "[[g]]|a = 1|[[g]]|a = 2,g = [{ a = 1 }; { a = 2 }]"
      })
  void otherWritingsOfTheSameSayNothingElse(String before, String after) throws Exception {
    assertEquals(List.of(), between(before, after.replace(';', ',')));
  }

  @Test
  void eachKeyIsToldWithWhatItWasAndWhatItIs() throws Exception {
    assertEquals(
        List.of(
                new KeyChange("gone", Optional.of("[1, \"x\"]"), Optional.empty()),
                new KeyChange("gate[2].agree", Optional.of("\"1 %\""), Optional.of("\"40 %\"")),
                new KeyChange("new", Optional.empty(), Optional.of("2026-05-30")),
                new KeyChange("sentence.most", Optional.of("500"), Optional.of("\"500\"")))
            .stream()
            .sorted((one, other) -> one.key().compareTo(other.key()))
            .toList(),
        between(
            "gone = [1, 'x']|[sentence]|most = 500|[[gate]]|agree = '1 %'|[[gate]]|agree = '1 %'",
            "new = 2026-05-30|[[gate]]|agree = '1 %'|[[gate]]|agree = '40 %'|[sentence]|most ="
                + " '500'"));
  }

  @Test
  void whatIsNoTomlIsRefused() {
    assertThrows(WrittenRefused.class, () -> between("a = 1", "a = "));
    assertThrows(WrittenRefused.class, () -> between("a = \"\\uD800\"", "a = 1"));
  }
}
