package lanewarden.written;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lists of texts that are changed where comments stand between their items. */
class WrittenListTest {

  private static final String LINES = "[ # all\n  'a', # of a\n  # above b\n  \"b\" # of b\n]";

  @Test
  void aChangedItemIsReplacedWhereItStands() throws WrittenRefused {
    assertEquals(
        "[ # all\n  'a', # of a\n  # above b\n  \"c\" # of b\n]", changed(LINES, "a", "c"));
    assertEquals("['a' ,  \"c\"]", changed("['a' ,  'b']", "a", "c"));
    assertEquals("[\"c\", # of a\n 'b']", changed("['a', # of a\n 'b']", "c", "b"));
  }

  @Test
  void aNewItemGetsALineOfItsOwn() throws WrittenRefused {
    assertEquals(
        "[ # all\n  'a', # of a\n  # above b\n  \"b\", # of b\n  \"c\",\n]",
        changed(LINES, "a", "b", "c"));
    assertEquals(
        "[ # all\n  'a', # of a\n  \"x\",\n  # above b\n  \"b\" # of b\n]",
        changed(LINES, "a", "x", "b"));
    assertEquals(
        "[ # all\n  \"x\",\n  'a', # of a\n  # above b\n  \"b\" # of b\n]",
        changed(LINES, "x", "a", "b"));
  }

  @Test
  void anItemThatGoesTakesItsLineAlong() throws WrittenRefused {
    assertEquals("[ # all\n  # above b\n  \"b\" # of b\n]", changed(LINES, "b"));
    assertEquals("[ # all\n  'a', # of a\n  # above b\n]", changed(LINES, "a"));
    assertEquals("[ # all\n  # above b\n]", changed(LINES));
  }

  @Test
  void anItemThatMovesUpKeepsItsOwnComment() throws WrittenRefused {
    assertEquals("[ # all\n  # above b\n  \"b\", # of b\n  \"c\",\n]", changed(LINES, "b", "c"));
  }

  @Test
  void theLineEndsOfTheFileAreKept() throws WrittenRefused {
    assertEquals("[\r\n\t'a',\r\n\t\"b\",\r\n]", changed("[\r\n\t'a'\r\n]", "a", "b"));
  }

  @Test
  void aListWithoutCommentsMayBeWrittenAnew() throws WrittenRefused {
    assertEquals("[\"a\", \"b # 2\"]", changed("[ 'b # 2' ]", "a", "b # 2"));
    assertEquals("[\"a\", \"b\"]", changed("[]", "a", "b"));
    assertEquals("[]", changed("[1,\n2]"));
    assertEquals("[\"a\"]", changed("['a'\n, 'b']", "a"));
  }

  @Test
  void aListWhoseCommentsWouldLoseTheirItemsIsRefused() {
    for (String list :
        List.of("['a', # of a\n 'b']", "[ # none yet\n]", "[\n'a'\n, # of a\n'b'\n]")) {
      WrittenRefused refused =
          assertThrows(WrittenRefused.class, () -> changed(list, "x", "a", "y", "b"));
      assertEquals(2, refused.faults().get(0).line());
    }
  }

  private static String changed(String list, String... items) throws WrittenRefused {
    String before = "x = 1\nlist = ";
    String after = " # behind";
    byte[] bytes = (before + list + after).getBytes(StandardCharsets.UTF_8);
    WrittenToml changed =
        WrittenToml.read("book.toml", bytes)
            .set(TablePath.top(), "list", Literal.texts(List.of(items)), List.of());
    String text = new String(changed.utf8(), StandardCharsets.UTF_8);
    return text.substring(before.length(), text.length() - after.length());
  }
}
