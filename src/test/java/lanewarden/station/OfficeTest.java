package lanewarden.station;

import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import lanewarden.metrology.PublicDraw;
import lanewarden.quantity.Percent;
import org.junit.jupiter.api.Test;

/** What changes the rules of the game: a draw, and another rule book. */
class OfficeTest extends ClausesTest {

  private static final String SEED = "41523 61345 22516 44163";
  private static final String OTHER_SEED = "11111 22222 33333 44444";
  private static final String FROM = "code = \"EQ\"\nname = \"Division EQ\"\nlimit = \"300 ft/s\"";
  private static final String TO = "code = \"EQ\"\nname = \"Division EQ\"\nlimit = \"280 ft/s\"";

  private static char[] passphrase() {
    return PracticeEvent.PASSPHRASE.toCharArray();
  }

  private EventOffice office() {
    return new EventOffice(line.folder, PracticeEvent.here());
  }

  @Test
  void theDrawFollowsThePublishedRecipe() throws Exception {
    Fact.DrawMade draw = line.station.proceedings().draw("RS", SEED);
    assertEquals(List.of("41", "42", "43", "44"), draw.pool());
    assertEquals("50 %", draw.share());
    assertEquals(PublicDraw.of(SEED, Percent.parse("50 %"), draw.pool()).drawn(), draw.drawn());
    assertEquals(List.of(draw), line.facts(Fact.DrawMade.class));
  }

  @Test
  void aDivisionIsDrawnOnceUnderARuleBook() throws Exception {
    line.station.proceedings().draw("RS", SEED);
    assertEquals("DRAWN-ALREADY", codeOf(() -> line.station.proceedings().draw("RS", OTHER_SEED)));
    write(FROM, TO);
    line.station
        .proceedings()
        .adoptRuleBook(Optional.empty(), passphrase(), "the limit was misprinted");
    line.station.proceedings().draw("RS", OTHER_SEED);
    assertEquals(2, line.facts(Fact.DrawMade.class).size());
  }

  @Test
  void onlyADivisionWithARandomShareIsDrawnFromASeedThatWasThrown() {
    assertEquals("NO-SHARE", codeOf(() -> line.station.proceedings().draw("EQ", SEED)));
    assertEquals("NO-SUCH-DIVISION", codeOf(() -> line.station.proceedings().draw("XX", SEED)));
    assertEquals("DRAW-SEED", codeOf(() -> line.station.proceedings().draw("RS", "123")));
    assertEquals("REASON-MISSING", codeOf(() -> line.station.proceedings().draw("RS", " ")));
  }

  @Test
  void anotherRuleBookGovernsWhoIsCalledFromThenOn() throws Exception {
    line.station.call("12");
    String before = line.check().ruleBook();
    write(FROM, TO);
    line.station
        .proceedings()
        .adoptRuleBook(Optional.empty(), passphrase(), "the limit was misprinted");
    line.shoot("290 ft/s");
    assertEquals(
        Optional.of(Outcome.WITHIN), line.outcome(), "the check at the line keeps its rule");
    assertEquals(before, line.facts(Fact.VerdictGiven.class).get(0).ruleBook());
    line.station.call("11");
    assertNotEquals(before, line.check().ruleBook());
    line.station.officiating().state(new SetUpText("365", "60", ""));
    line.shoot("290 ft/s");
    assertEquals(Optional.of(Outcome.OVER), line.outcome());
    assertEquals(
        "the limit was misprinted", line.facts(Fact.RuleBookAdopted.class).get(1).reason());
  }

  @Test
  void theNoticeOfAChangedRuleBookGoesWhenItIsInForce() throws Exception {
    write(FROM, TO);
    line.onDuty();
    Trouble notice = line.station.view().trouble().orElseThrow();
    assertEquals("RULE-BOOK-CHANGED", notice.code());
    assertTrue(notice.remedy().contains("adopt"), notice.remedy());
    write("edition = \"1\"", "edition = \"2\"");
    line.station
        .proceedings()
        .adoptRuleBook(Optional.empty(), passphrase(), "the limit was misprinted");
    assertEquals(Optional.empty(), line.station.view().trouble());
  }

  @Test
  void whoSignsInNextIsToldThatTheEditionIsTheSame() throws Exception {
    line.station.signOut();
    write(FROM, TO);
    line.station
        .proceedings()
        .adoptRuleBook(Optional.empty(), passphrase(), "the limit was misprinted");
    assertEquals("EDITION-SAME", line.station.view().trouble().orElseThrow().code());
    line.onDuty();
    assertEquals("EDITION-SAME", line.station.view().trouble().orElseThrow().code());
    line.station.call("12");
    assertEquals(Optional.empty(), line.station.view().trouble());
    line.onDuty();
    assertEquals(Optional.empty(), line.station.view().trouble());
  }

  @Test
  void nobodyNeedsToBeOnDutyWhenTheOrganizerSigns() throws Exception {
    line.station.signOut();
    write(FROM, TO);
    line.station
        .proceedings()
        .adoptRuleBook(Optional.empty(), passphrase(), "the limit was misprinted");
    assertEquals(2, line.facts(Fact.RuleBookAdopted.class).size());
  }

  @Test
  void aRuleBookThatChangesNothingOrLosesADivisionOrIsFaultyIsRefused() throws Exception {
    assertEquals(
        "RULE-BOOK-SAME",
        codeOf(
            () ->
                line.station
                    .proceedings()
                    .adoptRuleBook(Optional.empty(), passphrase(), "because")));
    write("code = \"EQ\"", "code = \"EX\"");
    assertEquals(
        "FILE-REFUSED",
        codeOf(
            () ->
                line.station
                    .proceedings()
                    .adoptRuleBook(Optional.empty(), passphrase(), "because")));
    write("code = \"EX\"", "code = EQ");
    assertEquals(
        "FILE-REFUSED",
        codeOf(
            () ->
                line.station
                    .proceedings()
                    .adoptRuleBook(Optional.empty(), passphrase(), "because")));
    assertEquals(1, line.facts(Fact.RuleBookAdopted.class).size());
  }

  @Test
  void onlyTheOrganizersKeyAndAReasonPutItInForce() throws Exception {
    write(FROM, TO);
    assertEquals(
        "REASON-MISSING",
        codeOf(
            () -> line.station.proceedings().adoptRuleBook(Optional.empty(), passphrase(), " ")));
    assertEquals(
        "KEY-PASSPHRASE",
        codeOf(
            () ->
                line.station
                    .proceedings()
                    .adoptRuleBook(Optional.empty(), "wrong words".toCharArray(), "because")));
    Path keys = line.folder.path().resolve(EventFolder.KEYS);
    Files.move(keys.resolve(KeyCabinet.ORGANIZER_KEY), keys.resolve("elsewhere"));
    assertEquals(
        "ORGANIZER-KEY-MISSING",
        codeOf(
            () ->
                line.station
                    .proceedings()
                    .adoptRuleBook(Optional.empty(), passphrase(), "because")));
    Files.move(
        keys.resolve(KeyCabinet.nameOf(PracticeEvent.OFFICIAL)),
        keys.resolve(KeyCabinet.ORGANIZER_KEY));
    assertEquals(
        "NOT-ORGANIZER",
        codeOf(
            () ->
                line.station
                    .proceedings()
                    .adoptRuleBook(Optional.empty(), passphrase(), "because")));
    assertEquals(1, line.facts(Fact.RuleBookAdopted.class).size());
  }

  @Test
  void anOpenStationKeepsTheOfficeOut() throws Exception {
    write(FROM, TO);
    assertEquals(
        "LEDGER-IN-USE",
        codeOf(() -> office().adoptRuleBook(Optional.empty(), passphrase(), "because")));
  }

  @Test
  void withoutAStationTheOfficeSignsADrawAndARuleBook() throws Exception {
    line.close();
    Path key = folder.resolve("organizer.key");
    Files.move(line.folder.path().resolve(EventFolder.KEYS).resolve(KeyCabinet.ORGANIZER_KEY), key);
    write(FROM, TO);
    String hash = office().adoptRuleBook(Optional.of(key), passphrase(), "misprinted").ruleBook();
    Path roster = line.folder.path().resolve(EventFolder.ROSTER);
    Files.writeString(roster, Files.readString(roster) + "45,Lou Late,RS,,,\n");
    Fact.DrawMade draw = office().draw(PracticeEvent.OFFICIAL, passphrase(), "RS", SEED);
    assertEquals(List.of("41", "42", "43", "44", "45"), draw.pool());
    assertEquals(hash, line.facts(Fact.RuleBookAdopted.class).get(1).sha256());
    assertEquals(3, draw.drawn().size(), "half of five, rounded up");
    line = PracticeLine.open(line.folder).onDuty();
    line.station.call(draw.drawn().get(0));
  }
}
