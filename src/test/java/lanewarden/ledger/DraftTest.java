package lanewarden.ledger;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DraftTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "[]",
        "1",
        "null",
        "{",
        "{}}",
        "{} {}",
        "{\"a\":1,\"a\":2}",
        "{\"o\":{\"a\":1,\"a\":2}}",
        "{'a':1}",
        "{\"a\":NaN}",
        "{\"a\":01}",
        "{\"a\":1.}",
        "{\"a\":\"\\x\"}",
        "{\"a\":\"\n\u0001\"}",
        "{\"a\":\"line\nbreak\"}",
        "{/* */}",
        "\ufeff{}"
      })
  void refusesBodiesThatAreNotOneCleanObject(String body) {
    assertThrows(IllegalArgumentException.class, () -> SampleLedger.draft("reading", body));
  }

  @Test
  void refusesBodiesInOtherEncodings() {
    String json = "{\"a\":\"\u00e9\"}";
    for (var charset :
        new java.nio.charset.Charset[] {
          StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE, StandardCharsets.ISO_8859_1
        }) {
      assertThrows(
          IllegalArgumentException.class,
          () -> new Draft("reading", json.getBytes(charset)),
          charset.name());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "Reading", "1reading", "-reading", "read ing", "r\u00e9ading", "a_b"})
  void refusesKindsThatAreNotLowerCaseWords(String kind) {
    assertThrows(IllegalArgumentException.class, () -> SampleLedger.draft(kind, "{}"));
  }

  @Test
  void refusesABodyThatIsTooLong() {
    String body = "{\"a\":\"" + "x".repeat(Draft.LONGEST_BODY) + "\"}";
    assertThrows(IllegalArgumentException.class, () -> SampleLedger.draft("reading", body));
  }

  @Test
  void keepsTheLongestBody(@org.junit.jupiter.api.io.TempDir java.nio.file.Path folder)
      throws LedgerException {
    String body = "{\"a\":\"" + "x".repeat(Draft.LONGEST_BODY - 8) + "\"}";
    SampleLedger sample = new SampleLedger(folder.resolve("event.ledger"));
    try (Ledger ledger = sample.create()) {
      ledger.append(sample.organizer, java.util.List.of(SampleLedger.draft("roster", body)));
      assertEquals(Draft.LONGEST_BODY, ledger.entries().get(1).body().length);
    }
  }

  @Test
  void isNotChangedThroughTheArrayItWasMadeFrom() {
    byte[] body = "{}".getBytes(StandardCharsets.US_ASCII);
    Draft draft = new Draft("reading", body);
    body[0] = 'x';
    draft.body()[1] = 'x';
    assertArrayEquals("{}".getBytes(StandardCharsets.US_ASCII), draft.body());
  }
}
