package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lanewarden.station.SignedPapers;
import lanewarden.written.Fingerprint;
import org.junit.jupiter.api.Test;

/**
 * What the page tells of checks without a verdict, of what stands behind their end, and of junk.
 */
class VerifierOrderTest extends PageInBrowser {
  private interface Script {
    void play(ScriptedLedger ledger) throws Exception;
  }

  private Told verified(Script script) throws Exception {
    Path file = folder.resolve("event.ledger");
    try (ScriptedLedger ledger = ScriptedLedger.with(file, ScriptedLedger.RULES)) {
      script.play(ledger);
    }
    new Export(SignedPapers::of).whole(file, folder.resolve("export"), p -> {});
    return openText(Files.readString(folder.resolve("export/entries.jsonl")));
  }

  private static void assertOne(Told told, String words) {
    assertEquals(1, told.findings().size(), told.toString());
    assertTrue(told.findings().get(0).endsWith(words), told.toString());
    assertTrue(
        told.answers().stream().anyMatch(answer -> answer.startsWith("✕1 contradiction")),
        told.toString());
  }

  @Test
  void aCheckThatWasOverAndClosedWithoutAVerdictIsTold() throws Exception {
    Told told =
        verified(
            ledger -> {
              ledger.call("101", "Marta Olesund", "OC");
              for (int shot = 0; shot < 3; shot++) {
                ledger.read("330 ft/s");
              }
              ledger.close("rain");
            });
    assertOne(told, "has no verdict, but by the readings that stand it is “over”.");
  }

  @Test
  void aCheckThatEndedBeforeTheRuleCouldDecideIsNothingToTell() throws Exception {
    Told told =
        verified(
            ledger -> {
              ledger.call("101", "Marta Olesund", "OC");
              ledger.read("330 ft/s");
              ledger.close("rain");
            });
    assertEquals(List.of(), told.findings());
  }

  @Test
  void aReadingAndAVoidBehindTheEndOfACheckAreTold() throws Exception {
    Told told =
        verified(
            ledger -> {
              ledger.call("101", "Marta Olesund", "OC");
              long first = ledger.read("330 ft/s");
              ledger.read("330 ft/s");
              ledger.read("330 ft/s");
              ledger.verdict();
              ledger.close(null);
              ledger.read("290 ft/s");
              ledger.declareVoid(first, "a fly");
            });
    List<String> behind =
        told.findings().stream().filter(words -> words.contains("stands behind the end")).toList();
    assertEquals(2, behind.size(), told.toString());
    assertTrue(behind.get(0).contains("a reading stands behind"), told.toString());
    assertTrue(behind.get(1).contains("a reading that is declared void stands"), told.toString());
  }

  @Test
  void anEntryWhoseMembersAreOfAnotherTypeIsNamedAndTheRestIsVerified() throws Exception {
    Told told =
        verified(
            ledger -> {
              ledger.check("101", "Marta Olesund", "OC", "290 ft/s", "290 ft/s", "290 ft/s");
              long check = ledger.call("102", "Jun Takemizu", "OC");
              ledger.signRaw(
                  "reading-taken",
                  "{\"check\":"
                      + check
                      + ",\"shot\":1,\"speed\":290,\"raw\":\"\",\"source\":\"serial port\","
                      + "\"instrument\":\"gate timer\",\"at\":\"2026-05-30T07:31:00Z\"}");
              ledger.close("rain");
            });
    assertOne(told, "it cannot be understood (its “speed” is missing or of another type).");
    assertTrue(
        told.answers().stream().anyMatch(answer -> answer.startsWith("✓1 verdict follows")),
        told.toString());
  }

  /**
   * The program refuses a rule book of more than 50 shots; the page must not try to work it out.
   */
  @Test
  void aRuleBookOfAMillionReadingsDoesNotKeepThePageFromItsEnd() throws Exception {
    String big = ScriptedLedger.RULES.replaceAll("counted = \\d+", "counted = 1000000");
    String hash = Fingerprint.sha256(big.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    Told told =
        verified(
            ledger -> {
              ledger.signRaw(
                  "rule-book-adopted",
                  "{\"file\":\"f\",\"sha256\":\""
                      + hash
                      + "\",\"text\":"
                      + new com.fasterxml.jackson.databind.ObjectMapper().writeValueAsString(big)
                      + "}");
              long check = ledger.call("101", "Marta Olesund", "OC");
              ledger.signRaw(
                  "verdict-given",
                  "{\"check\":"
                      + check
                      + ",\"ruleBook\":\""
                      + hash
                      + "\",\"outcome\":\"within\",\"reason\":\"\",\"readings\":[]}");
            });
    assertTrue(
        told.answers().stream().anyMatch(answer -> answer.startsWith("✕1 verdict not computed")),
        told.toString());
  }
}
