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
import org.junit.jupiter.api.Test;

/** The words with which an official verifies the instrument, holds the line and lifts the hold. */
class ProvingWordsTest extends PracticeRun {

  /** Plans verifications in which nothing is shot: the official types. */
  private void plan(String table) throws Exception {
    Files.writeString(
        event.path().resolve("rehearsal.capture"), "@ nobody\n0 x\\r\\n\n@ verification\n");
    Files.writeString(
        event.path().resolve("station.toml"),
        "[verification]\nmost_bias = \"1 ft/s\"\nmost_spread = \"1 ft/s\"\nshots = 2\n" + table,
        StandardOpenOption.APPEND);
  }

  private void planBow() throws Exception {
    plan(
        "before_opening = true\nat_end = true\nreference = \"check bow\"\nspeed = \"296.4 ft/s\"\n");
  }

  private static void assertSays(Typed typed, String... expected) {
    for (String one : expected) {
      assertTrue(typed.lines().stream().anyMatch(l -> l.contains(one)), one + "\n" + typed);
    }
  }

  @Test
  void everyStepOfAVerificationIsTold() throws Exception {
    planBow();
    Typed typed = line("3", "prove", "typed 296.0", "typed 296.9", "3", "wait", "close");
    assertTrue(typed.talk().contains("VERIFICATION-DUE"), typed.toString());
    assertSays(
        typed,
        "stop     A verification of the instrument is due before the next competitor.",
        "verify   opening: 2 shots against the check bow, 296.4 ft/s; bias at most 1 ft/s,",
        "shot     1: 296.0 ft/s, typed, against 296.4 ft/s",
        "verified GOOD: 2 shots: bias +0.050 ft/s (at most 1 ft/s)",
        "outcome  WITHIN");
    assertTrue(typed.talk().contains("The line was not closed."), typed.toString());
    Typed next = line("prove", "break the string broke", "close because rain");
    assertSays(next, "verified broken off after 0 of 2 shots: the string broke");
    assertFalse(next.talk().contains("The line was not closed."), next.toString());
  }

  @Test
  void theStatusTellsTheLastVerificationAndHowManyMayBeCalled() throws Exception {
    plan("every = 2\nreference = \"check bow\"\nspeed = \"296.4 ft/s\"\n");
    line("prove", "typed 296.0", "typed 296.9");
    Typed before = line("status");
    assertSays(
        before,
        "verified GOOD: 2 shots: bias +0.050 ft/s (at most 1 ft/s)",
        "calls    competitors until the next verification: 2");
    Typed after = line("3", "wait", "next", "status");
    assertSays(after, "calls    competitors until the next verification: 1");
  }

  @Test
  void outOfLimitsTheLineIsHeldAndTellsWhomToCheckAgain() throws Exception {
    planBow();
    Typed typed =
        line(
            "prove",
            "typed 296.0",
            "typed 296.9",
            "3",
            "wait",
            "next",
            "prove",
            "typed 299",
            "typed 299.1",
            "3",
            "lift it will do");
    assertSays(
        typed,
        "verified OUT OF LIMITS: 2 shots: bias +2.650 ft/s (more than 1 ft/s)",
        "HELD     the instrument is out of its limits",
        "checks in question: 1",
        "again    to be checked again: 3 Cat Fletcher");
    assertTrue(typed.talk().contains("STATION-HELD"), typed.toString());
    assertTrue(typed.talk().contains("HOLD-STANDS"), typed.toString());
    Typed next = line("status", "prove", "typed 296.0", "typed 296.9", "3", "wait");
    assertSays(
        next,
        "HELD     the instrument is out of its limits",
        "lifted   the line is no longer held",
        "check    3 Cat Fletcher, Longbow, check 2",
        "outcome  WITHIN");
  }

  @Test
  void aFurtherVerificationOutOfLimitsIsTold() throws Exception {
    planBow();
    Typed typed =
        line("prove", "typed 299", "typed 299.1", "prove", "typed 290", "typed 290.1", "status");
    List<String> held = typed.lines().stream().filter(l -> l.startsWith("HELD")).toList();
    assertEquals(3, held.size(), typed.toString());
    assertTrue(held.get(0).contains("bias +2.650 ft/s"), held.toString());
    assertTrue(held.get(1).contains("bias -6.350 ft/s"), held.toString());
    assertTrue(held.get(2).contains("bias -6.350 ft/s"), held.toString());
  }

  @Test
  void aLineRefusedDuringAVerificationIsToldAsOfIt() throws Exception {
    plan("reference = \"second instrument\"\n");
    Typed typed = line("prove", "typed 296.0", "typed 296.1");
    assertTrue(
        typed.lines().stream()
            .anyMatch(l -> l.matches("refused .*  during verification [0-9]+: no shot of it: .*")),
        typed.toString());
  }

  @Test
  void theSimulatorShootsTheVerificationToo() throws Exception {
    planBow();
    Files.delete(event.path().resolve("rehearsal.capture"));
    Typed typed = line("prove", "wait", "3", "wait");
    assertSays(typed, "shot     1: 296.", "shot     2: 296.", "verified GOOD: 2 shots");
    assertSays(typed, "outcome  WITHIN");
    assertTrue(typed.lines().stream().anyMatch(l -> l.contains("simulator, against")), "" + typed);
  }

  @Test
  void theSecondInstrumentsValueIsAskedFor() throws Exception {
    plan("reference = \"second instrument\"\n");
    Typed typed = line("prove", "typed 296.0", "reference 296.2", "typed 296.9", "reference 296.8");
    assertSays(
        typed,
        "now type what the second instrument shows: reference SPEED",
        "shot     2: 296.9 ft/s, typed, against 296.8 ft/s",
        "verified GOOD: ");
  }

  @Test
  void anOfficialHoldsTheLineAndLiftsTheHold() {
    Typed typed = line("hold the stand was knocked", "1", "lift it did not move", "3", "wait");
    assertSays(
        typed,
        "HELD     the stand was knocked; checks in question: 0",
        "lifted   the line is no longer held",
        "outcome  WITHIN");
    assertTrue(typed.talk().contains("STATION-HELD"), typed.toString());
  }

  @Test
  void theReportCountsChecksInQuestionApartForMachinesToo() throws Exception {
    line("3", "wait", "next", "hold the stand was knocked");
    Typed typed = new Typed().run("report", event.path().toString(), "--json");
    JsonNode told = new ObjectMapper().readTree(typed.results());
    assertEquals(1, told.get("checks").asInt(), typed.toString());
    assertEquals(1, told.get("in question").asInt(), typed.toString());
    assertEquals(0, told.get("without a verdict").asInt(), typed.toString());
    assertEquals(0, told.get("within").asInt() + told.get("over").asInt(), typed.toString());
  }

  @Test
  void aMachineIsToldTheSame() throws Exception {
    planBow();
    Typed typed =
        new Typed().typing("prove", "typed 299", "typed 299.1").run(lineCommand("--json"));
    ObjectMapper mapper = new ObjectMapper();
    List<JsonNode> told = new ArrayList<>();
    for (String line : typed.lines()) {
      told.add(mapper.readTree(line));
    }
    JsonNode verified =
        told.stream().filter(t -> t.get("kind").asText().equals("verified")).findFirst().get();
    assertFalse(verified.get("passed").asBoolean());
    JsonNode shot =
        told.stream().filter(t -> t.get("kind").asText().equals("shot")).findFirst().get();
    assertEquals("2.6 ft/s", shot.get("bias").asText());
    assertTrue(told.stream().anyMatch(t -> t.get("kind").asText().equals("HELD")));
  }
}
