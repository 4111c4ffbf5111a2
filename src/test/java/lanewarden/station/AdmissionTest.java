package lanewarden.station;

import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import lanewarden.rules.Consequence;
import lanewarden.rules.Phase;
import org.junit.jupiter.api.Test;

class AdmissionTest extends ClausesTest {

  private static final String SEED = "41523 61345 22516 44163";

  private void pass(String bib, String grounds) throws Exception {
    line.station.call(bib, grounds);
    line.shoot("290 ft/s");
    line.station.next();
  }

  @Test
  void nobodyIsCalledWhereNothingIsMeasuredOrNothingCanBeChecked() {
    assertEquals("NOT-MEASURED", codeOf(() -> line.station.call("61")));
    assertEquals("NOT-MEASURED", codeOf(() -> line.station.call("61", "the judge asked")));
    assertEquals("NOTHING-TO-CHECK", codeOf(() -> line.station.call("91")));
  }

  @Test
  void whoIsNamedByAJudgeIsCalledWithTheJudgesWordsAlone() throws Exception {
    assertEquals("GROUNDS-MISSING", codeOf(() -> line.station.call("51")));
    assertEquals(
        Optional.of(new Grounds("51", "Lea Named", List.of())), line.station.grounds("51"));
    line.station.call("51", "named by judge Ostrander");
    assertEquals("named by judge Ostrander", line.check().opened().grounds());
  }

  @Test
  void aBibThatWasScannedIntoTheGroundsIsNone() throws Exception {
    assertEquals("GROUNDS-NO-WORDS", codeOf(() -> line.station.call("51", "31")));
    assertEquals("GROUNDS-NO-WORDS", codeOf(() -> line.station.call("51", "12345")));
    assertEquals("REASON-MISSING", codeOf(() -> line.station.call("51", "x".repeat(201))));
  }

  @Test
  void whoGoesOnAfterAFailNeedsNoGroundsAgain() throws Exception {
    line.station.call("51", "named by judge Ostrander");
    line.shoot("301 ft/s");
    line.station.call("51");
    assertEquals(2, line.check().opened().attempt());
    assertNull(line.check().opened().grounds());
  }

  @Test
  void aPassLapsesOnlyWithTheWordsOfTheRule() throws Exception {
    pass("51", "named by judge Ostrander");
    StationException refused =
        assertThrows(StationException.class, () -> line.station.call("51", "a new string"));
    assertEquals("ALREADY-WITHIN", refused.trouble().code());
    assertTrue(
        refused.trouble().remedy().contains("lapses with another bow: then call"),
        refused.trouble().remedy());
    assertEquals(
        Optional.of(new Grounds("51", "Lea Named", List.of("another bow"))),
        line.station.grounds("51"));
    line.station.call("51", "Another bow");
    assertEquals(2, line.check().opened().attempt());
  }

  @Test
  void anotherClassIsNoGroundsWhileTheClassIsTheSame() throws Exception {
    pass("51", "named by judge Ostrander");
    StationException refused =
        assertThrows(StationException.class, () -> line.station.call("51", "another class"));
    assertEquals("ALREADY-WITHIN", refused.trouble().code());
    assertTrue(
        refused.trouble().remedy().contains("another class is no grounds in the same one"),
        refused.trouble().remedy());
  }

  @Test
  void aCheckThatOnlyLacksItsTicksIsNoWayToShootAgainWithoutEnd() throws Exception {
    for (int attempt = 1; attempt <= 2; attempt++) {
      line.station.call("31");
      line.shoot("310 ft/s");
      assertEquals(Optional.empty(), line.outcome());
      line.station.endCheck("the archer stepped back");
    }
    assertEquals("NO-RECHECK-LEFT", codeOf(() -> line.station.call("31")));
  }

  @Test
  void aPassStandsWhereTheRuleLetsNothingLapse() throws Exception {
    pass("12", "");
    assertEquals("ALREADY-WITHIN", codeOf(() -> line.station.call("12", "another bow")));
    assertEquals(Optional.empty(), line.station.grounds("12"));
  }

  @Test
  void failsBeforeAPassThatLapsedNoLongerCount() throws Exception {
    line.station.call("51", "named by judge Ostrander");
    line.shoot("301 ft/s");
    pass("51", "");
    line.station.call("51", "another bow");
    line.shoot("302 ft/s");
    assertEquals(1, line.station.view().check().orElseThrow().rechecksLeft());
    line.station.call("51");
    line.shoot("303 ft/s");
    assertEquals("NO-RECHECK-LEFT", codeOf(() -> line.station.call("51")));
  }

  @Test
  void anotherDivisionLetsAPassLapseByItselfWhereTheRuleSaysSo() throws Exception {
    pass("12", "");
    Path roster = line.folder.path().resolve(EventFolder.ROSTER);
    Files.writeString(
        roster, Files.readString(roster).replace("12,Ben Equip,EQ", "12,Ben Equip,NJ"));
    line.onDuty();
    assertEquals("GROUNDS-MISSING", codeOf(() -> line.station.call("12")));
    line.station.call("12", "named by judge Ostrander");
    line.station.endCheck("called by mistake");
    Files.writeString(
        roster, Files.readString(roster).replace("12,Ben Equip,NJ", "12,Ben Equip,CO"));
    line.onDuty();
    line.station.call("12");
    assertEquals(3, line.check().opened().attempt());
  }

  @Test
  void anotherDivisionLeavesAPassWhereTheRuleDoesNotSaySo() throws Exception {
    pass("12", "");
    Path roster = line.folder.path().resolve(EventFolder.ROSTER);
    Files.writeString(
        roster, Files.readString(roster).replace("12,Ben Equip,EQ", "12,Ben Equip,CO"));
    line.onDuty();
    assertEquals("ALREADY-WITHIN", codeOf(() -> line.station.call("12")));
  }

  @Test
  void onlyThoseDrawnAreCalledPlainly() throws Exception {
    assertEquals("DRAW-MISSING", codeOf(() -> line.station.call("41")));
    assertEquals("DRAW-MISSING", codeOf(() -> line.station.call("41", "a judge asked")));
    Fact.DrawMade draw = line.station.proceedings().draw("RS", SEED);
    assertEquals(2, draw.drawn().size());
    String drawn = draw.drawn().get(0);
    String other = draw.pool().stream().filter(b -> !draw.drawn().contains(b)).findFirst().get();
    line.station.call(drawn);
    assertNull(line.check().opened().grounds());
    line.station.endCheck("called by mistake");
    assertEquals("GROUNDS-MISSING", codeOf(() -> line.station.call(other)));
    line.station.call(other, "judge Ostrander saw a very flat arrow");
    assertEquals(other, line.check().opened().bib());
  }

  @Test
  void whatFollowsAFailIsSignedAndHeldTo() throws Exception {
    line.station.call("71");
    line.shoot("303.1 ft/s");
    assertEquals(Consequence.BARRED, line.facts(Fact.VerdictGiven.class).get(0).follows());
    assertEquals(
        "the archer is barred from the event",
        line.station.view().check().orElseThrow().follows().orElseThrow().toString());
    StationException refused =
        assertThrows(StationException.class, () -> line.station.call("71", "please"));
    assertEquals("NO-RECHECK", refused.trouble().code());
    assertTrue(refused.trouble().why().contains("barred from the event"), refused.trouble().why());
  }

  @Test
  void aFailInANarrowBandLeavesTheRecheck() throws Exception {
    line.station.call("71");
    line.shoot("303 ft/s");
    assertEquals(Consequence.RECHECK, line.facts(Fact.VerdictGiven.class).get(0).follows());
    line.station.call("71");
    assertEquals(2, line.check().opened().attempt());
  }

  @Test
  void aVerdictThatNothingFollowsSaysNothing() throws Exception {
    pass("12", "");
    assertNull(line.facts(Fact.VerdictGiven.class).get(0).follows());
  }

  @Test
  void thePhaseInWhichACheckWasOpenedDecidesWhatFollows() throws Exception {
    assertEquals(Phase.BEFORE, line.station.view().phase());
    line.station.proceedings().begin("during", "");
    assertEquals(Phase.DURING, line.station.view().phase());
    assertEquals("SAME-PHASE", codeOf(() -> line.station.proceedings().begin("during", "")));
    assertEquals("PHASE-WORD", codeOf(() -> line.station.proceedings().begin("tomorrow", "")));
    line.station.call("81");
    assertEquals("PHASE-BACK", codeOf(() -> line.station.proceedings().begin("before", " ")));
    assertEquals(Phase.DURING, line.station.view().phase());
    line.station.proceedings().begin("before", "begun by mistake");
    assertEquals(
        List.of(
            new Fact.PhaseBegan(Phase.DURING),
            new Fact.PhaseBegan(Phase.BEFORE, "begun by mistake")),
        line.facts(Fact.PhaseBegan.class));
    line.shoot("301 ft/s");
    assertEquals(Optional.of(Outcome.OVER), line.outcome());
    assertEquals(Consequence.STRUCK, line.facts(Fact.VerdictGiven.class).get(0).follows());
  }
}
