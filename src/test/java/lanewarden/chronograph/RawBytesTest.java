package lanewarden.chronograph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RawBytesTest {
  @Test
  void everyByteIsReadBackFromItsWriting() {
    Random random = new Random(7);
    for (int round = 0; round < 2_000; round++) {
      byte[] bytes = new byte[random.nextInt(20)];
      random.nextBytes(bytes);
      RawBytes raw = RawBytes.of(bytes);
      assertEquals(raw, RawBytes.parse(raw.escaped()), raw.escaped());
      assertTrue(raw.escaped().chars().allMatch(c -> c >= ' ' && c <= '~'));
    }
  }

  @Test
  void writesLineEndsBackslashesAndHiddenBytesVisibly() {
    assertEquals(
        "\\x20a b\\\\\\r\\n\\x00\\xFF\\x20",
        RawBytes.of(new byte[] {' ', 'a', ' ', 'b', '\\', '\r', '\n', 0, -1, ' '}).escaped());
  }

  @Test
  void isNotChangedThroughTheArrayItWasMadeFrom() {
    byte[] bytes = {1, 2};
    RawBytes raw = RawBytes.of(bytes);
    bytes[0] = 9;
    raw.bytes()[1] = 9;
    assertEquals(RawBytes.of(new byte[] {1, 2}), raw);
    assertNotEquals(RawBytes.of(bytes), raw);
  }

  @ParameterizedTest
  @CsvSource({
    "a\\q, character 2 ('\\'): use \\r",
    "a\\, character 2 ('\\'): use \\r",
    "\\x1, character 1 ('\\'): write two hexadecimal digits",
    "\\xG1, character 1 ('\\'): write two hexadecimal digits",
    "aé, character 2 (U+00E9): write it as \\xHH"
  })
  void refusesAWritingItWouldNotWriteAndSaysWhere(String written, String words) {
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> RawBytes.parse(written));
    assertTrue(String.valueOf(refused.getMessage()).startsWith(words), refused.getMessage());
  }
}
