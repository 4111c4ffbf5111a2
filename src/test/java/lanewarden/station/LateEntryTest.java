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

/** An archer whose bib nobody knows is put on the roster at the line. */
class LateEntryTest extends LineTest {

  private Path roster() {
    return line.folder.path().resolve(EventFolder.ROSTER);
  }

  private void add(String bib, String name, String division) throws StationException {
    line.station.proceedings().addLate(bib, name, division);
  }

  @Test
  void whoEntersLateIsCalledAndCheckedLikeAnybodyElse() throws Exception {
    add("5", "Dara Finch", "LB");
    line.station.call("5");
    line.shoot("57.2 m/s");
    assertEquals(Optional.of(Outcome.WITHIN), line.outcome());
    assertEquals("Dara Finch", line.check().opened().name());
  }

  @Test
  void theFileKeepsEveryByteAndTheLedgerTheWholeRoster() throws Exception {
    String before = Files.readString(roster());
    add("5", "Finch, \"Dara\"", "LB");
    String after = before + "5,\"Finch, \"\"Dara\"\"\",LB\n";
    assertEquals(after, Files.readString(roster()));
    List<String> adopted =
        line.facts().stream()
            .filter(Fact.RosterAdopted.class::isInstance)
            .map(fact -> ((Fact.RosterAdopted) fact).text())
            .toList();
    assertEquals(List.of(before, after), adopted);
  }

  @Test
  void columnsThatALateEntryDoesNotStateStayEmpty() throws Exception {
    line.station.signOut();
    Files.writeString(
        roster(), "arrow-mass,name,bib,division\n350 gr,Ann Archer,1,OC\n,Ben Bowyer,2,HC");
    line.onDuty();
    add("9", "Dara Finch", "OC");
    assertTrue(Files.readString(roster()).endsWith("\n,Dara Finch,9,OC\n"));
    line.station.call("9");
  }

  @Test
  void aBibThatIsTakenIsRefusedAndNothingChanges() throws Exception {
    String before = Files.readString(roster());
    int entries = line.facts().size();
    assertEquals("LATE-ENTRY", codeOf(() -> add("2", "Dara Finch", "LB")));
    assertEquals("LATE-ENTRY", codeOf(() -> add("5", "", "LB")));
    assertEquals("LATE-ENTRY", codeOf(() -> add("5", "Dara Finch", "XX")));
    assertEquals("LATE-ENTRY", codeOf(() -> add("no bib", "Dara Finch", "LB")));
    assertEquals("LATE-ENTRY", codeOf(() -> add("5", "Dara\nFinch", "LB")));
    assertEquals(before, Files.readString(roster()));
    assertEquals(entries, line.facts().size());
  }

  @Test
  void nobodyIsAddedWithoutAnOfficialAndTheFileIsAsItWas() throws Exception {
    String before = Files.readString(roster());
    line.station.signOut();
    assertEquals("NOBODY-ON-DUTY", codeOf(() -> add("5", "Dara Finch", "LB")));
    assertEquals(before, Files.readString(roster()));
  }

  @Test
  void aRosterThatSomebodyEditedIsNotSignedByTheWay() throws Exception {
    Files.writeString(roster(), Files.readString(roster()) + "7,Eve Marlow,OC\n");
    assertEquals("ROSTER-EDITED", codeOf(() -> add("5", "Dara Finch", "LB")));
    line.station.signOut();
    line.onDuty();
    add("5", "Dara Finch", "LB");
    line.station.call("7");
  }
}
