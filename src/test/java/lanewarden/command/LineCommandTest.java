package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import lanewarden.station.LedgerInspection;
import org.junit.jupiter.api.Test;

class LineCommandTest extends PracticeRun {

  private long count(Typed typed, String beginning) {
    return typed.lines().stream().filter(l -> l.startsWith(beginning)).count();
  }

  private void assertSays(Typed typed, String expected) {
    assertTrue(typed.lines().stream().anyMatch(l -> l.contains(expected)), typed.toString());
  }

  @Test
  void aBareBibCallsAndSaysLimitAndRuleInWords() {
    Typed typed = line("1", "wait");
    assertEquals(0, typed.code(), typed.toString());
    assertSays(typed, "check    1 Ann Archer, Open compound");
    assertSays(
        typed, "rule     At most 300 ft/s plus 3 % (309 ft/s). The mean of 3 readings decides.");
    assertEquals(3, count(typed, "reading "), typed.toString());
    assertEquals(1, count(typed, "outcome "), typed.toString());
  }

  @Test
  void whereTheInstrumentStandsTheSpeedAtTheBowIsToldBeside() throws Exception {
    Files.writeString(
        event.path().resolve("station.toml"),
        "[place]\ndistance = \"3 m\"\n",
        StandardOpenOption.APPEND);
    Files.writeString(
        event.path().resolve("rehearsal.capture"),
        "@ 2\n500 $PLWT,00356,0269.4,F,007424,A*16\\r\\n\n");
    Typed typed = line("2", "wait", "setup arrow 350", "typed 270.2");
    // 350 gr over 3 m: 270.2 ft/s * exp(3 * 1.83263e-3) = 271.69 ft/s, own calculation
    assertSays(typed, "reading  2: 270.2 ft/s, typed; at the bow about 271.7 ft/s");
    assertTrue(
        typed.lines().stream().noneMatch(l -> l.contains("269.4 ft/s") && l.contains("at the bow")),
        typed.toString());
  }

  /** In one line with its cautions, once the arrow is weighed; the verdict is the same. */
  @Test
  void whoIsOverIsAdvisedOnceTheArrowIsWeighed() throws Exception {
    Files.writeString(
        event.path().resolve("rehearsal.capture"),
        "@ 2\n500 $PLWT,00355,0341.0,F,005865,A*11\\r\\n\n");
    Typed typed = line("2", "wait", "setup arrow 350");
    assertEquals(2, count(typed, "outcome  OVER"), typed.toString());
    assertEquals(1, count(typed, "weigh    weigh the arrow to see what"), typed.toString());
    assertEquals(1, count(typed, "advice "), typed.toString());
    assertSays(typed, "advice   no part of the verdict. To come within: an arrow");
    assertSays(typed, "Never let go the string without an arrow.");
  }

  @Test
  void whatTheInstrumentSaidIsShownByteForByteWithWhetherItFits() {
    assertSays(line("wire"), "trial    [port]  Nothing came.");
    Typed typed = line("3", "wait", "wire");
    assertSays(typed, "trial    The profile fits: ");
    assertTrue(
        typed.lines().stream()
            .anyMatch(l -> l.startsWith("heard ") && l.contains("  reading  $PLWT,")),
        typed.toString());
  }

  @Test
  void theStatusTellsTheLedgersHeadAsItIsPrinted() throws Exception {
    Typed typed = line("status");
    String head = LedgerInspection.of(event.path(), List.of()).head().orElseThrow();
    long signedIn = Long.parseLong(head.substring(0, head.indexOf('-'))) - 1;
    assertSays(typed, "head     " + signedIn + "-");
  }

  @Test
  void toWeighAnArrowIsSaidAtTheLineOnlyAndNotWhereTheCheckIsLookedInto() throws Exception {
    Files.writeString(
        event.path().resolve("rehearsal.capture"),
        "@ 2\n500 $PLWT,00355,0341.0,F,005865,A*11\\r\\n\n");
    assertEquals(1, count(line("2", "wait"), "weigh "));
    Typed again = line("status");
    assertTrue(count(again, "weigh ") > 0, again.toString());
    Typed looked = new Typed().run("check", event.path().toString(), "2");
    assertEquals(1, count(looked, "outcome  OVER"), looked.toString());
    assertEquals(0, count(looked, "weigh "), looked.toString());
  }

  @Test
  void aBareNameCallsToo() {
    assertSays(line("cat fletcher"), "check    3 Cat Fletcher, Longbow");
  }

  @Test
  void aTypedSpeedIsTakenInTheDivisionsUnit() {
    Typed typed = line("3", "wait", "next");
    assertSays(typed, "left     3 Cat Fletcher");
    Typed other = line("call 2", "wait", "status");
    assertSays(other, "so far");
  }

  @Test
  void aVoidWithItsReasonTakesBackTheVerdict() throws Exception {
    Files.writeString(
        event.path().resolve("rehearsal.capture"),
        "@ 2\n500 $PLWT,00355,0341.0,F,005865,A*11\\r\\n"
            + "\n500 $PLWT,00356,0269.4,F,007424,A*16\\r\\n\n");
    Typed typed = line("2", "wait", "void #1 glare in the gate", "wait", "typed 270.2");
    assertSays(typed, "outcome  OVER: reading 341.0 ft/s");
    assertSays(typed, "What follows: a re-check: 1 is left.");
    assertSays(typed, "void     reading 1: glare in the gate");
    assertSays(typed, "outcome  taken back");
    assertSays(typed, "reading  3: 270.2 ft/s, typed");
    assertSays(typed, "outcome  WITHIN");
  }

  @Test
  void aShotThatCannotBeVoidedOrKeptIsAnsweredByItsOwnNumber() throws Exception {
    Files.writeString(
        event.path().resolve("rehearsal.capture"),
        "@ 2\n500 $PLWT,00356,0269.4,F,007424,A*16\\r\\n\n");
    Typed typed =
        line(
            "2",
            "wait",
            "void #1 glare",
            "void #1 again",
            "keep #1 seen",
            "void #9 no",
            "keep #0 no");
    assertTrue(typed.talk().contains("why: Shot 1 is void already."), typed.toString());
    assertTrue(
        typed.talk().contains("why: Shot 1 is not one that waits for an official's word."),
        typed.toString());
    assertTrue(
        typed.talk().contains("why: The check at the line has no shot 9."), typed.toString());
    assertTrue(
        typed.talk().contains("why: The check at the line has no shot 0."), typed.toString());
    assertFalse(typed.talk().contains("Reading "), typed.toString());
  }

  @Test
  void aDecidedCheckIsNotEndedAndItsReasonNotDropped() {
    Typed typed = line("3", "wait", "end the nock split", "status", "next");
    assertTrue(typed.talk().contains("ALREADY-DECIDED"), typed.toString());
    assertTrue(typed.talk().contains("type next"), typed.toString());
    assertEquals(2, count(typed, "check    3 "), "it is still there: " + typed);
    assertSays(typed, "left     3 Cat Fletcher;");
  }

  @Test
  void aRefusedLineIsShownWithItsBytes() throws Exception {
    Files.writeString(
        event.path().resolve("rehearsal.capture"),
        "@ 3\n500 $PLWT,00355,0341.0,F,005865,A*FF\\r\\n\n");
    Typed typed = line("3", "wait", "end the timer is broken");
    assertSays(
        typed, "refused  $PLWT,00355,0341.0,F,005865,A*FF\\r\\n  wrong checksum: The line carries");
    assertSays(typed, "left     3 Cat Fletcher without a verdict");
  }

  @Test
  void whoEntersLateIsPutOnTheRosterAndCalled() {
    Typed typed = line("late 99 LB Dara Finch", "99", "typed 57.1", "late 99 LB Again");
    assertSays(typed, "late     99 Dara Finch, LB");
    assertSays(typed, "outcome  WITHIN");
    assertTrue(typed.talk().contains("LATE-ENTRY"), typed.toString());
  }

  @Test
  void aWordThatCannotBeObeyedIsAnsweredAndTheLineGoesOn() {
    Typed typed = line("99", "next", "void", "typed 300", "end", "void #9 glare", "3", "wait");
    assertEquals(0, typed.code(), typed.toString());
    assertTrue(typed.talk().contains("NO-SUCH-COMPETITOR"), typed.toString());
    assertEquals(6, typed.talk().split("NOBODY-AT-THE-LINE", -1).length, "five refusals");
    assertSays(typed, "outcome  WITHIN");
  }

  @Test
  void theEndOfTheInputSignsOutAndLeavesTheCheckAtTheLine() throws Exception {
    Files.writeString(
        event.path().resolve("rehearsal.capture"),
        "@ 1\n500 $PLWT,00355,0341.0,F,005865,A*11\\r\\n\n");
    Typed first = line("1", "wait");
    assertSays(first, "official signed out");
    Typed second = line("typed 301", "typed 302", "status");
    List<String> lines = second.lines();
    assertTrue(lines.contains("check    1 Ann Archer, Open compound"), second.toString());
    assertTrue(lines.contains("reading  1: 341.0 ft/s, simulator"), second.toString());
    assertSays(second, "outcome  OVER: mean 314.667 ft/s");
  }

  @Test
  void closeEndsTheDay() throws Exception {
    Typed typed = line("3", "wait", "close", "1");
    assertEquals(0, typed.code(), typed.toString());
    assertSays(typed, "official signed out");
    assertFalse(typed.results().contains("Ann Archer"), "nothing is obeyed behind close");
    assertTrue(LedgerInspection.of(event.path(), List.of()).sound());
  }

  @Test
  void outLeavesAtOnce() {
    assertFalse(line("out", "1").results().contains("Ann Archer"));
  }

  @Test
  void commentsAndBlankLinesAreNoWords() {
    assertEquals("", line("# a note", "", "  ").talk().replaceAll("Type a bib .*\\R", ""));
  }

  @Test
  void helpListsTheWords() {
    assertTrue(line("help").talk().contains("void [#SHOT] REASON"));
  }

  @Test
  void tellsMachinesInJson() throws Exception {
    Typed typed = new Typed().typing("3", "wait").run(lineCommand("--json"));
    ObjectMapper mapper = new ObjectMapper();
    JsonNode outcome = null;
    for (String line : typed.lines()) {
      JsonNode json = mapper.readTree(line);
      outcome = json.get("kind").asText().equals("outcome") ? json : outcome;
    }
    assertEquals("within", outcome.get("outcome").asText());
    assertEquals("3", outcome.get("bib").asText());
  }

  @Test
  void aWordThatCannotBeObeyedIsAnObjectTooAndTheLineGoesOn() throws Exception {
    Typed typed = new Typed().typing("nobody", "keep #9 seen", "3").run(lineCommand("--json"));
    ObjectMapper mapper = new ObjectMapper();
    List<String> codes = new ArrayList<>();
    for (String line : typed.lines()) {
      JsonNode json = mapper.readTree(line);
      if (json.get("kind").asText().equals("trouble")) {
        codes.add(json.get("code").asText());
        assertFalse(json.get("do").asText().isBlank(), line);
      }
    }
    assertEquals(2, codes.size(), typed.toString());
    codes.forEach(code -> assertTrue(typed.talk().contains(code), "people read it: " + code));
    assertEquals(0, typed.code(), typed.toString());
  }

  @Test
  void whereSeveralMaySignItAsksWho() {
    Typed typed =
        new Typed()
            .run("line", event.path().toString(), "--passphrase-file", passphrase.toString());
    assertEquals(2, typed.code(), typed.toString());
    assertTrue(typed.talk().contains("Ada Holt, Bo Lind"), typed.toString());
  }

  @Test
  void aWrongPassphraseLeavesTheLedgerAlone() throws Exception {
    LedgerInspection before = LedgerInspection.of(event.path(), List.of());
    Files.writeString(passphrase, "not this one\n");
    Typed typed = line("1");
    assertEquals(2, typed.code(), typed.toString());
    assertTrue(typed.talk().contains("KEY-PASSPHRASE"), typed.toString());
    assertEquals(before, LedgerInspection.of(event.path(), List.of()));
  }

  @Test
  void aFolderWithoutAnEventIsAnswered() {
    Typed typed = new Typed().run("line", here.resolve("none").toString());
    assertEquals(2, typed.code(), typed.toString());
    assertEquals(4, typed.talk().strip().lines().count(), typed.talk());
  }
}
