package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.audit.findings.Finding;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.press.Cut;
import lanewarden.audit.press.Ink;
import lanewarden.audit.press.Typeface;
import lanewarden.audit.wording.CheckRow;
import lanewarden.audit.wording.FigureWorth;
import lanewarden.audit.wording.Openings;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import lanewarden.journal.SetUpStated;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
import lanewarden.quantity.Mass;
import lanewarden.rules.Division;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A reading that the bow cannot give, in the figures of the report. Bow and arrow are common
 * practice: 350 gr at 390 ft/s carry 118 ft·lbf of the 101 that 60 lbf over 20.25 in can give.
 */
class ImpossibleReadingsTest {
  private static final Mass ARROW = Mass.parse("350 gr");
  private static final Length DRAW = Length.parse("29 in");
  private static final Length BRACE = Length.parse("7 in");

  @TempDir Path folder;
  private ScriptedLedger ledger;
  private long check;

  @BeforeEach
  void open() throws Exception {
    ledger =
        ScriptedLedger.with(
            folder.resolve("event.ledger"),
            ScriptedLedger.RULES,
            """
            bib,name,division,arrow-mass,draw-weight,draw-length,brace-height
            101,Marta Olesund,OC,350 gr,60 lbf,29 in,7 in
            """);
    check =
        ledger.open(
            new Fact.CheckOpened(
                "101",
                "Marta Olesund",
                "OC",
                1,
                ARROW,
                Force.parse("60 lbf"),
                null,
                DRAW,
                BRACE,
                null,
                null));
  }

  @AfterEach
  void close() throws Exception {
    ledger.close();
  }

  /** Takes a reading that the rule finds impossible, and signs that. */
  private long misread(String speed) throws Exception {
    long reading = ledger.read(speed);
    return ledger.say(
        new Fact.ReadingFlagged(
            check, reading, "impossible", ledger.now().doubts(ledger.rule()).get(0).words()));
  }

  private void decide(Outcome outcome, String reason) throws Exception {
    ledger.say(
        new Fact.VerdictGiven(
            check,
            ledger.now().ruleBook(),
            outcome,
            reason,
            ledger.now().counted(ledger.rule()),
            null));
  }

  private void series() throws Exception {
    ledger.read("298 ft/s");
    misread("390 ft/s");
    ledger.read("301 ft/s");
    ledger.read("301 ft/s");
  }

  private long state(String weight) throws Exception {
    return ledger.say(new SetUpStated(check, ARROW, Force.parse(weight), null, DRAW, BRACE));
  }

  private CheckRow row() {
    Check now = ledger.now();
    return CheckRow.of(
        now,
        FigureWorth.of(now, Optional.of(ledger.rule()), new Openings()),
        Map.of(),
        Set.of(),
        List.of());
  }

  private DivisionSheet sheet() throws Exception {
    Division division = ledger.standing().ruleBook().orElseThrow().division("OC").orElseThrow();
    try (Typeface face = Typeface.open(Cut.TEXT)) {
      return DivisionSheet.of(
          division, "", ledger.standing().checks(), face, new Ink(List.of(face)));
    }
  }

  private String limitLine() throws Exception {
    Matcher line =
        Pattern.compile(
                "<path d=\"(M[^\"]*)\" fill=\"none\" stroke=\"#111111\" stroke-width=\"1.3\"/>")
            .matcher(sheet().svg());
    assertTrue(line.find());
    return line.group(1);
  }

  private List<Finding> findings(Kind kind) throws Exception {
    return PrintedReport.of(ledger.file()).summary().findings().stream()
        .filter(finding -> finding.kind() == kind)
        .toList();
  }

  @Test
  void itIsNoneOfTheDivisionsReadings() throws Exception {
    ledger.read("298 ft/s");
    String calm = limitLine();
    misread("390 ft/s");
    ledger.read("301 ft/s");
    ledger.read("301 ft/s");
    DivisionSheet sheet = sheet();
    assertEquals(3, sheet.readings());
    assertEquals("300.00 ft/s", sheet.mean());
    // Sample deviation of 298, 301, 301: the square root of (4 + 1 + 1) / 2
    assertEquals("1.73 ft/s", sheet.deviation());
    assertTrue(sheet.svg().contains("3 readings that count, 0 of them over it"), sheet.svg());
    assertEquals(calm, limitLine(), "a misread does not flatten the scale");
  }

  @Test
  void theEnergyIsThatOfTheFastestReadingThatCounts() throws Exception {
    series();
    // Own arithmetic: 350 gr are 22.6796 g, 301 ft/s are 91.7448 m/s; half m v² is 95.448 J
    assertEquals("95.4 J (70.4 ft·lbf)", row().energy());
    assertEquals(new CheckRow.Reading("390 ft/s", true, "impossible"), row().readings().get(1));
    assertTrue(row().notes().get(0).startsWith("Void: shot 2: 390 ft/s is impossible"));
  }

  @Test
  void theReportSaysSo() throws Exception {
    series();
    decide(Outcome.WITHIN, "mean of 3 readings 300 ft/s, limit 300 ft/s, tolerance 3 %");
    ledger.close(null);
    PrintedReport report = PrintedReport.of(ledger.file());
    assertEquals(List.of(), report.contradictions());
    assertTrue(report.says("3 300.00 ft/s 1.73 ft/s"), report.text());
    assertEquals(1, findings(Kind.IMPOSSIBLE).size());
    assertTrue(
        findings(Kind.IMPOSSIBLE).get(0).words().endsWith("118 ft·lbf of 101 ft·lbf available."));
  }

  @Test
  void figuresStatedAnewLetItCountAgainAndTheFindingSaysSince() throws Exception {
    series();
    long anew = state("80 lbf");
    assertEquals(4, sheet().readings());
    assertEquals(new CheckRow.Reading("390 ft/s", false, ""), row().readings().get(1));
    assertEquals("160.2 J (118.2 ft·lbf)", row().energy());
    assertTrue(row().notes().get(0).startsWith("Was in doubt: shot 2"), row().notes().get(0));
    Finding finding = findings(Kind.IMPOSSIBLE).get(0);
    assertTrue(
        finding
            .words()
            .endsWith("It counts since bow and arrow were stated anew (entry " + anew + ")."),
        finding.words());
    assertTrue(finding.entries().contains(anew));

    state("60 lbf");
    assertEquals(3, sheet().readings());
    assertEquals("impossible", row().readings().get(1).marks());
    assertTrue(findings(Kind.IMPOSSIBLE).get(0).words().endsWith("available."));
  }

  @Test
  void oneThatWasDeclaredVoidAfterwardsSaysThat() throws Exception {
    series();
    state("80 lbf");
    long voided = ledger.declareVoid(ledger.now().shots().get(1).sequence(), "a glint");
    assertEquals("void", row().readings().get(1).marks());
    assertTrue(
        findings(Kind.IMPOSSIBLE)
            .get(0)
            .words()
            .endsWith("It was declared void (entry " + voided + ")."));
  }
}
