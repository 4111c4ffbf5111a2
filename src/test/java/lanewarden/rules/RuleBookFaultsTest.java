package lanewarden.rules;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import lanewarden.written.FaultTable;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RuleBookFaultsTest {

  private static FaultTable table() throws IOException {
    return new FaultTable("lanewarden/rules/faulty");
  }

  static List<String> faultyFiles() throws IOException {
    return table().files();
  }

  @ParameterizedTest
  @MethodSource("faultyFiles")
  void refusesFaultyFileWithEveryFaultAndItsMend(String file) throws IOException {
    byte[] bytes = table().bytes(file);
    WrittenRefused refused =
        assertThrows(WrittenRefused.class, () -> RuleBook.read(file, bytes), "it was accepted");
    assertEquals(table().expected(file), FaultTable.inEnglish(refused.faults()));
  }

  @Test
  void everyFaultyFileIsChecked() throws IOException {
    assertEquals(new TreeSet<>(table().filesThere()), new TreeSet<>(faultyFiles()));
  }

  @Test
  void refusesFileLargerThanAnyoneWrites() {
    byte[] bytes = new byte[10_000_000];
    Arrays.fill(bytes, (byte) '\n');
    WrittenRefused refused =
        assertThrows(WrittenRefused.class, () -> RuleBook.read("large.toml", bytes));
    assertEquals("at most 1048576 bytes", refused.faults().get(0).expected().toString());
    assertEquals("10000000 bytes", refused.faults().get(0).found().toString());
  }

  @Test
  void refusesMoreDivisionsThanAnyEventHasWithOneFault() {
    byte[] bytes = ("format = 1\n" + "[[division]]\n".repeat(70_000)).getBytes(UTF_8);
    WrittenRefused refused =
        assertThrows(WrittenRefused.class, () -> RuleBook.read("long.toml", bytes));
    assertEquals(
        List.of(
            "long.toml:2:1: expected division to be at most 500 [[division]] tables, found"
                + " 70000; mend: check that this is the right file, and cut it down"),
        refused.faults().stream().map(WrittenFault::toString).toList());
  }

  @Test
  void refusesListLongerThanAnyoneWritesWithoutReadingIt() {
    String list = "conditions = [" + "\"full draw\",".repeat(80_000) + "]\n";
    byte[] bytes = ("format = 1\n[[division]]\n" + list).getBytes(UTF_8);
    WrittenRefused refused =
        assertThrows(WrittenRefused.class, () -> RuleBook.read("long.toml", bytes));
    assertTrue(
        refused.faults().stream()
            .anyMatch(fault -> fault.found().toString().equals("80000 items")));
  }

  /**
   * Whatever is wrong, an organizer is told where, what was expected, what stands there, a mend.
   */
  @ParameterizedTest
  @MethodSource("faultyFiles")
  void everyFaultSaysAllFourThings(String file) throws IOException {
    for (WrittenFault fault : table().expected(file)) {
      assertFalse(
          fault.expected().toString().isBlank() || fault.found().toString().isBlank(),
          fault::toString);
      assertTrue(fault.mend().toString().matches("[a-z].{5,}"), fault::toString);
    }
  }
}
