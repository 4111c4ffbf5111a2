package lanewarden.chronograph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CaptureTest {
  private static final String TEXT =
      """
      # recorded for the tests
      500 first\\r\\n
      @ bib 7
      0 a b\\x00
      1200 \\x20c\\\\

      @ bib 12
      3 d
      """;

  private static Capture read(String text) throws WrittenRefused {
    return Capture.read("c.capture", text.getBytes(StandardCharsets.UTF_8));
  }

  private static List<WrittenFault> faults(String text) {
    return assertThrows(WrittenRefused.class, () -> read(text)).faults();
  }

  @Test
  void readsChunksUnderTheirLabelsInOrder() throws WrittenRefused {
    Capture capture = read(TEXT);
    assertEquals(List.of("bib 7", "bib 12"), capture.labels());
    assertEquals(4, capture.chunks().size());
    assertEquals(
        List.of(
            new Capture.Chunk(0, RawBytes.of(new byte[] {'a', ' ', 'b', 0})),
            new Capture.Chunk(1200, RawBytes.ofText(" c\\"))),
        capture.section("bib 7").chunks());
  }

  @Test
  void isWrittenAsItIsRead() throws WrittenRefused {
    Capture capture = read(TEXT);
    Capture again = read(capture.text());
    assertEquals(capture.chunks(), again.chunks());
    assertEquals(capture.labels(), again.labels());
    assertEquals(capture.text(), again.text());
  }

  @Test
  void aRecordWrittenBitByBitIsACapture() throws WrittenRefused {
    StringBuilder file = new StringBuilder();
    CaptureRecord record = new CaptureRecord(file);
    record.comment("two\nlines");
    record.label("shot 1");
    record.chunk(new Capture.Chunk(20, RawBytes.ofText(" x\r\n")));
    assertEquals(
        List.of(new Capture.Chunk(20, RawBytes.ofText(" x\r\n"))),
        read(file.toString()).section("shot 1").chunks());
  }

  @Test
  void anUnknownLabelIsRefusedWithThoseThereAre() throws WrittenRefused {
    Capture capture = read(TEXT);
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> capture.section("bib 8"));
    assertTrue(String.valueOf(refused.getMessage()).contains("bib 7, bib 12"));
  }

  @Test
  void bytesWithoutTimesAreSaidOnceToBeNoCapture() {
    String line = "$PLWT,00354,0268.8,F,007440,A*1B\r\n";
    List<WrittenFault> faults = faults("# from another program\n" + line.repeat(500));
    assertEquals(1, faults.size());
    assertEquals(2, faults.get(0).line());
    assertTrue(
        faults
            .get(0)
            .found()
            .toString()
            .startsWith("500 lines, none of them so; the first is \"$PLWT,"));
    assertTrue(
        faults.get(0).mend().toString().contains("the bytes alone"),
        faults.get(0).mend().toString());
    assertEquals(501, faults("0 ok\n" + line.repeat(500) + "x").size(), "one line is of a capture");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "hello | 1 | the milliseconds since the chunk before",
        "12 a\\q | 4 | character 2",
        "-1 a | 1 | the milliseconds since the chunk before",
        "9999999 a | 1 | shorten the wait",
        "@x | 1 | write @, a space and the label",
        "@ bib 7 | 3 | give it another name"
      })
  void refusesFaultyLineWithItsPlaceAndItsMend(String line, int column, String mend) {
    WrittenFault fault = faults(TEXT + line + "\n").get(0);
    assertEquals(9, fault.line());
    assertEquals(column, fault.column(), fault.toString());
    assertTrue(fault.mend().toString().contains(mend), fault.toString());
  }

  @Test
  void aFileSavedWithCarriageReturnsIsRefusedNotMended() {
    assertEquals(2, faults("1 a\r\n2 b\r\n").size());
  }

  @Test
  void anEmptyCaptureIsRefused() {
    assertEquals(1, faults("# nothing\n").size());
  }
}
