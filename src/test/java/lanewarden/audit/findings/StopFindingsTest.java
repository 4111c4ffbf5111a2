package lanewarden.audit.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import lanewarden.audit.PrintedReport;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.audit.wording.Wording;
import lanewarden.journal.FrameFact;
import org.junit.jupiter.api.Test;

/** What the audit finds about stops of the line for safety. */
class StopFindingsTest extends InstrumentLedgerTest {
  private long stop() throws Exception {
    return ledger.say(new FrameFact.LineStopped("somebody is forward"));
  }

  @Test
  void everyStopIsListedWithHowLongItWasAndIsNoContradiction() throws Exception {
    long first = stop();
    ledger.setClock(ledger.instant().plusSeconds(125));
    ledger.say(new FrameFact.LineCleared(first));
    marta();
    ledger.say(new FrameFact.LineStopped(null));
    List<String> words =
        findings().stream()
            .filter(one -> one.kind() == Kind.LINE_STOPPED)
            .map(Finding::words)
            .toList();
    assertEquals(2, words.size());
    assertTrue(words.get(0).contains("“somebody is forward”"), words.get(0));
    assertTrue(words.get(0).contains("It was clear again after 2 min "), words.get(0));
    assertTrue(words.get(1).contains("without a reason"), words.get(1));
    assertTrue(words.get(1).endsWith("It was not clear again at the ledger’s last entry."));
    assertTrue(findings().stream().noneMatch(Finding::isContradiction), kinds().toString());
    assertTrue(PrintedReport.of(ledger.file()).says("Stops of the line for safety"));
  }

  @Test
  void aCallAReadingAndAVerdictWhileItStoodAreContradictions() throws Exception {
    stop();
    marta();
    assertEquals(5, kinds().stream().filter(Kind.NOT_CLEAR::equals).count(), kinds().toString());
  }

  @Test
  void aShotOfAVerificationWhileItStoodIsOneToo() throws Exception {
    long stop = stop();
    verify(true, "296.4 ft/s", "296.4 ft/s", "296.4 ft/s");
    assertEquals(3, kinds().stream().filter(Kind.NOT_CLEAR::equals).count());
    ledger.say(new FrameFact.LineCleared(stop));
    marta();
    assertEquals(3, kinds().stream().filter(Kind.NOT_CLEAR::equals).count());
  }

  @Test
  void whoIsNotOnDutyNeitherStopsTheLineNorClearsIt() throws Exception {
    ledger.sayAs(ledger.organizer(), new FrameFact.LineStopped(null));
    assertTrue(words(Kind.UNATTENDED).startsWith("Stops of the line: 1 entry was signed"));
  }

  @Test
  void howLongReadsInHoursMinutesAndSeconds() {
    assertEquals("7 s", Wording.lasted(Duration.ofSeconds(7)));
    assertEquals("2 min 5 s", Wording.lasted(Duration.ofSeconds(125)));
    assertEquals("1 h 0 min 1 s", Wording.lasted(Duration.ofSeconds(3601)));
  }
}
