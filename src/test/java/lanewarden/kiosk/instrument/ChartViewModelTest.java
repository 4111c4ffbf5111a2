package lanewarden.kiosk.instrument;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.quantity.Sentence;
import lanewarden.quantity.Speed;
import lanewarden.station.VerificationView;
import lanewarden.station.VerificationView.Round;
import lanewarden.station.VerificationView.Shot;
import lanewarden.station.VerificationView.State;
import org.junit.jupiter.api.Test;

class ChartViewModelTest {
  private static final String REFERENCE = "296.4 ft/s";

  private final ChartViewModel model =
      new ChartViewModel(Texts.in(Language.ENGLISH), ZoneOffset.UTC);

  private static Round round(State state, String... speeds) {
    return new Round(
        1,
        Instant.EPOCH,
        "opening",
        "check bow",
        Optional.of(Speed.parse(REFERENCE)),
        speeds.length,
        "1 ft/s",
        "1 ft/s",
        IntStream.range(0, speeds.length)
            .mapToObj(
                i ->
                    new Shot(
                        i + 1,
                        Speed.parse(speeds[i]),
                        "instrument",
                        Optional.of(Speed.parse(REFERENCE))))
            .toList(),
        state,
        Sentence.verbatim(""));
  }

  private ChartPage page(boolean planned, Round... rounds) {
    model.take(
        new VerificationView(
            planned,
            List.of(rounds),
            Optional.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            List.of()));
    return model.page().get();
  }

  @Test
  void fewerThanTwoShotsAreSaidToBeTooFew() {
    ChartPage page = page(true, round(State.RUNNING, "296.0 ft/s"));
    assertEquals(Optional.empty(), page.charts());
    assertTrue(page.note().startsWith("Nothing can be drawn yet"), page.note());
  }

  @Test
  void aStationThatVerifiesNothingSaysWhatToAdd() {
    assertTrue(page(false).note().contains("[verification]"), model.page().get().note());
  }

  @Test
  void limitsAreSpokenInTheUnitOfTheReference() {
    // Differences 0, 1, 0 ft/s: mean 1/3, moving range 1, limits 1/3 ± 3/1.128 (NIST 6.3.2.2)
    ChartPage page = page(true, round(State.PASSED, REFERENCE, "297.4 ft/s", REFERENCE));
    ChartPage.Charts charts = page.charts().orElseThrow();
    assertEquals(Sign.WITHIN, charts.single().sign());
    assertEquals("INSIDE: all 3 lie between \u22122.33 and +2.99 ft/s.", charts.single().words());
    assertEquals("", page.note());
  }

  @Test
  void aShotOutsideIsNamedWithItsNumberAndValue() {
    List<String> speeds = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      speeds.add(i % 2 == 0 ? "296.3 ft/s" : "296.5 ft/s");
    }
    speeds.add("299.4 ft/s");
    ChartPage.Said single =
        page(true, round(State.PASSED, speeds.toArray(String[]::new)))
            .charts()
            .orElseThrow()
            .single();
    assertEquals(Sign.OVER, single.sign());
    assertTrue(single.words().startsWith("OUTSIDE: shot 9 (+3.00). The limits"), single.words());
  }

  @Test
  void aDriftTooSmallForSingleShotsIsSeenInTheirAverage() {
    List<String> speeds = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      speeds.add(i % 2 == 0 ? "296.0 ft/s" : "296.8 ft/s");
    }
    for (int i = 0; i < 8; i++) {
      speeds.add(i % 2 == 0 ? "297.2 ft/s" : "298.0 ft/s");
    }
    ChartPage.Charts charts =
        page(true, round(State.PASSED, speeds.toArray(String[]::new))).charts().orElseThrow();
    assertEquals(Sign.WITHIN, charts.single().sign());
    assertEquals(Sign.OVER, charts.average().sign());
    assertTrue(
        charts.average().words().startsWith("OUTSIDE: shot 32 (+1.20)."), charts.average().words());
  }

  @Test
  void ofManyShotsOutsideTheFirstAreNamedAndTheRestCounted() {
    // Even shots before a leap of 5 ft/s: the mean lies between, and every shot lies outside
    List<String> speeds = new ArrayList<>();
    for (int i = 0; i < 48; i++) {
      speeds.add(i < 24 ? "296.4 ft/s" : "301.4 ft/s");
    }
    String words =
        page(true, round(State.OUT, speeds.toArray(String[]::new)))
            .charts()
            .orElseThrow()
            .single()
            .words();
    assertTrue(words.contains("shot 6 (+0.00) and 42 more. The limits"), words);
  }

  @Test
  void shotsOfAVerificationThatWasBrokenOffAreLeftOutAndCounted() {
    ChartPage page =
        page(
            true,
            round(State.BROKEN_OFF, "250 ft/s"),
            round(State.PASSED, REFERENCE, "297.4 ft/s"));
    assertEquals(2, page.charts().orElseThrow().chart().singles().size());
    assertTrue(page.note().endsWith("broken off: 1."), page.note());
  }

  /** What the terminal's chart tells of each shot. */
  @Test
  void everyShotIsListedNewestFirstWithWhatItsFiguresComeFrom() {
    List<String> speeds = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      speeds.add(i % 2 == 0 ? "296.3 ft/s" : "296.5 ft/s");
    }
    speeds.add("299.4 ft/s");
    List<ChartPage.Shot> shots =
        page(true, round(State.PASSED, speeds.toArray(String[]::new)))
            .charts()
            .orElseThrow()
            .shots();
    assertEquals(9, shots.size());
    assertEquals(Sign.OVER, shots.get(0).sign());
    assertTrue(
        shots.get(0).figures().startsWith("Shot 9: +3.00\u00a0ft/s OUTSIDE\naverage +0."),
        shots.get(0).figures());
    assertEquals(
        "299.4 ft/s against 296.4 ft/s (instrument)\n"
            + "Verification 1: opening, 1970-01-01 00:00:00 UTC",
        shots.get(0).words());
    assertEquals(Sign.WITHIN, shots.get(8).sign());
    assertTrue(
        shots.get(8).figures().startsWith("Shot 1: \u22120.10\u00a0ft/s\naverage "),
        shots.get(8).figures());
  }
}
