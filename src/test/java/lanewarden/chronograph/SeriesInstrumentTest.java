package lanewarden.chronograph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Simulated and replayed instruments in series, by a time that stands still until it is set. */
class SeriesInstrumentTest {
  private static final String NEAR = "Plain decimal, simulated";
  private static final String FAR = "Gate timer, simulated";
  private static final Duration WINDOW = Duration.ofMillis(500);

  private final AtomicLong nanos = new AtomicLong(7);
  private final SimulatedInstrument near =
      new SimulatedInstrument(Profiles.plainDecimal(), Profiles.CLOCK);
  private final SimulatedInstrument far =
      new SimulatedInstrument(Profiles.gateTimer(), Profiles.CLOCK);
  private final SeriesInstrument series = series(near, far);
  private final Collected heard = new Collected();

  private SeriesInstrument series(Instrument first, Instrument second) {
    return new SeriesInstrument(
        first, second, SeriesPairingTest.AGREEMENT, WINDOW, Profiles.CLOCK, nanos::get);
  }

  @AfterEach
  void close() {
    series.close();
  }

  private static String words(Collected.Arrival arrival) {
    return ((Signal.LinkChanged) arrival.signal()).words();
  }

  @Test
  void aShotThatBothMeasuredIsTheFirstsConfirmedByTheSecond() throws InterruptedException {
    series.start(heard);
    far.shoot(Speed.parse("300.1 ft/s"));
    far.settle();
    near.shoot(Speed.parse("299.8 ft/s"));
    Reading reading = ((Signal.Heard) heard.awaitHeard(1).signal()).reading();
    assertEquals(
        new Reading(
            Speed.parse("299.8 ft/s"),
            RawBytes.ofText("299.8\r\n"),
            Source.SIMULATED,
            NEAR,
            Profiles.NOON,
            null,
            new Companion(Speed.parse("300.1 ft/s"), Profiles.good(1), FAR)),
        reading);
    assertEquals(NEAR + " and " + FAR, series.name());
    assertEquals(Source.SIMULATED, series.source());
  }

  @Test
  void aShotMeasuredTooDifferentlyIsRefusedWithBothSpeeds() throws InterruptedException {
    series.start(heard);
    near.shoot(Speed.parse("299.0 ft/s"));
    far.shoot(Speed.parse("300.1 ft/s"));
    Refusal refusal = ((Signal.Refused) heard.awaitRefused(1).signal()).refusal();
    assertEquals(Reason.DISAGREE, refusal.reason());
    assertTrue(refusal.words().contains("299.0 ft/s") && refusal.words().contains("300.1 ft/s"));
    assertEquals(List.of(), heard.speeds());
  }

  @Test
  void aShotThatOneMeasuredIsRefusedWhenTheWindowIsOver() throws InterruptedException {
    series.start(heard);
    far.shoot(Speed.parse("300.1 ft/s"));
    far.settle();
    nanos.addAndGet(WINDOW.toNanos() + 1);
    Refusal refusal = ((Signal.Refused) heard.awaitRefused(1).signal()).refusal();
    assertEquals(Reason.UNPAIRED, refusal.reason());
    assertEquals(Profiles.good(1), refusal.raw());
    assertTrue(refusal.words().contains(NEAR + " measured nothing within 500 ms"));
  }

  @Test
  void whatEitherRefusesIsPassedOn() throws InterruptedException {
    series.start(heard);
    near.emit(RawBytes.ofText("hello\r\n"));
    assertEquals(NEAR, ((Signal.Refused) heard.awaitRefused(1).signal()).refusal().instrument());
    far.emit(RawBytes.ofText("hello\r\n"));
    assertEquals(FAR, ((Signal.Refused) heard.awaitRefused(2).signal()).refusal().instrument());
  }

  @Test
  void theLinkIsUpOnlyWhileBothAreAndTheWordsSayWhichIsNot() throws InterruptedException {
    series.start(heard);
    assertTrue(words(heard.awaitLink(1, LinkState.UP)).contains("both connected"));
    far.unplug();
    String one = words(heard.awaitLink(1, LinkState.LOST));
    assertTrue(one.contains(FAR + " is lost") && !one.contains(NEAR), one);
    near.unplug();
    String both = words(heard.awaitLink(2, LinkState.LOST));
    assertTrue(both.contains(FAR + " is lost") && both.contains(NEAR + " is lost"), both);
    far.replug();
    String other = words(heard.awaitLink(3, LinkState.LOST));
    assertTrue(other.contains(NEAR + " is lost") && !other.contains(FAR), other);
    near.replug();
    heard.awaitLink(2, LinkState.UP);
    series.close();
    assertEquals(
        List.of(
            LinkState.UP,
            LinkState.LOST,
            LinkState.LOST,
            LinkState.LOST,
            LinkState.UP,
            LinkState.CLOSED),
        heard.links());
  }

  @Test
  void closingClosesBothAndRefusesWhatWaitsOrIsUnfinished() throws InterruptedException {
    series.start(heard);
    near.shoot(Speed.parse("299.8 ft/s"));
    near.settle();
    far.emit(RawBytes.ofText("$PLWT,0"));
    far.settle();
    series.close();
    assertEquals(
        List.of(Reason.TORN, Reason.UNPAIRED),
        Collected.reasons(heard.signals()).stream().sorted().toList());
    List<Signal> signals = heard.signals();
    assertEquals(LinkState.CLOSED, ((Signal.LinkChanged) signals.get(signals.size() - 1)).state());
    assertEquals(1, heard.links().stream().filter(LinkState.CLOSED::equals).count());
    assertThrows(IllegalStateException.class, () -> near.start(signal -> {}));
    assertThrows(IllegalStateException.class, () -> far.start(signal -> {}));
  }

  @Test
  void closingBeforeTheStartClosesBoth() {
    series.close();
    assertThrows(IllegalStateException.class, () -> near.start(signal -> {}));
    assertThrows(IllegalStateException.class, () -> far.start(signal -> {}));
    assertThrows(IllegalStateException.class, () -> series.start(heard));
  }

  @Test
  void mayBeClosedFromWithinTheSink() throws InterruptedException {
    series.start(
        signal -> {
          heard.accept(signal);
          series.close();
        });
    heard.awaitLink(1, LinkState.CLOSED);
    assertEquals(List.of(LinkState.UP, LinkState.CLOSED), heard.links());
  }

  @Test
  void everySignalComesOnOneThread() throws InterruptedException {
    series.start(heard);
    for (int shot = 1; shot <= 20; shot++) {
      near.shoot(Speed.parse("300.0 ft/s"));
      far.shoot(Speed.parse("300.0 ft/s"));
      heard.awaitHeard(shot);
    }
    assertEquals(
        1,
        heard.arrivals().stream()
            .map(Collected.Arrival::thread)
            .collect(Collectors.toSet())
            .size());
  }

  @Test
  void twoReplaysEndByThemselves() throws InterruptedException {
    Capture shot = Capture.of(List.of(new Capture.Chunk(500, RawBytes.ofText("300.1\r\n"))));
    try (SeriesInstrument replays =
        series(
            new ReplayInstrument(shot, Profiles.plainDecimal(), Profiles.CLOCK, 0),
            new ReplayInstrument(shot, Profiles.plainDecimal(), Profiles.CLOCK, 0))) {
      replays.start(heard);
      heard.awaitLink(1, LinkState.CLOSED);
    }
    assertEquals(List.of("300.1 ft/s"), heard.speeds());
    assertEquals(List.of(), heard.refusals());
  }

  @Test
  void aTypedReadingHasNoSecondAndIsPassedOn() throws InterruptedException {
    Signal typed =
        new TypedEntry(Profiles.plainDecimal().plausible(), Profiles.CLOCK)
            .read("300.1", SpeedUnit.FEET_PER_SECOND);
    try (SeriesInstrument typing = series(new Keyboard(typed), near)) {
      typing.start(heard);
      heard.awaitHeard(1);
    }
    assertTrue(heard.signals().contains(typed));
  }

  @Test
  void refusesAnInstrumentThatConfirmsItselfAndAWindowThatIsNone() {
    assertThrows(IllegalArgumentException.class, () -> series(near, near));
    for (Duration none : List.of(Duration.ZERO, Duration.ofMillis(-1))) {
      assertThrows(
          IllegalArgumentException.class,
          () ->
              new SeriesInstrument(
                  near, far, SeriesPairingTest.AGREEMENT, none, Profiles.CLOCK, nanos::get));
    }
  }

  @Test
  void isStartedOnceOnlyAndGoesOnListening() throws InterruptedException {
    series.start(heard);
    assertThrows(IllegalStateException.class, () -> series.start(signal -> {}));
    near.shoot(Speed.parse("300.0 ft/s"));
    far.shoot(Speed.parse("300.0 ft/s"));
    heard.awaitHeard(1);
  }

  /** Says one signal when it is started. */
  private record Keyboard(Signal signal) implements Instrument {
    @Override
    public String name() {
      return "Keyboard";
    }

    @Override
    public Source source() {
      return Source.TYPED;
    }

    @Override
    public void start(Consumer<Signal> sink) {
      sink.accept(signal);
    }

    @Override
    public void close() {}
  }
}
