package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lanewarden.bench.Caution;
import lanewarden.station.LedgerInspection;
import lanewarden.station.PracticeEvent;
import org.junit.jupiter.api.Test;

/** Set-ups shot beside each other in a terminal; bows and figures are invented. */
class SetUpsCommandTest extends PracticeRun {
  private static final String SHORT = "setup Red; short; mass 350; draw 60";

  private Typed shoot(String... typed) {
    return new Typed().typing(typed).run(command());
  }

  private String[] command(String... more) {
    List<String> command =
        new ArrayList<>(List.of("set-ups", event.path().toString(), "--pace", "0"));
    command.addAll(List.of(more));
    return command.toArray(String[]::new);
  }

  /** Common practice: the 390 of 298, 390, 301 and 301 ft/s is a misread. */
  @Test
  void typedReadingsAreComparedAndAMisreadDoesNotMoveTheMean() {
    Typed typed =
        shoot(
            SHORT,
            "typed 298.0",
            "typed 390.0",
            "typed 301.0 ft/s",
            "typed 301.0",
            "compare",
            "out");
    assertEquals(0, typed.code(), typed.toString());
    assertFalse(typed.talk().contains("could not be written"), typed.toString());
    assertTrue(
        typed.lines().contains("shot     line 3: 390.0 ft/s, Red + short"), typed.toString());
    // (298 + 301 + 301) / 3 = 300
    assertTrue(
        typed.lines().stream()
            .anyMatch(line -> line.matches("1 +Red \\+ short +350 gr +3 of 4 +300\\.0 .*")),
        typed.toString());
    assertTrue(typed.results().contains(Caution.paragraph()), typed.toString());
  }

  @Test
  void aFolderIsNoFileOfShotsAndIsSaidToBeOne() {
    Typed typed = shoot(SHORT, "typed 298.0", "open " + event.path(), "compare", "out");
    assertTrue(typed.talk().contains("It is a folder."), typed.toString());
    assertTrue(typed.talk().contains("Name a file of shots"), typed.toString());
    assertTrue(typed.talk().contains("SHOTS-FOLDER"), typed.toString());
    assertTrue(typed.talk().indexOf("FILE-FAULT") < 0, typed.toString());
    assertTrue(typed.results().contains("Red + short"), "what was shot stays");
  }

  @Test
  void theInstrumentsReadingsComeWhereTheyAreAskedForAndEveryShotIsInAFileAtOnce()
      throws Exception {
    Typed typed =
        shoot(SHORT, "listen", "wait", "setup Red; long; mass 420", "wait", "rest", "shots", "out");
    assertEquals(0, typed.code(), typed.toString());
    Path file = event.path().resolve("practice-1.csv");
    assertEquals(13, Files.readAllLines(file).size(), "six arrows of each set-up");
    assertTrue(typed.results().contains("file     every shot is in " + file), typed.toString());
    assertTrue(typed.results().contains("readings come here, and none to the line"));
    assertEquals(
        2 * 12,
        typed.lines().stream().filter(line -> line.startsWith("shot")).count(),
        "each is told as it comes, and once more when asked");

    Typed compared = new Typed().run("compare", file.toString());
    assertTrue(
        compared.lines().contains("practice 2 set-ups, 12 shots, 0 left out"), compared.toString());
  }

  @Test
  void aShotIsStruckOutByItsLineAndTakenBack() throws Exception {
    Typed typed =
        shoot(SHORT, "typed 300", "typed 301", "misread 3", "good 2", "tests 3", "misread 9");
    assertEquals(0, typed.code(), typed.toString());
    for (String line :
        List.of(
            "shot     line 3: 301 ft/s, Red + short, struck out as a misread",
            "shot     line 2: 300 ft/s, Red + short, counts whatever the tests say")) {
      assertTrue(typed.lines().contains(line), typed.toString());
    }
    assertTrue(typed.talk().contains("NO-SUCH-SHOT"), typed.toString());
    List<String> kept = Files.readAllLines(event.path().resolve("practice-1.csv"));
    assertTrue(kept.get(1).contains(",no,"), kept.toString());
    assertFalse(kept.get(2).contains(",yes,"), kept.toString());
  }

  @Test
  void whatWasShotIsWrittenToNewFilesAndGoneOnWithFromOne() throws Exception {
    Path shots = here.resolve("day.csv");
    Path table = here.resolve("table.csv");
    Path paper = here.resolve("paper.pdf");
    Typed typed =
        shoot(
            SHORT,
            "typed 300",
            "typed 301",
            "write " + shots,
            "table " + table,
            "paper " + paper,
            "table " + table,
            "new",
            "compare",
            "open " + shots,
            "typed 299");
    assertEquals(0, typed.code(), typed.toString());
    assertTrue(Files.readString(table).startsWith("place,bow,arrow"), typed.toString());
    assertEquals(
        "%PDF-",
        new String(Files.readAllBytes(paper), StandardCharsets.ISO_8859_1).substring(0, 5));
    assertTrue(typed.talk().contains("FILE-EXISTS"), typed.toString());
    assertTrue(typed.talk().contains("PRACTICE-EMPTY"), typed.toString());
    assertEquals(3, Files.readAllLines(shots).size(), "the file that was opened stays as it is");
    assertEquals(4, Files.readAllLines(event.path().resolve("practice-2.csv")).size());
  }

  @Test
  void thePracticeIsKeptInTheLedgerByAnOfficialWhoComesForIt() throws Exception {
    Typed typed =
        shoot(
            SHORT,
            "typed 300",
            "keep Morning by the lake by " + PracticeEvent.OFFICIAL,
            PracticeEvent.PASSPHRASE,
            "keep again",
            "perhaps a passphrase",
            "status");
    assertEquals(0, typed.code(), typed.toString());
    assertTrue(typed.results().contains("kept     with entry "), typed.toString());
    assertTrue(typed.talk().contains("WHICH-OFFICIAL"), typed.toString());
    assertFalse(typed.toString().contains("perhaps a passphrase"), typed.toString());
    assertTrue(LedgerInspection.of(event.path(), List.of()).sound());
    Typed exported =
        new Typed()
            .run("export", event.path().toString(), "--out", here.resolve("export").toString());
    assertEquals(0, exported.code(), exported.toString());
  }

  @Test
  void whileTheLineIsNotClearNoReadingIsTakenHereEither() {
    Typed typed =
        shoot(
            SHORT,
            "stop somebody forward",
            "in " + PracticeEvent.OFFICIAL,
            PracticeEvent.PASSPHRASE,
            "stop somebody forward",
            "typed 300",
            "clear",
            "typed 301");
    assertEquals(0, typed.code(), typed.toString());
    assertFalse(typed.results().contains(": 300 ft/s"), typed.toString());
    assertTrue(typed.results().contains(": 301 ft/s"), typed.toString());
    assertTrue(typed.talk().contains("LINE-NOT-CLEAR"), typed.toString());
  }

  @Test
  void wordsThatAreNotUnderstoodChangeNothing() {
    Typed typed =
        shoot(
            "typed 300",
            "setup Red",
            "setup Red; short; mass 350; mass 351",
            "setup Red; short; weight 350",
            "301",
            "listen",
            "write");
    assertEquals(0, typed.code(), typed.toString());
    for (String code : List.of("PRACTICE-NO-SET-UP", "SET-UP-WORDS", "NO-SUCH-WORD", "NO-FILE")) {
      assertTrue(typed.talk().contains(code), typed.toString());
    }
    assertFalse(typed.results().contains("shot "), typed.toString());
    assertFalse(Files.exists(event.path().resolve("practice-1.csv")));
  }

  @Test
  void aMachineGetsShotsAndComparisonAsObjects() throws Exception {
    Typed typed =
        new Typed()
            .typing(SHORT, "typed 300", "typed 302", "compare", "mark")
            .run(command("--json"));
    List<JsonNode> told = new ArrayList<>();
    for (String line : typed.lines()) {
      told.add(new ObjectMapper().readTree(line));
    }
    List<JsonNode> shots =
        told.stream().filter(t -> t.get("kind").asText().equals("shot")).toList();
    assertArrayEquals(
        new int[] {2, 3}, shots.stream().mapToInt(s -> s.get("line").asInt()).toArray());
    assertEquals("none", shots.get(0).get("misread").asText());
    JsonNode found =
        told.stream()
            .filter(t -> t.get("kind").asText().equals("comparison"))
            .findFirst()
            .orElseThrow();
    // 301 ft/s of 0.3048 m each: international yard and pound agreement, 1959
    assertEquals(91.7448, found.get("setUps").get(0).get("mean").asDouble(), 1e-9);
    assertEquals("trouble", told.get(told.size() - 1).get("kind").asText());
  }
}
