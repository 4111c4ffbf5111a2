package lanewarden.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lanewarden.written.FaultTable;
import lanewarden.written.WrittenRefused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PracticeFaultsTest {

  private static FaultTable table() throws IOException {
    return new FaultTable("lanewarden/bench/faulty");
  }

  static List<String> faultyFiles() throws IOException {
    return table().files();
  }

  @ParameterizedTest
  @MethodSource("faultyFiles")
  void refusesFaultyFileWithEveryFaultAndItsMend(String file) throws IOException {
    byte[] bytes = table().bytes(file);
    WrittenRefused refused =
        assertThrows(WrittenRefused.class, () -> Practice.read(file, bytes), "it was accepted");
    assertEquals(table().expected(file), FaultTable.inEnglish(refused.faults()));
  }

  @Test
  void everyFaultyFileIsChecked() throws IOException {
    assertEquals(new TreeSet<>(table().filesThere()), new TreeSet<>(faultyFiles()));
  }

  @Test
  void pageOfTheFormatNamesEveryColumnAndNoOther() throws IOException {
    String page = Files.readString(Path.of("src/site/markdown/practice-format.md"));
    String table = page.substring(page.indexOf("| column |"), page.indexOf("## The table"));
    assertEquals(
        Stream.of(PracticeColumn.values()).map(PracticeColumn::title).toList(),
        Pattern.compile("^\\| `([^`]+)` \\|", Pattern.MULTILINE)
            .matcher(table)
            .results()
            .map(found -> found.group(1))
            .toList());
  }
}
