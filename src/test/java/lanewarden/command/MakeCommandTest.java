package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import lanewarden.station.EventFolder;
import lanewarden.station.PracticeEvent;
import lanewarden.station.StationSettings;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class MakeCommandTest {
  @TempDir Path here;
  private Path rules;
  private Path roster;

  @BeforeEach
  void writeFiles() throws Exception {
    rules = Files.writeString(here.resolve("rules.toml"), PracticeEvent.RULES);
    roster = Files.writeString(here.resolve("people.csv"), PracticeEvent.ROSTER);
  }

  private String[] arguments(String... more) {
    List<String> all =
        new ArrayList<>(
            List.of(
                "make",
                here.resolve("event").toString(),
                "--rule-book",
                rules.toString(),
                "--roster",
                roster.toString(),
                "--profile",
                "config/profiles/gate-timer.toml",
                "--station",
                "Lane A",
                "--organizer",
                "Olga Root",
                "--official",
                "Ada Holt"));
    all.addAll(List.of(more));
    return all.toArray(String[]::new);
  }

  @Test
  void asksForEachPassphraseTwiceAndMakesTheEvent() throws Exception {
    Typed typed =
        new Typed()
            .secretly("organizer only", "organizer only", "official only", "official only")
            .run(arguments("--port", "/dev/ttyUSB0"));
    assertEquals(0, typed.code(), typed.toString());
    EventFolder event = new EventFolder(here.resolve("event"));
    assertTrue(event.isMade());
    assertEquals(List.of("Ada Holt"), event.officials());
    assertEquals(
        new StationSettings(
            "Lane A", "gate-timer.toml", StationSettings.Kind.SERIAL, "/dev/ttyUSB0"),
        event.settings());
    assertTrue(typed.talk().contains("thumbprint"), typed.toString());
  }

  @Test
  void withoutALineToTheInstrumentReadingsAreTyped() throws Exception {
    Typed typed =
        new Typed()
            .secretly("organizer only", "organizer only", "official only", "official only")
            .run(arguments("--typed"));
    assertEquals(0, typed.code(), typed.toString());
    assertEquals(
        new StationSettings("Lane A", "gate-timer.toml", StationSettings.Kind.TYPED, ""),
        new EventFolder(here.resolve("event")).settings());
  }

  @Test
  void takesPassphrasesFromAFileWithALineForEachPerson() throws Exception {
    Path secrets =
        Files.writeString(
            here.resolve("secrets"), "Olga Root: organizer only\r\nAda Holt:  official: only \n");
    Typed typed =
        new Typed()
            .run(
                arguments(
                    "--simulator",
                    "--official",
                    "Bo Lind",
                    "--passphrase-file",
                    secrets.toString()));
    assertEquals(2, typed.code(), typed.toString());
    assertTrue(typed.talk().contains("no line for Bo Lind"), typed.toString());

    Typed again =
        new Typed()
            .run(arguments("--simulator", "--passphrase-file", secrets.toString(), "--json"));
    assertEquals(0, again.code(), again.toString());
    JsonNode json = new ObjectMapper().readTree(again.results());
    assertEquals(here.resolve("event").toString(), json.get("folder").asText());
    assertEquals(43, json.get("organizer").asText().length());

    Path official = Files.writeString(here.resolve("official"), "official: only\n");
    Typed line =
        new Typed()
            .run(
                "line", here.resolve("event").toString(), "--passphrase-file", official.toString());
    assertEquals(0, line.code(), line.toString());
  }

  /** A named pipe, which like a descriptor gives its lines once. */
  @Test
  @DisabledOnOs(OS.WINDOWS)
  void takesThePassphrasesOfAllFromOneReadingOfAPipe() throws Exception {
    Path pipe = here.resolve("pipe");
    assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
    CompletableFuture<Path> written =
        CompletableFuture.supplyAsync(
            () -> {
              try {
                return Files.writeString(
                    pipe,
                    "Olga Root: organizer only\nAda Holt: official only\nJo Elm: judge only\n");
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            });
    Typed typed =
        new Typed()
            .run(
                arguments(
                    "--simulator", "--judge", "Jo Elm", "--passphrase-file", pipe.toString()));
    assertEquals(0, typed.code(), typed.toString());
    written.get(10, TimeUnit.SECONDS);
    assertEquals(List.of("Ada Holt", "Jo Elm"), new EventFolder(here.resolve("event")).officials());
  }

  @Test
  void aJudgeAloneMaySignAndNobodyMayNot() throws Exception {
    List<String> unsigned = new ArrayList<>(List.of(arguments("--simulator")));
    unsigned.removeAll(List.of("--official", "Ada Holt"));
    Typed nobody = new Typed().run(unsigned.toArray(String[]::new));
    assertEquals(2, nobody.code(), nobody.toString());
    assertTrue(nobody.talk().contains("--official=NAME"), nobody.toString());

    unsigned.addAll(List.of("--judge", "Jo Elm"));
    Typed judge =
        new Typed()
            .secretly("organizer only", "organizer only", "judge only", "judge only")
            .run(unsigned.toArray(String[]::new));
    assertEquals(0, judge.code(), judge.toString());
    assertEquals(List.of("Jo Elm"), new EventFolder(here.resolve("event")).officials());
  }

  @Test
  void passphrasesThatDifferMakeNothing() {
    Typed typed =
        new Typed().secretly("organizer only", "organizer oops").run(arguments("--simulator"));
    assertEquals(2, typed.code(), typed.toString());
    assertTrue(typed.talk().contains("PASSPHRASES-DIFFER"), typed.toString());
    assertFalse(Files.exists(here.resolve("event")));
  }

  @Test
  void withoutAKeyboardItSaysHowToGivePassphrases() {
    Typed typed = new Typed().run(arguments("--simulator"));
    assertEquals(2, typed.code(), typed.toString());
    assertTrue(typed.talk().contains("NO-KEYBOARD"), typed.toString());
  }

  @Test
  void everyFaultOfTheRuleBookIsListed() throws Exception {
    Files.writeString(
        rules,
        PracticeEvent.RULES
            .replace("limit = \"300 ft/s\"", "limit = \"300\"")
            .replace("decide = \"highest\"", "decide = \"lowest\""));
    Typed typed =
        new Typed()
            .secretly("organizer only", "organizer only", "official only", "official only")
            .run(arguments("--simulator"));
    assertEquals(2, typed.code(), typed.toString());
    assertTrue(typed.talk().contains("rules.toml:8:"), typed.toString());
    assertTrue(typed.talk().contains("rules.toml:20:"), typed.toString());
  }

  @Test
  void thePassphraseIsNoOptionOfTheCommandLine() {
    Typed typed = new Typed().run(arguments("--simulator", "--passphrase", "organizer only"));
    assertEquals(2, typed.code(), typed.toString());
  }

  @Test
  void takesAListWhoseColumnsHaveOtherNamesAndSaysWhatItLeavesOut() throws Exception {
    Files.writeString(
        roster, "Verein;Startnr;Wer;Class;Arrow (gr)\nElm;101;Ines Wetherholt;OC;352\n");
    Typed typed =
        new Typed()
            .secretly("organizer only", "organizer only", "official only", "official only")
            .run(arguments("--typed", "--column", "bib=Startnr", "--column", "name=3"));
    assertEquals(0, typed.code(), typed.toString());
    assertEquals(
        "bib,name,division,arrow-mass\n101,Ines Wetherholt,OC,352 gr\n",
        Files.readString(here.resolve("event").resolve("roster.csv")));
    assertTrue(typed.talk().contains("Column 1 \"Verein\" is left out."), typed.toString());
  }

  /** Whoever installed the program has no folder of examples. */
  @Test
  void theExamplesThatTheProgramCarriesAreEnough() throws Exception {
    Path written = here.resolve("own.toml");
    Typed example = new Typed().run("rules", written.toString(), "--example");
    assertEquals(0, example.code(), example.toString());
    assertEquals(-1, Files.mismatch(Path.of("config/rule-book.toml"), written));
    Typed again = new Typed().run("rules", written.toString(), "--example");
    assertEquals(2, again.code(), again.toString());
    assertTrue(again.talk().contains("FILE-EXISTS"), again.toString());

    String[] arguments = arguments("--typed");
    List<String> packed = new ArrayList<>(List.of(arguments));
    packed.set(packed.indexOf("config/profiles/gate-timer.toml"), "plain-decimal.toml");
    Typed typed =
        new Typed()
            .secretly("organizer only", "organizer only", "official only", "official only")
            .run(packed.toArray(String[]::new));
    assertEquals(0, typed.code(), typed.toString());
    assertEquals(
        -1,
        Files.mismatch(
            Path.of("config/profiles/plain-decimal.toml"),
            here.resolve("event").resolve("plain-decimal.toml")));
  }

  @Test
  void aRosterThatIsOneAlreadyKeepsItsFingerprint() throws Exception {
    Typed typed =
        new Typed()
            .secretly("organizer only", "organizer only", "official only", "official only")
            .run(arguments("--typed"));
    assertEquals(0, typed.code(), typed.toString());
    assertEquals(-1, Files.mismatch(roster, here.resolve("event").resolve("roster.csv")));
  }

  @Test
  void everyFaultOfAListIsToldByItsOwnLineBeforeAPassphraseIsAskedFor() throws Exception {
    Files.writeString(roster, "Class;Name;Nr\nOC;Ann;1\n\nXX;Ben;2\nOC;Cat\nOC;Dee;1\n");
    Typed typed = new Typed().run(arguments("--typed"));
    assertEquals(2, typed.code(), typed.toString());
    for (String place : List.of(":4:1:", ":5:0:", ":6:8:")) {
      assertTrue(typed.talk().contains("people.csv" + place), typed.toString());
    }
    assertTrue(typed.talk().contains("FILE-REFUSED"), typed.toString());
    assertFalse(Files.exists(here.resolve("event")));
  }

  @Test
  void aColumnThatMustBeThereIsAskedForByName() throws Exception {
    Files.writeString(roster, "Wer,Class,Nr\nAnn,OC,1\n");
    Typed typed = new Typed().run(arguments("--typed"));
    assertEquals(2, typed.code(), typed.toString());
    assertTrue(typed.talk().contains("name=HEADING"), typed.toString());
  }
}
