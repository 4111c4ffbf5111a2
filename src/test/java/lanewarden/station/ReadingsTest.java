package lanewarden.station;

import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Base64;
import java.util.List;
import java.util.Optional;
import lanewarden.chronograph.RawBytes;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import org.junit.jupiter.api.Test;

class ReadingsTest extends LineTest {

  @Test
  void decidesAsEarlyAsTheRuleAllowsAndNoEarlier() throws Exception {
    line.station.call("1");
    line.shoot("301.2 ft/s", "302 ft/s");
    assertEquals(Optional.empty(), line.outcome());
    line.shoot("301.5 ft/s");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
  }

  @Test
  void aReadingKeepsItsBytesItsSourceAndItsNumber() throws Exception {
    line.station.call("1");
    line.shoot("301.2 ft/s");
    Fact.ReadingTaken reading = line.check().shots().get(0).reading();
    assertEquals("simulator", reading.source());
    assertEquals("00001", reading.line());
    assertTrue(
        LineBytes.escaped(reading.raw()).matches("\\$PLWT,00001,0301\\.2,F,.*\\\\r\\\\n"),
        LineBytes.escaped(reading.raw()));
  }

  @Test
  void aDamagedLineIsRefusedWithItsBytesAndCountsForNothing() throws Exception {
    line.station.call("1");
    line.emit("$PLWT,00042,0300.1,F,006664,A*00\\r\\n");
    assertEquals(List.of(), line.check().shots());
    Fact.LineRefused refused = line.station.view().refused().orElseThrow();
    assertEquals("wrong checksum", refused.reason());
    assertEquals("$PLWT,00042,0300.1,F,006664,A*00\\r\\n", LineBytes.escaped(refused.raw()));
    assertEquals(List.of(refused), line.check().refused());
  }

  @Test
  void aReadingWithNobodyAtTheLineIsKeptButCountsForNobody() throws Exception {
    line.shoot("290 ft/s");
    line.station.call("1");
    assertEquals(List.of(), line.check().shots());
    Fact.LineRefused stray = line.facts(Fact.LineRefused.class).get(0);
    assertEquals("no competitor", stray.reason());
    assertEquals(null, stray.check());
  }

  @Test
  void aReadingAfterTheVerdictDoesNotChangeIt() throws Exception {
    line.station.call("2");
    line.shoot("270 ft/s", "271 ft/s", "299 ft/s");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
    assertEquals(2, line.check().shots().size());
    assertEquals("already decided", line.facts(Fact.LineRefused.class).get(0).reason());
  }

  @Test
  void aTypedReadingIsMarkedAsTypedAndTakenInTheDivisionsUnit() throws Exception {
    line.station.call("3");
    line.station.type("57.9");
    Fact.ReadingTaken reading = line.check().shots().get(0).reading();
    assertEquals("57.9 m/s", reading.speed().toString());
    assertEquals("typed", reading.source());
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
  }

  @Test
  void aTypedWordThatIsNoSpeedIsRefusedAndKept() throws Exception {
    line.station.call("3");
    line.station.type("57,9");
    assertEquals(List.of(), line.check().shots());
    assertEquals(1, line.check().refused().size());
  }

  @Test
  void nothingIsTypedWithNobodyAtTheLine() {
    assertEquals("NOBODY-AT-THE-LINE", codeOf(() -> line.station.type("57.9")));
  }

  @Test
  void aVoidReadingUsesUpItsShotAndTakesBackTheVerdict() throws Exception {
    line.station.call("2");
    line.shoot("341 ft/s");
    assertEquals(Optional.of(Outcome.OVER), line.outcome());
    line.station.officiating().declareLastVoid("glare in the gate");
    assertEquals(Optional.empty(), line.outcome());
    assertEquals(1, line.station.view().check().orElseThrow().check().shots().size());
    line.shoot("270 ft/s", "271 ft/s");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
  }

  @Test
  void oneVoidMoreThanTheRuleForgivesEndsTheCheckUndecided() throws Exception {
    line.station.call("2");
    line.shoot("341 ft/s");
    line.station.officiating().declareLastVoid("glare");
    line.shoot("342 ft/s");
    line.station.officiating().declareLastVoid("glare again");
    assertEquals(Optional.of(Outcome.NOT_DECIDED), line.outcome());
  }

  @Test
  void anyReadingOfTheCheckCanBeDeclaredVoid() throws Exception {
    line.station.call("1");
    line.shoot("301 ft/s", "399 ft/s", "302 ft/s");
    long misread = line.check().shots().get(1).sequence();
    line.station.officiating().declareVoid(misread, "a bird");
    line.shoot("303 ft/s");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
    assertEquals("a bird", line.check().shots().get(1).voided().reason());
  }

  @Test
  void aReadingIsVoidOnlyOnce() throws Exception {
    line.station.call("1");
    line.shoot("301 ft/s");
    long reading = line.check().shots().get(0).sequence();
    line.station.officiating().declareVoid(reading, "a bird");
    assertEquals(
        "NO-SUCH-READING", codeOf(() -> line.station.officiating().declareVoid(reading, "again")));
    assertEquals(
        "NO-SUCH-READING", codeOf(() -> line.station.officiating().declareVoid(0, "no such")));
    assertEquals("NO-READING", codeOf(() -> line.station.officiating().declareLastVoid("again")));
  }

  @Test
  void aVoidNeedsAReason() throws Exception {
    line.station.call("1");
    line.shoot("301 ft/s");
    assertEquals("REASON-MISSING", codeOf(() -> line.station.officiating().declareLastVoid("  ")));
    assertEquals(
        "REASON-MISSING",
        codeOf(() -> line.station.officiating().declareLastVoid("x".repeat(201))));
    assertEquals(1, line.check().standing().size());
  }

  @Test
  void aDecidedCheckIsNotEndedWithAReason() throws Exception {
    line.station.call("1");
    line.shoot("301 ft/s", "302 ft/s", "303 ft/s");
    long before = line.station.view().head().sequence();
    assertEquals("ALREADY-DECIDED", codeOf(() -> line.station.endCheck("the string broke")));
    assertEquals(before, line.station.view().head().sequence());
    line.station.next();
    assertEquals(Optional.empty(), line.station.view().check());
  }

  @Test
  void nobodyLeavesTheLineUndecidedWithoutAReason() throws Exception {
    line.station.call("1");
    assertEquals("CHECK-RUNNING", codeOf(line.station::next));
    assertEquals("CHECK-RUNNING", codeOf(() -> line.station.closeLine("")));
    assertEquals("REASON-MISSING", codeOf(() -> line.station.endCheck("")));
    line.station.endCheck("the string broke");
    assertEquals(Optional.empty(), line.station.view().check());
    assertEquals("the string broke", line.facts(Fact.CheckClosed.class).get(0).reason());
  }

  @Test
  void aLineTheCheckHasAlreadyIsRefusedAlsoAfterOthersCameBetween() throws Exception {
    line.station.call("1");
    line.shoot("308 ft/s", "300 ft/s");
    byte[] first = Base64.getDecoder().decode(line.check().shots().get(0).reading().raw());
    line.emit(RawBytes.of(first).escaped());
    assertEquals(2, line.check().shots().size());
    assertEquals("repeated", line.facts(Fact.LineRefused.class).get(0).reason());
  }
}
