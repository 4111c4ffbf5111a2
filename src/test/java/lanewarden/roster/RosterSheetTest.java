package lanewarden.roster;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import lanewarden.quantity.Mass;
import lanewarden.quantity.MassUnit;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;
import org.junit.jupiter.api.Test;

/** Lists as other programs save them, and the roster that comes of them. */
class RosterSheetTest {
  private static final Set<String> CODES = Set.of("OC", "TR");

  private static RosterSheet sheet(String text) throws WrittenRefused {
    return RosterSheet.read("list.csv", text.getBytes(UTF_8));
  }

  private static List<String> told(RosterSheet.Mapped mapped) {
    return mapped.faults().stream().map(f -> f.line() + ":" + f.column()).toList();
  }

  @Test
  void aListWithColumnsOfOtherNamesBecomesARosterThatReads() throws Exception {
    RosterSheet sheet =
        sheet(
            "Club;Full Name;Start number;Class;Arrow weight\r\n"
                + "Elm;\"Holt; Ada\";11;OC;352 gr\r\nOak;Bo Lind;12;TR;\r\n");
    assertEquals(
        Map.of("bib", 2, "name", 1, "division", 3, "arrow-mass", 4), Map.copyOf(sheet.guess()));
    RosterSheet.Mapped mapped = sheet.mapped(sheet.guess(), CODES);
    assertEquals(List.of(), mapped.faults());
    Roster roster = Roster.read("roster.csv", mapped.csv().getBytes(UTF_8));
    assertEquals("Holt; Ada", roster.bib("11").orElseThrow().name());
    assertEquals("352 gr", String.valueOf(roster.bib("11").orElseThrow().arrowMass()));
  }

  @Test
  void theRostersOwnTitleIsTakenBeforeAnyOtherWord() throws Exception {
    assertEquals(1, sheet("number,bib,name,division\n1,2,A,OC\n").guess().get("bib"));
  }

  @Test
  void aUnitInTheHeadingIsThatOfItsBareNumbers() throws Exception {
    RosterSheet sheet =
        sheet(
            "bib,name,division,Arrow (gr),Poundage [lbf],draw length (in),brace-height ( mm )\n"
                + "1,Ann,OC,352,60,29,178\n2,Ben,OC,22.8 g,250 N,74 cm,7 in\n3,Cat,OC,,,,\n");
    assertEquals(
        List.of(3, 4, 5, 6),
        Stream.of("arrow-mass", "draw-weight", "draw-length", "brace-height")
            .map(sheet.guess()::get)
            .toList());
    RosterSheet.Mapped mapped = sheet.mapped(sheet.guess(), CODES);
    assertEquals(List.of(), mapped.faults());
    assertEquals(
        List.of("1", "Ann", "OC", "352 gr", "60 lbf", "29 in", "178 mm"), mapped.rows().get(0));
    assertEquals(
        List.of("2", "Ben", "OC", "22.8 g", "250 N", "74 cm", "7 in"), mapped.rows().get(1));
    Roster roster = Roster.read("roster.csv", mapped.csv().getBytes(UTF_8));
    // 1 gr = 64.79891 mg exactly (international grain, 1959 yard and pound agreement)
    assertEquals(
        0,
        Objects.requireNonNull(roster.bib("1").orElseThrow().arrowMass())
            .compareTo(Mass.of("22.80921632", MassUnit.GRAM)));
    assertEquals("22.8 g", String.valueOf(roster.bib("2").orElseThrow().arrowMass()));
    assertNull(roster.bib("3").orElseThrow().arrowMass());
  }

  @Test
  void whereNoHeadingSaysTheUnitABareNumberStaysAFaultOfItsLine() throws Exception {
    // No unit; one of another kind; one that nobody knows; a comma, which may part thousands
    for (String heading : List.of("arrow mass", "arrow mass (lbf)", "arrow mass (drams)")) {
      RosterSheet sheet = sheet("bib,name,division," + heading + "\n1,A,OC,350 gr\n2,B,OC,352\n");
      Map<String, Integer> places = Map.of("bib", 0, "name", 1, "division", 2, "arrow-mass", 3);
      assertEquals(List.of("3:8"), told(sheet.mapped(places, CODES)), heading);
    }
    RosterSheet sheet = sheet("bib;name;division;arrow mass (g)\n1;A;OC;22,8\n2;B;OC;22.8\n");
    assertEquals(List.of("2:8"), told(sheet.mapped(sheet.guess(), CODES)));
  }

  @Test
  void aFigureThatTheUnitOfItsHeadingMakesImpossibleIsAFaultOfItsLine() throws Exception {
    RosterSheet sheet = sheet("bib,name,division,arrow (gr)\n1,A,OC,352\n2,B,OC,22.8\n");
    assertEquals(List.of("3:8"), told(sheet.mapped(sheet.guess(), CODES)));
  }

  @Test
  void anotherColumnMayBeChosen() throws Exception {
    RosterSheet sheet = sheet("number,licence,name,division\n1,A77,Ann,OC\n");
    RosterSheet.Mapped mapped = sheet.mapped(Map.of("bib", 1, "name", 2, "division", 3), CODES);
    assertEquals(List.of("A77", "Ann", "OC"), mapped.rows().get(0));
  }

  @Test
  void everyFaultHasTheLineAndColumnOfTheListItself() throws Exception {
    // Lines counted by hand: the header is 1, an empty line is 3
    RosterSheet sheet =
        sheet(
            "Class,Archer,Bib\n"
                + "OC,Ann,1\n"
                + "\n"
                + "OC,Ben,not a bib\n"
                + "OC,Cat\n"
                + "TR,,5\n"
                + "TR,Dee,1\n");
    RosterSheet.Mapped mapped = sheet.mapped(sheet.guess(), CODES);
    assertEquals(List.of("4:8", "5:0", "6:4", "7:8"), told(mapped));
    assertEquals("\"1\", already on line 2", mapped.faults().get(3).found().toString());
    assertEquals(5, sheet.size());
  }

  @Test
  void aDivisionThatTheRuleBookHasNotIsAFaultOfItsLine() throws Exception {
    RosterSheet sheet = sheet("division\tname\tbib\nOC\tAnn\t1\nXX\tBen\t2\n");
    List<WrittenFault> faults = sheet.mapped(sheet.guess(), CODES).faults();
    assertEquals(3, faults.get(0).line());
    assertEquals("\"XX\"", faults.get(0).found().toString());
  }

  @Test
  void aNameOverTwoLinesDoesNotMoveTheLinesBehindIt() throws Exception {
    RosterSheet sheet = sheet("bib,name,division\n1,\"Ann\nArcher\",OC\n2,Ben,XX\nb?d,Cat,OC\n");
    assertEquals(List.of("2:3", "4:7", "5:1"), told(sheet.mapped(sheet.guess(), CODES)));
  }

  @Test
  void whatIsNoTableIsRefusedWhole() {
    assertThrows(WrittenRefused.class, () -> sheet(""));
    assertThrows(WrittenRefused.class, () -> sheet("bib,name,division\n"));
    assertThrows(WrittenRefused.class, () -> sheet("bib,name\n1,\"open\n"));
  }

  private static final String FOREIGN = "Start no;Wer;Klasse;Wer;Pfeil\n7;Ann;OC;Elm;352 gr\n";

  @Test
  void whatSomebodySaysOfAColumnStandsBeforeEveryGuess() throws Exception {
    RosterSheet sheet = sheet("bib,name,division,number,arrow\nA7,Ann,OC,11,352 gr\n");
    assertEquals(
        Map.of("bib", 3, "name", 1, "division", 2),
        Map.copyOf(sheet.places(List.of("bib=Number", "arrow-mass="))));
    assertEquals(
        Map.of("bib", 0, "name", 1, "division", 2, "arrow-mass", 4),
        Map.copyOf(sheet.places(List.of())));
  }

  @Test
  void aColumnIsSaidByItsHeadingOrItsNumber() throws Exception {
    Map<String, Integer> places =
        sheet(FOREIGN)
            .places(List.of("bib=start NO", "name=2", "Division = Klasse", "arrow mass=Pfeil"));
    assertEquals(Map.of("bib", 0, "name", 1, "division", 2, "arrow-mass", 4), Map.copyOf(places));
  }

  @Test
  void everythingThatIsSaidWronglyOfColumnsIsToldAtOnce() {
    WrittenRefused refused =
        assertThrows(
            WrittenRefused.class,
            () ->
                sheet(FOREIGN)
                    .places(
                        List.of(
                            "name=Wer",
                            "bibb=1",
                            "division=Klase",
                            "bib=6",
                            "draw-weight",
                            "arrow-mass=5",
                            "arrow-mass=4",
                            "division=")));
    assertEquals(
        List.of(
            "say the number: 2, 4",
            "did you mean bib?",
            "did you mean \"Klasse\"?",
            "its headings are Start no, Wer, Klasse, Wer, Pfeil",
            "put a = between",
            "say it of arrow-mass once only",
            "say it of division once only"),
        refused.faults().stream().map(fault -> fault.mend().toString()).toList());
  }

  @Test
  void aListThatIsARosterAsItStandsIsTakenByteForByte() throws Exception {
    String own = "\"bib\",name,division\r\n1,\"Ann\",OC\r\n";
    RosterSheet sheet = sheet(own);
    assertEquals(own, sheet.mapped(sheet.guess(), CODES).csv());
    // Said otherwise than its header says, it is none
    assertEquals(
        "bib,name,division\nAnn,1,OC\n",
        sheet.mapped(sheet.places(List.of("bib=name", "name=bib")), CODES).csv());
  }
}
