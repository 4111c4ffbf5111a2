package lanewarden.roster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.util.List;
import java.util.TreeSet;
import lanewarden.written.FaultTable;
import lanewarden.written.WrittenRefused;
import lanewarden.written.WrittenText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RosterFaultsTest {

  private static FaultTable table() throws IOException {
    return new FaultTable("lanewarden/roster/faulty");
  }

  static List<String> faultyFiles() throws IOException {
    return table().files();
  }

  @ParameterizedTest
  @MethodSource("faultyFiles")
  void refusesFaultyFileWithEveryFaultAndItsMend(String file) throws IOException {
    byte[] bytes = table().bytes(file);
    WrittenRefused refused =
        assertThrows(WrittenRefused.class, () -> Roster.read(file, bytes), "it was accepted");
    assertEquals(table().expected(file), FaultTable.inEnglish(refused.faults()));
  }

  @Test
  void everyFaultyFileIsChecked() throws IOException {
    assertEquals(new TreeSet<>(table().filesThere()), new TreeSet<>(faultyFiles()));
  }

  @Test
  void refusesFileLargerThanAnyoneWrites() {
    byte[] bytes = new byte[WrittenText.LARGEST + 1];
    assertThrows(WrittenRefused.class, () -> Roster.read("large.csv", bytes));
  }
}
