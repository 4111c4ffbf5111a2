package lanewarden.kiosk.protest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.CheckInLine;
import lanewarden.station.EventFolder;
import lanewarden.station.PracticeEvent;
import lanewarden.station.SetUpText;
import lanewarden.station.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is told of a check that is looked into. */
class SheetPageTest {
  private static final Texts ENGLISH = Texts.in(Language.ENGLISH);

  private static final String RULES =
      """
      format = 1
      [event]
      name = "Doubts"
      edition = "1"
      [[division]]
      code = "JU"
      name = "Jump"
      limit = "309 ft/s"
      tolerance = "none"
      decide = "highest"
      counted = 3
      shots = 4
      voids = 1
      rechecks = 1
      jump = "100 ft/s"
      """;

  private static final String ROSTER =
      """
      bib,name,division,arrow-mass,draw-weight,draw-length,brace-height
      1,Ann Plain,JU,,,,
      2,Ben Bow,JU,350 gr,60 lbf,29 in,7 in
      """;

  @TempDir Path temp;

  private static List<String> told(Station station) throws Exception {
    long check = station.view().check().orElseThrow().check().number();
    return DossierPage.of(
            station.records().of(check).orElseThrow(),
            new DocketWords(ENGLISH, ZoneOffset.UTC),
            ENGLISH)
        .sheets()
        .get(0)
        .readings()
        .stream()
        .map(SheetPage.Reading::told)
        .toList();
  }

  @Test
  void aReadingThatCountsAgainSaysSoAsInATerminal() throws Exception {
    EventFolder event = PracticeEvent.make(temp.resolve("doubts"), RULES, ROSTER);
    try (CheckInLine line = CheckInLine.open(event, Optional.empty(), 1, PracticeEvent.here())) {
      Station station = line.station();
      station.signIn(PracticeEvent.OFFICIAL, PracticeEvent.PASSPHRASE.toCharArray());
      station.call("1", "");
      station.type("264");
      station.type("371");
      assertTrue(told(station).get(1).contains("371 ft/s"), told(station).toString());
      long first = station.view().check().orElseThrow().check().shots().get(0).sequence();
      station.officiating().declareVoid(first, "a sparrow in the gate");
      assertEquals("counts: nothing speaks against it any more", told(station).get(1));
    }
  }

  @Test
  void soDoesOneThatWasImpossibleForTheBowAsItWasStated() throws Exception {
    EventFolder event = PracticeEvent.make(temp.resolve("doubts"), RULES, ROSTER);
    try (CheckInLine line = CheckInLine.open(event, Optional.empty(), 1, PracticeEvent.here())) {
      Station station = line.station();
      station.signIn(PracticeEvent.OFFICIAL, PracticeEvent.PASSPHRASE.toCharArray());
      station.call("2", "");
      station.type("269.4");
      station.type("365");
      assertTrue(told(station).get(1).contains("impossible"), told(station).toString());
      station.officiating().state(new SetUpText("", "80", ""));
      assertEquals(
          "counts again: as bow and arrow are stated now, nothing speaks against it",
          told(station).get(1));
    }
  }
}
