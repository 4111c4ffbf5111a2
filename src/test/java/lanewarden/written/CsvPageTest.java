package lanewarden.written;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CsvPageTest {

  static List<String> cases() throws IOException {
    return Files.readAllLines(Path.of("src/test/resources/lanewarden/written/rfc4180.txt")).stream()
        .filter(line -> !line.startsWith("#"))
        .toList();
  }

  /** RFC 4180 section 2 (from memory): the cases of {@code rfc4180.txt}. */
  @ParameterizedTest
  @MethodSource("cases")
  void readsCsvAsTheStandardWritesIt(String line) {
    String[] part = line.split(" \\| ", -1);
    CsvFaults faults = new CsvFaults("test");
    String text = part[2].replace("\\r", "\r").replace("\\n", "\n");
    List<List<CsvCell>> rows = CsvPage.rows(text, faults);
    assertEquals(part[3], faults.none() ? shown(rows) : "refused");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void knowsThePlaceOfEveryFieldForEveryLineEnd(String end) {
    String text = String.join(end, "a,bc,d", "", "\"x,\"\"y\",é𝒜,\"1" + end + "2\",z", "last");
    String places =
        CsvPage.rows(text, new CsvFaults("test")).stream()
            .flatMap(List::stream)
            .map(cell -> cell.line() + ":" + cell.column())
            .collect(Collectors.joining(" "));
    assertEquals("1:1 1:3 1:6 3:1 3:9 3:12 4:4 5:1", places);
  }

  @Test
  void passesOverEmptyLines() {
    assertEquals("[a][b] / [c][d]", shown(CsvPage.rows("a,b\n\n\nc,d\n\n", new CsvFaults("test"))));
  }

  @Test
  void readsTheRowsBeforeAQuoteThatGoesWrong() {
    CsvFaults faults = new CsvFaults("test");
    assertEquals("[a][b]", shown(CsvPage.rows("a,b\n\"c,d\ne,f\n", faults)));
    assertFalse(faults.none());
  }

  @Test
  void oneVeryLongLineIsReadInTime() {
    String commas = ",".repeat(1 << 20);
    assertTimeoutPreemptively(
        Duration.ofSeconds(20),
        () ->
            assertEquals(
                commas.length() + 1, CsvPage.rows(commas, new CsvFaults("test")).get(0).size()));
  }

  private static String shown(List<List<CsvCell>> rows) {
    return rows.stream()
        .map(row -> row.stream().map(c -> "[" + c.text() + "]").collect(Collectors.joining()))
        .collect(Collectors.joining(" / "))
        .replace("\r", "\\r")
        .replace("\n", "\\n");
  }
}
