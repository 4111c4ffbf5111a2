package lanewarden.station;

import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import org.junit.jupiter.api.Test;

class CallingTest extends LineTest {

  @Test
  void callsByBib() throws Exception {
    line.station.call("2");
    assertEquals("Ben Bowyer", line.check().opened().name());
    assertEquals("HC", line.station.view().check().orElseThrow().division().code());
  }

  @Test
  void callsByPartOfTheNameInAnyCase() throws Exception {
    line.station.call("fletch");
    assertEquals("3", line.check().opened().bib());
  }

  @Test
  void callsNobodyWhereANameMayMeanTwo() {
    StationException e = assertThrows(StationException.class, () -> line.station.call("Ann"));
    assertEquals("SEVERAL-COMPETITORS", e.trouble().code());
    assertTrue(e.trouble().why().contains("1 Ann Archer, 4 Ann Nocker"), e.trouble().why());
    assertEquals(Optional.empty(), line.station.view().check());
  }

  @Test
  void callsNobodyWhoIsNotOnTheRoster() {
    assertEquals("NO-SUCH-COMPETITOR", codeOf(() -> line.station.call("99")));
  }

  @Test
  void callsNobodyWhileACheckRuns() throws Exception {
    line.station.call("1");
    assertEquals("CHECK-RUNNING", codeOf(() -> line.station.call("2")));
    assertEquals("1", line.check().opened().bib());
  }

  @Test
  void callsNobodyWithoutAnOfficial() throws Exception {
    line.station.signOut();
    assertEquals("NOBODY-ON-DUTY", codeOf(() -> line.station.call("1")));
  }

  @Test
  void callingTheNextClosesADecidedCheck() throws Exception {
    line.station.call("2");
    line.shoot("270 ft/s", "271 ft/s");
    line.station.call("1");
    assertEquals("1", line.check().opened().bib());
    assertEquals(1, line.facts(Fact.CheckClosed.class).size());
  }

  @Test
  void doesNotCallAgainWhoIsWithin() throws Exception {
    line.station.call("2");
    line.shoot("270 ft/s", "271 ft/s");
    line.station.next();
    assertEquals("ALREADY-WITHIN", codeOf(() -> line.station.call("2")));
  }

  @Test
  void callsAgainAfterAFailAsOftenAsTheRuleAllows() throws Exception {
    line.station.call("2");
    line.shoot("283 ft/s");
    assertEquals(Optional.of(Outcome.OVER), line.outcome());
    assertEquals(1, line.station.view().check().orElseThrow().rechecksLeft());
    line.station.call("2");
    assertEquals(2, line.check().opened().attempt());
    line.shoot("284 ft/s");
    assertEquals(0, line.station.view().check().orElseThrow().rechecksLeft());
    assertEquals("NO-RECHECK-LEFT", codeOf(() -> line.station.call("2")));
  }

  @Test
  void aFailThatWasVoidedAwayUsesUpARecheckAllTheSame() throws Exception {
    for (int attempt = 1; attempt <= 2; attempt++) {
      line.station.call("1");
      line.shoot("340 ft/s", "341 ft/s", "339 ft/s");
      assertEquals(Optional.of(Outcome.OVER), line.outcome());
      line.station.officiating().declareLastVoid("glare");
      line.station.officiating().declareLastVoid("glare again");
      assertEquals(Optional.of(Outcome.NOT_DECIDED), line.outcome());
      line.station.next();
    }
    assertEquals("NO-RECHECK-LEFT", codeOf(() -> line.station.call("1")));
  }

  @Test
  void aMisreadThatWasVoidedUsesUpNoRecheck() throws Exception {
    line.station.call("2");
    line.shoot("390 ft/s");
    assertEquals(Optional.of(Outcome.OVER), line.outcome());
    line.station.officiating().declareLastVoid("a fly in the gate");
    line.shoot("281 ft/s", "281.5 ft/s");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
    assertFalse(line.check().usesRecheck());
  }

  @Test
  void aCheckEndedWithoutAVerdictUsesUpNoRecheck() throws Exception {
    line.station.call("3");
    line.station.endCheck("the nock split");
    line.station.call("3");
    assertEquals(2, line.check().opened().attempt());
    line.shoot("57.9 m/s");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
  }

  @Test
  void countsTheRosterAsItGoes() throws Exception {
    line.station.call("2");
    line.shoot("283 ft/s");
    line.station.call("3");
    line.shoot("57.9 m/s");
    assertEquals(new LineView.Progress(1, 1, 4), line.station.view().progress());
  }

  @Test
  void everyVerdictNamesTheReadingsItRestsOnAndTheRuleBook() throws Exception {
    line.station.call("2");
    line.shoot("270 ft/s", "271 ft/s");
    Fact.VerdictGiven verdict = line.facts(Fact.VerdictGiven.class).get(0);
    List<Long> readings = line.check().shots().stream().map(s -> s.sequence()).toList();
    assertEquals(readings, verdict.readings());
    assertEquals(line.facts(Fact.RuleBookAdopted.class).get(0).sha256(), verdict.ruleBook());
  }
}
