package lanewarden.station;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The form of an event to be made: every fault at its field, and nothing made of a faulty one. */
class EventFormTest {
  private static final EventForm.Person ORGANIZER =
      new EventForm.Person("Orla Finch", "a long oak", "a long oak", false);
  private static final EventForm.Person OFFICIAL =
      new EventForm.Person("Ada Holt", "a long elm", "a long elm", false);
  private static final EventForm.Person JUDGE =
      new EventForm.Person("Cy Marsh", "a long ash", "a long ash", true);

  @TempDir Path here;

  private Path list(String text) throws Exception {
    return Files.writeString(here.resolve("list.csv"), text);
  }

  private EventForm form(Path list, String folder, EventForm.Person... people) {
    return new EventForm(
        folder,
        "North gate",
        "",
        list.toString(),
        Map.of(),
        "plain-decimal.toml",
        StationSettings.Kind.TYPED,
        "",
        List.of(people));
  }

  private EventForm right() throws Exception {
    return form(
        list("Start number;Archer;Class\n11;Ines Wetherholt;OC\n21;Mbali Thornquist;TR\n"),
        here.resolve("event").toString(),
        ORGANIZER,
        OFFICIAL,
        EventForm.Person.NOBODY,
        JUDGE);
  }

  private static Set<String> faulty(EventForm form) {
    return form.examine().faults().keySet();
  }

  @Test
  void anEventIsMadeOfARightForm() throws Exception {
    EventForm form = right();
    assertEquals(Map.of(), form.examine().faults());
    EventForm.Made made = form.make(PracticeEvent.here());
    assertEquals(List.of("Ada Holt", "Cy Marsh"), made.folder().officials());
    assertEquals(StationSettings.Kind.TYPED, made.folder().settings().kind());
    assertEquals(
        "bib,name,division\n11,Ines Wetherholt,OC\n21,Mbali Thornquist,TR\n",
        Files.readString(made.folder().path().resolve("roster.csv")));
    assertArrayEquals(
        Files.readAllBytes(Path.of("config/rule-book.toml")),
        Files.readAllBytes(made.folder().ruleBookFile()));
    assertEquals(
        LedgerInspection.of(made.folder().path(), List.of()).organizer().orElseThrow(),
        made.thumbprint());
  }

  @Test
  void anEmptyFormHasAFaultAtEveryFieldThatMustBeFilledIn() {
    EventForm empty =
        new EventForm(
            "",
            "",
            "",
            "",
            Map.of(),
            "",
            StationSettings.Kind.SERIAL,
            "",
            List.of(EventForm.Person.NOBODY, EventForm.Person.NOBODY));
    assertEquals(
        Set.of(
            "folder",
            "station",
            "roster",
            "profile",
            "port",
            "person-0-name",
            "person-0-passphrase",
            "person-1-name"),
        faulty(empty));
  }

  @Test
  void nothingIsMadeOfAFaultyForm() throws Exception {
    right();
    EventForm form = form(here.resolve("list.csv"), here.resolve("event").toString(), ORGANIZER);
    assertEquals(Set.of("person-1-name"), faulty(form));
    Trouble trouble =
        assertThrows(StationException.class, () -> form.make(PracticeEvent.here())).trouble();
    assertEquals("FORM-FAULTY", trouble.code());
    try (Stream<Path> left = Files.list(here)) {
      assertEquals(Set.of(here.resolve("list.csv")), left.collect(Collectors.toSet()));
    }
  }

  @Test
  void aFolderWithSomethingInItIsRefused() throws Exception {
    Files.writeString(Files.createDirectory(here.resolve("mine")).resolve("mine.txt"), "mine");
    right();
    EventForm form =
        form(here.resolve("list.csv"), here.resolve("mine").toString(), ORGANIZER, OFFICIAL);
    assertEquals(Set.of("folder"), faulty(form));
    assertTrue(
        form.examine()
            .faults()
            .get("folder")
            .get(0)
            .words()
            .toString()
            .contains("never made over it"));
  }

  @Test
  void anEmptyFolderIsTakenAndAFileIsNot() throws Exception {
    EventForm right = right();
    Files.createDirectory(here.resolve("event"));
    assertEquals(Set.of(), faulty(right));
    Path list = here.resolve("list.csv");
    assertEquals(
        Set.of("folder"), faulty(form(list, list.resolve("in").toString(), ORGANIZER, OFFICIAL)));
    assertEquals(Set.of("folder"), faulty(form(list, "not/the/whole/way", ORGANIZER, OFFICIAL)));
  }

  @Test
  void whereNothingMayBeWrittenTheFormSaysSo() throws Exception {
    Path locked = Files.createDirectory(here.resolve("locked"));
    right();
    assumeTrue(
        locked.toFile().setWritable(false) && !Files.isWritable(locked),
        "this user may write everywhere");
    EventForm form =
        form(here.resolve("list.csv"), locked.resolve("e").toString(), ORGANIZER, OFFICIAL);
    assertTrue(
        form.examine()
            .faults()
            .get("folder")
            .get(0)
            .words()
            .toString()
            .contains("Permission was denied"));
  }

  @Test
  void aDiskThatRefusesIsToldAndLeavesNothingBehind() throws Exception {
    right();
    // The kernel's own file system lets nobody make a folder in it
    assumeTrue(Files.isDirectory(Path.of("/proc/self")));
    EventForm form = form(here.resolve("list.csv"), "/proc/self/lanewarden", ORGANIZER, OFFICIAL);
    StationException refused =
        assertThrows(StationException.class, () -> form.make(PracticeEvent.here()));
    assertFalse(refused.trouble().remedy().isBlank());
    assertFalse(Files.exists(Path.of("/proc/self/lanewarden")));
  }

  @Test
  void aFaultyRosterIsToldLineByLine() throws Exception {
    EventForm form =
        form(
            list("bib,name,division\n11,Ines Wetherholt,OC\n11,Goran Pellinor,XX\n"),
            here.resolve("event").toString(),
            ORGANIZER,
            OFFICIAL);
    assertEquals(Set.of("roster"), faulty(form));
    assertTrue(
        form.examine().rosterFaults().get(0).toString().startsWith("Line 3: expected a bib"));
  }

  @Test
  void aColumnThatIsNotFoundIsAFaultOfThatColumn() throws Exception {
    EventForm form =
        form(
            list("bib,who,division\n11,Ines Wetherholt,OC\n"),
            here.resolve("event").toString(),
            ORGANIZER,
            OFFICIAL);
    assertEquals(Set.of("column-name"), faulty(form));
  }

  @Test
  void passphrasesThatDifferAreAFaultOfTheSecond() throws Exception {
    right();
    EventForm form =
        form(
            here.resolve("list.csv"),
            here.resolve("event").toString(),
            ORGANIZER,
            new EventForm.Person("Ada Holt", "a long elm", "a long elk", false),
            new EventForm.Person("ada  HOLT", "short", "short", false));
    assertEquals(Set.of("person-1-again", "person-2-name", "person-2-passphrase"), faulty(form));
  }

  @Test
  void theProfilesThatAreCarriedAreThoseOfTheExamples() throws Exception {
    try (Stream<Path> files = Files.list(Path.of("config/profiles"))) {
      assertEquals(
          files.map(f -> f.getFileName().toString()).sorted().toList(),
          Packed.profiles().stream().map(Packed.Profile::file).toList());
    }
  }
}
