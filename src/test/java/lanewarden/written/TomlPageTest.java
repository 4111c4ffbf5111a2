package lanewarden.written;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.Test;

class TomlPageTest {

  @Test
  void readsEveryKindOfValue() throws WrittenRefused {
    TomlPage page =
        page("name = \"Oak\"\nshots = 3\nlimit = \"300 ft/s\"\n[inner]\nword = \"mean\"\n");
    Section root = page.root();
    assertEquals(Optional.of("Oak"), root.text("name"));
    assertEquals(OptionalInt.of(3), root.whole("shots", 1, 9));
    assertEquals(
        Optional.of(Speed.parse("300 ft/s")), root.value("limit", "a speed", Speed::parse));
    Section inner = root.section("inner").orElseThrow();
    assertEquals(Optional.of(1), inner.choice("word", Map.of("mean", 1, "median", 2)));
    root.closed();
    inner.closed();
    assertFalse(page.faulty());
    page.refuseIfFaulty();
  }

  @Test
  void missingOptionalValuesAreNoFault() throws WrittenRefused {
    Section root = page("").root();
    assertEquals(Optional.empty(), root.optionalText("a"));
    assertEquals(OptionalInt.empty(), root.optionalWhole("b", 0, 1));
    assertEquals(Optional.empty(), root.optionalChoice("d", Map.of("x", 1)));
    assertEquals(List.of(), root.sections("e"));
    assertFalse(root.has("f"));
  }

  @Test
  void everyFaultIsListedInTheOrderOfTheFile() throws WrittenRefused {
    TomlPage page = page("nmae = \"Oak\"\nshots = 30\nlimit = \"300 kph\"\nword = \"maen\"\n");
    Section root = page.root();
    root.choice("word", Map.of("mean", 1));
    root.value("limit", "a speed", Speed::parse);
    root.whole("shots", 1, 9);
    root.optionalText("name");
    root.closed();
    WrittenRefused refused = assertThrows(WrittenRefused.class, page::refuseIfFaulty);
    assertEquals(List.of(1, 2, 3, 4), refused.faults().stream().map(WrittenFault::line).toList());
    assertEquals("did you mean name?", refused.faults().get(0).mend().toString());
    assertEquals("a whole number from 1 to 9", expected(refused, 1));
    assertEquals("use one of ft/s, m/s", refused.faults().get(2).mend().toString());
    assertEquals("did you mean \"mean\"?", refused.faults().get(3).mend().toString());
  }

  @Test
  void missingKeyIsAFaultAtItsSection() throws WrittenRefused {
    TomlPage page = page("a = 1\n\n[[division]]\nname = \"Open\"\n");
    Section division = page.root().sections("division").get(0);
    assertEquals(Optional.empty(), division.text("code"));
    WrittenRefused refused = assertThrows(WrittenRefused.class, page::refuseIfFaulty);
    WrittenFault fault = refused.faults().get(0);
    assertEquals(3, fault.line());
    assertEquals("nothing", fault.found().toString());
    assertTrue(
        fault.toString().startsWith("book.toml:3:1: expected division[1].code"), fault::toString);
  }

  @Test
  void wrongKindOfValueIsAFault() throws WrittenRefused {
    TomlPage page = page("t = 3\nw = \"3\"\nv = 300\nc = 2\ns = 1\nl = [1, 2]\nblank = \" \"\n");
    Section root = page.root();
    root.text("t");
    root.whole("w", 0, 9);
    root.value("v", "a speed", Speed::parse);
    root.choice("c", Map.of("mean", 1));
    root.section("s");
    root.section("none");
    root.sections("l");
    root.text("blank");
    assertEquals(8, assertThrows(WrittenRefused.class, page::refuseIfFaulty).faults().size());
  }

  @Test
  void syntaxFaultsCarryTheirPlace() {
    WrittenRefused refused =
        assertThrows(WrittenRefused.class, () -> page("name = \"Oak\nshots == 3\n"));
    assertEquals(1, refused.faults().get(0).line());
    assertEquals("book.toml", refused.file());
    assertTrue(refused.faults().size() >= 1);
  }

  @Test
  void refusesWhatIsNotUtf8WithItsPlace() {
    byte[] latin = "a = 1\nb = \"é\"\n".getBytes(StandardCharsets.ISO_8859_1);
    WrittenRefused refused =
        assertThrows(WrittenRefused.class, () -> TomlPage.read("book.toml", latin));
    WrittenFault fault = refused.faults().get(0);
    assertEquals(2, fault.line());
    assertEquals(6, fault.column());
    assertEquals("byte 0xE9, which is not UTF-8 here", fault.found().toString());
  }

  @Test
  void refusesAFileThatNobodyWroteByHand() {
    assertThrows(WrittenRefused.class, () -> TomlPage.read("big.toml", new byte[10_000_000]));
  }

  @Test
  void takesOffAByteOrderMark() throws WrittenRefused {
    assertEquals(Optional.of("Oak"), page("\uFEFFname = \"Oak\"\n").root().text("name"));
  }

  @Test
  void nearMatchIsGivenOnlyWhenItIsNear() {
    assertEquals(
        Optional.of("tolerance"), NearMatch.of("tolerence", List.of("limit", "tolerance")));
    assertEquals(Optional.empty(), NearMatch.of("zebra", List.of("limit", "tolerance")));
  }

  @Test
  void controlCharactersOfTheFileNeverReachTheTerminal() throws WrittenRefused {
    TomlPage page = page("word = \"\\u001b[31mred\\n\"\n\"\\u001b[2J\" = 1\n");
    page.root().choice("word", Map.of("mean", 1));
    page.root().closed();
    WrittenRefused refused = assertThrows(WrittenRefused.class, page::refuseIfFaulty);
    assertEquals("\"\\u001B[31mred\\n\"", refused.faults().get(0).found().toString());
    for (WrittenFault fault : refused.faults()) {
      assertTrue(WrittenText.isPlain(fault.toString()), fault::toString);
    }
  }

  private static String expected(WrittenRefused refused, int index) {
    return refused.faults().get(index).expected().toString();
  }

  private static TomlPage page(String text) throws WrittenRefused {
    return TomlPage.read("book.toml", text.getBytes(StandardCharsets.UTF_8));
  }
}
