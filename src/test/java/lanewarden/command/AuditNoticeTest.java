package lanewarden.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanewarden.audit.AuditSummary;
import lanewarden.audit.findings.Finding;
import lanewarden.ledger.LedgerFault;
import org.junit.jupiter.api.Test;

/** A terminal is told of an audit all that the screen tells: every fault and every finding. */
class AuditNoticeTest extends PracticeRun {
  private static final AuditSummary BAD =
      new AuditSummary(
          9,
          2,
          1,
          Map.of(),
          2,
          0,
          List.of(new LedgerFault(4, LedgerFault.Kind.BAD_SIGNATURE, "Entry 4 is forged.")),
          List.of(
              new Finding(Finding.Kind.VERDICT, List.of(6L), "Check 5 is over."),
              new Finding(Finding.Kind.TAKEN_BACK, List.of(7L, 8L), "Check 3 was within.")),
          Optional.empty());

  private static List<String> told() {
    ByteArrayOutputStream results = new ByteArrayOutputStream();
    AuditNotice.tell(
        BAD,
        new Terminal(
            InputStream.nullInputStream(),
            results,
            new ByteArrayOutputStream(),
            UTF_8,
            Optional.empty()));
    return results.toString(UTF_8).lines().toList();
  }

  @Test
  void tellsEveryFaultAndEveryFindingWithHeadingWordsAndEntries() {
    assertEquals(
        List.of(
            "entries  9",
            "checks   2: 2 without a verdict",
            "checked  1 competitor",
            "fault    Entry 4 is forged.",
            "CONTRADICTION Verdicts that do not follow from the rule. Check 5 is over. Entry 6",
            "finding  Verdicts taken back. Check 3 was within. Entries 7, 8",
            "follows  NO: 1 contradiction to the rules",
            "sound    NO: 1 fault"),
        told());
  }

  @Test
  void aMachineIsToldTheSame() throws Exception {
    JsonNode told = new ObjectMapper().readTree(JsonLine.of(AuditNotice.members(BAD)));
    assertEquals(1, told.get("competitorsChecked").asInt());
    assertEquals(
        "{\"entry\":4,\"kind\":\"bad signature\",\"words\":\"Entry 4 is forged.\"}",
        told.get("faults").get(0).toString());
    JsonNode grave = told.get("findings").get(0);
    assertTrue(grave.get("contradiction").asBoolean());
    assertEquals("Verdicts that do not follow from the rule", grave.get("heading").asText());
    assertEquals("Check 5 is over.", grave.get("words").asText());
    assertEquals("[6]", grave.get("entries").toString());
    assertFalse(told.get("findings").get(1).get("contradiction").asBoolean());
  }

  @Test
  void whatIsNoContradictionIsTooTold() throws Exception {
    line("3", "wait", "next", "hold the stand was knocked");
    Typed typed = new Typed().run("report", event.path().toString());
    assertEquals(0, typed.code(), typed.toString());
    assertTrue(
        typed
            .results()
            .contains("\nfinding  Holds of the line and the checks in question. The line was held"),
        typed.toString());
    assertTrue(
        typed.results().contains("\nfollows  yes: every verdict follows, "), typed.toString());
    assertTrue(typed.lines().contains("checked  1 competitor"), typed.toString());
  }

  @Test
  void theFaultsOfAnUnsoundLedgerAreTold() throws Exception {
    line("1", "wait", "close");
    flip(2);
    Typed typed = new Typed().run("report", event.path().toString());
    assertEquals(3, typed.code(), typed.toString());
    assertTrue(typed.results().contains("\nfault    Entry 3"), typed.toString());
  }
}
