package lanewarden.station;

import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import lanewarden.journal.SetUpStated;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
import lanewarden.quantity.Mass;
import lanewarden.rules.Consequence;
import lanewarden.rules.SetUp;
import org.junit.jupiter.api.Test;

class SetUpTest extends ClausesTest {

  private CheckView view() {
    return line.station.view().check().orElseThrow();
  }

  @Test
  void noShotIsTakenBeforeTheFiguresThatAClauseNeedsAreStated() throws Exception {
    line.station.call("11");
    assertFalse(view().takesShots());
    assertEquals(List.of("arrow mass", "draw weight as set"), view().missingFigures());
    line.shoot("290 ft/s");
    assertEquals(List.of(), line.check().shots());
    Fact.LineRefused line1 = line.check().refused().get(0);
    assertEquals("not asked for", line1.reason());
    assertTrue(line1.words().contains("to be stated first: arrow mass"), line1.words());
  }

  @Test
  void aFigureWithoutAUnitIsInGrainsAndPoundsForce() throws Exception {
    line.station.call("11");
    line.station.officiating().state(new SetUpText("365.5", "60", ""));
    assertEquals(
        new SetUp(Mass.parse("365.5 gr"), Force.parse("60 lbf"), null), line.check().setUp());
    assertTrue(view().takesShots());
    line.shoot("290 ft/s");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
  }

  /** Common practice: no whole arrow is as light as 100 gr; 22.7 g is one of 350 gr. */
  @Test
  void gramsTypedAsGrainsAreRefusedWithWhatToDo() throws Exception {
    line.station.call("11");
    StationException refused =
        assertThrows(
            StationException.class,
            () -> line.station.officiating().state(new SetUpText("22.7", "60", "")));
    assertEquals("SET-UP-UNREADABLE", refused.trouble().code());
    assertEquals(
        "As the arrow's mass was typed 22.7 gr, which is lighter than any (100 gr at least).",
        refused.trouble().why());
    assertTrue(refused.trouble().remedy().contains("in grams is typed with its unit"));
    line.station.officiating().state(new SetUpText("22.7 g", "60", ""));
    assertEquals(Mass.parse("22.7 g"), line.check().setUp().arrowMass());
    line.station.officiating().state(new SetUpText("100", "", ""));
    assertEquals(Mass.parse("100 gr"), line.check().setUp().arrowMass());
  }

  @Test
  void aFigureLeftBlankStaysAsItWas() throws Exception {
    line.station.call("12");
    line.station.officiating().state(new SetUpText("", "267 N", ""));
    assertEquals(new SetUp(Mass.parse("360 gr"), Force.parse("267 N"), null), line.check().setUp());
  }

  @Test
  void aBrokenClauseEndsTheCheckWithItsOpening() throws Exception {
    line.station.call("13");
    assertEquals(Optional.of(Outcome.NOT_ADMITTED), line.outcome());
    Fact.VerdictGiven verdict = line.facts(Fact.VerdictGiven.class).get(0);
    assertEquals(line.check().number(), verdict.check());
    assertEquals(Consequence.RECHECK, verdict.follows());
    assertEquals(
        "the archer may come back with another bow or arrow",
        view().follows().orElseThrow().toString());
  }

  @Test
  void aHeavyArrowToWhichNoLimitAppliesIsWithinWithItsOpening() throws Exception {
    line.station.call("22");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
    assertTrue(view().words().startsWith("no limit applies"), view().words());
  }

  @Test
  void aVerdictAtTheOpeningNamesItsCheckAlsoWhereTheOneBeforeIsClosedByIt() throws Exception {
    line.station.call("13");
    line.station.call("22");
    Fact.VerdictGiven verdict = line.facts(Fact.VerdictGiven.class).get(1);
    assertEquals(line.check().number(), verdict.check());
    assertEquals("22", line.check().opened().bib());
  }

  @Test
  void statingAnotherFigureTakesTheVerdictBackAndAsksTheRuleAnew() throws Exception {
    line.station.call("12");
    line.shoot("290 ft/s");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
    line.station.officiating().state(new SetUpText("350", "", ""));
    assertEquals(Optional.of(Outcome.NOT_ADMITTED), line.outcome());
    line.station.officiating().state(new SetUpText("361", "", ""));
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
    assertEquals(3, line.facts(Fact.VerdictGiven.class).size());
  }

  /** The bow's lengths tell what it can give, and so whether a reading counts. */
  @Test
  void otherLengthsOfTheBowAreOtherFigures() throws Exception {
    line.station.call("12");
    line.station.officiating().state(new SetUpText("", "", "", "29", "7"));
    line.shoot("290 ft/s");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
    line.station.officiating().state(new SetUpText("", "", "", "15", ""));
    assertEquals(Optional.empty(), line.outcome());
    line.station.officiating().state(new SetUpText("", "", "", "28", ""));
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
  }

  @Test
  void statingTheSameFiguresAgainTakesNoVerdictBack() throws Exception {
    line.station.call("12");
    line.station.officiating().state(new SetUpText("360", "60", ""));
    line.shoot("290 ft/s");
    assertEquals(
        "SET-UP-SAME",
        codeOf(() -> line.station.officiating().state(new SetUpText("360.0", "60 lbf", ""))));
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
    assertEquals(1, line.facts(SetUpStated.class).size());
  }

  /** The roster's figures are what somebody wrote; a scale at the line says more. */
  @Test
  void onlyWhatIsTypedAtTheLineCountsAsWeighed() throws Exception {
    line.station.call("12");
    assertEquals(Mass.parse("360 gr"), line.check().setUp().arrowMass());
    assertFalse(line.check().isArrowWeighed());
    line.station.officiating().state(new SetUpText("", "61", ""));
    assertEquals(Set.of(SetUp.DRAW_WEIGHT), line.check().weighed());
    assertFalse(line.check().isArrowWeighed());
    line.station.officiating().state(new SetUpText("370", "", ""));
    assertTrue(line.check().isArrowWeighed());
    assertEquals(Set.of(SetUp.DRAW_WEIGHT, SetUp.ARROW_MASS), line.check().weighed());
  }

  /** Neither the roster's word nor a pass nor a doubt about the instrument brings advice. */
  @Test
  void adviceIsForWhoIsOverWithAnArrowThatWasWeighed() throws Exception {
    line.station.call("12");
    line.shoot("330 ft/s");
    assertEquals(Optional.of(Outcome.OVER), line.outcome());
    assertTrue(view().advice().isEmpty());
    assertTrue(view().wantsWeighing());
    line.station.officiating().state(new SetUpText("360", "", ""));
    assertEquals(Optional.of(Outcome.OVER), line.outcome());
    assertTrue(view().advice().isPresent());
    assertFalse(view().wantsWeighing());
    line.station.officiating().state(new SetUpText("365", "", ""));
    line.station.officiating().declareVoid(line.check().shots().get(0).sequence(), "a glint");
    assertTrue(view().advice().isEmpty());
  }

  @Test
  void weighingWhatWasDeclaredIsNewsAlsoAfterTheVerdict() throws Exception {
    line.station.call("12");
    line.shoot("290 ft/s");
    line.station.officiating().state(new SetUpText("360", "", ""));
    assertTrue(line.check().isArrowWeighed());
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
    assertEquals(2, line.facts(Fact.VerdictGiven.class).size());
  }

  @Test
  void whoIsNotAdmittedDuringTheEventIsToldThatTheyMayComeBackAndMay() throws Exception {
    line.station.proceedings().begin("during", "");
    line.station.call("13");
    assertEquals(
        Consequence.RECHECK, line.facts(Fact.VerdictGiven.class).get(0).follows(), "signed");
    assertEquals(
        "the archer may come back with another bow or arrow",
        view().follows().orElseThrow().toString());
    assertTrue(view().mayComeBack());
    line.station.call("13");
    assertEquals(2, line.check().opened().attempt());
  }

  @Test
  void theGreaterDrawWeightNeedsBoth() throws Exception {
    line.station.call("14");
    assertEquals(List.of("certified draw weight"), view().missingFigures());
    line.station.officiating().state(new SetUpText("", "", "62"));
    assertTrue(view().takesShots());
    line.station.officiating().state(new SetUpText("", "", "62.1"));
    assertEquals(Optional.of(Outcome.NOT_ADMITTED), line.outcome());
  }

  @Test
  void whoWasNotAdmittedComesBackWithoutUsingUpARecheck() throws Exception {
    line.station.call("13");
    line.station.call("13");
    assertEquals(2, line.check().opened().attempt());
    line.station.officiating().state(new SetUpText("365", "", ""));
    assertEquals(1, view().rechecksLeft());
    line.shoot("301 ft/s");
    assertEquals(Optional.of(Outcome.OVER), line.outcome());
    assertEquals("a re-check: 1 is left", view().follows().orElseThrow().toString());
  }

  @Test
  void lengthsOfTheBowAreInInchesWhereNothingElseIsSaid() throws Exception {
    line.station.call("11");
    line.station.officiating().state(new SetUpText("", "", "", "29", "178 mm"));
    assertEquals(Length.parse("29 in"), view().check().setUp().drawLength());
    assertEquals(Length.parse("178 mm"), view().check().setUp().braceHeight());
  }

  /** Else nothing would be asked of readings by what the bow can give, and nobody would know. */
  @Test
  void lengthsThatLeaveNoPowerStrokeSayWhy() throws Exception {
    line.station.call("11");
    line.station.officiating().state(new SetUpText("", "", "", "29", ""));
    StationException refused =
        assertThrows(
            StationException.class,
            () -> line.station.officiating().state(new SetUpText("", "", "", "", "28")));
    assertEquals(
        "A draw length of 29 in, less 1.75 in and a brace height of 28 in, leaves no power stroke.",
        refused.trouble().why());
    line.station.officiating().state(new SetUpText("", "", "", "", "27.2"));
    assertEquals(Length.parse("27.2 in"), view().check().setUp().braceHeight());
  }

  @Test
  void whatIsNoFigureIsRefusedAndNothingIsSigned() throws Exception {
    line.station.call("11");
    for (SetUpText typed :
        List.of(
            new SetUpText("", " ", ""),
            new SetUpText("350 oz", "", ""),
            new SetUpText("0", "", ""),
            new SetUpText("", "60,5", ""),
            new SetUpText("3090 gr", "", ""),
            new SetUpText("", "", "", "74", ""),
            new SetUpText("", "", "", "7", "29"),
            new SetUpText("", "", "", "29", "28"),
            new SetUpText("", "", "", "29", "27.25"))) {
      assertEquals(
          "SET-UP-UNREADABLE",
          codeOf(() -> line.station.officiating().state(typed)),
          typed.toString());
    }
    assertEquals(List.of(), line.facts(SetUpStated.class));
    line.station.endCheck("enough");
    assertEquals(
        "NOBODY-AT-THE-LINE",
        codeOf(() -> line.station.officiating().state(new SetUpText("350", "", ""))));
  }

  @Test
  void aRestartComesBackToTheFiguresStated() throws Exception {
    line.station.call("11");
    line.station.officiating().state(new SetUpText("365.5", "60", ""));
    line.close();
    line = PracticeLine.open(line.folder).onDuty();
    assertEquals(Mass.parse("365.5 gr"), line.check().setUp().arrowMass());
    assertTrue(view().takesShots());
  }
}
