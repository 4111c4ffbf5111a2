package lanewarden.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewarden.ledger.Entry;
import lanewarden.quantity.Force;
import lanewarden.quantity.Mass;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The years of a time are those of RFC 3339, section 1: 0000 to 9999; we begin with 1. */
class FactJsonTest {

  @TempDir Path folder;

  static Stream<Fact> facts() {
    return Facts.ofEveryKind();
  }

  @ParameterizedTest
  @MethodSource("facts")
  void readsBackWhatWasSigned(Fact fact) throws Exception {
    try (Book book = new Book(folder)) {
      Entry entry = book.append(fact).get(0);
      assertEquals(Optional.of(fact), FactJson.read(entry));
    }
  }

  @Test
  void everyKindOfFactIsCovered() {
    Set<Class<?>> tried = facts().map(Object::getClass).collect(Collectors.toSet());
    assertEquals(leaves(Fact.class).collect(Collectors.toSet()), tried);
  }

  static Stream<Class<?>> leaves(Class<?> type) {
    return type.isSealed()
        ? Stream.of(type.getPermittedSubclasses()).flatMap(FactJsonTest::leaves)
        : Stream.of(type);
  }

  @Test
  void speedStaysInTheDigitsItWasWrittenIn() {
    String body =
        new String(
            FactJson.draft(Facts.reading(3, 1, "300.10 ft/s")).body(), StandardCharsets.UTF_8);
    assertTrue(body.contains("\"speed\":\"300.10 ft/s\""), body);
    assertTrue(body.contains("\"at\":\"2026-05-16T12:00:00.017Z\""), body);
  }

  @Test
  void entriesOfTheLedgerItselfAreNoFacts() throws Exception {
    try (Book book = new Book(folder)) {
      for (Entry entry : book.entries()) {
        assertEquals(Optional.empty(), FactJson.read(entry));
      }
      assertEquals(2, book.entries().size());
    }
  }

  /** Bodies as the first version wrote them, before these kinds had more to say. */
  static Stream<Arguments> bodiesOfOldLedgers() {
    return Stream.of(
        Arguments.of(
            "rule-book-adopted",
            "{\"file\":\"r.toml\",\"sha256\":\"00ff\",\"text\":\"format = 1\"}",
            new Fact.RuleBookAdopted("r.toml", "00ff", "format = 1", null)),
        Arguments.of(
            "check-opened",
            "{\"bib\":\"1\",\"name\":\"N\",\"division\":\"D\",\"attempt\":1,"
                + "\"arrowMass\":\"350 gr\",\"drawWeight\":\"60 lbf\"}",
            new Fact.CheckOpened(
                "1",
                "N",
                "D",
                1,
                Mass.parse("350 gr"),
                Force.parse("60 lbf"),
                null,
                null,
                null,
                null,
                null)),
        Arguments.of(
            "station-opened",
            "{\"instrument\":\"I\",\"profile\":\"P\",\"program\":\"L\"}",
            new Fact.StationOpened("I", "P", "L", null, null, null, null)),
        Arguments.of(
            "reading-taken",
            "{\"check\":3,\"shot\":1,\"speed\":\"300.1 ft/s\",\"raw\":\"MzANCg==\","
                + "\"source\":\"serial port\",\"instrument\":\"I\","
                + "\"at\":\"2026-05-16T12:00:00Z\"}",
            new Fact.ReadingTaken(
                3,
                1,
                Speed.parse("300.1 ft/s"),
                "MzANCg==",
                "serial port",
                "I",
                Instant.parse("2026-05-16T12:00:00Z"),
                null,
                null,
                null)),
        Arguments.of(
            "verdict-given",
            "{\"check\":3,\"ruleBook\":\"00ff\",\"outcome\":\"over\",\"reason\":\"x\","
                + "\"readings\":[4,5]}",
            new Fact.VerdictGiven(3, "00ff", Outcome.OVER, "x", List.of(4L, 5L), null)),
        Arguments.of("station-closed", "{}", new Fact.StationClosed(null)));
  }

  @ParameterizedTest
  @MethodSource("bodiesOfOldLedgers")
  void readsWhatAnOlderVersionSigned(String kind, String body, Fact fact) throws Exception {
    try (Book book = new Book(folder)) {
      assertEquals(Optional.of(fact), FactJson.read(book.appendRaw(kind, body)));
    }
  }

  @Test
  void whatNothingIsSaidAboutStandsNotInTheBody() {
    String body = new String(FactJson.draft(Facts.opened("101", 1)).body(), StandardCharsets.UTF_8);
    assertFalse(body.contains("certifiedDrawWeight") || body.contains("grounds"), body);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\u0001',
      value = {
        "official-signed-in | {} | the member name is missing",
        "official-signed-in | {\"name\":null} | the member name is missing",
        "official-signed-in | {\"name\":\"Ada\",\"rank\":1} | the member rank is unknown",
        "check-closed | {\"reason\":\"x\"} | the member check is missing or not what it must be",
        "reading-voided | {\"check\":null,\"reading\":4,\"reason\":\"x\"}"
            + " | the member check is missing or not what it must be",
        "verdict-given | {\"check\":3,\"ruleBook\":\"\",\"outcome\":\"fine\",\"reason\":\"\",\"readings\":[]}"
            + " | the member outcome is missing or not what it must be",
        "phase-began | {\"phase\":\"tomorrow\"} | the member phase is missing or not what it must be",
        "verdict-given | {\"check\":3,\"ruleBook\":\"\",\"outcome\":\"over\",\"reason\":\"\",\"readings\":[],\"follows\":\"tea\"}"
            + " | the member follows is missing or not what it must be",
        "station-opened | {\"instrument\":\"I\",\"profile\":\"P\",\"program\":\"L\",\"place\":{\"distance\":\"3 m\"}}"
            + " | the member place is missing or not what it must be",
        "reading-taken | {\"check\":3,\"shot\":1,\"speed\":\"300 ft/s\",\"raw\":\"\",\"source\":\"s\",\"instrument\":\"I\","
            + "\"at\":\"2026-05-16T12:00:00Z\",\"second\":{\"speed\":\"300 ft/s\",\"raw\":\"\"}}"
            + " | the member second is missing or not what it must be",
        "condition-ticked | {\"check\":3} | the member condition is missing",
        "check-opened | {\"bib\":\"1\",\"name\":\"N\",\"division\":\"D\",\"attempt\":1,\"arrowMass\":\"350 oz\"}"
            + " | the member arrowMass is missing or not what it must be",
        "reading-voided | {\"check\":\"3\",\"reading\":4,\"reason\":\"x\"}"
            + " | the member check is missing or not what it must be",
        "reading-voided | {\"check\":3,\"reading\":4.9,\"reason\":\"x\"}"
            + " | the member reading is missing or not what it must be",
        "reading-voided | {\"check\":3,\"reading\":4,\"reason\":5}"
            + " | the member reason is missing or not what it must be",
        "check-closed | {\"check\":3,\"reason\":false}"
            + " | the member reason is missing or not what it must be",
        "check-closed | {\"check\":true} | the member check is missing or not what it must be",
        "verification-ended | {\"verification\":3,\"passed\":\"true\",\"words\":\"w\"}"
            + " | the member passed is missing or not what it must be",
        "verification-ended | {\"verification\":3,\"passed\":1,\"words\":\"w\"}"
            + " | the member passed is missing or not what it must be",
        "verification-planned | {\"beforeOpening\":true,\"every\":\"\",\"atEnd\":true}"
            + " | the member every is missing or not what it must be",
        "verdict-given | {\"check\":3,\"ruleBook\":\"\",\"outcome\":\"over\",\"reason\":\"\",\"readings\":[\"4\"]}"
            + " | the member readings in a list is missing or not what it must be",
        "draw-made | {\"division\":\"D\",\"seed\":\"4\",\"share\":\"5 %\",\"pool\":[7],\"drawn\":[]}"
            + " | the member pool in a list is missing or not what it must be",
        "clock-stepped | {\"by\":-5,\"expected\":\"2026-05-16T12:00:00Z\"}"
            + " | the member by is missing or not what it must be",
        "clock-stepped | {\"by\":\"1e999999999\",\"expected\":\"2026-05-16T12:00:00Z\"}"
            + " | the member by is missing or not what it must be",
        "clock-stepped | {\"by\":\"1234567890123\",\"expected\":\"2026-05-16T12:00:00Z\"}"
            + " | the member by is missing or not what it must be",
        "clock-stepped | {\"by\":\"5\",\"expected\":\"+1000000000-12-31T23:59:59.999999999Z\"}"
            + " | the member expected is missing or not what it must be",
        "clock-stepped | {\"by\":\"5\",\"expected\":\"0000-12-31T23:59:59Z\"}"
            + " | the member expected is missing or not what it must be",
        "link-changed | {\"state\":\"lost\",\"words\":\"w\",\"at\":\"+10000-01-01T00:00:00Z\"}"
            + " | the member at is missing or not what it must be"
      })
  void refusesABodyThatDoesNotFitItsKind(String kind, String body, String why) throws Exception {
    try (Book book = new Book(folder)) {
      Entry entry = book.appendRaw(kind, body);
      FactRefused refused = assertThrows(FactRefused.class, () -> FactJson.read(entry));
      assertEquals(3, refused.sequence());
      assertEquals("entry 3 of kind " + kind + " cannot be read: " + why, refused.getMessage());
    }
  }
}
