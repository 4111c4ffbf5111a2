package lanewarden.station;

import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Optional;
import lanewarden.journal.Correction;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import org.junit.jupiter.api.Test;

/** What was written down wrongly is corrected by two persons, and nothing is edited. */
class CorrectionTest extends LineTest {

  private void onDuty(String name) throws Exception {
    line.station.signIn(name, PracticeEvent.PASSPHRASE.toCharArray());
  }

  private Correction confirm(Correction made) throws Exception {
    onDuty(PracticeEvent.OTHER_OFFICIAL);
    Correction confirmed = line.station.protests().confirm(made.number());
    onDuty(PracticeEvent.OFFICIAL);
    return confirmed;
  }

  private long checkOf(String bib, String... speeds) throws Exception {
    line.station.call(bib);
    line.shoot(speeds);
    long number = line.check().number();
    line.station.next();
    return number;
  }

  private List<Outcome> verdicts() throws Exception {
    return line.facts(Fact.VerdictGiven.class).stream().map(Fact.VerdictGiven::outcome).toList();
  }

  @Test
  void aWrongBibCountsForTheRightOneOnceASecondPersonHasSigned() throws Exception {
    long check = checkOf("1", "301 ft/s", "302 ft/s", "303 ft/s");
    Correction made = line.station.protests().correctBib(check, "4", "the bib was upside down");
    assertEquals("1 Ann Archer", made.before());
    assertEquals("4 Ann Nocker", made.after());
    assertEquals("ALREADY-WITHIN", codeOf(() -> line.station.call("1")));
    assertEquals("SECOND-PERSON", codeOf(() -> line.station.protests().confirm(made.number())));

    assertFalse(confirm(made).isOpen());
    assertEquals("ALREADY-WITHIN", codeOf(() -> line.station.call("4")));
    assertEquals(new LineView.Progress(1, 0, 4), line.station.view().progress());
    line.station.call("1");
    assertEquals(1, line.check().opened().attempt(), "the wrong check is none of this bib's");
    assertEquals(List.of(Outcome.WITHIN), verdicts(), "the same verdict holds");
    line.station.endCheck("only looked at");
    onDuty(PracticeEvent.OTHER_OFFICIAL);
    assertEquals(
        "CORRECTION-CONFIRMED", codeOf(() -> line.station.protests().confirm(made.number())));
  }

  @Test
  void aWrongDivisionIsJudgedByTheRightRuleAndItsVerdictGivenAnew() throws Exception {
    long check = checkOf("1", "301 ft/s", "302 ft/s", "303 ft/s");
    confirm(line.station.protests().correctDivision(check, "HC", "entered as a hunter"));
    assertEquals(List.of(Outcome.WITHIN, Outcome.OVER), verdicts());
    assertEquals(new LineView.Progress(0, 1, 4), line.station.view().progress());
  }

  @Test
  void aFailByTheWrongDivisionUsesUpNoRecheck() throws Exception {
    long check = checkOf("2", "290 ft/s");
    confirm(line.station.protests().correctDivision(check, "OC", "entered as open compound"));
    assertEquals(List.of(Outcome.OVER), verdicts(), "one reading of three decides nothing");
    line.station.call("2");
    assertEquals(2, line.check().opened().attempt());
    assertEquals(1, line.station.view().check().orElseThrow().rechecksLeft());
  }

  @Test
  void aFailThatWasVoidedAwayStaysOneWhateverDivisionItIs() throws Exception {
    line.station.call("2");
    line.shoot("290 ft/s");
    line.station.officiating().declareLastVoid("glare");
    long check = line.check().number();
    line.station.endCheck("out of arrows");
    confirm(line.station.protests().correctDivision(check, "OC", "entered as open compound"));
    line.station.call("2");
    assertEquals(0, line.station.view().check().orElseThrow().rechecksLeft());
  }

  @Test
  void aMistypedReadingIsJudgedAsItShouldHaveBeenTyped() throws Exception {
    line.station.call("3");
    line.station.type("58.9");
    long check = line.check().number();
    assertEquals(Optional.of(Outcome.OVER), line.outcome());
    line.station.next();
    assertEquals("NO-RECHECK", codeOf(() -> line.station.call("3")));
    assertEquals(
        "CORRECTION-NO-SPEED",
        codeOf(() -> line.station.protests().correctReading(check, 1, "fast", "a slip")));
    assertEquals(
        "NO-SUCH-SHOT",
        codeOf(() -> line.station.protests().correctReading(check, 2, "57.9", "a slip")));
    confirm(line.station.protests().correctReading(check, 1, "57.9", "digits exchanged"));
    assertEquals(List.of(Outcome.OVER, Outcome.WITHIN), verdicts());
    assertEquals("ALREADY-WITHIN", codeOf(() -> line.station.call("3")));
    assertEquals(
        "58.9 m/s",
        line.facts(Fact.ReadingTaken.class).get(0).speed().toString(),
        "what was typed stays in the ledger");
  }

  @Test
  void aMeasuredReadingIsNeverCorrected() throws Exception {
    long check = checkOf("3", "57.9 m/s");
    assertEquals(
        "READING-MEASURED",
        codeOf(() -> line.station.protests().correctReading(check, 1, "56.9", "it looked so")));
  }

  @Test
  void whatIsNoCorrectionIsNotSigned() throws Exception {
    long check = checkOf("3", "57.9 m/s");
    Protests protests = line.station.protests();
    assertEquals("CORRECTION-SAME", codeOf(() -> protests.correctBib(check, "3", "so it is")));
    assertEquals("NO-SUCH-COMPETITOR", codeOf(() -> protests.correctBib(check, "99", "late")));
    assertEquals("NO-SUCH-DIVISION", codeOf(() -> protests.correctDivision(check, "XX", "late")));
    assertEquals("NO-SUCH-CHECK", codeOf(() -> protests.correctDivision(2, "HC", "late")));
    assertEquals("REASON-MISSING", codeOf(() -> protests.correctDivision(check, "HC", " ")));
    assertEquals("NO-SUCH-CORRECTION", codeOf(() -> protests.confirm(check)));
    assertEquals(List.of(), line.station.view().docket().corrections());
  }

  @Test
  void nothingIsConfirmedWhileTheLineIsHeld() throws Exception {
    long check = checkOf("1", "301 ft/s", "302 ft/s", "303 ft/s");
    Correction made = line.station.protests().correctDivision(check, "HC", "entered as a hunter");
    line.station.proving().hold("the stand was knocked");
    onDuty(PracticeEvent.OTHER_OFFICIAL);
    assertEquals("STATION-HELD", codeOf(() -> line.station.protests().confirm(made.number())));
  }
}
