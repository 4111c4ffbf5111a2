package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lanewarden.station.LedgerInspection;
import lanewarden.station.PracticeEvent;
import org.junit.jupiter.api.Test;

/** verify, report, listen and kiosk. */
class OtherCommandsTest extends PracticeRun {
  private static final String PROFILE = "config/profiles/gate-timer.toml";

  @Test
  void verifyTellsOfASoundLedger() throws Exception {
    line("1", "wait", "close");
    LedgerInspection found = LedgerInspection.of(event.path(), List.of());
    Typed typed =
        new Typed().run("verify", event.path().toString(), "--head", found.head().orElseThrow());
    assertEquals(0, typed.code(), typed.toString());
    assertTrue(typed.lines().contains("head     " + found.head().orElseThrow()));
    assertTrue(typed.lines().contains("organizer " + found.organizer().orElseThrow()));
    assertTrue(typed.results().contains("sound    yes"), typed.toString());
  }

  @Test
  void verifyListsFaultsAndEndsWithExitCode3() throws Exception {
    line("1", "wait", "close");
    flip(2);
    Typed typed = new Typed().run("verify", event.ledger().toString());
    assertEquals(3, typed.code(), typed.toString());
    assertTrue(typed.results().contains("\nfault "), typed.toString());
    assertTrue(typed.results().contains("sound    NO"), typed.toString());

    Typed json = new Typed().run("verify", event.ledger().toString(), "--json");
    assertEquals(3, json.code());
    JsonNode members = new ObjectMapper().readTree(json.results());
    assertEquals(false, members.get("sound").asBoolean());
    assertTrue(members.get("faults").size() > 0);
  }

  @Test
  void verifyOfWhatIsNotThereIsWrongUsage() {
    Typed typed = new Typed().run("verify", here.resolve("none").toString());
    assertEquals(2, typed.code(), typed.toString());
  }

  @Test
  void reportWritesThePdfAndShowsItsProgress() throws Exception {
    line("1", "wait", "close");
    Path pdf = here.resolve("report.pdf");
    Typed typed = new Typed().run("report", event.path().toString(), "--out", pdf.toString());
    assertEquals(0, typed.code(), typed.toString());
    byte[] bytes = Files.readAllBytes(pdf);
    assertEquals("%PDF-", new String(bytes, 0, 5, StandardCharsets.US_ASCII));
    assertTrue(typed.lines().contains("report   " + pdf), typed.toString());
    assertTrue(typed.talk().contains("100 %"), typed.toString());
  }

  @Test
  void reportLiesInTheEventsFolderIfNobodySaysOtherwise() throws Exception {
    line("1", "wait", "close");
    Typed typed = new Typed().run("report", event.ledger().toString(), "--json");
    assertEquals(0, typed.code(), typed.toString());
    JsonNode members = new ObjectMapper().readTree(typed.results());
    assertEquals(1, members.get("checks").asInt());
    assertTrue(Files.isRegularFile(Path.of(members.get("report").asText())));
    String head = LedgerInspection.headNow(event.ledger()).orElseThrow();
    assertEquals(
        event.path().resolve("audit-" + head + ".pdf").toString(), members.get("report").asText());
  }

  @Test
  void aRefusalIsOneJsonObjectToAMachineAndTheSameInWordsBesideIt() throws Exception {
    for (Typed typed :
        List.of(
            new Typed().run("verify", here.resolve("none.ledger").toString(), "--json"),
            new Typed().run("verify", "--json", "--no-such-option"))) {
      assertEquals(2, typed.code(), typed.toString());
      JsonNode told = new ObjectMapper().readTree(typed.results());
      assertEquals("trouble", told.get("kind").asText());
      for (String member : List.of("what", "why", "do", "code")) {
        String said = told.get(member).asText();
        assertFalse(said.isBlank(), typed.toString());
        assertTrue(typed.talk().contains(said), typed.toString());
      }
    }
    assertEquals("", new Typed().run("verify", here.resolve("none.ledger").toString()).results());
  }

  @Test
  void reportOfAnUnsoundLedgerIsWrittenAndEndsWithExitCode3() throws Exception {
    line("1", "wait", "close");
    flip(2);
    Typed typed = new Typed().run("report", event.path().toString());
    assertEquals(3, typed.code(), typed.toString());
    assertTrue(Files.isRegularFile(PracticeEvent.report(event)), typed.toString());
  }

  @Test
  void listenShowsRawAndDecodedLinesOfACapture() throws Exception {
    Path capture =
        Files.writeString(
            here.resolve("try.capture"),
            "900 $PLWT,00354,0268.8,F,007440,A*1B\\r\\n\n900 $PLWT,00355,03\n");
    Typed typed = new Typed().run("listen", "--capture", capture.toString(), "--profile", PROFILE);
    assertEquals(0, typed.code(), typed.toString());
    assertTrue(
        typed
            .results()
            .contains(
                "reading     $PLWT,00354,0268.8,F,007440,A*1B\\r\\n  268.8 ft/s  number 00354\n"),
        typed.toString());
    assertTrue(typed.results().contains("refused     $PLWT,00355,03  torn: "), typed.toString());
  }

  @Test
  void listenOnTrialSaysWhichKeyOfTheProfileDoesNotFit() throws Exception {
    Path capture =
        Files.writeString(here.resolve("try.capture"), "900 $PLWT,00354,0268.8,F,007440,A*1B\\n\n");
    Typed typed =
        new Typed().run("listen", "--capture", capture.toString(), "--profile", PROFILE, "--trial");
    assertEquals(0, typed.code(), typed.toString());
    assertTrue(
        typed.results().contains("trial       [line] terminator  Lines end with \\n, not with"),
        typed.toString());
    Typed fine =
        new Typed()
            .run(
                "listen",
                "--capture",
                Files.writeString(
                        here.resolve("fine.capture"),
                        "900 $PLWT,00354,0268.8,F,007440,A*1B\\r\\n\n")
                    .toString(),
                "--profile",
                PROFILE,
                "--trial",
                "--json");
    assertTrue(fine.results().contains("The profile fits: 1 reading"), fine.toString());
  }

  @Test
  void listenToAPortThatIsMissingSaysSoAndWaits() {
    Typed typed =
        new Typed()
            .run(
                "listen",
                "--port",
                here.resolve("none").toString(),
                "--profile",
                PROFILE,
                "--seconds",
                "1",
                "--json");
    assertEquals(0, typed.code(), typed.toString());
    assertTrue(typed.results().contains("\"link lost\""), typed.toString());
  }

  @Test
  void listenListsThePorts() {
    Typed typed = new Typed().run("listen", "--ports");
    assertEquals(0, typed.code(), typed.toString());
    assertEquals("", typed.talk());
  }

  @Test
  void listenNeedsToKnowHowTheInstrumentSpeaks() {
    Typed typed = new Typed().run("listen", "--port", "/dev/none");
    assertEquals(2, typed.code(), typed.toString());
    assertTrue(typed.talk().contains("--profile"), typed.toString());
  }

  @Test
  void kioskShowsTheStationAndLeavesItInOrder() throws Exception {
    Typed typed =
        new Typed()
            .showing(
                (opening, hint, full) -> {
                  assertEquals(Optional.empty(), hint);
                  assertEquals("Practice", opening.open().view().event());
                })
            .run("kiosk", event.path().toString());
    assertEquals(0, typed.code(), typed.toString());
    assertEquals(0, line("1").code());
  }

  @Test
  void kioskWithoutADisplaySaysSoInOneLineAndEndsWithExitCode4() {
    Typed typed = new Typed().run("kiosk", event.path().toString());
    assertEquals(4, typed.code(), typed.toString());
    assertEquals(1, typed.talk().lines().count(), typed.talk());
    assertTrue(typed.talk().contains("No display can be opened"), typed.talk());
  }

  @Test
  void studioOpensARuleBookWithoutAnyEvent() {
    Typed typed =
        new Typed()
            .showingStudio(draft -> assertEquals(2, draft.divisions()))
            .run("studio", "config/rule-book.toml");
    assertEquals(0, typed.code(), typed.toString());
  }

  @Test
  void studioWithoutADisplaySaysSoInOneLineAndEndsWithExitCode4() {
    Typed typed = new Typed().run("studio", "config/rule-book.toml");
    assertEquals(4, typed.code(), typed.toString());
    assertEquals(1, typed.talk().lines().count(), typed.talk());
    assertTrue(typed.talk().contains("No display can be opened"), typed.talk());
  }

  @Test
  void studioOfWhatIsNotThereIsWrongUsage() {
    Typed typed = new Typed().run("studio", here.resolve("none.toml").toString());
    assertEquals(2, typed.code(), typed.toString());
  }

  @Test
  void kioskOfWhatIsNoEventSaysSoBeforeAnythingIsShown() {
    Typed typed =
        new Typed()
            .showing((opening, hint, full) -> opening.open())
            .run("kiosk", here.resolve("none").toString());
    assertEquals(2, typed.code(), typed.toString());
    assertTrue(typed.talk().contains("what to do:"), typed.talk());
  }

  @Test
  void aFaultOfOurOwnEndsWithExitCode1() {
    Typed typed =
        new Typed()
            .showing(
                (opening, hint, full) -> {
                  throw new IllegalStateException("never expected");
                })
            .run("kiosk", event.path().toString());
    assertEquals(1, typed.code(), typed.toString());
    assertTrue(typed.talk().contains("code: BUG-IllegalStateException"), typed.toString());
  }
}
