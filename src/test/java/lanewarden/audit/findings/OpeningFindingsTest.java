package lanewarden.audit.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lanewarden.audit.Audited;
import lanewarden.audit.ScriptedLedger;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.journal.Fact;
import lanewarden.journal.Place;
import lanewarden.quantity.Length;
import lanewarden.quantity.Speed;
import lanewarden.station.Budget;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Openings that sign a place or a budget beside settings that do not give them. */
class OpeningFindingsTest {
  private static final String SETTINGS =
      """
      format = 1
      station = "Range East"
      profile = "gate-timer.toml"
      instrument = "serial"
      port = "/dev/ttyUSB0"
      """;

  private static final String ACCURACY =
      """
      [accuracy]
      stated = "0.5 %"
      stated_covers = "k = 2"
      """;

  private static final String PLACE =
      """
      [place]
      distance = "3 m"
      """;

  /** What the settings suppose where they name no more than the distance. */
  private static final Place THREE_METRES = place("3 m");

  @TempDir Path folder;
  private ScriptedLedger ledger;

  @BeforeEach
  void create() throws Exception {
    ledger = ScriptedLedger.bare(folder.resolve("event.ledger"));
    ledger.adopt(ScriptedLedger.RULES);
    ledger.say(ScriptedLedger.roster(ScriptedLedger.ROSTER));
    ledger.say(new Fact.OfficialSignedIn(ScriptedLedger.OFFICIAL));
  }

  @AfterEach
  void close() throws Exception {
    ledger.close();
  }

  private static Place place(String distance) {
    return new Place(
        Length.parse(distance), Length.parse("7 mm"), new BigDecimal("1.8"), new BigDecimal("1.2"));
  }

  private long opened(String settings, List<String> budget, Place place) throws Exception {
    return ledger.say(
        new Fact.StationOpened(
            "gate timer",
            ScriptedLedger.PROFILE,
            "Lanewarden 0.9.0",
            null,
            settings,
            budget,
            place));
  }

  /** GUM (JCGM 100:2008), 4.3.3: 0.5 % of 300 ft/s by k = 2 is a standard uncertainty of 0.75. */
  private List<String> budget() throws Exception {
    Path file = Files.writeString(folder.resolve("station.toml"), SETTINGS + ACCURACY);
    List<String> lines = Budget.of(file, Speed.parse("300 ft/s")).inWords();
    assertTrue(
        lines.get(lines.size() - 1).contains("standard uncertainty 0.7500 ft/s"), lines + "");
    return lines;
  }

  private void assertFound(long entry, String... words) throws Exception {
    Audited audited = Audited.of(ledger.file());
    assertEquals(List.of(Kind.OPENING), audited.contradictions());
    assertEquals(List.of(entry), audited.entries(Kind.OPENING));
    for (String part : words) {
      assertTrue(audited.only(Kind.OPENING).contains(part), audited.only(Kind.OPENING));
    }
  }

  @Test
  void whatFollowsFromTheSettingsIsNoContradiction() throws Exception {
    opened(SETTINGS + ACCURACY + PLACE, budget(), THREE_METRES);
    assertEquals(List.of(), Audited.of(ledger.file()).contradictions());
  }

  @Test
  void aPlaceThatTheSettingsDoNotGiveIsFound() throws Exception {
    assertFound(
        opened(SETTINGS + PLACE, null, place("60 m")),
        "the settings give it a place 3 m from the bow",
        "signed is a place 60 m from the bow");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.0750", "0.7501"})
  void aBudgetWithAnotherFigureThanTheSettingsGiveIsFound(String figure) throws Exception {
    List<String> other =
        budget().stream()
            .map(line -> line.replace("uncertainty 0.7500", "uncertainty " + figure))
            .toList();
    assertFound(
        opened(SETTINGS + ACCURACY, other, null),
        "standard uncertainty 0.7500 ft/s",
        "standard uncertainty " + figure + " ft/s");
  }

  @Test
  void aBudgetThatNoSettingsGiveIsFoundAndSoIsOneThatWasLeftOut() throws Exception {
    assertFound(
        opened(SETTINGS, List.of("combined: standard uncertainty 0.0001 ft/s"), null),
        "no budget of its accuracy",
        "0.0001 ft/s");
    ledger.say(new Fact.StationClosed("for today"));
    ledger.say(new Fact.OfficialSignedIn(ScriptedLedger.OFFICIAL));
    long without = opened(SETTINGS + ACCURACY + PLACE, null, null);
    Audited audited = Audited.of(ledger.file());
    assertTrue(audited.entries(Kind.OPENING).contains(without));
    assertTrue(audited.words(Kind.OPENING).get(1).contains("signed is none; and the settings"));
  }

  @Test
  void withoutSettingsNothingGivesAPlace() throws Exception {
    assertFound(opened(null, null, THREE_METRES), "the settings give it no place");
  }
}
