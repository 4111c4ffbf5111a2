package lanewarden.kiosk.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.LaneFigure;
import org.junit.jupiter.api.Test;

/** Lanes and samples, as they are told on the screen. */
class LanesViewModelTest {
  private final Texts texts = Texts.in(Language.ENGLISH);

  @Test
  void lanesAndSamplesAreAnsweredAtEveryKey() {
    LanesViewModel lanes = new LanesViewModel(texts);
    lanes.figure(LaneFigure.COMPETITORS).set("60");
    lanes.figure(LaneFigure.DRAWN).set("12");
    lanes.figure(LaneFigure.OVER_LIMIT).set("1");
    lanes.figure(LaneFigure.CAUGHT).set("100 %");
    // one over-limit archer of 60 is among 12 drawn with a chance of 12/60
    assertTrue(lanes.sample().get(0).contains("20.0\u00a0%"), lanes.sample()::toString);
    lanes.figure(LaneFigure.LANES).set("1");
    lanes.figure(LaneFigure.DRAWN).set("60");
    lanes.figure(LaneFigure.MINUTES).set("60");
    // 60 archers of 4 × 20 s + 30 s = 110 s need 1.83 lanes
    assertTrue(
        lanes.lanes().contains("Lanes needed for the line not to grow: 2."),
        lanes.lanes()::toString);
    assertTrue(
        lanes.lanes().contains("The line grows as long as archers come."), lanes.lanes()::toString);
    lanes.figure(LaneFigure.LANES).set("two");
    assertEquals("lanes: write a whole number, 1 to 100", lanes.fault().get());
    assertEquals(List.of(), lanes.lanes());
    lanes.figure(LaneFigure.LANES).set("2");
    lanes.figure(LaneFigure.DRAWN).set("61");
    lanes.figure(LaneFigure.CAUGHT).set("0 %");
    assertEquals(
        "of them checked: write a whole number, zero to all competitors\n"
            + "chance to catch one: write a percentage more than zero, such as 90 %",
        lanes.fault().get());
  }

  @Test
  void aSampleThatTheLanesHaveNoTimeForIsToldWithWhatTheyCanDo() {
    LanesViewModel lanes = new LanesViewModel(texts);
    lanes.figure(LaneFigure.COMPETITORS).set("60");
    lanes.figure(LaneFigure.DRAWN).set("60");
    lanes.figure(LaneFigure.LANES).set("1");
    lanes.figure(LaneFigure.MINUTES).set("11");
    lanes.figure(LaneFigure.OVER_LIMIT).set("1");
    lanes.figure(LaneFigure.CAUGHT).set("100 %");
    // 660 s at 110 s a check are 6, and one of 60 is among 6 with a chance of 6/60
    assertEquals(
        "The lanes have time for only 6 of them: then the chance is 10.0\u00a0%.",
        lanes.sample().get(1));
    assertEquals(
        "For a chance of 90.0\u00a0%, 54 would have to be checked, more than there is time for.",
        lanes.sample().get(2));
    lanes.figure(LaneFigure.OVER_LIMIT).set("0");
    assertEquals(
        List.of("Nobody is over the limit, so there is nobody to find."),
        List.copyOf(lanes.sample()));
  }

  @Test
  void secondsOfACheckAndLanesNeededAreToldWhetherOrNotTheLineGrows() {
    LanesViewModel lanes = new LanesViewModel(texts);
    lanes.figure(LaneFigure.COMPETITORS).set("60");
    lanes.figure(LaneFigure.DRAWN).set("30");
    lanes.figure(LaneFigure.LANES).set("2");
    lanes.figure(LaneFigure.MINUTES).set("60");
    // 4 shots of 20 s and 30 s between archers; 2 lanes of 3600 s for 30 archers
    assertEquals("A check takes a lane 110 s.", lanes.lanes().get(0));
    assertEquals("For 30 to be checked in time it may take 4.0 minutes.", lanes.lanes().get(1));
    assertTrue(
        lanes.lanes().contains("Lanes needed for the line not to grow: 1."),
        lanes.lanes()::toString);
    lanes.figure(LaneFigure.DRAWN).set("0");
    assertEquals("A check takes a lane 110 s.", lanes.lanes().get(0));
    assertTrue(lanes.lanes().get(1).startsWith("On 2 side by side"), lanes.lanes()::toString);
  }
}
