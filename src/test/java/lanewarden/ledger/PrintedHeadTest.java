package lanewarden.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PrintedHeadTest {

  @Test
  void showsTheSequenceAndTwelveHexDigits() {
    Head head = new Head(1234, Sha256.of("abc".getBytes(StandardCharsets.US_ASCII)));
    assertEquals("1234-ba7816bf8f01", head.shortForm());
    assertEquals(head.printed(), PrintedHead.parse(" 1234-ba7816bf8f01\n"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "1234",
        "0-ba7816bf8f01",
        "1-BA7816BF8F01",
        "1-ba7816bf8f0",
        "-1-ba7816bf8f01"
      })
  void refusesTextOfAnotherForm(String text) {
    assertThrows(IllegalArgumentException.class, () -> PrintedHead.parse(text));
  }
}
