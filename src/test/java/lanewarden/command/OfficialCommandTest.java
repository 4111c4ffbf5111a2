package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lanewarden.station.CheckInLine;
import lanewarden.station.EventFolder;
import lanewarden.station.PracticeEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OfficialCommandTest extends PracticeRun {

  private Typed official(String... more) {
    List<String> command = new ArrayList<>(List.of("official", event.path().toString()));
    command.addAll(List.of(more));
    return new Typed().run(command.toArray(String[]::new));
  }

  private Typed signed(String... more) {
    List<String> all = new ArrayList<>(List.of("--passphrase-file", passphrase.toString()));
    all.addAll(List.of(more));
    return official(all.toArray(String[]::new));
  }

  @Test
  void listsWhoMaySign() {
    Typed typed = official();
    assertEquals(0, typed.code(), typed.toString());
    assertTrue(typed.results().contains("  Ada Holt, official, may sign"), typed.toString());
  }

  @Test
  void saysWhoIsAJudge() throws Exception {
    String judge = "Juno Pell";
    Path fresh = Files.writeString(here.resolve("fresh"), judge + ": a word or two\n");
    Typed typed = signed("--enrol", judge, "--judge", "--new-passphrase-file", fresh.toString());
    assertTrue(typed.results().contains("  " + judge + ", judge, may sign"), typed.toString());
    Typed json = official("--json");
    assertTrue(
        json.results().contains("\"official\":\"" + judge + "\",\"role\":\"judge\""),
        json.toString());
    assertTrue(
        json.results().contains("\"official\":\"Ada Holt\",\"role\":\"official\""),
        json.toString());
  }

  @Test
  void enrolsSuspendsReadmitsAndReplaces() throws Exception {
    Path fresh = Files.writeString(here.resolve("fresh"), "Cy Moor: a word or two\n");
    Typed enrolled = signed("--enrol", "Cy Moor", "--new-passphrase-file", fresh.toString());
    assertTrue(enrolled.results().contains("  Cy Moor, official, may sign"), enrolled.toString());
    Typed suspended = signed("--suspend", "Cy Moor", "--reason", "went home");
    assertTrue(
        suspended.results().contains("Cy Moor, official, suspended by entry 8: went home"),
        suspended.toString());
    Typed again = signed("--readmit", "Cy Moor", "--json");
    assertTrue(
        again.results().contains("\"maySign\":true,\"state\":\"may sign\""), again.toString());
    Typed replaced =
        signed(
            "--replace",
            "Cy Moor",
            "--reason",
            "key lost",
            "--new-passphrase-file",
            fresh.toString());
    assertTrue(replaced.results().contains("Cy Moor, official, suspended by entry 10: key lost"));
    assertEquals(0, new Typed().run("verify", event.path().toString()).code());
  }

  @Test
  void refusesASuspensionWithoutAReasonAndTwoActsAtOnce() {
    Typed bare = signed("--suspend", PracticeEvent.OFFICIAL);
    assertEquals(2, bare.code());
    assertTrue(bare.talk().contains("REASON-MISSING"), bare.toString());
    assertEquals(2, signed("--suspend", "A", "--readmit", "B").code());
  }

  @Test
  void whatWouldBePassedOverIsRefused() {
    for (Typed typed :
        List.of(
            signed("--readmit", "A", "--reason", "the key came back"),
            signed("--enrol", "A", "--reason", "needed"),
            signed("--readmit", "A", "--judge"),
            signed("--judge"))) {
      assertEquals(2, typed.code(), typed.toString());
      assertTrue(typed.talk().contains(" goes with --"), typed.toString());
    }
  }

  @Test
  void atTheOpenLineASuspendedOfficialIsSignedOut() {
    Typed typed =
        line(
            "suspend " + PracticeEvent.OFFICIAL + " because of a bow in this division",
            PracticeEvent.PASSPHRASE,
            "1");
    assertFalse(typed.toString().contains(PracticeEvent.PASSPHRASE), typed.toString());
    assertTrue(typed.results().contains("Ada Holt was signed out. why:"), typed.toString());
    assertTrue(typed.talk().contains("NOBODY-ON-DUTY"), typed.toString());
  }

  @Test
  void theOrganizersKeyOnAStickSuspendsAtTheOpenLine() throws Exception {
    Path stick = Files.createDirectory(here.resolve("stick"));
    Files.move(new EventFolder(event.path()).organizerKey(), stick.resolve("organizer.key"));
    String[] words = {
      "suspend " + PracticeEvent.OFFICIAL + " because of a bow in this division",
      PracticeEvent.PASSPHRASE
    };
    assertTrue(line(words).talk().contains("ORGANIZER-KEY-MISSING"));
    Typed typed = new Typed().typing(words).run(lineCommand("--organizer-key", stick.toString()));
    assertTrue(typed.results().contains("Ada Holt was signed out. why:"), typed.toString());
  }

  @Test
  void aSuspensionWithoutAReasonAtTheLineTakesNoPassphrase() {
    Typed typed = line("suspend " + PracticeEvent.OFFICIAL, PracticeEvent.PASSPHRASE, "1");
    assertFalse(typed.toString().contains(PracticeEvent.PASSPHRASE), typed.toString());
    assertTrue(typed.talk().contains("passed over"), typed.toString());
    assertTrue(typed.results().contains("check    1 "), typed.toString());
  }

  @Test
  void aChangedPassphraseOpensTheKeyAndTheOldOneNoLonger() throws Exception {
    Path fresh = Files.writeString(here.resolve("fresh"), "Ada Holt: quite other words\n");
    Typed changed =
        new Typed()
            .run(
                "passphrase",
                event.path().toString(),
                "--official",
                PracticeEvent.OFFICIAL,
                "--passphrase-file",
                passphrase.toString(),
                "--new-passphrase-file",
                fresh.toString());
    assertEquals(0, changed.code(), changed.toString());
    assertTrue(line("1").talk().contains("KEY-PASSPHRASE"));
    Files.writeString(passphrase, "quite other words\n");
    assertTrue(line("1").results().contains("check    1 "));
  }

  @Test
  void anOfficialSignsInAtTheLineInPlaceOfAnother() {
    Typed typed =
        line("in " + PracticeEvent.OTHER_OFFICIAL, PracticeEvent.PASSPHRASE, "1", "in Nobody");
    assertTrue(typed.results().contains("official Bo Lind on duty"), typed.toString());
    assertTrue(typed.results().contains("check    1 "), typed.toString());
    assertTrue(typed.talk().contains("NO-SUCH-OFFICIAL"), typed.toString());
    assertFalse(typed.toString().contains(PracticeEvent.PASSPHRASE), typed.toString());
  }

  @Test
  void whoMaySignIsListedBesideAnOpenLine() throws Exception {
    try (CheckInLine unused = open(event)) {
      Typed typed = official();
      assertEquals(0, typed.code(), typed.toString());
      assertTrue(typed.results().contains("  Ada Holt, official, may sign"), typed.toString());
    }
  }

  @Test
  void anUnsoundLedgerDoesNotSayWhoMaySign() throws Exception {
    flip(2);
    Typed typed = official();
    assertEquals(3, typed.code(), typed.toString());
    assertTrue(typed.talk().contains("LEDGER-UNSOUND"), typed.toString());
    assertEquals("", typed.results());
  }

  @Test
  void besideAnOpenLineARefusalNamesTheWordToTypeThere() throws Exception {
    try (CheckInLine unused = open(event)) {
      Typed typed = signed("--suspend", "Ada Holt", "--reason", "went home");
      assertEquals(4, typed.code(), typed.toString());
      assertTrue(
          typed.talk().contains("In its terminal type: enrol NAME [as judge]; or: suspend NAME"),
          typed.toString());
      assertTrue(typed.talk().contains("LEDGER-IN-USE"), typed.toString());
    }
  }

  /** There is no keyboard: whoever asked for a passphrase would be told so. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "official FOLDER --enrol Ann --judge",
        "official FOLDER --replace Ann --reason lost",
        "official FOLDER --readmit Ann",
        "adopt FOLDER --reason typo",
        "seal-key FOLDER",
        "draw FOLDER OC --seed 123",
        "witness FOLDER north 12-ab",
        "protest FOLDER 5 --by team --ground fast",
        "correct FOLDER Ann --bib 2 --reason slip",
        "ruling FOLDER 5 --ruling upheld --stands 6 --consequence none --reason slip",
        "confirm FOLDER 5",
        "compare demo-data/practice.csv --keep-in FOLDER",
        "line FOLDER"
      })
  void besideAnOpenLineNobodyIsAskedForAPassphraseInVain(String typed) throws Exception {
    List<String> words = new ArrayList<>(List.of(typed.split(" ")));
    words.replaceAll(word -> word.equals("FOLDER") ? event.path().toString() : word);
    try (CheckInLine unused = open(event)) {
      Typed run = new Typed().run(words.toArray(String[]::new));
      assertEquals(4, run.code(), run.toString());
      assertTrue(run.talk().contains("LEDGER-IN-USE"), run.toString());
    }
  }

  @Test
  void whatNoWordOfTheLineDoesIsRefusedWithWhatToDoInstead() throws Exception {
    try (CheckInLine unused = open(event)) {
      Typed typed = new Typed().run("set-ups", event.path().toString());
      assertEquals(4, typed.code(), typed.toString());
      assertTrue(typed.talk().contains("leave the line in the terminal (out)"), typed.toString());
    }
  }

  @Test
  void atTheOpenLineOfficialsAreEnrolledReplacedAndReadmitted() throws Exception {
    String own = "a word or two of Cy";
    String other = "quite another word";
    Typed typed =
        line(
            "enrol Cy Moor as judge",
            PracticeEvent.PASSPHRASE,
            own,
            "suspend Cy Moor because went home",
            PracticeEvent.PASSPHRASE,
            "readmit Cy Moor",
            PracticeEvent.PASSPHRASE,
            "in Cy Moor",
            own,
            "replace Bo Lind because the stick is lost",
            PracticeEvent.PASSPHRASE,
            other,
            "in Bo Lind",
            other,
            "1");
    List<String> told =
        typed.lines().stream().filter(line -> line.matches("official .*  .*")).toList();
    assertEquals(4, told.size(), typed.toString());
    assertTrue(told.get(0).endsWith("  Cy Moor, judge, may sign"), typed.toString());
    assertTrue(told.get(1).contains("  Cy Moor, judge, suspended by entry "), typed.toString());
    assertTrue(told.get(2).endsWith("  Cy Moor, judge, may sign"), typed.toString());
    assertTrue(told.get(3).endsWith("  Bo Lind, official, may sign"), typed.toString());
    assertTrue(typed.lines().contains("official Cy Moor on duty"), typed.toString());
    assertTrue(typed.lines().contains("official Bo Lind on duty"), typed.toString());
    assertTrue(typed.results().contains("check    1 "), typed.toString());
    for (String secret : List.of(PracticeEvent.PASSPHRASE, own, other)) {
      assertFalse(typed.toString().contains(secret), typed.toString());
    }
  }

  @Test
  void aKeyboardIsAskedUnseenAndTheNewPassphraseTwice() {
    Typed typed =
        new Typed()
            .secretly(PracticeEvent.PASSPHRASE, "own words of Cy", "own words of Cy")
            .typing("enrol Cy Moor", "1")
            .run(lineCommand());
    assertTrue(typed.results().contains("  Cy Moor, official, may sign"), typed.toString());
    assertTrue(typed.results().contains("check    1 "), typed.toString());
  }

  @Test
  void neitherPassphraseOfARefusedWordIsTakenForAnotherWord() {
    Typed typed =
        line(
            "enrol",
            PracticeEvent.PASSPHRASE,
            "2",
            "replace Bo Lind",
            PracticeEvent.PASSPHRASE,
            "2",
            "enrol Cy Moor",
            "wrong words",
            "2",
            "1");
    assertEquals(3, typed.talk().split("KEY-PASSPHRASE|NO-NAME|REASON-MISSING").length - 1);
    assertEquals(5, typed.talk().split("was passed over").length - 1, typed.toString());
    assertFalse(typed.results().contains("check    2 "), typed.toString());
    assertTrue(typed.results().contains("check    1 "), typed.toString());
    assertFalse(typed.toString().contains(PracticeEvent.PASSPHRASE), typed.toString());
  }

  @Test
  void atTheOpenLineTheSealOfReportsIsMade() throws Exception {
    Files.delete(event.reportSeal());
    Typed typed = line("seal", PracticeEvent.PASSPHRASE, "seal", PracticeEvent.PASSPHRASE);
    assertTrue(
        typed.results().contains("\nseal     " + event.reportSeal() + " is made"),
        typed.toString());
    assertTrue(Files.isRegularFile(event.reportSeal()), typed.toString());
    assertTrue(typed.talk().contains("KEY-EXISTS"), typed.toString());
  }
}
