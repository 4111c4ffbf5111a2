package lanewarden.chronograph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ReplayInstrumentTest {
  private static final Capture SHOTS =
      Capture.of(
          List.of(
              new Capture.Chunk(400, RawBytes.ofText("300.1\r\n")),
              new Capture.Chunk(2_000, RawBytes.ofText("299")),
              new Capture.Chunk(5, RawBytes.ofText(".8\r\n299.8\r\n")),
              new Capture.Chunk(3_000, RawBytes.ofText("30"))));

  private static Collected played(double pace) throws InterruptedException {
    Collected heard = new Collected();
    try (ReplayInstrument replay =
        new ReplayInstrument(SHOTS, Profiles.plainDecimal(), Profiles.CLOCK, pace)) {
      replay.start(heard);
      heard.awaitLink(1, LinkState.CLOSED);
    }
    return heard;
  }

  @Test
  void playsWithTheTimingOfTheCaptureWithoutWaitingForIt() throws InterruptedException {
    Collected heard = played(0);
    assertEquals(List.of("300.1 ft/s", "299.8 ft/s"), heard.speeds());
    assertEquals(List.of(Reason.REPEATED, Reason.TORN), Collected.reasons(heard.signals()));
    assertEquals(List.of(LinkState.UP, LinkState.CLOSED), heard.links());
    assertEquals(Source.REPLAY, heard.refusals().get(0).source());
  }

  @Test
  void aSlowerPaceWaitsAndGivesTheSame() throws InterruptedException {
    long before = System.nanoTime();
    Collected heard = played(0.02);
    assertTrue(System.nanoTime() - before >= 100 * Profiles.MILLI, "5.4 s at pace 0.02 is 108 ms");
    assertEquals(played(0).signals(), heard.signals());
  }

  @Test
  void aCaptureThatBeginsWithoutQuietBeginsWithATornLine() throws InterruptedException {
    Capture early = Capture.of(List.of(new Capture.Chunk(10, RawBytes.ofText("300.1\r\n"))));
    Collected heard = new Collected();
    try (ReplayInstrument replay =
        new ReplayInstrument(early, Profiles.plainDecimal(), Profiles.CLOCK, 0)) {
      replay.start(heard);
      heard.awaitLink(1, LinkState.CLOSED);
    }
    assertEquals(List.of(Reason.TORN), Collected.reasons(heard.signals()));
  }

  @Test
  void closingEndsALongWaitAtOnce() throws InterruptedException {
    Collected heard = new Collected();
    ReplayInstrument replay =
        new ReplayInstrument(SHOTS, Profiles.plainDecimal(), Profiles.CLOCK, 1_000);
    replay.start(heard);
    heard.awaitLink(1, LinkState.UP);
    long before = System.nanoTime();
    replay.close();
    assertTrue(System.nanoTime() - before < 1_000 * Profiles.MILLI);
    assertEquals(List.of(LinkState.UP, LinkState.CLOSED), heard.links());
  }

  @Test
  void refusesAPaceThatIsNoPace() {
    for (double pace : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThrows(
          IllegalArgumentException.class,
          () -> new ReplayInstrument(SHOTS, Profiles.plainDecimal(), Profiles.CLOCK, pace));
    }
  }
}
