package lanewarden.written;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WrittenTomlTest {

  private static final List<String> NO_ORDER = List.of();
  private static final TablePath TOP = TablePath.top();
  private static final TablePath FIRST = TablePath.nth("division", 1);
  private static final TablePath SECOND = TablePath.nth("division", 2);

  @Test
  void aChangedValueKeepsTheColumnOfTheCommentBehindIt() throws WrittenRefused {
    WrittenToml toml = read("a = \"3 %\"      # so\nb = \"3 %\" # so\n");
    assertEquals(
        "a = \"2.5 ft/s\" # so\nb = \"3 %\" # so\n",
        text(toml.set(TOP, "a", Literal.text("2.5 ft/s"), NO_ORDER)));
    assertEquals(
        "a = \"1/10 of the limit\" # so\nb = \"3 %\" # so\n",
        text(toml.set(TOP, "a", Literal.text("1/10 of the limit"), NO_ORDER)));
    assertEquals(
        "a = \"3 %\"      # so\nb = 12 # so\n",
        text(toml.set(TOP, "b", Literal.whole(12), NO_ORDER)));
  }

  @Test
  void aValueThatIsTheSameStaysAsItIsWritten() throws WrittenRefused {
    WrittenToml toml = read("a = 'x'\nb = 0x1F\nc = [ 'x' ]\nd = 2026-03-01\n");
    assertSame(toml, toml.set(TOP, "a", Literal.text("x"), NO_ORDER));
    assertSame(toml, toml.set(TOP, "b", Literal.whole(31), NO_ORDER));
    assertSame(toml, toml.set(TOP, "d", Literal.day(LocalDate.of(2026, 3, 1)), NO_ORDER));
    assertEquals(text(toml), text(toml.set(TOP, "c", Literal.texts(List.of("x")), NO_ORDER)));
  }

  @Test
  void aValueOverSeveralLinesIsReplacedWholeAndTheCommentBehindItStays() throws WrittenRefused {
    String text = "a = \"\"\"\nb = 1 # no\n\"\"\"  # behind\r\nb = 2\r\n";
    assertEquals(
        "a = \"x\"  # behind\r\nb = 2\r\n",
        text(read(text).set(TOP, "a", Literal.text("x"), NO_ORDER)));
  }

  @Test
  void aNewKeyComesBehindTheNearestKeyOfTheOrder() throws WrittenRefused {
    WrittenToml toml =
        read(
            "[[division]]\ncode = 1\nlimit = 2   # in ft/s,\n            # as written\nshots = 3\n");
    List<String> order = List.of("code", "name", "limit", "bound", "tolerance", "shots", "voids");
    assertEquals(
        "[[division]]\ncode = 1\nlimit = 2   # in ft/s,\n            # as written\ntolerance = 5\nshots = 3\n",
        text(toml.set(FIRST, "tolerance", Literal.whole(5), order)));
    assertEquals(
        "[[division]]\ncode = 1\nname = \"A\"\nlimit = 2   # in ft/s,\n            # as written\nshots = 3\n",
        text(toml.set(FIRST, "name", Literal.text("A"), order)));
    assertEquals(
        "[[division]]\ncode = 1\nlimit = 2   # in ft/s,\n            # as written\nshots = 3\nother = 5\n",
        text(toml.set(FIRST, "other", Literal.whole(5), order)));
  }

  @Test
  void aNewKeyWithNoneBeforeItComesFirstInItsTable() throws WrittenRefused {
    assertEquals(
        "[event] # of ours\n  a = 1\n  b = 2\n",
        text(
            read("[event] # of ours\n  b = 2\n")
                .set(TablePath.of("event"), "a", Literal.whole(1), List.of("a", "b"))));
  }

  @Test
  void aNewKeyOfTheTopLevelComesBeforeTheTables() throws WrittenRefused {
    assertEquals(
        "# the book\n\nformat = 1\n# the event\n[event]\n",
        text(
            read("# the book\n\n# the event\n[event]\n")
                .set(TOP, "format", Literal.whole(1), List.of("format"))));
    assertEquals("format = 1\n", text(read("").set(TOP, "format", Literal.whole(1), NO_ORDER)));
  }

  @Test
  void aNewKeyIsWrittenAsTheOthersOfItsTable() throws WrittenRefused {
    assertEquals(
        "\tcode   = 1\n\tvoids  = 2\n\tshots  = 3\n",
        text(read("\tcode   = 1\n\tvoids  = 2\n").set(TOP, "shots", Literal.whole(3), NO_ORDER)));
    assertEquals(
        "code=1\r\nshots=3\r\n",
        text(read("code=1\r\n").set(TOP, "shots", Literal.whole(3), NO_ORDER)));
    assertEquals(
        "code = 1\nshots = 3",
        text(read("code = 1").set(TOP, "shots", Literal.whole(3), NO_ORDER)));
    assertEquals(
        "code = 1\n\"no bare key\" = 3\n",
        text(read("code = 1\n").set(TOP, "no bare key", Literal.whole(3), NO_ORDER)));
  }

  @Test
  void aRemovedKeyTakesTheCommentsBehindItAlong() throws WrittenRefused {
    assertEquals(
        "a = 1\nc = 3\n",
        text(read("a = 1\nb = 2   # two\n        # and more\nc = 3\n").remove(TOP, "b")));
    WrittenToml toml = read("a = 1\n");
    assertSame(toml, toml.remove(TOP, "b"));
  }

  @Test
  void aRemovedKeyTakesTheCommentAboveAlongThatIsAboutItAlone() throws WrittenRefused {
    assertEquals(
        "a = 1\n\n# of c\nc = 3\n",
        text(read("a = 1\n\n# of b,\n# in two lines\nb = 2\n# of c\nc = 3\n").remove(TOP, "b")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a = 1\n# of both\nb = 2\nc = 3\n",
        "# of the file\nb = 2\n",
        "a = 1\n\n# b = 5\nb = 2\n",
        "a = 1\n\n# [parked]\nb = 2\n",
        "a = 1\n# over a gap\n\nb = 2\n"
      })
  void aCommentThatMayBeAboutMoreStays(String text) throws WrittenRefused {
    assertEquals(text.replace("b = 2\n", ""), text(read(text).remove(TOP, "b")));
  }

  @Test
  void aCommentBelowATablesLineStays() throws WrittenRefused {
    assertEquals(
        "[event]\n# ours\n",
        text(read("[event]\n# ours\nb = 2\n").remove(TablePath.of("event"), "b")));
  }

  @Test
  void aNewDivisionComesBehindTheLastOfItsKind() throws WrittenRefused {
    assertEquals(
        "[[division]]\na = 1 # x\n\n[[division]]\n\n# ours\n[event]\n",
        text(read("[[division]]\na = 1 # x\n\n# ours\n[event]\n").add("division")));
    assertEquals("a = 1\n\n[[division]]", text(read("a = 1").add("division")));
    assertEquals("[[division]]\n", text(read("").add("division")));
    assertEquals(
        "[[division]]\n\n[[division]]\n\n[[division]]\na = 1\n",
        text(read("[[division]]\n\n[[division]]\na = 1\n").addAfter(FIRST)));
  }

  @Test
  void aCopiedDivisionHasTheCommentsInItButNotThoseAboveIt() throws WrittenRefused {
    String first = "[[division]] # one\na = 1 # of a\n\n# parked\n# b = 2\n";
    String rest = "\n# The second\n[[division]]\nc = 3";
    assertEquals("# The first\n" + first + rest, text(read("# The first\n" + first + rest)));
    assertEquals(
        "# The first\n[[division]] # one\na = 1 # of a\n\n[[division]] # one\na = 1 # of a\n\n# parked\n# b = 2\n"
            + rest,
        text(read("# The first\n" + first + rest).copy(FIRST)));
    assertEquals(
        "# The first\n" + first + rest + "\n\n[[division]]\nc = 3",
        text(read("# The first\n" + first + rest).copy(SECOND)));
  }

  @Test
  void aRemovedDivisionTakesItsHeadingAndOneGapAlong() throws WrittenRefused {
    String text = "x = 1\n\n# One\n[[division]]\na = 1\n\n# Two\n[[division]]\na = 2\n\n\n# free\n";
    assertEquals(
        "x = 1\n\n# Two\n[[division]]\na = 2\n\n\n# free\n", text(read(text).remove(FIRST)));
    assertEquals(
        "x = 1\n\n# One\n[[division]]\na = 1\n\n# free\n", text(read(text).remove(SECOND)));
    assertEquals(
        "[[division]]\na = 1",
        text(read("[[division]]\na = 1\n\n[[division]]\na = 2").remove(SECOND)));
  }

  @Test
  void commentsDirectlyBelowADivisionsLastKeyGoWithIt() throws WrittenRefused {
    String one = "[[division]]\na = 1\n# b = 2\n# c = 3\n";
    assertEquals(one + "\n" + one, text(read(one).copy(FIRST)));
    assertEquals("", text(read(one).remove(FIRST)));
    assertEquals(
        "[[division]]\na = 1\n\n[[division]]\n# of the next\n[event]\n",
        text(read("[[division]]\na = 1\n# of the next\n[event]\n").add("division")));
  }

  @Test
  void aCommentFurtherInIsOfTheNextKeyThatStandsFurtherIn() throws WrittenRefused {
    assertEquals(
        "a = 1 # one\n  # two\n  b = 2\n",
        text(read("a = 1 # one\nx = 1 # ten\n  # two\n  b = 2\n").remove(TOP, "x")));
  }

  @Test
  void aHeadingThatMayBeAboutAllDivisionsStays() throws WrittenRefused {
    assertEquals(
        "# All of them\n[[division]]\na = 2\n",
        text(read("# All of them\n[[division]]\na = 1\n\n[[division]]\na = 2\n").remove(FIRST)));
    assertEquals(
        "[[division]]\n\n# [[division]]\n# a = 3\n",
        text(
            read("[[division]]\n\n# [[division]]\n# a = 3\n[[division]]\na = 1\n").remove(SECOND)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "event.a = 1\n",
        "event = { a = 1 }\n",
        "[event.a]\n",
        "[[event]]\n",
        "[event]\na.b = 1\n",
        "[event]\n[event.a]\n",
        ""
      })
  void aKeyWrittenInAnotherWayIsRefusedWithItsPlace(String text) {
    TablePath event = TablePath.of("event");
    WrittenRefused refused =
        assertThrows(
            WrittenRefused.class,
            () -> read("x = 1\n" + text).set(event, "a", Literal.whole(2), NO_ORDER));
    WrittenFault fault = refused.faults().get(0);
    assertEquals("change it with a text editor; nothing was changed", fault.mend().toString());
    KeyPlace place = fault.place();
    KeyPlace key = new KeyPlace(event, "a", 0);
    assertEquals(text.contains("[event]\n") ? key : new KeyPlace(TOP, "event", 0), place);
    assertEquals(text.isEmpty() ? 1 : text.startsWith("[event]") ? 3 : 2, fault.line());
    assertThrows(WrittenRefused.class, () -> read("x = 1\n" + text).remove(event, "a"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"division = [ { a = 1 } ]\n", "[division]\na = 1\n"})
  void divisionsWrittenInAnotherWayAreRefused(String text) {
    assertThrows(WrittenRefused.class, () -> read(text).add("division"));
    assertThrows(WrittenRefused.class, () -> read(text).copy(FIRST));
    assertThrows(WrittenRefused.class, () -> read(text).remove(FIRST));
    assertThrows(
        WrittenRefused.class, () -> read(text).set(FIRST, "a", Literal.whole(2), NO_ORDER));
  }

  @Test
  void aDivisionWithTablesInItIsNeitherCopiedNorRemoved() throws WrittenRefused {
    String text = "[[division]]\n[event]\n  [division.more]\na = 1\n[[division]]\nb = 1\n";
    WrittenRefused refused = assertThrows(WrittenRefused.class, () -> read(text).copy(FIRST));
    assertEquals(
        "book.toml:3:3: expected division[1] to be a table that holds no others, found the table"
            + " division.more; mend: change it with a text editor; nothing was changed",
        refused.faults().get(0).toString());
    assertThrows(WrittenRefused.class, () -> read(text).remove(FIRST));
    assertThrows(WrittenRefused.class, () -> read(text).addAfter(FIRST));
    assertEquals(text + "\n[[division]]\n", text(read(text).add("division")));
  }

  @Test
  void aDivisionThatIsNotThereIsTheCallersFault() throws WrittenRefused {
    WrittenToml toml = read("[[division]]\n");
    assertThrows(IndexOutOfBoundsException.class, () -> toml.remove(SECOND));
    assertThrows(IndexOutOfBoundsException.class, () -> read("").copy(FIRST));
    assertThrows(IndexOutOfBoundsException.class, () -> TablePath.nth("division", 0));
    assertThrows(IllegalArgumentException.class, () -> toml.copy(TOP));
  }

  @Test
  void whatIsNotTomlIsRefused() {
    assertThrows(WrittenRefused.class, () -> read("a = \n"));
  }

  @Test
  void aBookWithCommentsInAColumnKeepsTheColumn() throws WrittenRefused {
    String limit =
        """
        limit = "300 ft/s"        # the unit you write governs, and
                                  # the other one is compared exactly
        """;
    String tolerance =
        """
        tolerance = "3 %"         # on top of the limit: "none", a percentage,
                                  # or a speed
        """;
    assertEquals(
        "[[division]]\n"
            + limit
            + "bound = \"below\"\n"
            + tolerance.replace("3 %\"   ", "2 ft/s\""),
        text(
            read("[[division]]\n" + limit + tolerance)
                .set(FIRST, "tolerance", Literal.text("2 ft/s"), NO_ORDER)
                .set(FIRST, "bound", Literal.text("below"), List.of("limit", "bound"))));
  }

  @ParameterizedTest
  @ValueSource(strings = {"config/rule-book.toml", "demo-data/rule-book.toml"})
  void aBookOfOursChangesInTheLineThatIsSetOnly(String file) throws IOException, WrittenRefused {
    List<String> lines = Files.readAllLines(Path.of(file));
    WrittenToml changed =
        read(Files.readString(Path.of(file))).set(FIRST, "name", Literal.text("Renamed"), NO_ORDER);
    List<String> now = text(changed).lines().toList();
    List<Integer> differing =
        IntStream.range(0, lines.size())
            .filter(i -> !lines.get(i).equals(now.get(i)))
            .boxed()
            .toList();
    assertEquals(lines.size(), now.size());
    assertEquals(1, differing.size());
    assertTrue(now.get(differing.get(0)).startsWith("name = \"Renamed\""));
  }

  private static WrittenToml read(String text) throws WrittenRefused {
    return WrittenToml.read("book.toml", text.getBytes(StandardCharsets.UTF_8));
  }

  private static String text(WrittenToml toml) {
    return new String(toml.utf8(), StandardCharsets.UTF_8);
  }
}
