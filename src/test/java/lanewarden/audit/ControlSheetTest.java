package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import lanewarden.audit.findings.InstrumentLedgerTest;
import lanewarden.audit.press.Cut;
import lanewarden.audit.press.Ink;
import lanewarden.audit.press.Typeface;
import lanewarden.journal.Fact;
import org.junit.jupiter.api.Test;

/** The control charts of the report: their figures, and which verification each shot is of. */
class ControlSheetTest extends InstrumentLedgerTest {
  private Optional<ControlSheet> sheet() throws Exception {
    try (Typeface face = Typeface.open(Cut.TEXT)) {
      return ControlSheet.of(ledger.standing(), face, new Ink(List.of(face)));
    }
  }

  /**
   * Differences −0.4, 0.1, 0.5, 2.6, 2.7 and 2.8 ft/s: mean 1.3833, mean moving range 0.64, and so
   * limits 3/1.128 times that to both sides (NIST/SEMATECH e-Handbook, 6.3.2.2; from memory).
   */
  @Test
  void theWordsGiveMeanAndLimitsOfTheIndividualsChart() throws Exception {
    verify(true, GOOD);
    verify(false, OFF);
    String words = sheet().orElseThrow().words();
    assertEquals(
        "6 shots of verifications: station minus reference +1.38 ft/s on average, control limits"
            + " −0.32 ft/s and +3.09 ft/s. 1 of the single values and",
        words.substring(0, words.indexOf("values and") + "values and".length()));
  }

  @Test
  void eachVerificationIsAColumnButNoneThatWasBrokenOff() throws Exception {
    verify(true, GOOD);
    assertEquals(0, dividers());
    long brokenOff = shots("296.0 ft/s");
    ledger.say(new Fact.VerificationEnded(brokenOff, false, "broken off", "rain"));
    assertEquals(0, dividers());
    verify(true, GOOD);
    assertEquals(2, dividers(), "one between the two, in each of the two charts");
    verify(false, OFF);
    assertEquals(4, dividers());
  }

  /** Lines straight down, of which the picture has none but those between columns. */
  private long dividers() throws Exception {
    return Pattern.compile("\"M([0-9.]+) [0-9.]+L\\1 [0-9.]+\"")
        .matcher(sheet().orElseThrow().svg())
        .results()
        .count();
  }

  @Test
  void oneShotIsNoChart() throws Exception {
    shots("296.0 ft/s");
    assertEquals(Optional.empty(), sheet());
  }
}
