package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewarden.audit.findings.Finding;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.slip.SlipRefused;
import lanewarden.audit.slip.Slips;
import lanewarden.journal.Fact;
import lanewarden.journal.FactJson;
import lanewarden.journal.Facts;
import lanewarden.ledger.Draft;
import lanewarden.station.SignedPapers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Entries that somebody signed well with a program of their own, with references, times and amounts
 * that no station writes: no one of them keeps an opponent from the report, the export or a slip.
 */
class StrangeEntriesTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  /** Always the same entries; another number tries others. */
  private static final long SEED = 20_260_530;

  private static final int EACH = 120;
  private static final int EACH_OF_ALL = 12;

  /** Instants of the years 1 to 9999 are times; the first two are the least and most of Java's. */
  private static final List<String> TIMES =
      List.of(
          "-1000000000-01-01T00:00:00Z",
          "+1000000000-12-31T23:59:59.999999999Z",
          "0001-01-01T00:00:00Z",
          "9999-12-31T23:59:59.999999999Z",
          "2026-05-30T07:31:00Z",
          "yesterday");

  private static final List<String> TEXTS =
      List.of(
          "",
          "0 ft/s",
          "0.0000000000000000000000000000001 ft/s",
          "999999999999999999999999999999999 ft/s",
          "0 gr",
          "0 mm",
          "99999999999 m",
          "1e999999999",
          "-999999999999",
          "0.000000000001",
          "100000000000 %",
          "-1 %",
          "typed",
          "flood",
          "999999999999999 further lines",
          "repeated",
          "up",
          "impossible",
          "bib",
          "reading",
          "\u0000\u0001\u202e\ufffe <b>&amp; ]]>",
          "!!! not base64",
          "OC",
          "101",
          ScriptedLedger.PROFILE);

  private static final List<Long> NUMBERS =
      List.of(Long.MIN_VALUE, Long.MAX_VALUE, 2_147_483_647L, -2_147_483_648L, -1L, 0L, 9999L);

  @TempDir Path folder;

  static Stream<String> kinds() {
    return templates().keySet().stream().sorted();
  }

  private static Map<String, List<ObjectNode>> templates() {
    return Facts.ofEveryKind()
        .map(FactJson::draft)
        .collect(
            Collectors.groupingBy(
                Draft::kind, Collectors.mapping(StrangeEntriesTest::body, Collectors.toList())));
  }

  private static ObjectNode body(Draft draft) {
    try {
      return (ObjectNode) JSON.readTree(draft.body());
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /** Something of everything that an entry may refer to. */
  private ScriptedLedger ledger() throws Exception {
    ScriptedLedger ledger =
        ScriptedLedger.with(folder.resolve("event.ledger"), ScriptedLedger.RULES);
    ledger.check("102", "Jun Takemizu", "OC", "290 ft/s", "291 ft/s", "292 ft/s");
    long round = ledger.say(new Fact.VerificationBegan("on request", "bow", 1, "1 %", "1 %", null));
    ledger.say(new Fact.VerificationEnded(round, false, "broken off", "rain"));
    List<Long> questioned = ledger.standing().checksSinceGood();
    long hold = ledger.say(new Fact.LineHeld(null, "the light went", questioned));
    ledger.say(new Fact.HoldLifted(hold, null, "it came back"));
    ledger.call("101", "Marta Olesund", "OC");
    ledger.read("299 ft/s");
    return ledger;
  }

  private static List<Draft> strange(String kind, List<ObjectNode> like, int count, Random random) {
    List<Draft> drafts = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      JsonNode body = strange(like.get(random.nextInt(like.size())), random);
      drafts.add(new Draft(kind, body.toString().getBytes(StandardCharsets.UTF_8)));
    }
    return drafts;
  }

  private static JsonNode strange(JsonNode like, Random random) {
    if (like instanceof ObjectNode members) {
      ObjectNode made = NODES.objectNode();
      members
          .properties()
          .forEach(
              member -> {
                if (random.nextInt(12) > 0) {
                  made.set(member.getKey(), strange(member.getValue(), random));
                }
              });
      return made;
    }
    if (like instanceof ArrayNode parts) {
      ArrayNode made = NODES.arrayNode();
      parts.forEach(part -> made.add(random.nextInt(8) == 0 ? part : strange(part, random)));
      return made;
    }
    if (like.isIntegralNumber()) {
      // Half of them are entries that are there, whatever they are
      return NODES.numberNode(
          random.nextBoolean() ? 1 + random.nextInt(30) : any(NUMBERS, random).longValue());
    }
    boolean keeps = random.nextBoolean();
    return keeps || !like.isTextual()
        ? like
        : NODES.textNode(any(like.asText().matches("\\d{4}-.*Z") ? TIMES : TEXTS, random));
  }

  private static void sign(ScriptedLedger ledger, List<Draft> drafts) throws Exception {
    for (Draft draft : drafts) {
      ledger.signRaw(draft.kind(), new String(draft.body(), StandardCharsets.UTF_8));
    }
  }

  private static <T> T any(List<T> of, Random random) {
    return of.get(random.nextInt(of.size()));
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void everyEntryIsLookedAtToTheEnd(String kind) throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      sign(ledger, strange(kind, templates().get(kind), EACH, new Random(SEED)));
      ledger.signRaw("official-signed-in", "{\"name\":\"" + ScriptedLedger.OFFICIAL + "\"}");
      Audited audited = Audited.of(ledger.file());
      List<String> unlooked =
          audited.words(Kind.UNREADABLE).stream()
              .filter(words -> words.contains("could not be looked at"))
              .toList();
      assertEquals(List.of(), unlooked);
      assertFalse(audited.evidence().verification().faults().stream().findAny().isPresent());
    }
  }

  @Test
  void allOfThemTogetherEndNoReportNoExportAndNoSlip() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      Random random = new Random(SEED);
      List<Draft> all = new ArrayList<>();
      templates().forEach((kind, like) -> all.addAll(strange(kind, like, EACH_OF_ALL, random)));
      Collections.shuffle(all, random);
      sign(ledger, all);
      assertFalse(PrintedReport.of(ledger.file()).text().isBlank());
      new Export(SignedPapers::of).whole(ledger.file(), folder.resolve("export"), progress -> {});
      new Export(SignedPapers::of)
          .forThePublic(ledger.file(), folder.resolve("public"), progress -> {});
      assertTrue(Files.exists(folder.resolve("export").resolve(Export.ENTRIES)));
      for (String which : List.of("101", "102", "check 8", "nobody")) {
        slip(ledger.file(), which);
      }
    }
  }

  private void slip(Path file, String which) throws Exception {
    try {
      new Slips(Clock.systemUTC(), SignedPapers::of).write(file, which, folder.resolve("slip.pdf"));
    } catch (SlipRefused itsOwnWord) {
      assertFalse(String.valueOf(itsOwnWord.getMessage()).isBlank());
    }
  }

  /** What once ended the report, and what is found in its place. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\u0001',
      value = {
        "line-held | {\"verification\":9999,\"reason\":\"x\",\"checks\":[7]} | HOLD"
            + " | there is no such verification",
        "reading-taken | {\"check\":8,\"shot\":4,\"speed\":\"299 ft/s\",\"raw\":\"\",\"source\":\"serial port\","
            + "\"instrument\":\"gate timer\",\"at\":\"+1000000000-12-31T23:59:59.999999999Z\"}"
            + " | UNREADABLE | the member at",
        "link-changed | {\"state\":\"lost\",\"words\":\"w\",\"at\":\"-1000000000-01-01T00:00:00Z\"}"
            + " | UNREADABLE | the member at",
        "clock-stepped | {\"by\":\"1e999999999\",\"expected\":\"2026-05-30T07:31:00Z\"}"
            + " | UNREADABLE | the member by",
        "clock-stepped | {\"by\":\"1\",\"expected\":\"+1000000000-12-31T23:59:59.999999999Z\"}"
            + " | UNREADABLE | the member expected"
      })
  void whatNoStationWritesIsAContradictionThatNamesItsEntry(
      String kind, String body, Kind found, String words) throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      long entry = ledger.signRaw(kind, body);
      Audited audited = Audited.of(ledger.file());
      assertEquals(List.of(entry), audited.entries(found));
      assertTrue(audited.words(found).stream().anyMatch(told -> told.contains(words)));
      assertTrue(
          audited.findings().stream()
              .filter(Finding::isContradiction)
              .anyMatch(told -> told.entries().contains(entry)));
    }
  }

  @Test
  void aHoldLiftedByAVerificationThatIsNotThereIsFound() throws Exception {
    try (ScriptedLedger ledger = ledger()) {
      long hold = ledger.signRaw("line-held", "{\"reason\":\"x\",\"checks\":[]}");
      long lifted =
          ledger.signRaw(
              "hold-lifted", "{\"hold\":" + hold + ",\"verification\":9999,\"reason\":\"x\"}");
      assertTrue(
          Audited.of(ledger.file()).findings().stream()
              .anyMatch(
                  found ->
                      found.kind() == Kind.HOLD
                          && found.entries().equals(List.of(hold, lifted))
                          && found.words().contains("there is no such verification")));
    }
  }
}
