package lanewarden.written;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tomlj.Toml;

class LiteralTest {

  @Test
  void everyCharacterOfATextReadsBack() {
    StringBuilder all = new StringBuilder();
    for (int c = 0; c < 0x1_1000; c++) {
      if (c < Character.MIN_SURROGATE || c > Character.MAX_SURROGATE) {
        all.appendCodePoint(c);
      }
    }
    String toml = "a = " + Literal.text(all.toString()).toml();
    assertEquals(1, toml.lines().count());
    assertEquals(all.toString(), Toml.parse(toml).getString("a"));
  }

  @Test
  void writesOnOneLineAsAPersonWould() {
    assertEquals("\"3 % of \\\"it\\\"\"", Literal.text("3 % of \"it\"").toml());
    assertEquals("\"one\\ntwo\\t\\\\\"", Literal.text("one\ntwo\t\\").toml());
    assertEquals("-3", Literal.whole(-3).toml());
    assertEquals("2026-03-01", Literal.day(LocalDate.of(2026, 3, 1)).toml());
    assertEquals("[\"a\", \"b\"]", Literal.texts(List.of("a", "b")).toml());
    assertEquals("[]", Literal.texts(List.of()).toml());
  }

  @Test
  void refusesWhatNoFileCanHold() {
    assertThrows(IllegalArgumentException.class, () -> Literal.text("\uD83C"));
    assertThrows(IllegalArgumentException.class, () -> Literal.texts(List.of("a", "\uDFF9")));
    assertThrows(IllegalArgumentException.class, () -> Literal.day(LocalDate.of(10_000, 1, 1)));
    assertThrows(IllegalArgumentException.class, () -> Literal.day(LocalDate.of(-1, 1, 1)));
  }

  @Test
  void aListKeepsItsOwnCopy() {
    List<String> texts = new ArrayList<>(List.of("a"));
    Literal literal = Literal.texts(texts);
    texts.add("b");
    assertEquals(List.of("a"), literal.value());
  }
}
