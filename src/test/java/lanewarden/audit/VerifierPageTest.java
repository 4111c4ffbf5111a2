package lanewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Collections;
import java.util.List;
import lanewarden.journal.FrameFact;
import lanewarden.journal.Outcome;
import lanewarden.rules.RuleBook;
import lanewarden.station.SignedPapers;
import lanewarden.written.Fingerprint;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the page that verifies an export finds in one, whole or tampered with. */
class VerifierPageTest extends PageInBrowser {
  private static List<String> lines;
  private static String head;
  private static String organizer;

  @BeforeAll
  static void prepare() throws Exception {
    try (ScriptedLedger ledger =
        ScriptedLedger.with(shared.resolve("event.ledger"), ScriptedLedger.RULES)) {
      ledger.check("101", "Marta Olesund", "OC", "299.8 ft/s", "300.1 ft/s", "300.1 ft/s");
      ledger.check(
          "102", "<img src=x onerror=alert(1)>", "OC", "309 ft/s", "309.1 ft/s", "309 ft/s");
      ledger.check("301", "Ines Tveit", "LB", "58.2 m/s", "57.9 m/s");
      ledger.say(
          new FrameFact.PracticeKept("<b>Club", "p.csv", Fingerprint.sha256(new byte[0]), ""));
      head = ledger.head().shortForm();
      organizer = ledger.organizerThumbprint();
    }
    new Export(SignedPapers::of)
        .whole(shared.resolve("event.ledger"), shared.resolve("export"), p -> {});
    lines = List.of(Files.readString(shared.resolve("export/entries.jsonl")).split("\n"));
  }

  private static void compare(String thumbprint, String heads) throws Exception {
    browser.evaluate(
        "document.getElementById('organizer').value = '%s';".formatted(thumbprint)
            + "document.getElementById('heads').value = '%s';".formatted(heads)
            + "document.getElementById('compare').click()");
  }

  private static List<String> changed(int line, String now) {
    List<String> changed = new ArrayList<>(lines);
    changed.set(line - 1, now);
    return changed;
  }

  /** A line with one character of its signed bytes exchanged, so many before the signature ends. */
  private static String exchanged(String line, int before) {
    int at = line.indexOf("\",\"entry\"") - before;
    return line.substring(0, at) + (line.charAt(at) == 'A' ? 'B' : 'A') + line.substring(at + 1);
  }

  @Test
  void anUntouchedExportIsFoundSoundAndEveryVerdictFollows() throws Exception {
    Told told = open(lines);
    assertEquals(
        List.of(
            "✓Sound: every signature and every link holds.",
            "✓3 verdicts follow from the signed readings and rule."),
        told.answers());
    assertEquals(List.of(), told.faults());
    assertEquals(List.of(), told.findings());
    List<String> facts = texts("#facts tr");
    assertTrue(facts.contains("Head" + head), facts.toString());
    assertTrue(facts.contains("Organizer" + organizer), facts.toString());
    assertTrue(facts.contains("Entries" + lines.size()), facts.toString());
    assertTrue(facts.stream().anyMatch(f -> f.contains(ScriptedLedger.OFFICIAL)), facts.toString());
  }

  @Test
  void limitsAndFiguresAreComputedExactly() throws Exception {
    open(lines);
    List<String> cells = texts("#checks tbody td:nth-child(6), #checks tbody td:nth-child(7)");
    // 300 ft/s and 3 % are 309 ft/s, (299.8 + 300.1 + 300.1) / 3 is 300 exactly; worked by hand
    assertEquals(
        List.of(
            "309\u00a0ft/s",
            "mean 300\u00a0ft/s",
            "309\u00a0ft/s",
            "mean 309.0333…\u00a0ft/s",
            "58\u00a0m/s",
            "first within 57.9\u00a0m/s"),
        cells);
  }

  @Test
  void thePageSaysWhatItDoesNotLookAtAndWhoDoes() throws Exception {
    open(lines);
    String elsewhere = texts("#elsewhere").get(0);
    for (String what :
        List.of("instrument’s bytes", "two readings", "on the roster", "on duty", "holds")) {
      assertTrue(elsewhere.contains(what), what + ": " + elsewhere);
    }
    assertTrue(elsewhere.contains("The program’s audit looks at all of these"), elsewhere);
    assertTrue(
        browser.evaluate("document.getElementById('elsewhere').offsetHeight").asInt() > 0,
        "it is shown");
  }

  @Test
  void whatPeopleWroteIsNeverReadAsMarkup() throws Exception {
    open(lines);
    assertEquals(0, browser.evaluate("document.images.length").asInt());
    assertTrue(texts("#checks .note").contains("<img src=x onerror=alert(1)>"));
  }

  @Test
  void thePageMayUseNoNetworkAndNoOtherScript() throws Exception {
    String page = Files.readString(shared.resolve("export/verify.html"));
    assertTrue(page.contains("default-src 'none'; script-src 'sha256-"), "its policy");
    assertFalse(page.contains("http:") || page.contains("https:"), "names no address");
    open(lines);
    assertEquals(
        "refused",
        browser
            .evaluate("fetch('data:text/plain,x').then(() => 'allowed', () => 'refused')")
            .asText());
  }

  @Test
  void aChangedSignatureIsNamed() throws Exception {
    Told told = open(changed(8, exchanged(lines.get(7), 9)));
    assertEquals(
        List.of(
            "Entry 8 has a signature that does not fit its bytes.",
            "Entry 9 does not follow from the bytes of the entry before it."),
        told.faults());
    assertTrue(told.answers().get(0).startsWith("✕Not sound: 2 faults"), told.toString());
  }

  @Test
  void aChangedPayloadIsNamed() throws Exception {
    String line = lines.get(7);
    String payload =
        line.substring(line.indexOf('.') + 1, line.lastIndexOf('.', line.indexOf("\",\"entry")));
    String entry = line.substring(line.indexOf("\"entry\":") + 8, line.length() - 1);
    String other = entry.replace("299.8 ft/s", "289.8 ft/s");
    assertFalse(other.equals(entry));
    String forged =
        line.replace(
                payload,
                Base64.getUrlEncoder()
                    .withoutPadding()
                    .encodeToString(other.getBytes(StandardCharsets.UTF_8)))
            .replace(entry, other);
    assertTrue(
        open(changed(8, forged))
            .faults()
            .contains("Entry 8 has a signature that does not fit its bytes."));
  }

  @Test
  void aLineThatTellsSomethingElseThanIsSignedIsNamed() throws Exception {
    assertEquals(
        List.of("Entry 8 says something else beside the signed bytes than was signed."),
        open(changed(8, lines.get(7).replace("299.8 ft/s", "289.8 ft/s"))).faults());
  }

  @Test
  void aRemovedSwappedRepeatedOrBrokenLineIsNamed() throws Exception {
    List<String> removed = new ArrayList<>(lines);
    removed.remove(9);
    assertEquals(List.of("Entry 10 is missing."), open(removed).faults());
    List<String> swapped = new ArrayList<>(lines);
    Collections.swap(swapped, 9, 10);
    assertTrue(open(swapped).faults().contains("Entry 10 stands after entry 11."));
    List<String> repeated = new ArrayList<>(lines);
    repeated.add(9, lines.get(8));
    assertTrue(open(repeated).faults().contains("Entry 9 stands after entry 9."));
    assertEquals(
        List.of("Line 5 does not have the form of an exported entry."),
        open(changed(5, "{}")).faults());
  }

  @Test
  void everyFaultIsListedAndNotTheFirstAlone() throws Exception {
    List<String> changed = changed(8, exchanged(lines.get(7), 9));
    changed.set(11, exchanged(changed.get(11), 9));
    List<String> faults = open(changed).faults();
    assertTrue(faults.contains("Entry 8 has a signature that does not fit its bytes."));
    assertTrue(faults.contains("Entry 12 has a signature that does not fit its bytes."));
  }

  @Test
  void aFileThatEndsInsideALineIsNamed() throws Exception {
    Told told = openText(String.join("\n", lines));
    assertEquals(
        List.of("Line " + lines.size() + " does not end: the file was cut there."), told.faults());
    assertEquals(List.of("The file holds no entry, not even the first."), openText("").faults());
  }

  @Test
  void aCutTailShowsAgainstAHeadAndTheThumbprintAgainstTheOneOnPaper() throws Exception {
    Told cut = open(lines.subList(0, lines.size() - 2));
    assertEquals(List.of(), cut.faults());
    compare("", head);
    assertEquals(
        List.of(
            "A slip or report shows head "
                + head
                + ", but these entries end at "
                + (lines.size() - 2)
                + ": what came after was cut off."),
        told().faults());
    open(lines);
    compare(organizer, "");
    assertEquals("✓As on paper: the organizer’s thumbprint agrees.", told().answers().get(2));
    compare("", head);
    assertEquals("✓As on paper: every head agrees.", told().answers().get(2));
    compare("x".repeat(43), "5-000000000000");
    assertEquals(2, told().faults().size(), told().toString());
    compare("", "five");
    assertTrue(told().answers().get(2).startsWith("✕Not compared: “five” is no head"));
  }

  @Test
  void aVerdictThatDoesNotFollowIsNamed() throws Exception {
    Path file = folder.resolve("event.ledger");
    try (ScriptedLedger ledger = ScriptedLedger.with(file, ScriptedLedger.RULES)) {
      ledger.call("7", "Ada Brink", "OC");
      for (int i = 0; i < 3; i++) {
        ledger.read("310 ft/s");
      }
      ledger.verdict(Outcome.WITHIN, "mean 300 ft/s");
    }
    new Export(SignedPapers::of).whole(file, folder.resolve("export"), p -> {});
    Told told = openText(Files.readString(folder.resolve("export/entries.jsonl")));
    assertEquals("✓Sound: every signature and every link holds.", told.answers().get(0));
    assertTrue(told.answers().get(1).startsWith("✕1 verdict does not follow"), told.toString());
    assertEquals(
        List.of("Entry 11: bib 7 was signed as “within”, but recomputed here it is “over”."),
        told.findings());
  }

  @Test
  void whoIsSuspendedMayNotSignUntilEnrolledAgain() throws Exception {
    HandSignedEntries.Signer root = HandSignedEntries.Signer.make();
    HandSignedEntries.Signer official = HandSignedEntries.Signer.make();
    HandSignedEntries.Signer stranger = HandSignedEntries.Signer.make();
    String enrolment = "{\"official\":" + official.jwk() + ",\"name\":\"Ash\",\"role\":\"judge\"}";
    HandSignedEntries entries =
        new HandSignedEntries()
            .sign(root, "ledger-opened", "{\"organizer\":" + root.jwk() + "}")
            .sign(root, "official-enrolled", enrolment)
            .sign(official, "protest-filed", "{\"check\":1}")
            .sign(
                root,
                "official-suspended",
                "{\"official\":" + official.jwk() + ",\"reason\":\"key lost\"}")
            .sign(official, "note", "{}")
            .sign(stranger, "note", "{}")
            .sign(root, "official-enrolled", enrolment)
            .sign(official, "protest-ruled", "{\n}")
            .sign(official, "official-suspended", "{\"official\":" + official.jwk() + "}")
            .sign(official, "note", "{\"a\":1,\"a\":2}");
    Told told = open(entries.lines());
    assertEquals(
        List.of(
            "Entry 5 is signed by Ash, whom entry 4 suspends.",
            "Entry 6 is signed with the key "
                + stranger.thumbprint()
                + ", which nobody enrolled before it.",
            "Entry 9 suspends an official, but the organizer did not sign it.",
            "Entry 10 says nothing that this format knows: its body names “a” twice in one object."),
        told.faults());
    assertTrue(texts("#kinds tr").contains("protest-filed1"));
    assertTrue(texts("#facts tr").stream().anyMatch(f -> f.startsWith("OfficialAsh, judge")));
  }

  @Test
  void aLongTableIsShownInParts() throws Exception {
    HandSignedEntries.Signer root = HandSignedEntries.Signer.make();
    HandSignedEntries entries =
        new HandSignedEntries()
            .sign(root, "ledger-opened", "{\"organizer\":" + root.jwk() + "}")
            .sign(
                root,
                "check-opened",
                "{\"bib\":\"7\",\"name\":\"Ada\",\"division\":\"OC\",\"attempt\":1}");
    String verdict =
        "{\"check\":2,\"ruleBook\":\"none\",\"outcome\":\"within\",\"reason\":\"\",\"readings\":[]}";
    for (int i = 0; i < 201; i++) {
      entries.sign(root, "verdict-given", verdict);
    }
    Told told = open(entries.lines());
    assertTrue(told.answers().get(2).startsWith("✕201 verdicts not computed"), told.toString());
    assertEquals(200, texts("#checks tbody tr").size());
    assertEquals(List.of("Show 1 more of 1"), texts("#more:not([hidden])"));
    browser.evaluate("document.getElementById('more').click()");
    assertEquals(201, texts("#checks tbody tr").size());
    assertEquals(List.of(), texts("#more:not([hidden])"));
  }

  @Test
  void aCorrectionCountsOnceAnotherPersonConfirmedIt() throws Exception {
    HandSignedEntries.Signer root = HandSignedEntries.Signer.make();
    HandSignedEntries.Signer official = HandSignedEntries.Signer.make();
    HandSignedEntries.Signer second = HandSignedEntries.Signer.make();
    String rules = ScriptedLedger.RULES;
    String hash = RuleBook.read("rules.toml", rules.getBytes(StandardCharsets.UTF_8)).sha256();
    String text = rules.replace("\"", "\\\"").replace("\n", "\\n");
    String reading =
        "{\"check\":%d,\"shot\":1,\"speed\":\"75.2 m/s\",\"raw\":\"\",\"source\":\"typed\","
            + "\"instrument\":\"timer\",\"at\":\"2026-05-30T07:31:00Z\"}";
    String correction =
        "{\"check\":%d,\"what\":\"reading\",\"reading\":%d,\"speed\":\"57.2 m/s\",\"reason\":\"mistyped\"}";
    String verdict =
        "{\"check\":%d,\"ruleBook\":\"%s\",\"outcome\":\"within\",\"reason\":\"\",\"readings\":[%d]}";
    String call = "{\"bib\":\"7\",\"name\":\"Ada\",\"division\":\"LB\",\"attempt\":1}";
    HandSignedEntries entries =
        new HandSignedEntries()
            .sign(root, "ledger-opened", "{\"organizer\":" + root.jwk() + "}")
            .sign(
                root, "official-enrolled", "{\"official\":" + official.jwk() + ",\"name\":\"Ash\"}")
            .sign(root, "official-enrolled", "{\"official\":" + second.jwk() + ",\"name\":\"Elm\"}")
            .sign(
                root,
                "rule-book-adopted",
                "{\"file\":\"r\",\"sha256\":\"%s\",\"text\":\"%s\"}".formatted(hash, text))
            .sign(official, "check-opened", call)
            .sign(official, "reading-taken", reading.formatted(5))
            .sign(official, "correction-made", correction.formatted(5, 6))
            .sign(second, "correction-confirmed", "{\"correction\":7}")
            .sign(official, "verdict-given", verdict.formatted(5, hash, 6))
            .sign(official, "check-opened", call)
            .sign(official, "reading-taken", reading.formatted(10))
            .sign(official, "correction-made", correction.formatted(10, 11))
            .sign(official, "correction-confirmed", "{\"correction\":12}")
            .sign(official, "verdict-given", verdict.formatted(10, hash, 11));
    Told told = open(entries.lines());
    assertEquals(List.of(), told.faults());
    assertEquals(
        List.of(
            "Entry 13: the confirmation has no effect: Ash made correction 12, and nobody confirms"
                + " their own.",
            "Entry 14: bib 7 was signed as “within”, but recomputed here it is “still open”."),
        told.findings());
  }
}
