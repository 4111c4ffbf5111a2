package lanewarden.station;

import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Fact;
import lanewarden.journal.Outcome;
import org.junit.jupiter.api.Test;

class DutyTest extends LineTest {

  @Test
  void aWrongPassphraseSignsNobodyIn() throws Exception {
    line.station.signOut();
    StationException e =
        org.junit.jupiter.api.Assertions.assertThrows(
            StationException.class,
            () -> line.station.signIn(PracticeEvent.OFFICIAL, "wrong words".toCharArray()));
    assertEquals("KEY-PASSPHRASE", e.trouble().code());
    assertEquals(Trouble.Kind.USAGE, e.trouble().kind());
    assertEquals(Optional.empty(), line.station.view().official());
  }

  @Test
  void aStrangerCannotSignIn() {
    assertEquals(
        "NO-SUCH-OFFICIAL",
        codeOf(() -> line.station.signIn("Someone Else", "practice only".toCharArray())));
  }

  @Test
  void thePassphraseIsWiped() throws Exception {
    char[] passphrase = PracticeEvent.PASSPHRASE.toCharArray();
    line.station.signIn(PracticeEvent.OTHER_OFFICIAL, passphrase);
    assertEquals("\0".repeat(passphrase.length), new String(passphrase));
  }

  @Test
  void theNextOfficialTakesOverInTheMiddleOfACheck() throws Exception {
    line.station.call("1");
    line.shoot("301 ft/s");
    line.station.signIn(PracticeEvent.OTHER_OFFICIAL, PracticeEvent.PASSPHRASE.toCharArray());
    line.shoot("302 ft/s", "303 ft/s");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
    assertEquals(Optional.of(PracticeEvent.OTHER_OFFICIAL), line.station.view().official());
    assertTrue(
        !line.check().signer().equals(line.check().verdict().orElseThrow().signer()),
        "each part is signed by who was on duty");
  }

  @Test
  void aReadingWithNobodyOnDutyIsKeptButCountsForNobody() throws Exception {
    line.station.call("1");
    line.station.signOut();
    line.shoot("301 ft/s");
    assertEquals(1, line.station.view().unwritten());
    line.onDuty();
    assertEquals(0, line.station.view().unwritten());
    assertEquals(List.of(), line.check().shots());
    assertEquals("nobody on duty", line.facts(Fact.LineRefused.class).get(0).reason());
  }

  @Test
  void aChangedRosterIsAdoptedAtTheNextSignIn() throws Exception {
    Path roster = line.folder.path().resolve("roster.csv");
    Files.writeString(roster, PracticeEvent.ROSTER + "5,Dee Late,OC\n");
    assertEquals("NO-SUCH-COMPETITOR", codeOf(() -> line.station.call("5")));
    line.station.signOut();
    line.onDuty();
    Trouble notice = line.station.view().trouble().orElseThrow();
    assertEquals("ROSTER-CHANGED", notice.code());
    assertTrue(notice.why().contains("5 Dee Late is new in OC"), notice.why());
    line.station.call("5");
    assertEquals("Dee Late", line.check().opened().name());
    assertEquals(2, line.facts(Fact.RosterAdopted.class).size());
  }

  @Test
  void aFaultyRosterIsNotAdoptedAndIsSaid() throws Exception {
    Path roster = line.folder.path().resolve("roster.csv");
    Files.writeString(roster, PracticeEvent.ROSTER + "5,Dee Late,XX\n");
    line.onDuty();
    Trouble trouble = line.station.view().trouble().orElseThrow();
    assertEquals("FILE-REFUSED", trouble.code());
    assertTrue(trouble.why().contains("roster.csv:6:"), trouble.why());
    line.station.call("1");
    assertEquals(1, line.facts(Fact.RosterAdopted.class).size());
  }

  @Test
  void aChangedRuleBookDoesNotGovernAndIsSaid() throws Exception {
    Path rules = line.folder.path().resolve("rule-book.toml");
    Files.writeString(rules, PracticeEvent.RULES.replace("300 ft/s", "200 ft/s"));
    line.onDuty();
    assertEquals("RULE-BOOK-CHANGED", line.station.view().trouble().orElseThrow().code());
    line.station.call("1");
    line.shoot("301 ft/s", "302 ft/s", "303 ft/s");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
  }

  @Test
  void closingTheLineSignsOut() throws Exception {
    line.station.call("2");
    line.shoot("270 ft/s", "271 ft/s");
    line.station.closeLine("");
    assertEquals(Optional.empty(), line.station.view().official());
    assertEquals(Optional.empty(), line.station.view().check());
    List<Fact> facts = line.facts();
    assertEquals(new Fact.StationClosed(null), facts.get(facts.size() - 1));
  }
}
