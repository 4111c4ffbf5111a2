package lanewarden.station;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewEventTest {
  @TempDir Path here;

  private EventFolder make(NewEvent event, Path folder) throws StationException {
    return event.make(folder, Clock.systemUTC(), System::nanoTime, new SecureRandom());
  }

  private NewEvent event(NewEvent.Person... officials) throws Exception {
    NewEvent draft = PracticeEvent.draft(PracticeEvent.RULES, PracticeEvent.ROSTER);
    return new NewEvent(
        draft.ruleBook(),
        draft.roster(),
        draft.profile(),
        draft.station(),
        draft.kind(),
        draft.port(),
        draft.organizer(),
        List.of(officials));
  }

  private Trouble refused(NewEvent event, Path folder) {
    return assertThrows(StationException.class, () -> make(event, folder)).trouble();
  }

  private void assertNothingLeft() throws Exception {
    try (Stream<Path> left = Files.list(here)) {
      assertEquals(List.of(), left.toList());
    }
  }

  @Test
  void makesAFolderThatAStationOpens() throws Exception {
    EventFolder made = PracticeEvent.make(here.resolve("event"));
    assertTrue(made.isMade());
    assertEquals(List.of(PracticeEvent.OFFICIAL, PracticeEvent.OTHER_OFFICIAL), made.officials());
    try (PracticeLine line = PracticeLine.open(made).onDuty()) {
      assertEquals("Practice", line.station.view().event());
    }
  }

  @Test
  void keepsTheFilesByteForByte() throws Exception {
    EventFolder made = PracticeEvent.make(here.resolve("event"));
    assertArrayEquals(
        PracticeEvent.RULES.getBytes(UTF_8),
        Files.readAllBytes(made.path().resolve("rule-book.toml")));
    assertArrayEquals(
        PracticeEvent.profile(), Files.readAllBytes(made.path().resolve("gate-timer.toml")));
  }

  @Test
  void theSettingsReadBackAsTheyWereWritten() throws Exception {
    StationSettings settings =
        new StationSettings(
            "Lane \"A\"", "gate-timer.toml", StationSettings.Kind.SERIAL, "/dev/ttyUSB0");
    assertEquals(settings, StationSettings.read("station.toml", settings.toToml().getBytes(UTF_8)));
  }

  @Test
  void isNeverMadeOverAnother() throws Exception {
    Path folder = here.resolve("event");
    Files.createDirectory(folder);
    Files.writeString(folder.resolve("mine.txt"), "mine");
    assertEquals(
        "FOLDER-TAKEN",
        refused(PracticeEvent.draft(PracticeEvent.RULES, PracticeEvent.ROSTER), folder).code());
    assertEquals("mine", Files.readString(folder.resolve("mine.txt")));
  }

  @Test
  void aFaultyRuleBookLeavesNothingBehind() throws Exception {
    NewEvent event =
        PracticeEvent.draft(
            PracticeEvent.RULES.replace("limit = \"300 ft/s\"", "limit = \"300\""),
            PracticeEvent.ROSTER);
    Trouble trouble = refused(event, here.resolve("event"));
    assertEquals("FILE-REFUSED", trouble.code());
    assertTrue(trouble.why().startsWith("rules.toml:8:"), trouble.why());
    assertNothingLeft();
  }

  @Test
  void aRosterWithAStrangeDivisionLeavesNothingBehind() throws Exception {
    NewEvent event =
        PracticeEvent.draft(PracticeEvent.RULES, PracticeEvent.ROSTER + "5,Dee Late,XX\n");
    assertTrue(refused(event, here.resolve("event")).why().contains("roster.csv:6:"));
    assertNothingLeft();
  }

  @Test
  void someoneMustBeAbleToSign() throws Exception {
    assertEquals("NO-OFFICIAL", refused(event(), here.resolve("event")).code());
  }

  @Test
  void twoOfficialsCannotShareAKeyFile() throws Exception {
    NewEvent event = event(PracticeEvent.person("Ada Holt"), PracticeEvent.person("ada  HOLT"));
    assertEquals("OFFICIAL-NAME", refused(event, here.resolve("event")).code());
  }

  @Test
  void anOfficialsNameWithACharacterThatNobodySeesIsRefused() throws Exception {
    NewEvent event =
        event(PracticeEvent.person("Ada Holt"), PracticeEvent.person("A\u200bda Holt"));
    Trouble refused = refused(event, here.resolve("event"));
    assertEquals("OFFICIAL-NAME", refused.code());
    assertTrue(refused.why().contains("that nobody can see (U+200B)"), refused.why());
  }

  @Test
  void aShortPassphraseIsRefused() throws Exception {
    NewEvent event = event(new NewEvent.Person("Ada Holt", "seven 7".toCharArray()));
    assertEquals("PASSPHRASE-SHORT", refused(event, here.resolve("event")).code());
    assertFalse(Files.exists(here.resolve("event")));
  }
}
