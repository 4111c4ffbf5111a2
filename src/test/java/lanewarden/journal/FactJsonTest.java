package lanewarden.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewarden.ledger.Entry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

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
    assertEquals(Set.of(Fact.class.getPermittedSubclasses()), tried);
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
        "check-opened | {\"bib\":\"1\",\"name\":\"N\",\"division\":\"D\",\"attempt\":1,\"arrowMass\":\"350 oz\"}"
            + " | the member arrowMass is missing or not what it must be"
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
