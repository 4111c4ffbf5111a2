package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lanewarden.ledger.Enrolled;
import lanewarden.ledger.Verification;
import lanewarden.station.EventFolder;
import lanewarden.station.PracticeEvent;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Protests, rulings and corrections, at the line and where no station runs. */
class ProtestCommandsTest {
  /** The archers of the rehearsal take their time, so that what is typed comes first. */
  private static final String SLOWLY = "--pace=1";

  /** As the line stood before the ruling. */
  private static final String SO_FAR = "so far   0 within, 1 not, of 4 competitors";

  @TempDir static Path scratch;
  private static EventFolder made;

  @TempDir Path here;
  private EventFolder event;
  private Path passphrase;

  @BeforeAll
  static void makeEvent() throws Exception {
    made = PracticeEvent.makeWithAJudge(scratch.resolve("made"));
  }

  @BeforeEach
  void copyEvent() throws Exception {
    event = PracticeEvent.copy(made, here.resolve("event"));
    passphrase = Files.writeString(here.resolve("passphrase"), PracticeEvent.PASSPHRASE + "\n");
  }

  private String[] signed(String by, String command, String... more) {
    List<String> words = new ArrayList<>(List.of(command, event.path().toString()));
    words.addAll(List.of(more));
    words.addAll(List.of("--official", by, "--passphrase-file", passphrase.toString()));
    return words.toArray(String[]::new);
  }

  private Typed lineOf(String official, String... typed) {
    return new Typed().typing(typed).run(signed(official, "line", SLOWLY));
  }

  private Typed line(String... typed) {
    return lineOf(PracticeEvent.OFFICIAL, typed);
  }

  private Typed by(String official, String command, String... more) {
    return new Typed().run(signed(official, command, more));
  }

  private static JsonNode json(String line) throws Exception {
    return new ObjectMapper().readTree(line);
  }

  private List<JsonNode> docket() throws Exception {
    Typed typed = new Typed().run("docket", event.path().toString(), "--json");
    assertEquals(0, typed.code(), typed.toString());
    List<JsonNode> all = new ArrayList<>();
    for (String told : typed.lines()) {
      all.add(json(told));
    }
    return all;
  }

  /** The number of a check of bib 3 that was typed with this speed, at most 58 m/s. */
  private String checkOf(String speed) throws Exception {
    Typed typed =
        new Typed()
            .typing("3", "typed " + speed, "next", "out")
            .run(signed(PracticeEvent.OFFICIAL, "line", "--json", SLOWLY));
    for (String told : typed.lines()) {
      if (json(told).get("kind").asText().equals("check")) {
        return json(told).get("check").asText();
      }
    }
    throw new AssertionError(typed.toString());
  }

  private static void assertSays(Typed typed, String... expected) {
    for (String words : expected) {
      assertTrue(typed.results().contains(words), words + "\n" + typed);
    }
  }

  @Test
  void atTheLineAProtestIsTakenDownShotAgainAndRuledOn() throws Exception {
    String check = checkOf("58.9 m/s");
    Typed filed =
        line(
            "protest " + check + " as referral by Cat Fletcher because the display glared",
            "recheck 1",
            "out");
    assertSays(
        filed,
        ", referral on check " + check + " by Cat Fletcher: the display glared; no ruling yet");
    assertTrue(filed.talk().contains("NO-SUCH-PROTEST"), filed.toString());
    String protest = docket().get(0).get("protest").asText();
    Typed shot = line("status", "recheck " + protest, "typed 57.9 m/s", "next", "out");
    assertSays(
        shot,
        "protest  " + protest + ", referral",
        "recheck under protest " + protest,
        "What follows: a judge's ruling on protest " + protest);
    String beside = docket().get(0).get("rechecks").get(0).asText();
    String ruling =
        "rule " + protest + " upheld " + beside + ": may shoot on because it was within";
    assertTrue(line(ruling, "out").talk().contains("NOT-A-JUDGE"));
    Typed ruled = lineOf(PracticeEvent.JUDGE, ruling, "3", "out");
    assertSays(
        ruled,
        "upheld, check " + beside + " counts: it was within; consequence: may shoot on",
        SO_FAR);
    assertTrue(ruled.talk().contains("ALREADY-WITHIN"), ruled.toString());
    Typed looked = new Typed().run("check", event.path().toString(), "check " + beside);
    assertEquals(0, looked.code(), looked.toString());
    assertSays(
        looked,
        "number   " + check + ", attempt 1",
        "number   " + beside + ", attempt 1",
        "protest  " + protest + ", referral on check " + check,
        "signed   protest by " + PracticeEvent.OFFICIAL,
        "signed   ruling by " + PracticeEvent.JUDGE,
        "counts   check " + beside);
  }

  @Test
  void commandsDoTheSameWhereNoStationRuns() throws Exception {
    String check = checkOf("57.9 m/s");
    Typed filed =
        by(
            PracticeEvent.OFFICIAL,
            "protest",
            check,
            "--by",
            "captain of the Greens",
            "--ground",
            "it looked fast",
            "--json");
    assertEquals(0, filed.code(), filed.toString());
    JsonNode told = json(filed.results());
    assertEquals("protest", told.get("occasion").asText());
    assertEquals(check, told.get("check").asText());
    String protest = told.get("protest").asText();
    String[] ruling = {
      protest,
      "--ruling",
      "dismissed",
      "--stands",
      check,
      "--consequence",
      "none",
      "--reason",
      "no case"
    };
    assertEquals(2, by(PracticeEvent.OFFICIAL, "ruling", ruling).code());
    Typed ruled = by(PracticeEvent.JUDGE, "ruling", ruling);
    ruling[2] = "perhaps";
    assertTrue(by(PracticeEvent.JUDGE, "ruling", ruling).talk().contains("RULING-UNKNOWN"));
    assertEquals(0, ruled.code(), ruled.toString());
    assertSays(ruled, "dismissed, check " + check + " counts: no case; consequence: none");
    assertEquals("dismissed", docket().get(0).get("ruling").asText());
    assertEquals(check, docket().get(0).get("stands").asText());
  }

  @Test
  void aCorrectionNeedsASecondPersonAtTheLineToo() throws Exception {
    String check = checkOf("58.9 m/s");
    Typed made = line("correct " + check + " #1 57.9 m/s because digits exchanged", "out");
    assertSays(made, "reading: 57.9 m/s instead of 58.9 m/s", "waits for a second person");
    String correction = docket().get(0).get("correction").asText();
    assertTrue(line("confirm " + correction, "out").talk().contains("SECOND-PERSON"));
    Typed done = lineOf(PracticeEvent.OTHER_OFFICIAL, "confirm " + correction, "3", "out");
    assertSays(done, "because digits exchanged; in effect");
    assertSays(
        new Typed().run("check", event.path().toString(), "3"),
        "reading  1: 57.9 m/s, typed",
        "raw      58.9 m/s",
        "signed   correction by " + PracticeEvent.OFFICIAL,
        "signed   confirmation by " + PracticeEvent.OTHER_OFFICIAL);
    assertTrue(done.talk().contains("ALREADY-WITHIN"), done.toString());
  }

  @Test
  void everyPartIsCorrectedByACommandAndConfirmedByAnother() throws Exception {
    String check = checkOf("57.9 m/s");
    for (String[] right :
        new String[][] {
          {"--bib", "2"}, {"--division", "HC"}, {"--shot", "1", "--speed", "57.8 m/s"}
        }) {
      List<String> words = new ArrayList<>(List.of(check));
      words.addAll(List.of(right));
      words.addAll(List.of("--reason", "a slip", "--json"));
      Typed made = by(PracticeEvent.OFFICIAL, "correct", words.toArray(String[]::new));
      assertEquals(0, made.code(), made.toString());
      String correction = json(made.results()).get("correction").asText();
      assertEquals(2, by(PracticeEvent.OFFICIAL, "confirm", correction).code());
      Typed confirmed = by(PracticeEvent.OTHER_OFFICIAL, "confirm", correction, "--json");
      assertTrue(json(confirmed.results()).get("inEffect").asBoolean(), confirmed.toString());
    }
    assertEquals(
        List.of("bib", "division", "reading"),
        docket().stream().map(one -> one.get("what").asText()).toList());
  }

  /** What the roster calls the competitor of a bib. */
  private String nameOf(String bib) throws Exception {
    return Files.readAllLines(event.path().resolve("roster.csv")).stream()
        .filter(line -> line.startsWith(bib + ","))
        .map(line -> line.split(",")[1])
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aCheckIsNamedByBibNameOrNumberAtTheLineAndInACommand() throws Exception {
    line("3", "end the wrong arrows", "out");
    String last = checkOf("57.9 m/s");
    String name = nameOf("3").toLowerCase(Locale.ROOT);
    assertSays(
        line(
            "protest 3 by the team because x",
            "protest " + name + " as re-test by the team because x",
            "protest check " + last + " as referral by the team because x",
            "correct " + name + " #1 57.8 m/s because digits exchanged",
            "out"),
        "protest on check " + last,
        "re-test on check " + last,
        "referral on check " + last,
        "57.8 m/s instead of 57.9 m/s");
    for (String which : List.of("3", name, "check " + last, last)) {
      String[] filed = {which, "--by", "the team", "--ground", "x", "--json"};
      Typed typed = by(PracticeEvent.OFFICIAL, "protest", filed);
      assertEquals(last, json(typed.results()).get("check").asText(), typed.toString());
    }
    Typed right = by(PracticeEvent.OFFICIAL, "correct", name, "--bib", "2", "--reason", "a slip");
    assertSays(right, "correction", "check " + last);
  }

  @Test
  void whatIsNoCheckOrSeveralIsRefusedBeforeAnybodyIsAskedForAPassphrase() throws Exception {
    checkOf("57.9 m/s");
    line("2", "typed 57.9 m/s", "next", "out");
    String common = common(nameOf("2"), nameOf("3"));
    String[] rest = {"--by", "the team", "--ground", "x"};
    for (String which : List.of("nobody at all", "check 9999", common)) {
      List<String> words = new ArrayList<>(List.of("protest", event.path().toString(), which));
      words.addAll(List.of(rest));
      Typed typed = new Typed().run(words.toArray(String[]::new));
      String code = which.equals(common) ? "WHICH-CHECK" : "NO-SUCH-CHECK";
      assertTrue(typed.talk().contains(code), typed.toString());
      Typed atTheLine = line("protest " + which + " by the team because x", "out");
      assertTrue(atTheLine.talk().contains(code), atTheLine.toString());
    }
    assertEquals(List.of(), docket());
  }

  /** A letter that is in both names. */
  private static String common(String one, String other) {
    return one.toLowerCase(Locale.ROOT)
        .chars()
        .filter(c -> Character.isLetter(c) && other.toLowerCase(Locale.ROOT).indexOf(c) >= 0)
        .mapToObj(Character::toString)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whatIsHalfTypedIsAnsweredWithTheFormAndSignsNothing() throws Exception {
    String check = checkOf("57.9 m/s");
    Typed typed =
        line(
            "protest " + check,
            "protest " + check + " as dream by me because x",
            "rule",
            "correct " + check + " name Ann because x",
            "confirm",
            "recheck soon",
            "out");
    assertTrue(typed.talk().contains("OCCASION-UNKNOWN"), typed.toString());
    assertEquals(5, typed.talk().split("WORDS-INCOMPLETE", -1).length - 1, typed.toString());
    assertTrue(
        typed.talk().contains("Type it as: protest CHECK [as OCCASION] by WHO because WHY."));
    assertEquals(List.of(), docket());
  }

  @Test
  void aJudgeIsNamedWhenAnEventIsMade() throws Exception {
    Path secrets =
        Files.writeString(
            here.resolve("secrets"), "Root: practice only\nAda: practice only\nElm: practice only");
    Path folder = here.resolve("fresh");
    Typed typed =
        new Typed()
            .run(
                "make",
                folder.toString(),
                "--rule-book",
                event.path().resolve("rule-book.toml").toString(),
                "--roster",
                event.path().resolve("roster.csv").toString(),
                "--profile",
                "config/profiles/gate-timer.toml",
                "--station",
                "Lane B",
                "--simulator",
                "--organizer",
                "Root",
                "--official",
                "Ada",
                "--judge",
                "Elm",
                "--passphrase-file",
                secrets.toString());
    assertEquals(0, typed.code(), typed.toString());
    assertEquals(
        List.of("Elm"),
        Verification.of(new EventFolder(folder).ledger()).officials().stream()
            .filter(Enrolled::isJudge)
            .map(Enrolled::name)
            .toList());
  }
}
