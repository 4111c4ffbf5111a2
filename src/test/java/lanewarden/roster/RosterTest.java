package lanewarden.roster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import lanewarden.quantity.Force;
import lanewarden.quantity.Length;
import lanewarden.quantity.Mass;
import lanewarden.written.FaultTable;
import lanewarden.written.WrittenFault;
import lanewarden.written.WrittenRefused;
import org.junit.jupiter.api.Test;

class RosterTest {
  private static final String HEADER = "bib,name,division,arrow-mass,draw-weight\n";

  private static Roster roster(String text) throws WrittenRefused {
    return Roster.read("roster.csv", text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void readsWhatACompetitorDeclared() throws WrittenRefused {
    assertEquals(
        List.of(
            new Competitor("17", "Ana Brisk", "OC", Mass.parse("350 gr"), Force.parse("60 lbf"))),
        roster(HEADER + "17,Ana Brisk,OC,350 gr,60 lbf\n").competitors());
  }

  @Test
  void readsTheDrawWeightOfACertificate() throws WrittenRefused {
    assertEquals(
        List.of(
            new Competitor(
                "17",
                "Ana Brisk",
                "OC",
                null,
                Force.parse("58 lbf"),
                Force.parse("60 lbf"),
                null,
                null),
            new Competitor("18", "Ole Tamm", "OC", null, Force.parse("58 lbf"), null, null, null)),
        roster(
                "bib,name,division,draw-weight,certified-draw-weight\n"
                    + "17,Ana Brisk,OC,58 lbf,60 lbf\n18,Ole Tamm,OC,58 lbf,\n")
            .competitors());
  }

  @Test
  void readsTheLengthsOfABow() throws WrittenRefused {
    assertEquals(
        List.of(
            new Competitor(
                "17",
                "Ana Brisk",
                "OC",
                null,
                null,
                null,
                Length.parse("29.25 in"),
                Length.parse("178 mm"))),
        roster("bib,name,division,draw-length,brace-height\n17,Ana Brisk,OC,29.25 in,178 mm\n")
            .competitors());
  }

  @Test
  void lengthsThatNoBowHasAreRefused() {
    WrittenRefused refused =
        assertThrows(
            WrittenRefused.class,
            () ->
                roster(
                    "bib,name,division,draw-length,brace-height\n"
                        + "17,Ana Brisk,OC,74 in,7 in\n18,Ole Tamm,OC,7 in,29 in\n"));
    assertEquals(2, refused.faults().size(), refused.getMessage());
  }

  /** Own arithmetic: 29 in less 1.75 in is 27.25 in; AMO FP-3 for the 1.75 in. */
  @Test
  void lengthsThatLeaveNoPowerStrokeAreRefused() throws WrittenRefused {
    String header = "bib,name,division,draw-length,brace-height\n";
    for (String lengths : List.of("29 in,28 in", "29 in,27.25 in", "73.66 cm,69.215 cm")) {
      WrittenRefused refused =
          assertThrows(
              WrittenRefused.class, () -> roster(header + "17,Ana Brisk,OC," + lengths + "\n"));
      assertTrue(refused.getMessage().contains("expected a power stroke"), refused.getMessage());
      assertTrue(refused.getMessage().contains("the draw length less 1.75 in, found"));
    }
    assertEquals(
        Length.parse("27.24 in"),
        roster(header + "17,Ana Brisk,OC,29 in,27.24 in\n").competitors().get(0).braceHeight());
  }

  @Test
  void declaredValuesMayBeLeftEmpty() throws WrittenRefused {
    Competitor competitor = roster(HEADER + "17,Ana Brisk,OC,,\n").competitors().get(0);
    assertNull(competitor.arrowMass());
    assertNull(competitor.drawWeight());
  }

  @Test
  void columnsOfDeclaredValuesMayBeLeftOut() throws WrittenRefused {
    assertEquals(
        List.of(new Competitor("17", "Ana Brisk", "OC", null, null)),
        roster("bib,name,division\n17,Ana Brisk,OC\n").competitors());
  }

  @Test
  void columnsMayStandInAnyOrder() throws WrittenRefused {
    assertEquals(
        List.of(new Competitor("17", "Ana Brisk", "OC", null, Force.parse("267 N"))),
        roster("draw-weight,division,name,bib\n267 N,OC,Ana Brisk,17\n").competitors());
  }

  @Test
  void byteOrderMarkIsAcceptedAndKeptInTheText() throws WrittenRefused {
    String text = "\uFEFFbib,name,division\n17,Ana Brisk,OC\n";
    Roster roster = roster(text);
    assertEquals("17", roster.competitors().get(0).bib());
    assertEquals(text, roster.text());
  }

  @Test
  void quotedNameMayHoldACommaAndQuotes() throws WrittenRefused {
    Roster roster = roster("bib,name,division\r\n17,\"Brisk, \"\"Bo\"\"\",OC\r\n");
    assertEquals("Brisk, \"Bo\"", roster.competitors().get(0).name());
  }

  @Test
  void bibIsFoundInSmallOrCapitalLetters() throws WrittenRefused {
    Roster roster = roster("bib,name,division\nA17,Ana Brisk,OC\n");
    assertEquals("Ana Brisk", roster.bib(" a17 ").orElseThrow().name());
    assertEquals(Optional.empty(), roster.bib("A1"));
  }

  /** SHA-256 by coreutils' sha256sum of the same bytes. */
  @Test
  void hashIsThatOfTheFilesBytes() throws WrittenRefused {
    assertEquals(
        "b3b99640af50587c715673cd69a02ec6ae01e224cd917882503299c0a59240c6",
        roster("bib,name,division\n17,Ana Brisk,OC\n").sha256());
  }

  @Test
  void divisionThatTheRuleBookLacksIsAFaultAtItsPlace() throws WrittenRefused {
    Roster roster = roster("bib,name,division\n17,\"Brisk, Ana\",OC\n18,Ben Coldwater,XYZ\n");
    assertEquals(
        List.of(
            new WrittenFault(
                "roster.csv",
                3,
                18,
                "a division of the rule book, one of OC",
                "\"XYZ\"",
                "correct it here, or add the division to the rule book")),
        FaultTable.inEnglish(roster.faultsAgainst(Set.of("OC"))));
    assertEquals(List.of(), roster.faultsAgainst(new TreeSet<>(Set.of("OC", "XYZ"))));
  }

  @Test
  void mistypedDivisionIsShownTheOneItIsNear() throws WrittenRefused {
    Roster roster = roster("bib,name,division\n17,Ana Brisk,oc\n");
    assertEquals(
        "did you mean \"OC\"?", roster.faultsAgainst(Set.of("OC")).get(0).mend().toString());
  }

  @Test
  void demoRosterHasFortyCompetitorsWithDeclaredBows() throws Exception {
    Roster roster = Roster.read("roster.csv", Files.readAllBytes(Path.of("demo-data/roster.csv")));
    assertEquals(40, roster.competitors().size());
    assertTrue(roster.competitors().stream().filter(c -> c.drawWeight() != null).count() > 35);
  }

  @Test
  void whatWasSignedIsReadAlsoWithAnArrowThatIsNoLongerTakenIn() throws Exception {
    String text = "bib,name,division,arrow-mass\n1,Ash,FB,22.7 gr\n";
    assertThrows(
        WrittenRefused.class,
        () -> Roster.read("roster.csv", text.getBytes(StandardCharsets.UTF_8)));
    Roster signed = Roster.signed("roster.csv", text);
    assertEquals(Mass.parse("22.7 gr"), signed.competitors().get(0).arrowMass());
    Roster longer = new LateEntry("2", "Birch", "FB").joining(signed);
    assertEquals(2, longer.competitors().size());
  }
}
