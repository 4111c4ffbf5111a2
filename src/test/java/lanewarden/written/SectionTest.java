package lanewarden.written;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SectionTest {

  private static final String DAY_MEND =
      "write year, month and day without quotes, such as day = 2026-03-01";

  @Test
  void readsADayAndAListOfTexts() throws WrittenRefused {
    TomlPage page = page("day = 2026-03-01\nwords = [\n  \"one\", # first\n  'two',\n]\n");
    Section root = page.root();
    assertEquals(Optional.of(LocalDate.of(2026, 3, 1)), root.optionalDate("day"));
    assertEquals(List.of("one", "two"), texts(root, "words"));
    root.closed();
    page.refuseIfFaulty();
  }

  @Test
  void aMissingDayAndAMissingListAreNoFault() throws WrittenRefused {
    TomlPage page = page("");
    assertEquals(Optional.empty(), page.root().optionalDate("day"));
    assertEquals(List.of(), texts(page.root(), "words"));
    page.refuseIfFaulty();
  }

  @Test
  void anEmptyListIsAFaultSinceItSaysNothing() {
    WrittenFault fault = onlyFault("words = []\n", root -> texts(root, "words"));
    assertEquals("a list of one item or more", fault.expected().toString());
    assertEquals("an empty list", fault.found().toString());
  }

  @Test
  void aDayInQuotesIsToldToLoseThem() {
    WrittenFault fault =
        onlyFault("a = 1\nday = \"2026-03-01\"\n", root -> root.optionalDate("day"));
    assertEquals(2, fault.line());
    assertEquals("a date such as 2026-03-01", fault.expected().toString());
    assertEquals(new KeyPlace(TablePath.top(), "day", 0), fault.place());
    assertEquals("\"2026-03-01\"", fault.found().toString());
    assertEquals("write it without quotes", fault.mend().toString());
  }

  @ParameterizedTest
  @CsvSource({"\"1 March 2026\"", "20260301", "2026-03-01T08:00:00Z", "2026-03-01T08:00:00"})
  void anythingElseForADayIsAFault(String written) {
    WrittenFault fault = onlyFault("day = " + written + "\n", root -> root.optionalDate("day"));
    assertEquals(DAY_MEND, fault.mend().toString());
  }

  @Test
  void eachFaultyItemOfAListIsNamedAtItsPlace() {
    List<WrittenFault> faults =
        faults("words = [\"🏹\", # seven\n\n  7,\r\n\t\" \"]\n", root -> texts(root, "words"));
    assertEquals(
        List.of(
            new WrittenFault(
                "book.toml",
                3,
                3,
                new KeyPlace(TablePath.top(), "words", 2),
                Sentence.verbatim("a text"),
                Sentence.verbatim("7"),
                Sentence.verbatim("write it in double quotes")),
            new WrittenFault(
                "book.toml",
                4,
                2,
                new KeyPlace(TablePath.top(), "words", 3),
                Sentence.verbatim("a text"),
                Sentence.verbatim("\" \""),
                Sentence.verbatim("write it out, or take it out of the list"))),
        FaultTable.inEnglish(faults));
  }

  @Test
  void aTextInPlaceOfAListIsAFault() {
    WrittenFault fault = onlyFault("words = \"full draw\"\n", root -> texts(root, "words"));
    assertEquals("a list of texts", fault.expected().toString());
    assertEquals("write words = [\"…\", \"…\"]", fault.mend().toString());
  }

  @Test
  void itemsAreReadOneByOneAndTheParserNamesTheMend() throws WrittenRefused {
    TomlPage page = page("speeds = [\"300 ft/s\", \"290 kph\", \"91 m/s\"]\n");
    List<Section.Item<Speed>> read =
        page.root().optionalItems("speeds", Sentence.verbatim("a speed"), Speed::parse);
    assertEquals(
        List.of(
            new Section.Item<>(1, Speed.parse("300 ft/s")),
            new Section.Item<>(3, Speed.parse("91 m/s"))),
        read);
    WrittenRefused refused = assertThrows(WrittenRefused.class, page::refuseIfFaulty);
    assertEquals(1, refused.faults().size());
    assertEquals("use one of ft/s, m/s", refused.faults().get(0).mend().toString());
    assertEquals(23, refused.faults().get(0).column());
  }

  @Test
  void anUnknownKeyIsToldAllKnownOnesWhereTheyAreFew() {
    WrittenFault fault = onlyFault("place = \"field\"\n", root -> closed(root, "name", "edition"));
    assertEquals("one of name, edition", fault.expected().toString());
    assertEquals(new KeyPlace(TablePath.top(), "place", 0), fault.place());
    assertEquals("the unknown key place", fault.found().toString());
    assertEquals("take the line out", fault.mend().toString());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "draw_weight | did you mean draw-weight?",
        "arrow-mass | take the line out, or write one of least-arrow",
        "arrow-mass-per-weight | take the line out, or write one of least-arrow, draw-weight, most-draw-weight",
        "weather | take the line out"
      })
  void anUnknownKeyAmongManyIsToldThoseLikeIt(String key, String mend) {
    String[] known = "a b c d e f g h i least-arrow draw-weight most-draw-weight".split(" ", -1);
    WrittenFault fault = onlyFault(key + " = 1\n", root -> closed(root, known));
    assertEquals("one of the 12 keys known here", fault.expected().toString());
    assertEquals(new KeyPlace(TablePath.top(), key, 0), fault.place());
    assertEquals(mend, fault.mend().toString());
  }

  private static List<String> texts(Section section, String key) {
    return section.optionalItems(key, Sentence.verbatim("a text"), text -> text).stream()
        .map(Section.Item::value)
        .toList();
  }

  private static void closed(Section section, String... known) {
    for (String key : known) {
      section.has(key);
    }
    section.closed();
  }

  private static WrittenFault onlyFault(String text, Consumer<Section> reading) {
    List<WrittenFault> faults = faults(text, reading);
    assertEquals(1, faults.size());
    return faults.get(0);
  }

  private static List<WrittenFault> faults(String text, Consumer<Section> reading) {
    return assertThrows(
            WrittenRefused.class,
            () -> {
              TomlPage page = page(text);
              reading.accept(page.root());
              page.refuseIfFaulty();
            })
        .faults();
  }

  private static TomlPage page(String text) throws WrittenRefused {
    return TomlPage.read("book.toml", text.getBytes(StandardCharsets.UTF_8));
  }
}
