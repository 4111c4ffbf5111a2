package lanewarden.station;

import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import lanewarden.station.VerificationView.State;
import org.junit.jupiter.api.Test;

/** The instrument against its reference, and the line held where it cannot be believed. */
class VerificationTest extends LineTest {
  private static final String LIMITS = "most_bias = \"1 ft/s\"\nmost_spread = \"1 ft/s\"\n";
  private static final String BOW = LIMITS + "reference = \"check bow\"\nspeed = \"296.4 ft/s\"\n";
  private static final String SECOND = LIMITS + "reference = \"second instrument\"\n";

  private void plan(String table) throws Exception {
    line.close();
    Files.writeString(
        line.folder.path().resolve(EventFolder.SETTINGS),
        "[verification]\n" + table,
        StandardOpenOption.APPEND);
    line = PracticeLine.open(line.folder).onDuty();
  }

  private void verify(String... speeds) throws Exception {
    line.station.proving().begin();
    line.shoot(speeds);
  }

  private void check(String bib, String... speeds) throws Exception {
    line.station.call(bib);
    line.shoot(speeds);
    line.station.next();
  }

  private VerificationView verification() {
    return line.station.view().verification();
  }

  private VerificationView.Round last() {
    return verification().last().orElseThrow();
  }

  @Test
  void withoutTheTableNothingIsDueAndNothingSigned() throws Exception {
    check("1", "301 ft/s", "302 ft/s", "303 ft/s");
    assertEquals("VERIFICATION-UNPLANNED", codeOf(line.station.proving()::begin));
    line.station.closeLine("");
    assertEquals(List.of(), line.facts(Fact.VerificationPlanned.class));
    assertFalse(verification().planned());
  }

  @Test
  void nobodyIsCalledBeforeTheOpeningVerification() throws Exception {
    plan("before_opening = true\n" + BOW);
    assertEquals("VERIFICATION-DUE", codeOf(() -> line.station.call("1")));
    assertEquals(Optional.empty(), line.station.grounds("1"));
    verify("296.0 ft/s", "296.5 ft/s");
    assertEquals("VERIFICATION-RUNNING", codeOf(() -> line.station.call("1")));
    assertEquals("VERIFICATION-RUNNING", codeOf(() -> line.station.closeLine("")));
    line.shoot("296.9 ft/s");
    assertEquals(State.PASSED, last().state());
    assertEquals("opening", last().occasion());
    assertTrue(
        last()
            .words()
            .toString()
            .startsWith("3 shots: bias +0.067 ft/s (at most 1 ft/s), spread 0.451 ft/s"),
        last().words().toString());
    line.station.call("1");
    assertEquals(
        List.of(new Fact.VerificationPlanned(true, null, false)),
        line.facts(Fact.VerificationPlanned.class));
  }

  @Test
  void theBiasOfEachShotIsStationMinusReference() throws Exception {
    plan(BOW);
    verify("297.4 ft/s");
    assertEquals("on request", last().occasion());
    assertEquals("0.3048", last().taken().get(0).bias().orElseThrow().stripTrailingZeros() + "");
    assertEquals("1 ft/s", last().taken().get(0).biasInWords().orElseThrow());
  }

  @Test
  void outOfLimitsHoldsTheLineAndPutsEveryCheckSinceInQuestion() throws Exception {
    plan(BOW);
    verify("296.0 ft/s", "296.5 ft/s", "296.9 ft/s");
    check("1", "301 ft/s", "302 ft/s", "303 ft/s");
    check("2", "290 ft/s");
    assertEquals(new LineView.Progress(1, 1, 4), line.station.view().progress());
    verify("299.0 ft/s", "299.1 ft/s", "299.2 ft/s");
    List<Fact> facts = line.facts();
    assertEquals(Fact.VerificationShot.class, facts.get(facts.size() - 3).getClass());
    Fact.LineHeld held = (Fact.LineHeld) facts.get(facts.size() - 1);
    assertEquals(2, held.checks().size());
    assertEquals(held.checks(), verification().held().orElseThrow().checks());
    assertEquals(State.OUT, last().state());
    assertEquals(new LineView.Progress(0, 0, 4), line.station.view().progress());
    assertEquals(List.of("1 Ann Archer", "2 Ben Bowyer"), verification().again());
    assertEquals("STATION-HELD", codeOf(() -> line.station.call("3")));
    assertEquals("HOLD-STANDS", codeOf(() -> line.station.proving().lift("looks good")));
  }

  @Test
  void onlyAGoodVerificationLiftsItAndThoseInQuestionComeBackWithoutGrounds() throws Exception {
    plan(BOW);
    check("1", "301 ft/s", "302 ft/s", "303 ft/s");
    check("2", "290 ft/s");
    check("2", "291 ft/s");
    assertEquals("NO-RECHECK-LEFT", codeOf(() -> line.station.call("2")));
    verify("299.0 ft/s", "299.1 ft/s", "299.2 ft/s");
    verify("299.0 ft/s", "299.1 ft/s", "299.2 ft/s");
    assertEquals("after a hold", last().occasion());
    assertEquals(1, line.facts(Fact.LineHeld.class).size(), "it was held already");
    verify("296.0 ft/s", "296.5 ft/s", "296.9 ft/s");
    assertEquals(1, line.facts(Fact.HoldLifted.class).size());
    assertEquals(Optional.empty(), verification().held());
    check("1", "301 ft/s", "302 ft/s", "303 ft/s");
    assertEquals(List.of("2 Ben Bowyer"), verification().again());
    line.station.call("2");
    assertEquals(1, line.station.view().check().orElseThrow().rechecksLeft());
    assertEquals("ALREADY-WITHIN", codeOf(() -> callAfterEnd("1")));
  }

  @Test
  void aHoldIsNotLiftedByWiderLimits() throws Exception {
    plan(BOW);
    verify("299.0 ft/s", "299.1 ft/s", "299.2 ft/s");
    limits("3 ft/s", "1 ft/s");
    assertEquals("LIMITS-LOOSENED", codeOf(line.station.proving()::begin));
    limits("1 ft/s", "1.01 ft/s");
    assertEquals("LIMITS-LOOSENED", codeOf(line.station.proving()::begin));
    // 1 ft/s are 0.3374 % of the bow's 296.4 ft/s
    limits("0.338 %", "1 ft/s");
    assertEquals("LIMITS-LOOSENED", codeOf(line.station.proving()::begin));
    limits("0.337 %", "1 ft/s");
    verify("299.0 ft/s", "299.1 ft/s", "299.2 ft/s");
    limits("1 ft/s", "1 ft/s");
    verify("296.0 ft/s", "296.5 ft/s", "296.9 ft/s");
    assertEquals(Optional.empty(), verification().held(), "the limits that put it on lift it");
    limits("3 ft/s", "3 ft/s");
    verify("299.0 ft/s", "299.1 ft/s", "299.2 ft/s");
    assertEquals(State.PASSED, last().state(), "without a hold the limits are the organizer's");
  }

  private void limits(String bias, String spread) throws Exception {
    line.close();
    Path settings = line.folder.path().resolve(EventFolder.SETTINGS);
    Files.writeString(
        settings,
        Files.readString(settings)
            .replaceAll("most_bias = .*", "most_bias = \"" + bias + "\"")
            .replaceAll("most_spread = .*", "most_spread = \"" + spread + "\""));
    line = PracticeLine.open(line.folder).onDuty();
  }

  @Test
  void ofAHoldTheNewestComparisonIsTold() throws Exception {
    plan(BOW);
    verify("299.0 ft/s", "299.1 ft/s", "299.2 ft/s");
    assertTrue(heldFor().contains("bias +2.700 ft/s"), heldFor());
    verify("290.0 ft/s", "290.1 ft/s", "290.2 ft/s");
    assertTrue(heldFor().contains("bias -6.300 ft/s"), heldFor());
    assertTrue(verification().stop().orElseThrow().why().contains("bias -6.300 ft/s"));
    verify("310.0 ft/s");
    line.station.proving().breakOff("the string broke");
    assertTrue(heldFor().contains("bias -6.300 ft/s"), "one shot says nothing: " + heldFor());
    verify("280.0 ft/s", "280.0 ft/s");
    line.station.proving().breakOff("it will not do");
    assertTrue(heldFor().endsWith("16.400 ft/s, broken off after 2 of 3 shots"), heldFor());
    assertEquals(1, line.facts(Fact.LineHeld.class).size());
  }

  private String heldFor() {
    return verification().held().orElseThrow().reason();
  }

  private void callAfterEnd(String bib) throws Exception {
    line.station.endCheck("enough");
    line.station.call(bib);
  }

  @Test
  void aDecidedCheckAtTheLineIsCalledBackAfterTheHold() throws Exception {
    plan(BOW);
    line.station.call("2");
    line.shoot("270 ft/s", "271 ft/s");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
    line.station.proving().hold("the stand was knocked");
    CheckView atLine = line.station.view().check().orElseThrow();
    assertTrue(atLine.check().inQuestion() && atLine.mayComeBack());
    assertTrue(
        atLine.follows().orElseThrow().toString().startsWith("a re-check that uses none up"));
    line.station.proving().lift("it did not move");
    assertFalse(line.check().inQuestion(), "the doubt is gone");
    assertEquals(new LineView.Progress(1, 0, 4), line.station.view().progress());
  }

  @Test
  void whileItIsHeldNoReadingIsTakenAndNoneIsLost() throws Exception {
    line.station.call("2");
    line.shoot("270 ft/s");
    line.station.proving().hold("low sun in the gate");
    line.shoot("271 ft/s");
    assertEquals("held", line.station.view().refused().orElseThrow().reason());
    assertEquals(1, line.check().shots().size());
    assertEquals(1, line.check().refused().size());
    assertEquals("STATION-HELD", codeOf(() -> line.station.type("271")));
    assertEquals("STATION-HELD", codeOf(() -> line.station.officiating().declareLastVoid("sun")));
    assertEquals("STATION-HELD", codeOf(() -> line.station.proving().hold("again")));
    line.station.proving().lift("shaded");
    line.shoot("271 ft/s");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
    assertEquals("NOT-HELD", codeOf(() -> line.station.proving().lift("again")));
  }

  @Test
  void aVerificationOutOfLimitsTakesThePlaceOfAHoldByHand() throws Exception {
    plan(BOW);
    line.station.proving().hold("the stand was knocked");
    verify("299.0 ft/s", "299.1 ft/s", "299.2 ft/s");
    assertFalse(verification().held().orElseThrow().byHand());
    verify("296.0 ft/s", "296.5 ft/s", "296.9 ft/s");
    assertEquals(2, line.facts(Fact.HoldLifted.class).size());
    assertEquals(Optional.empty(), verification().stop());
  }

  @Test
  void aVerificationIsNotBegunWhileAnArcherShoots() throws Exception {
    plan(BOW);
    line.station.call("1");
    assertEquals("CHECK-RUNNING", codeOf(line.station.proving()::begin));
    line.shoot("301 ft/s", "302 ft/s", "303 ft/s");
    line.station.proving().begin();
    assertEquals(Optional.empty(), line.station.view().check());
    assertEquals("VERIFICATION-RUNNING", codeOf(line.station.proving()::begin));
  }

  @Test
  void itIsDueAfterSoManyCompetitors() throws Exception {
    plan("every = 2\n" + BOW);
    assertEquals(2, verification().callsLeft().orElseThrow());
    check("2", "290 ft/s");
    check("2", "270 ft/s", "270 ft/s");
    assertEquals(1, verification().callsLeft().orElseThrow(), "competitors, not checks");
    check("3", "57 m/s");
    assertEquals("VERIFICATION-DUE", codeOf(() -> line.station.call("1")));
    verify("296.0 ft/s", "296.5 ft/s", "296.9 ft/s");
    assertEquals("interval", last().occasion());
    line.station.call("1");
  }

  @Test
  void theLineClosesAfterAVerificationOrWithASignedReason() throws Exception {
    plan("at_end = true\n" + BOW);
    check("3", "57 m/s");
    assertEquals("VERIFICATION-DUE", codeOf(() -> line.station.closeLine(" ")));
    line.station.closeLine("thunderstorm");
    assertEquals(
        List.of(new Fact.StationClosed("thunderstorm")), line.facts(Fact.StationClosed.class));
    line.onDuty();
    assertEquals("VERIFICATION-DUE", codeOf(() -> line.station.closeLine("")));
    verify("296.0 ft/s", "296.5 ft/s", "296.9 ft/s");
    assertEquals("closing", last().occasion());
    line.station.closeLine("");
  }

  @Test
  void aBrokenOffVerificationCountsForNothing() throws Exception {
    plan("before_opening = true\n" + BOW);
    verify("310 ft/s");
    line.station.proving().breakOff("the string broke");
    assertEquals(State.BROKEN_OFF, last().state());
    assertEquals("broken off after 1 of 3 shots: the string broke", last().words().toString());
    assertEquals(Optional.empty(), verification().held());
    assertEquals("VERIFICATION-DUE", codeOf(() -> line.station.call("1")));
    assertEquals("NO-VERIFICATION", codeOf(() -> line.station.proving().breakOff("again")));
  }

  @Test
  void breakingOffDoesNotHideThatTheShotsTakenAreOut() throws Exception {
    plan(BOW);
    check("1", "301 ft/s", "302 ft/s", "303 ft/s");
    verify("299.0 ft/s", "299.2 ft/s");
    line.station.proving().breakOff("it will not do");
    VerificationView.Held held = verification().held().orElseThrow();
    assertEquals(
        "the instrument is out of its limits: 2 shots: bias +2.700 ft/s (more than 1 ft/s), spread"
            + " 0.141 ft/s (at most 1 ft/s), farthest shot 2 by 2.800 ft/s, broken off after 2 of 3"
            + " shots",
        held.reason());
    assertFalse(held.byHand());
    assertEquals(1, held.checks().size());
    assertEquals(State.OUT, last().state());
    assertEquals("STATION-HELD", codeOf(() -> line.station.call("2")));
    verify("299.0 ft/s", "299.2 ft/s");
    line.station.proving().breakOff("nor now");
    assertEquals(1, line.facts(Fact.LineHeld.class).size(), "it was held already");
  }

  @Test
  void brokenOffWithShotsInTheirLimitsItSaysNothing() throws Exception {
    plan(BOW);
    verify("296.0 ft/s", "296.5 ft/s");
    line.station.proving().breakOff("thunder");
    assertEquals(State.BROKEN_OFF, last().state());
    assertEquals(Optional.empty(), verification().held());
  }

  @Test
  void theSecondInstrumentsValueIsTypedWithEachShot() throws Exception {
    plan("shots = 2\n" + SECOND);
    verify("296.0 ft/s");
    assertTrue(last().awaitsReference());
    line.shoot("297.0 ft/s");
    assertEquals("no shot of it", line.station.view().refused().orElseThrow().reason());
    assertEquals("REFERENCE-NO-SPEED", codeOf(() -> line.station.proving().reference("29,6")));
    line.station.proving().reference("296.2");
    assertEquals("REFERENCE-NOT-ASKED", codeOf(() -> line.station.proving().reference("296")));
    line.station.type("295.9");
    line.station.proving().reference("90.2 m/s");
    assertEquals(State.PASSED, last().state());
    assertEquals(2, line.facts(Fact.ReferenceTyped.class).size());
  }

  @Test
  void itGoesOnWhereItWasWhenTheProgramWasKilledInItsMiddle() throws Exception {
    plan("before_opening = true\nshots = 2\n" + SECOND);
    verify("296.0 ft/s");
    VerificationView before = verification();
    restart();
    assertEquals(before, verification());
    line.onDuty();
    line.station.proving().reference("296.2 ft/s");
    restart();
    line.onDuty();
    line.shoot("299 ft/s");
    line.station.proving().reference("296.2 ft/s");
    assertEquals(State.OUT, last().state());
    restart();
    line.onDuty();
    assertEquals("STATION-HELD", codeOf(() -> line.station.call("1")));
  }

  @Test
  void theSameLineIsNoSecondShotEvenAfterARestart() throws Exception {
    plan(BOW);
    line.station.proving().begin();
    String sent = "$PLWT,00355,0341.0,F,005865,A*11\\r\\n";
    line.emit(sent);
    restart();
    line.onDuty();
    line.emit(sent);
    assertEquals(1, last().taken().size(), last().words().toString());
    assertEquals("no shot of it", line.station.view().refused().orElseThrow().reason());
  }
}
