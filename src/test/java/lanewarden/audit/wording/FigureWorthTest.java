package lanewarden.audit.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import lanewarden.audit.PrintedReport;
import lanewarden.audit.ScriptedLedger;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import lanewarden.journal.Place;
import lanewarden.quantity.Length;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the report says of the worth of the figures that decided. */
class FigureWorthTest {
  @TempDir Path folder;
  private ScriptedLedger ledger;

  @BeforeEach
  void open() throws Exception {
    ledger = ScriptedLedger.with(folder.resolve("event.ledger"), ScriptedLedger.RULES);
    opened("7 mm");
  }

  /** Without the settings, so that each test has figures of its own: that alone is found. */
  private void opened(String shaft) throws Exception {
    ledger.say(
        new Fact.StationOpened(
            "Near timer",
            ScriptedLedger.PROFILE,
            "Lanewarden 0.4.0",
            null,
            null,
            List.of("stated accuracy: 0.5000 m/s; accuracy ± 1 m/s (k = 2)"),
            new Place(
                Length.parse("3 m"),
                Length.parse(shaft),
                new BigDecimal("1.8"),
                new BigDecimal("1.2"))));
  }

  private void read(String speed, String uncertainty) throws Exception {
    ledger.say(
        new Fact.ReadingTaken(
            ledger.now().number(),
            ledger.now().shots().size() + 1,
            Speed.parse(speed),
            ScriptedLedger.bytes(speed),
            "serial port",
            "Near timer",
            ledger.instant(),
            null,
            Speed.parse(uncertainty),
            null));
  }

  private PrintedReport report() throws Exception {
    try (ScriptedLedger open = ledger) {
      return PrintedReport.of(open.file());
    }
  }

  @Test
  void aPassIsToldWithTheProbabilityThatItIsRight() throws Exception {
    ledger.call("201", "Ann Longbow", "LB");
    read("57.0 m/s", "0.5000 m/s");
    ledger.verdict();
    // two standard uncertainties below the limit: 0.9772 in any table of the normal distribution
    PrintedReport report = report();
    assertTrue(
        report.says(
            "57.00 m/s ± 1.00 m/s (k = 2): at most 58 m/s with a probability of 97.7 %. A pass like"
                + " this is wrong about 2.3 times in 100."),
        report.text());
    assertEquals(List.of(Kind.OPENING), report.contradictions());
  }

  @Test
  void ofAMeanTheLargestUncertaintyOfItsReadingsIsTaken() throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    read("308.0 ft/s", "0.3000 ft/s");
    read("310.0 ft/s", "0.4000 ft/s");
    read("309.6 ft/s", "0.3000 ft/s");
    ledger.verdict();
    // the mean is 309.2 ft/s, half a standard uncertainty over: 0.3085 in the same tables
    PrintedReport report = report();
    assertTrue(
        report.says(
            "309.20 ft/s ± 0.80 ft/s (k = 2): at most 309 ft/s with a probability of 30.9 %. A fail"
                + " like this is wrong about 30.9 times in 100."),
        report.text());
  }

  @Test
  void whatIsFarFromTheLimitIsNotSaidToBeCertain() throws Exception {
    ledger.call("201", "Ann Longbow", "LB");
    read("50.0 m/s", "0.5000 m/s");
    ledger.verdict();
    assertTrue(
        report()
            .says(
                "probability of more than 99.9 %. A pass like this is wrong less than 0.1 times in"
                    + " 100."));
  }

  @Test
  void aReadingWithoutUncertaintyLeavesTheFigureWithout() throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    read("300.0 ft/s", "0.4000 ft/s");
    ledger.take("300.0 ft/s", "typed");
    read("300.0 ft/s", "0.4000 ft/s");
    ledger.verdict();
    PrintedReport report = report();
    assertFalse(report.says("with a probability of"));
    assertTrue(
        report.says(
            "No uncertainty and no probability: for shot 2, typed by an official, none is known."),
        report.text());
  }

  @Test
  void whereNoAccuracyIsStatedNoReasonIsOwed() throws Exception {
    ledger.say(new Fact.StationOpened("Near timer", ScriptedLedger.PROFILE, "Lanewarden 0.4.0"));
    ledger.check("201", "Ann Longbow", "LB", "57.0 m/s");
    assertFalse(report().says("No uncertainty and no probability"));
  }

  @Test
  void aCheckInQuestionGetsNoProbability() throws Exception {
    long check = ledger.call("201", "Ann Longbow", "LB");
    read("57.0 m/s", "0.5000 m/s");
    ledger.verdict();
    ledger.close(null);
    ledger.say(new Fact.LineHeld(null, "the stand was knocked", List.of(check)));
    assertFalse(report().says("with a probability of"));
  }

  @Test
  void aVerdictThatDoesNotFollowGetsNoProbability() throws Exception {
    ledger.call("201", "Ann Longbow", "LB");
    read("57.0 m/s", "0.5000 m/s");
    ledger.verdict(Outcome.OVER, "made up");
    PrintedReport report = report();
    assertFalse(report.says("with a probability of"));
    assertFalse(report.contradictions().isEmpty());
  }

  @Test
  void theInstrumentAndWhereItStoodArePrintedOnce() throws Exception {
    ledger.call("101", "Marta Olesund", "OC");
    read("300.0 ft/s", "0.4000 ft/s");
    ledger.close("the string broke");
    PrintedReport report = report();
    assertTrue(report.says("gate timer Lanewarden 0.1.0 Distance not stated. Accuracy not stated"));
    assertTrue(
        report.says(
            "3 m from the bow; shafts of 7 mm, drag coefficient 1.8, air of 1.2 kg/m³ stated"
                + " accuracy: 0.5000 m/s; accuracy ± 1 m/s (k = 2)"),
        report.text());
    assertEquals(1, report.times("shafts of 7 mm"));
    // 362 gr: k = 1.2 * 1.8 * pi * 0.007² / (8 * 0.02345721) = 1.77188e-3 /m, own calculation;
    // 300 ft/s * exp(3 k) = 301.599 ft/s
    assertTrue(report.says("about 301.6 ft/s at the bow"), report.text());
  }

  /** As versions before let be signed: a shaft of 7 m for one of 7 mm. */
  @Test
  void aMisprintOfThePlaceThatWasSignedLeavesTheReportWhole() throws Exception {
    opened("7 m");
    ledger.call("101", "Marta Olesund", "OC");
    read("300.0 ft/s", "0.4000 ft/s");
    read("300.0 ft/s", "0.4000 ft/s");
    read("300.0 ft/s", "0.4000 ft/s");
    ledger.verdict();
    PrintedReport report = report();
    assertTrue(
        report.says("at the bow: not computable from the place signed at the opening"),
        report.text());
    assertTrue(report.says("3 m from the bow; shafts of 7 m, drag"), report.text());
    assertEquals(List.of(Kind.OPENING, Kind.OPENING), report.contradictions());
  }
}
