package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What would become of a list, with nothing made of it. */
class RosterCommandTest {
  private static final String RULES = "config/rule-book.toml";

  @TempDir Path here;

  private String list(String text) throws Exception {
    return Files.writeString(here.resolve("list.csv"), text).toString();
  }

  @Test
  void showsWhichColumnIsWhichAndTheRosterThatComesOfIt() throws Exception {
    String list = list("Club;Full name;Number;Class;arow-mass\nElm;Ann;7;OC;352 gr\n");
    Typed typed = new Typed().run("roster", list, "--rules", RULES);
    assertEquals(0, typed.code(), typed.toString());
    assertEquals(
        List.of(
            "column   2 \"Full name\" is name",
            "column   3 \"Number\" is bib",
            "column   4 \"Class\" is division",
            "left out Column 1 \"Club\" is left out.",
            "left out Column 5 \"arow-mass\" is left out. If it is the arrow-mass:"
                + " --column arrow-mass=5",
            "",
            "bib  name  division",
            "7    Ann   OC",
            "",
            "lines    1",
            "faults   none"),
        typed.lines());
    try (Stream<Path> left = Files.list(here)) {
      assertEquals(1, left.count(), "nothing is made");
    }
  }

  @Test
  void everyFaultIsToldWithItsPlaceInTheList() throws Exception {
    String list = list("Class,Archer,Bib\nOC,Ann,1\n\nXX,Ben,2\nTR,Dee,1\n");
    Typed typed = new Typed().run("roster", list, "--rules", RULES);
    assertEquals(2, typed.code(), typed.toString());
    // Lines counted by hand: the header is 1, an empty line is 3
    assertTrue(typed.talk().contains("list.csv:4:1: expected a division"), typed.toString());
    assertTrue(typed.talk().contains("list.csv:5:8: expected a bib"), typed.toString());
    assertTrue(typed.results().contains("faults   2"), typed.toString());
  }

  @Test
  void aMachineGetsColumnsRowsAndFaults() throws Exception {
    String list = list("Class,Wer,Bib\nOC,Ann,?\n");
    Typed typed = new Typed().run("roster", list, "--column", "name=Wer", "--json");
    assertEquals(2, typed.code(), typed.toString());
    JsonNode json = new ObjectMapper().readTree(typed.results());
    assertEquals("[\"bib\",\"name\",\"division\"]", json.get("titles").toString());
    assertEquals("[[\"?\",\"Ann\",\"OC\"]]", json.get("rows").toString());
    assertEquals("[\"name\"]", json.get("columns").get(1).get("takenFor").toString());
    assertFalse(json.get("divisionsCompared").asBoolean());
    assertEquals(2, json.get("faults").get(0).get("line").asInt());
    assertEquals(8, json.get("faults").get(0).get("column").asInt());
  }

  @Test
  void withoutARuleBookItSaysThatNoDivisionWasCompared() throws Exception {
    Typed typed = new Typed().run("roster", list("bib,name,division\n1,Ann,XX\n"));
    assertEquals(0, typed.code(), typed.toString());
    assertTrue(typed.results().contains("compared with no rule book"), typed.toString());
  }
}
