package lanewarden.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** A rule book while it is written: what stands in it, what is wrong, what is kept. */
class RuleDraftTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-04-03T18:20:05Z"), ZoneOffset.UTC);

  @TempDir Path folder;
  private Path file;
  private RuleDraft draft;

  @BeforeEach
  void open() throws Exception {
    file = folder.resolve("rules.toml");
    Files.copy(Path.of("config/rule-book.toml"), file);
    draft = RuleDraft.open(file);
  }

  private List<String> told(int section, RuleKey key) {
    return draft.faults(section).stream()
        .filter(fault -> fault.isAbout(key))
        .map(fault -> fault.inWords().toString())
        .toList();
  }

  @Test
  void opensWithTheTextOfEveryKeyAndNothingChanged() {
    assertEquals("Example Meadow Open", draft.text(0, RuleKey.NAME));
    assertEquals("300 ft/s", draft.text(1, RuleKey.LIMIT));
    assertEquals("3", draft.text(1, RuleKey.COUNTED));
    assertEquals("", draft.text(1, RuleKey.WITHIN));
    assertEquals(List.of(), draft.faults());
    assertFalse(draft.isChanged());
  }

  @Test
  void changesOneLineAndKeepsEveryOtherByte() throws Exception {
    String before = Files.readString(file);
    draft.with(1, RuleKey.LIMIT, " 290 ft/s ").with(2, RuleKey.VOIDS, "2").save(CLOCK);
    assertEquals(
        before
            .replace("limit = \"300 ft/s\"", "limit = \"290 ft/s\"")
            .replace("shots = 4\nvoids = 1", "shots = 4\nvoids = 2"),
        Files.readString(file));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          EFFECTIVE | 2026-03-01 | effective = 2026-03-01
          FACTOR | 2 | factor = 2
          SPREAD | 2 ft/s | spread = "2 ft/s"
          COUNTED | three | counted = "three"
          EFFECTIVE | spring | effective = "spring"
          """)
  void whatIsTypedIsWrittenAsItsKind(RuleKey key, String typed, String line) throws Exception {
    Path saved = draft.with(1, key, typed).saveAs(folder.resolve("o.toml"), CLOCK).opened();
    assertTrue(Files.readString(saved).contains(line), Files.readString(saved));
  }

  @Test
  void aListIsTypedOneTextALine() throws Exception {
    draft = draft.with(1, RuleKey.CONDITIONS, "full draw\n\n 4 yd, measured \n");
    draft.save(CLOCK);
    assertTrue(Files.readString(file).contains("conditions = [\"full draw\", \"4 yd, measured\"]"));
    assertEquals("full draw\n\n 4 yd, measured \n", draft.text(1, RuleKey.CONDITIONS));
    assertEquals("full draw\n4 yd, measured", RuleDraft.open(file).text(1, RuleKey.CONDITIONS));
  }

  @ParameterizedTest
  @EnumSource(RuleKey.class)
  void whatIsTypedStandsInTheDraftAsItWasTyped(RuleKey key) {
    for (String typed : List.of("x", " 1 ", "\"", "\ud800", "3 % #", "")) {
      draft = draft.with(2, key, typed);
      assertEquals(typed, draft.text(2, key));
    }
  }

  @Test
  void blankTakesTheKeyOutAndTheSameTextPutsTheFileBack() throws Exception {
    draft = draft.with(2, RuleKey.WITHIN, "  ");
    assertEquals(
        List.of("Expected a whole number from 1 to 50: fill it in."), told(2, RuleKey.WITHIN));
    assertTrue(draft.isChanged());
    draft = draft.with(1, RuleKey.LIMIT, "301 ft/s").with(1, RuleKey.LIMIT, "300 ft/s");
    draft = draft.with(2, RuleKey.WITHIN, "2");
    assertEquals(List.of(), draft.faults());
    Path again = draft.saveAs(folder.resolve("again.toml"), CLOCK).opened();
    assertEquals(
        Files.readString(file).lines().filter(l -> !l.startsWith("within")).toList(),
        Files.readString(again).lines().filter(l -> !l.startsWith("within")).toList());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          LIMIT | 300 | Expected a speed such as "300 ft/s", found "300": add the unit, one of ft/s, m/s.
          COUNTED | abc | Expected a whole number from 1 to 50, found "abc": type it here once more.
          SHOTS | 2 | Expected at least 3, as many as are counted, found 2: allow more shots or count fewer readings.
          WITHIN | 2 | Expected left out: only "k of n" uses it, found within together with decide = "mean": take it out, or decide by "k of n".
          EFFECTIVE | 2026-02-30 | Expected a date such as 2026-03-01, found "2026-02-30": type it here once more.
          """)
  void aFaultStandsAtItsKeyWithItsMend(RuleKey key, String typed, String words) {
    draft = draft.with(1, key, typed);
    assertEquals(List.of(words), told(1, key));
    assertTrue(draft.division(1).isEmpty());
  }

  @Test
  void aRightDivisionSpeaksWhateverIsWrongInAnother() {
    draft = draft.with(1, RuleKey.LIMIT, "fast").with(0, RuleKey.EDITION, "");
    assertTrue(draft.division(1).isEmpty());
    assertEquals("At most 70 m/s.", draft.division(2).orElseThrow().sentences().get(0).toString());
    assertEquals(1, draft.faults(0).size());
    assertEquals(0, draft.faults(2).size());
  }

  @Test
  void aDivisionAsSavedStandsBesideTheChangedOneAlsoWhenOthersCameAndWent() throws Exception {
    draft = draft.add().remove(1).with(1, RuleKey.LIMIT, "71 m/s");
    assertEquals("At most 71 m/s.", draft.division(1).orElseThrow().sentences().get(0).toString());
    assertEquals(
        "At most 70 m/s.", draft.savedDivision(1).orElseThrow().sentences().get(0).toString());
    assertTrue(draft.savedDivision(2).isEmpty());
  }

  @Test
  void aCopyHasTheSameRuleAndAsksForItsOwnCode() throws Exception {
    draft = draft.with(1, RuleKey.LIMIT, "295 ft/s").copy(1);
    assertEquals(3, draft.divisions());
    assertEquals("295 ft/s", draft.text(2, RuleKey.LIMIT));
    assertTrue(told(2, RuleKey.CODE).get(0).contains("no other division has"));
    draft = draft.with(2, RuleKey.CODE, "OC2");
    assertEquals(List.of(), draft.faults());
    assertEquals("295 ft/s", draft.text(1, RuleKey.LIMIT));
  }

  @Test
  void anAddedDivisionSaysWhatIsToBeFilledIn() throws Exception {
    draft = draft.add();
    assertEquals(3, draft.divisions());
    assertTrue(
        draft.faults(3).stream().allMatch(fault -> fault.mend().toString().equals("fill it in")),
        draft.faults(3)::toString);
    assertEquals("OC", draft.text(1, RuleKey.CODE));
  }

  @Test
  void theLastDivisionCanBeRemovedAndTheFileSaysItNeedsOne() throws Exception {
    draft = draft.remove(2).remove(1);
    assertEquals(0, draft.divisions());
    assertEquals(1, draft.faults(0).size());
  }

  @Test
  void aKeyThatNoRuleBookHasCanBeTakenOut() throws Exception {
    Files.writeString(file, Files.readString(file).replace("voids = 1 ", "voidz = 1 "));
    draft = RuleDraft.open(file);
    RuleFault stranger =
        draft.faults(1).stream()
            .filter(fault -> fault.key().filter("voidz"::equals).isPresent())
            .findFirst()
            .orElseThrow();
    assertEquals("did you mean voids?", stranger.mend().toString());
    draft = draft.without(1, "voidz").with(1, RuleKey.VOIDS, "1");
    assertEquals(List.of(), draft.faults());
  }

  @Test
  void whatNoFileCanHoldIsAFaultAndKeepsTheFileFromBeingSaved() {
    RuleDraft odd = draft.with(1, RuleKey.NAME, "Open \ud800");
    assertEquals(1, odd.faults(1).size());
    assertTrue(odd.division(1).isEmpty());
    StationException refused = assertThrows(StationException.class, () -> odd.save(CLOCK));
    assertEquals("RULES-UNWRITTEN", refused.trouble().code());
  }

  @Test
  void whatIsNoTomlIsRefusedWithItsPlace() throws Exception {
    Files.writeString(file, "format = 1\n[event\n");
    StationException refused = assertThrows(StationException.class, () -> RuleDraft.open(file));
    assertEquals("FILE-REFUSED", refused.trouble().code());
    assertTrue(refused.trouble().why().contains(":2:"), refused.trouble()::toString);
  }
}
