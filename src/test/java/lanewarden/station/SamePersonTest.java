package lanewarden.station;

import static lanewarden.station.PracticeEvent.JUDGE;
import static lanewarden.station.PracticeEvent.OFFICIAL;
import static lanewarden.station.PracticeEvent.OTHER_OFFICIAL;
import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Correction;
import lanewarden.journal.Protest;
import lanewarden.journal.ProtestFact.Answer;
import lanewarden.journal.ProtestFact.Cause;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Another key makes nobody another person: not the second one of a correction, and no judge who has
 * nothing to do with the check.
 */
class SamePersonTest {
  @TempDir static Path scratch;
  private static EventFolder made;

  @TempDir Path here;
  private EventFolder event;
  private EventOffice office;
  private KeyOffice keys;
  private KeyOffice.Organizer organizer;

  @BeforeAll
  static void make() throws Exception {
    made = PracticeEvent.makeWithAJudge(scratch.resolve("made"));
  }

  @BeforeEach
  void copy() throws Exception {
    event = PracticeEvent.copy(made, here.resolve("event"));
    office = new EventOffice(event, PracticeEvent.here());
    keys = new KeyOffice(event, PracticeEvent.here());
    organizer = keys.organizer(Optional.empty(), words());
  }

  private static char[] words() {
    return PracticeEvent.PASSPHRASE.toCharArray();
  }

  private Protests as(String official) throws Exception {
    return office.protests(official, words());
  }

  /** A check of Ann Archer that this official shot. */
  private long checkBy(String official) throws Exception {
    try (PracticeLine line = PracticeLine.open(event)) {
      line.station.signIn(official, words());
      line.station.call("1");
      line.shoot("301 ft/s", "302 ft/s", "303 ft/s");
      return line.check().number();
    }
  }

  private String confirming(String official, Correction correction) throws Exception {
    Protests desk = as(official);
    return codeOf(() -> desk.confirm(correction.number()));
  }

  private String ruling(String official, Protest protest) throws Exception {
    Protests desk = as(official);
    return codeOf(
        () ->
            desk.rule(
                protest.number(), Answer.DISMISSED, protest.fact().check(), "none", "it is fine"));
  }

  @Test
  void whoMadeACorrectionDoesNotConfirmItWithAKeyInThePlaceOfTheLostOne() throws Exception {
    Correction made = as(OFFICIAL).correctBib(checkBy(OTHER_OFFICIAL), "4", "upside down");
    keys.replace(organizer, OFFICIAL, words(), "the passphrase is lost");
    assertEquals("SECOND-PERSON", confirming(OFFICIAL, made));
    keys.replace(organizer, OFFICIAL, words(), "lost once more");
    assertEquals("SECOND-PERSON", confirming(OFFICIAL, made));
    assertFalse(as(OTHER_OFFICIAL).confirm(made.number()).isOpen());
  }

  @Test
  void whoIsEnrolledAnewUnderTheNameAfterASuspensionIsTheSamePerson() throws Exception {
    Correction made = as(OFFICIAL).correctBib(checkBy(OTHER_OFFICIAL), "4", "upside down");
    keys.suspend(organizer, OFFICIAL, "left the event");
    keys.enrol(organizer, "ADA  holt.", words());
    assertEquals("SECOND-PERSON", confirming("ADA  holt.", made));
  }

  @Test
  void aSecondPersonConfirmsWithAReplacedKeyAsWell() throws Exception {
    Correction made = as(OFFICIAL).correctBib(checkBy(OTHER_OFFICIAL), "4", "upside down");
    keys.replace(organizer, OTHER_OFFICIAL, words(), "the passphrase is lost");
    assertFalse(as(OTHER_OFFICIAL).confirm(made.number()).isOpen());
  }

  @Test
  void aJudgeDoesNotRuleOnTheirOwnCheckWithAnotherKey() throws Exception {
    Protest protest = as(OFFICIAL).file(checkBy(JUDGE), Cause.PROTEST, "the team", "looked fast");
    assertEquals("OWN-CHECK", ruling(JUDGE, protest));
    keys.replace(organizer, JUDGE, words(), "the passphrase is lost");
    assertEquals("OWN-CHECK", ruling(JUDGE, protest));
    keys.suspend(organizer, JUDGE, "left the event");
    keys.enrolJudge(organizer, JUDGE, words());
    assertEquals("OWN-CHECK", ruling(JUDGE, protest));
    keys.enrolJudge(organizer, "Di Fenn", words());
    assertFalse(
        as("Di Fenn")
            .rule(protest.number(), Answer.DISMISSED, protest.fact().check(), "none", "fine")
            .isOpen());
  }

  @Test
  void theScreenOffersEverybodyElseForTheSecondSignature() throws Exception {
    long check = checkBy(OTHER_OFFICIAL);
    Correction made = as(OFFICIAL).correctBib(check, "4", "upside down");
    keys.replace(organizer, OFFICIAL, words(), "the passphrase is lost");
    try (PracticeLine line = PracticeLine.open(event)) {
      Dossier dossier = line.station.records().docket().get(0);
      List<String> others =
          line.station.proceedings().signers().stream()
              .filter(one -> dossier.mayConfirm(one, made))
              .map(KeyOffice.Official::name)
              .toList();
      assertEquals(List.of(OTHER_OFFICIAL, JUDGE), others);
      assertTrue(dossier.isOpen());
    }
  }
}
