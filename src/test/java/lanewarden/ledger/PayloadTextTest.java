package lanewarden.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PayloadTextTest {
  private static final String PREV = "A".repeat(43);
  private static final String GOOD =
      "{\"v\":1,\"station\":\"Gate 1\",\"seq\":12,\"prev\":\""
          + PREV
          + "\",\"at\":\"2026-05-01T12:00:00.123Z\",\"mono\":3.000001,\"kind\":\"reading\",\"body\":{\"a\":1}}";

  private static Payload read(String text) throws Malformed {
    return new PayloadText().read(text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void writesWhatItReads() throws Malformed {
    assertEquals(GOOD, new String(PayloadText.write(read(GOOD)), StandardCharsets.UTF_8));
  }

  // Each line: what stands in the good text, and what stands there instead.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"v\":1|\"v\":2",
        "\"v\":1|\"v\": 1",
        "\"v\":1,|",
        "Gate 1|",
        "Gate 1|Gate\\u0031",
        "\"seq\":12|\"seq\":012",
        "\"seq\":12|\"seq\":0",
        "\"seq\":12|\"seq\":-12",
        "\"seq\":12|\"seq\":12.0",
        "\"seq\":12|\"seq\":1234567890123456789",
        "AAA\"|AAB\"",
        "AAA\"|AA\"",
        "12:00:00.123Z|12:00:00Z",
        "12:00:00.123Z|12:00:00.123+00:00",
        "3.000001|3",
        "3.000001|3.00001",
        "3.000001|03.000001",
        "3.000001|-3.000001",
        "3.000001|3.0000e1",
        "3.000001|.000001",
        "\"reading\"|\"Reading\"",
        "\"reading\"|\"\"",
        "{\"a\":1}}|{\"a\":1}",
        "{\"a\":1}}|{\"a\":1},\"b\":2}",
        "{\"a\":1}}|{\"a\":1,\"a\":2}}",
        "{\"a\":1}}|{\"a\":1}}}",
        "{\"a\":1}}|[]}",
        "{\"a\":1}}|}",
        "\"kind\"|\"body\""
      })
  void refusesPayloadsOfAnotherForm(String instead, String of) {
    String other = GOOD.replace(instead, of == null ? "" : of);
    assertThrows(Malformed.class, () -> read(other), other);
  }

  @Test
  void refusesPayloadsThatAreNotUtf8() {
    byte[] latin1 = GOOD.replace("Gate", "G\u00e4te").getBytes(StandardCharsets.ISO_8859_1);
    assertThrows(Malformed.class, () -> new PayloadText().read(latin1));
  }

  @Test
  void refusesEveryShorterText() {
    for (int length = 0; length < GOOD.length(); length++) {
      String cut = GOOD.substring(0, length);
      assertThrows(Malformed.class, () -> read(cut), cut);
    }
  }
}
