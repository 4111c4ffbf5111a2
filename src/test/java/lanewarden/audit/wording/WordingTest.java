package lanewarden.audit.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class WordingTest {

  @Test
  void drawsRunsOfEntriesTogether() {
    assertEquals("3, 5–8, 10, 11", Wording.numbers(List.of(3L, 5L, 6L, 7L, 8L, 10L, 11L)));
  }

  @Test
  void saysNoneWhereThereIsNoEntry() {
    assertEquals("none", Wording.numbers(List.of()));
  }

  @Test
  void showsBytesByTheirEscapes() {
    assertEquals(
        "$A\\\\\\r\\n\\x00\\xFF", Wording.bytes(new byte[] {'$', 'A', '\\', '\r', '\n', 0, -1}));
  }

  @Test
  void countsInTheRightNumber() {
    assertEquals("1 check", Wording.count(1, "check"));
    assertEquals("2,000 checks", Wording.count(2000, "check"));
    assertEquals("0 entries", Wording.count(0, "entry", "entries"));
  }
}
