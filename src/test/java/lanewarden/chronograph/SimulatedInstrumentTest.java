package lanewarden.chronograph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Collectors;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.Test;

class SimulatedInstrumentTest {
  private static Collected with(SentenceProfile profile, Play play) throws InterruptedException {
    Collected heard = new Collected();
    try (SimulatedInstrument simulator = new SimulatedInstrument(profile, Profiles.CLOCK)) {
      simulator.start(heard);
      play.on(simulator);
      simulator.settle();
    }
    return heard;
  }

  private interface Play {
    void on(SimulatedInstrument simulator) throws InterruptedException;
  }

  @Test
  void shootsGoodSentencesWithRunningNumbers() throws InterruptedException {
    Collected heard =
        with(
            Profiles.gateTimer(),
            simulator -> {
              simulator.shoot(Speed.parse("300.1 ft/s"));
              simulator.shoot(Speed.parse("300.1 ft/s"));
              simulator.shoot(Speed.parse("91.4 m/s"));
            });
    assertEquals(List.of("300.1 ft/s", "300.1 ft/s", "91.4 m/s"), heard.speeds());
    Reading first = ((Signal.Heard) heard.signals().get(1)).reading();
    assertEquals(
        new Reading(
            Speed.parse("300.1 ft/s"),
            Profiles.good(1),
            Source.SIMULATED,
            "Gate timer, simulated",
            Profiles.NOON,
            "00001"),
        first);
  }

  @Test
  void shootsInQuickSuccessionAreNoRepeatsEvenWithoutNumbers() throws InterruptedException {
    Collected heard =
        with(
            Profiles.plainDecimal(),
            simulator -> {
              simulator.shoot(Speed.parse("300.1 ft/s"));
              simulator.shoot(Speed.parse("300.1 ft/s"));
            });
    assertEquals(2, heard.speeds().size());
  }

  @Test
  void writesTheSpeedInTheUnitOfTheLine() throws InterruptedException {
    Collected heard = with(Profiles.plainDecimal(), s -> s.shoot(Speed.parse("91.44 m/s")));
    assertEquals(List.of("300.0 ft/s"), heard.speeds());
  }

  @Test
  void whatItEmitsTakesTheSameWayAndIsRefusedAlike() throws InterruptedException {
    Collected heard =
        with(
            Profiles.gateTimer(),
            simulator -> {
              simulator.emit(Profiles.good(1));
              simulator.emit(Profiles.good(1));
              simulator.emit(RawBytes.ofText("$PLWT,0"));
              simulator.pause(Duration.ofSeconds(1));
              simulator.shoot(Speed.parse("600 ft/s"));
            });
    assertEquals(
        List.of(Reason.REPEATED, Reason.TORN, Reason.OUT_OF_RANGE),
        Collected.reasons(heard.signals()));
  }

  @Test
  void closingRightAfterAShotAlwaysEndsIt() throws InterruptedException {
    for (int round = 0; round < 300; round++) {
      Collected heard = with(Profiles.gateTimer(), s -> s.shoot(Speed.parse("300.1 ft/s")));
      assertEquals(List.of(LinkState.UP, LinkState.CLOSED), heard.links(), "round " + round);
    }
  }

  @Test
  void unpluggedItIsNotHeardAndTheLinkComesBack() throws InterruptedException {
    Collected heard =
        with(
            Profiles.gateTimer(),
            simulator -> {
              simulator.emit(RawBytes.ofText("$PLWT,0"));
              simulator.unplug();
              simulator.unplug();
              simulator.shoot(Speed.parse("290.0 ft/s"));
              simulator.replug();
              simulator.shoot(Speed.parse("300.1 ft/s"));
            });
    assertEquals(List.of("300.1 ft/s"), heard.speeds());
    assertEquals(List.of(Reason.TORN), Collected.reasons(heard.signals()));
    assertEquals(
        List.of(LinkState.UP, LinkState.LOST, LinkState.UP, LinkState.CLOSED), heard.links());
  }

  @Test
  void everySignalComesOnOneThread() throws InterruptedException {
    Collected heard =
        with(
            Profiles.gateTimer(),
            simulator -> {
              for (int i = 0; i < 20; i++) {
                simulator.shoot(Speed.parse("300.1 ft/s"));
              }
            });
    assertEquals(
        1,
        heard.arrivals().stream()
            .map(Collected.Arrival::thread)
            .collect(Collectors.toSet())
            .size());
    assertFalse(heard.arrivals().get(0).thread().equals(Thread.currentThread()));
  }

  @Test
  void aSinkThatThrowsIsReportedAndTheLinkLives() throws InterruptedException {
    List<Throwable> reported = new CopyOnWriteArrayList<>();
    Collected heard = new Collected();
    try (SimulatedInstrument simulator =
        new SimulatedInstrument(Profiles.gateTimer(), Profiles.CLOCK)) {
      simulator.start(
          signal -> {
            Thread.currentThread().setUncaughtExceptionHandler((t, e) -> reported.add(e));
            if (signal instanceof Signal.Heard h && "00001".equals(h.reading().sequence())) {
              throw new IllegalStateException("the sink failed");
            }
            heard.accept(signal);
          });
      simulator.shoot(Speed.parse("300.1 ft/s"));
      simulator.shoot(Speed.parse("299.8 ft/s"));
      simulator.settle();
    }
    assertEquals(List.of("299.8 ft/s"), heard.speeds());
    assertEquals(1, reported.size());
    assertEquals("the sink failed", reported.get(0).getMessage());
  }

  @Test
  void refusesToShootWithoutALineToWrite() {
    String toml = Profiles.text("gate-timer");
    SentenceProfile mute = Profiles.of(toml.substring(0, toml.indexOf("[simulator]")));
    try (SimulatedInstrument simulator = new SimulatedInstrument(mute, Profiles.CLOCK)) {
      IllegalStateException refused =
          assertThrows(IllegalStateException.class, () -> simulator.shoot(Speed.parse("300 ft/s")));
      assertTrue(String.valueOf(refused.getMessage()).contains("[simulator]"));
    }
  }

  @Test
  void refusesASpeedWithMoreDigitsThanTheLine() {
    try (SimulatedInstrument simulator =
        new SimulatedInstrument(Profiles.gateTimer(), Profiles.CLOCK)) {
      assertThrows(
          IllegalArgumentException.class, () -> simulator.shoot(Speed.parse("12345 ft/s")));
    }
  }

  @Test
  void isStartedOnceOnly() {
    try (SimulatedInstrument simulator =
        new SimulatedInstrument(Profiles.gateTimer(), Profiles.CLOCK)) {
      simulator.start(signal -> {});
      assertThrows(IllegalStateException.class, () -> simulator.start(signal -> {}));
    }
  }

  @Test
  void mayBeClosedFromWithinTheSink() throws InterruptedException {
    Collected heard = new Collected();
    SimulatedInstrument simulator = new SimulatedInstrument(Profiles.gateTimer(), Profiles.CLOCK);
    simulator.start(
        signal -> {
          heard.accept(signal);
          simulator.close();
        });
    heard.awaitLink(1, LinkState.CLOSED);
    assertEquals(List.of(LinkState.UP, LinkState.CLOSED), heard.links());
  }
}
