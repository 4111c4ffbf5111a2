package lanewarden.station;

import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.List;
import java.util.Optional;
import lanewarden.ledger.Enrolled;
import lanewarden.ledger.KeyFile;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.Verification;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The organizer enrols, suspends, replaces and readmits officials of an event that was made. */
class KeyOfficeTest {
  private static final String ADA = PracticeEvent.OFFICIAL;
  private static final String NEW_WORDS = "quite other words";

  @TempDir static Path scratch;
  private static EventFolder made;

  @TempDir Path here;
  EventFolder event;
  KeyOffice office;
  KeyOffice.Organizer organizer;

  @BeforeAll
  static void make() throws Exception {
    made = PracticeEvent.make(scratch.resolve("made"));
  }

  @BeforeEach
  void copy() throws Exception {
    event = PracticeEvent.copy(made, here.resolve("event"));
    office = new KeyOffice(event, PracticeEvent.here());
    organizer = office.organizer(Optional.empty(), words());
  }

  private static char[] words() {
    return PracticeEvent.PASSPHRASE.toCharArray();
  }

  private String signIn(String name, String passphrase) throws Exception {
    try (PracticeLine line = PracticeLine.open(event)) {
      line.station.signIn(name, passphrase.toCharArray());
      return line.station.view().official().orElse("nobody");
    }
  }

  @Test
  void aNewOfficialSignsInWithAPassphraseOfTheirOwn() throws Exception {
    char[] own = NEW_WORDS.toCharArray();
    office.enrol(organizer, "Cy Moor", own);
    assertEquals("\0".repeat(NEW_WORDS.length()), new String(own));
    assertEquals("Cy Moor", signIn("Cy Moor", NEW_WORDS));
    assertEquals(List.of(ADA, PracticeEvent.OTHER_OFFICIAL, "Cy Moor"), event.officials());
    assertTrue(Verification.of(event.ledger()).sound());
  }

  @Test
  void aJudgeIsEnrolledAsOneAndStaysOneWithAnotherKey() throws Exception {
    office.enrolJudge(organizer, "Cy Moor", NEW_WORDS.toCharArray());
    office.replace(organizer, "Cy Moor", words(), "the passphrase is lost");
    office.suspend(organizer, "Cy Moor", "left the event");
    office.readmit(organizer, "Cy Moor");
    List<Boolean> judges =
        Verification.of(event.ledger()).officials().stream()
            .filter(official -> official.name().equals("Cy Moor"))
            .map(Enrolled::isJudge)
            .toList();
    assertEquals(List.of(true, true, true), judges);
  }

  @Test
  void theOrganizersNewPassphraseOpensTheSealOfReportsToo() throws Exception {
    office.changeOrganizers(Optional.empty(), words(), NEW_WORDS.toCharArray());
    assertEquals("KEY-PASSPHRASE", codeOf(() -> office.organizer(Optional.empty(), words())));
    Path seal = event.reportSeal();
    assertEquals(
        "KEY-PASSPHRASE",
        assertThrows(LedgerException.class, () -> KeyFile.openSeal(seal, words())).code());
    String before = KeyFile.label(seal).thumbprint();
    assertEquals(before, KeyFile.openSeal(seal, NEW_WORDS.toCharArray()).thumbprint());
  }

  /** Killed after the seal was written and before the organizer's key was. */
  @Test
  void aPassphraseChangedHalfwayIsChangedByDoingItAgain() throws Exception {
    byte[] old = Files.readAllBytes(event.keys().organizer());
    office.changeOrganizers(Optional.empty(), words(), NEW_WORDS.toCharArray());
    Files.write(event.keys().organizer(), old);
    office.changeOrganizers(Optional.empty(), words(), NEW_WORDS.toCharArray());
    office.organizer(Optional.empty(), NEW_WORDS.toCharArray());
    KeyFile.openSeal(event.reportSeal(), NEW_WORDS.toCharArray());
  }

  @Test
  void aNameThatIsTakenBlankOrReservedOrAShortPassphraseEnrolsNobody() throws Exception {
    for (String name :
        List.of(ADA, "ada  holt", " ", "Organizer", "A\u200bda Holt", "Cy\u00ad Moor")) {
      assertEquals("OFFICIAL-NAME", codeOf(() -> office.enrol(organizer, name, words())), name);
    }
    assertEquals(
        "PASSPHRASE-SHORT", codeOf(() -> office.enrol(organizer, "Cy", "short".toCharArray())));
    assertEquals(List.of(ADA, PracticeEvent.OTHER_OFFICIAL), event.officials());
    assertEquals(2, Verification.of(event.ledger()).officials().size());
  }

  @Test
  void onlyTheOrganizersKeyEnrolsAndLeavesNothingBehindOtherwise() throws Exception {
    KeyOffice.Organizer impostor = office.organizer(Optional.of(event.keys().of(ADA)), words());
    assertEquals("LEDGER-NOT-ORGANIZER", codeOf(() -> office.enrol(impostor, "Cy Moor", words())));
    assertEquals(
        "LEDGER-NOT-ORGANIZER", codeOf(() -> office.replace(impostor, ADA, words(), "lost")));
    assertEquals(List.of(ADA, PracticeEvent.OTHER_OFFICIAL), event.officials());
    assertEquals(ADA, signIn(ADA, PracticeEvent.PASSPHRASE));
  }

  @Test
  void aSuspendedOfficialIsNoLongerListedAndReturnsWithTheSameKey() throws Exception {
    office.suspend(organizer, ADA, "left the event");
    assertEquals(List.of(PracticeEvent.OTHER_OFFICIAL), event.officials());
    assertEquals("NO-SUCH-OFFICIAL", codeOf(() -> signIn(ADA, PracticeEvent.PASSPHRASE)));
    assertEquals("NO-SUCH-OFFICIAL", codeOf(() -> office.suspend(organizer, ADA, "again")));
    assertEquals("OFFICIAL-NAME", codeOf(() -> office.enrol(organizer, "organizer", words())));
    KeyOffice.Official listed = office.officials().get(0);
    assertEquals(Optional.of(new KeyOffice.Suspended(7, "left the event")), listed.suspension());
    office.readmit(organizer, ADA);
    assertEquals(ADA, signIn(ADA, PracticeEvent.PASSPHRASE));
    assertEquals("NOT-SUSPENDED", codeOf(() -> office.readmit(organizer, ADA)));
    assertTrue(Verification.of(event.ledger()).sound());
  }

  @Test
  void aSuspendedKeyThatIsBroughtBackByHandSignsNobodyIn() throws Exception {
    Path file = event.keys().of(ADA);
    byte[] key = Files.readAllBytes(file);
    office.suspend(organizer, ADA, "left the event");
    Files.write(file, key);
    assertEquals("OFFICIAL-SUSPENDED", codeOf(() -> signIn(ADA, PracticeEvent.PASSPHRASE)));
  }

  @Test
  void aLostKeyIsReplacedAndTheOldOneKeptAside() throws Exception {
    office.replace(organizer, ADA, NEW_WORDS.toCharArray(), "the passphrase is lost");
    assertEquals(ADA, signIn(ADA, NEW_WORDS));
    assertEquals("KEY-PASSPHRASE", codeOf(() -> signIn(ADA, PracticeEvent.PASSPHRASE)));
    Path file = event.keys().of(ADA);
    assertTrue(Files.exists(file.resolveSibling(file.getFileName() + ".suspended-7")));
    assertFalse(Files.exists(file.resolveSibling(file.getFileName() + ".next")));
  }

  /** Killed after the ledger was written and before the key files were moved. */
  @Test
  void aReplacementThatWasCutShortIsDoneAgain() throws Exception {
    Path file = event.keys().of(ADA);
    byte[] old = Files.readAllBytes(file);
    office.replace(organizer, ADA, NEW_WORDS.toCharArray(), "the passphrase is lost");
    Files.move(file, file.resolveSibling(file.getFileName() + ".next"));
    Files.write(file, old);
    assertEquals("OFFICIAL-SUSPENDED", codeOf(() -> signIn(ADA, PracticeEvent.PASSPHRASE)));
    office.replace(organizer, ADA, NEW_WORDS.toCharArray(), "once more");
    assertEquals(ADA, signIn(ADA, NEW_WORDS));
  }

  @Test
  void whileAStationRunsTheOfficeWaits() throws Exception {
    try (PracticeLine line = PracticeLine.open(event).onDuty()) {
      assertEquals("LEDGER-IN-USE", codeOf(() -> office.suspend(organizer, ADA, "why")));
    }
  }

  @Test
  void atAnOpenStationTheOfficialOnDutyIsSignedOutAndTheCheckStaysOpen() throws Exception {
    try (PracticeLine line = PracticeLine.open(event).onDuty()) {
      line.station.call("1");
      line.shoot("301 ft/s");
      KeyOffice open = line.station.keyOffice(new SecureRandom());
      open.suspend(organizer, ADA, "has a bow in this division");
      Trouble told = line.station.view().trouble().orElseThrow();
      assertEquals("OFFICIAL-SUSPENDED", told.code());
      assertEquals("Ada Holt was signed out.", told.what());
      assertTrue(told.why().endsWith("has a bow in this division"), told.why());
      assertEquals("NOBODY-ON-DUTY", codeOf(() -> line.station.type("302")));
      line.station.signIn(PracticeEvent.OTHER_OFFICIAL, words());
      line.shoot("302 ft/s", "303 ft/s");
      assertTrue(line.outcome().isPresent());
      assertEquals("NO-SUCH-OFFICIAL", codeOf(() -> line.station.signIn(ADA, words())));
      assertEquals("NO-SUCH-OFFICIAL", codeOf(() -> open.suspend(organizer, "Nobody", "why")));
      assertEquals(
          "REASON-MISSING",
          codeOf(() -> open.suspend(organizer, PracticeEvent.OTHER_OFFICIAL, " ")));
    }
  }
}
