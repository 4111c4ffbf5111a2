package lanewarden.station;

import static lanewarden.station.PracticeLine.codeOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import lanewarden.audit.AuditSummary;
import lanewarden.audit.Export;
import lanewarden.chronograph.PseudoTerminal;
import lanewarden.chronograph.SeriesInstrument;
import lanewarden.chronograph.SimulatedInstrument;
import lanewarden.journal.Fact;
import lanewarden.journal.Place;
import lanewarden.journal.SecondReading;
import lanewarden.quantity.Length;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A line through which every arrow passes two instruments, and what its readings are worth. */
class SeriesLineTest {
  private static final String TABLES =
      """
      [place]
      distance = "3 m"
      [accuracy]
      stated = "0.5 %%"
      stated_covers = "k = 2"
      [second]
      profile = "plain-decimal.toml"
      instrument = "%s"
      %s
      agree = "1 ft/s"
      within_ms = 2000
      """;

  @TempDir static Path scratch;
  private static EventFolder made;

  @TempDir Path here;
  private EventFolder event;

  @BeforeAll
  static void makeEvent() throws Exception {
    made = PracticeEvent.make(scratch.resolve("made"));
  }

  @BeforeEach
  void copyEvent() throws Exception {
    event = PracticeEvent.copy(made, here.resolve("event"));
    Files.copy(
        Path.of("config/profiles/plain-decimal.toml"), event.path().resolve("plain-decimal.toml"));
    settings("simulator", "", "simulator", "");
  }

  private void settings(String kind, String port, String secondKind, String secondPort)
      throws Exception {
    Files.writeString(
        event.path().resolve(EventFolder.SETTINGS),
        new StationSettings("Lane A", "gate-timer.toml", kindOf(kind), port).toToml()
            + TABLES.formatted(
                secondKind, secondPort.isEmpty() ? "" : "port = \"" + secondPort + "\""));
  }

  private static StationSettings.Kind kindOf(String word) {
    return word.equals("serial") ? StationSettings.Kind.SERIAL : StationSettings.Kind.SIMULATOR;
  }

  private static void signIn(Station station) throws StationException {
    station.signIn(PracticeEvent.OFFICIAL, PracticeEvent.PASSPHRASE.toCharArray());
  }

  private static LineView await(Station station, Predicate<LineView> until) throws Exception {
    CountDownLatch reached = new CountDownLatch(1);
    station.listen(
        view -> {
          if (until.test(view)) {
            reached.countDown();
          }
        });
    assertTrue(reached.await(20, TimeUnit.SECONDS), () -> String.valueOf(station.view()));
    return station.view();
  }

  private static int shots(LineView view) {
    return view.check().orElseThrow().check().shots().size();
  }

  @Test
  void whoRehearsesShootsThroughBoth() throws Exception {
    try (CheckInLine line = CheckInLine.open(event, Optional.empty(), 0, PracticeEvent.here())) {
      signIn(line.station());
      line.station().call("1");
      line.awaitArrows(Duration.ofSeconds(1));
      CheckView view = line.station().view().check().orElseThrow();
      assertTrue(view.outcome().isPresent(), view.words());
      view.check()
          .shots()
          .forEach(
              s -> {
                SecondReading second = s.reading().second();
                assertEquals("Plain decimal, simulated", second.instrument());
                assertEquals(s.reading().speed(), second.speed());
                assertEquals(
                    s.reading().speed().value() + "\r\n",
                    new String(
                        Base64.getDecoder().decode(second.raw()), StandardCharsets.US_ASCII));
              });
    }
    assertEveryReadingFollowsFromItsBytes();
  }

  @Test
  void onlyAShotOnWhichBothAgreeCountsAndTheOfficialIsToldOfTheOthers() throws Exception {
    SimulatedInstrument near = new SimulatedInstrument(event.profile(), Clock.systemUTC());
    StationPapers papers = event.papers();
    SimulatedInstrument far =
        new SimulatedInstrument(papers.second().orElseThrow(), Clock.systemUTC());
    SecondInstrument second = papers.settings().second().orElseThrow();
    SeriesInstrument both =
        new SeriesInstrument(
            near, far, second.agreement(), second.within(), Clock.systemUTC(), System::nanoTime);
    try (Station station =
        Station.open(event, both, "Lanewarden under test", Clock.systemUTC(), System::nanoTime)) {
      await(station, view -> view.link() == LineView.Link.UP);
      signIn(station);
      station.call("1");
      near.shoot(Speed.parse("301.2 ft/s"));
      far.shoot(Speed.parse("301.0 ft/s"));
      await(station, view -> shots(view) == 1);
      near.shoot(Speed.parse("301.2 ft/s"));
      far.shoot(Speed.parse("303.0 ft/s"));
      LineView apart = await(station, view -> view.refused().isPresent());
      assertEquals("instruments disagree", apart.refused().orElseThrow().reason());
      assertTrue(
          apart
              .refused()
              .orElseThrow()
              .words()
              .contains("301.2 ft/s and 303.0 ft/s are 1.80 ft/s apart, more than the 1 ft/s"),
          apart.refused().orElseThrow().words());
      near.shoot(Speed.parse("300.0 ft/s"));
      LineView alone = await(station, view -> !view.refused().equals(apart.refused()));
      assertTrue(
          alone
              .refused()
              .orElseThrow()
              .words()
              .contains("Plain decimal, simulated measured nothing within 2000 ms"),
          alone.refused().orElseThrow().words());
      assertEquals(1, shots(alone));
      far.unplug();
      LineView lost = await(station, view -> view.link() == LineView.Link.LOST);
      assertTrue(lost.linkWords().contains("Plain decimal, simulated is lost"), lost.linkWords());
    }
  }

  private void assertEveryReadingFollowsFromItsBytes() throws Exception {
    AuditSummary audit =
        new Export(SignedPapers::of).whole(event.ledger(), here.resolve("tables"), progress -> {});
    assertEquals(List.of(), audit.contradictions());
  }

  private void planAgainstTheSecond() throws Exception {
    Files.writeString(
        event.path().resolve(EventFolder.SETTINGS),
        "[verification]\nshots = 2\nmost_bias = \"0.5 ft/s\"\nmost_spread = \"1 ft/s\"\n"
            + "reference = \"second instrument\"\n",
        StandardOpenOption.APPEND);
  }

  /** How many shots it has, and of how many the reference is known. */
  private static boolean taken(LineView view, int shots) {
    return view.verification().last().filter(round -> round.taken().size() == shots).isPresent();
  }

  @Test
  void whileTheInstrumentIsVerifiedAgainstTheSecondAGrossBiasHoldsTheLine() throws Exception {
    planAgainstTheSecond();
    SimulatedInstrument near = new SimulatedInstrument(event.profile(), Clock.systemUTC());
    StationPapers papers = event.papers();
    SimulatedInstrument far =
        new SimulatedInstrument(papers.second().orElseThrow(), Clock.systemUTC());
    SecondInstrument second = papers.settings().second().orElseThrow();
    SeriesInstrument both =
        new SeriesInstrument(
            near, far, second.agreement(), second.within(), Clock.systemUTC(), System::nanoTime);
    try (Station station =
        Station.open(event, both, "Lanewarden under test", Clock.systemUTC(), System::nanoTime)) {
      await(station, view -> view.link() == LineView.Link.UP);
      signIn(station);
      station.proving().begin();
      // 20 ft/s apart, where checks allow 1 ft/s
      near.shoot(Speed.parse("311.0 ft/s"));
      far.shoot(Speed.parse("291.0 ft/s"));
      LineView one = await(station, view -> taken(view, 1));
      VerificationView.Shot shot = one.verification().last().orElseThrow().taken().get(0);
      assertEquals("311.0 ft/s", shot.speed().toString());
      assertEquals("20 ft/s", shot.biasInWords().orElseThrow());
      assertEquals(Optional.empty(), one.refused());
      near.shoot(Speed.parse("300.0 ft/s"));
      LineView alone = await(station, view -> view.refused().isPresent());
      assertEquals("heard by one instrument only", alone.refused().orElseThrow().reason());
      near.shoot(Speed.parse("310.8 ft/s"));
      far.shoot(Speed.parse("290.9 ft/s"));
      LineView held = await(station, view -> view.verification().held().isPresent());
      assertEquals(VerificationView.State.OUT, held.verification().last().orElseThrow().state());
      assertTrue(
          held.verification().held().orElseThrow().reason().contains("bias +19.950 ft/s (more"),
          held.verification().held().orElseThrow().reason());
      assertEquals("STATION-HELD", codeOf(() -> station.call("1")));
      near.shoot(Speed.parse("310.8 ft/s"));
      far.shoot(Speed.parse("290.9 ft/s"));
      LineView after = await(station, view -> view.refused().isPresent());
      assertEquals(
          "instruments disagree",
          after.refused().orElseThrow().reason(),
          "once it is over, the two must agree again");
    }
    assertEveryReadingFollowsFromItsBytes();
  }

  @Test
  void whatAReadingIsWorthIsSignedWithIt() throws Exception {
    try (PracticeLine line = PracticeLine.open(event).onDuty()) {
      line.station.call("1");
      line.shoot("300.0 ft/s");
      line.station.type("301");
      List<Fact.ReadingTaken> taken = line.facts(Fact.ReadingTaken.class);
      // 0.5 % of 300 ft/s are 1.5 ft/s, stated with k = 2
      assertEquals("0.7500 ft/s", String.valueOf(taken.get(0).uncertainty()));
      assertNull(taken.get(1).uncertainty(), "nobody knows off which instrument it was typed");
      Fact.StationOpened opened = line.facts(Fact.StationOpened.class).get(0);
      assertEquals(Files.readString(event.path().resolve("station.toml")), opened.settings());
      assertEquals(event.papers().second().orElseThrow().text(), opened.secondProfile());
      assertEquals("3 m", opened.place().distance().toString());
      assertEquals(
          List.of(
              "stated accuracy: 0.7500 ft/s; accuracy ± 0.5 % (k = 2)",
              "combined: standard uncertainty 0.7500 ft/s at 300 ft/s; expanded 1.4700 ft/s at 95 %"
                  + " (k = 1.96, infinite degrees of freedom)"),
          opened.budget());
    }
  }

  @Test
  void theSpeedAtTheBowIsToldWhereDistanceAndArrowAreKnown() throws Exception {
    try (PracticeLine line = PracticeLine.open(event).onDuty()) {
      line.station.call("1");
      Speed reading = Speed.parse("300.0 ft/s");
      assertEquals(Optional.empty(), line.station.view().check().orElseThrow().atBow(reading));
      line.station.officiating().state(new SetUpText("350", "", ""));
      // k = 1.2 * 1.8 * pi * 0.007² / (8 * 0.02268) = 1.8326e-3 /m (own hand calculation);
      // exp(3 k) = 1.005513
      assertEquals(
          "301.7 ft/s",
          line.station.view().check().orElseThrow().atBow(reading).orElseThrow().toString());
    }
  }

  @Test
  void aPlaceThatNoArrowFliesFromLeavesTheSpeedAtTheBowUntold() throws Exception {
    try (PracticeLine line = PracticeLine.open(event).onDuty()) {
      line.station.call("1");
      Speed reading = Speed.parse("300.0 ft/s");
      Place misprinted =
          new Place(
              Length.parse("3 m"),
              Length.parse("7 m"),
              new BigDecimal("1.8"),
              new BigDecimal("1.2"));
      Optional<Place> there = Optional.of(misprinted);
      assertFalse(
          line.station.view().check().orElseThrow().seenFrom(there).hasNoSpeedAtBow(reading),
          "the arrow is not known yet");
      line.station.officiating().state(new SetUpText("350", "", ""));
      CheckView check = line.station.view().check().orElseThrow();
      assertFalse(check.hasNoSpeedAtBow(reading));
      assertEquals(Optional.empty(), check.seenFrom(there).atBow(reading));
      assertTrue(check.seenFrom(there).hasNoSpeedAtBow(reading));
    }
  }

  @Test
  void settingsThatCannotWorkAreSaidWhenTheLineIsOpened() throws Exception {
    assertEquals(
        "SECOND-INSTRUMENT",
        codeOf(() -> CheckInLine.open(event, Optional.of("/dev/none"), 0, PracticeEvent.here())));
    settings("serial", "/dev/none", "serial", "/dev/other");
    assertEquals(
        "SECOND-INSTRUMENT",
        codeOf(() -> CheckInLine.open(event, Optional.of("/dev/other"), 0, PracticeEvent.here())));
    Files.delete(event.path().resolve("plain-decimal.toml"));
    assertEquals(
        "FILE-MISSING",
        codeOf(() -> CheckInLine.open(event, Optional.empty(), 0, PracticeEvent.here())));
  }

  @Test
  @DisabledOnOs(value = OS.WINDOWS, disabledReason = "Windows has no pseudo-terminals of this kind")
  void whoListensToAnEventHearsBothPorts() throws Exception {
    try (PseudoTerminal near = PseudoTerminal.open();
        PseudoTerminal far = PseudoTerminal.open()) {
      settings("serial", near.path().toString(), "serial", far.path().toString());
      CountDownLatch up = new CountDownLatch(1);
      CountDownLatch reading = new CountDownLatch(1);
      StringBuffer words = new StringBuffer();
      List<String> others = new CopyOnWriteArrayList<>();
      try (Listening listening = Listening.toEvent(event, PracticeEvent.here())) {
        listening.start(
            heard -> {
              if (heard.kind() == Overheard.Kind.LINK_UP) {
                up.countDown();
              } else if (heard.kind() == Overheard.Kind.READING) {
                words.append(heard.words());
                reading.countDown();
              } else {
                others.add(heard.words());
              }
            });
        assertTrue(up.await(10, TimeUnit.SECONDS), "both links come up");
        // Bytes that come before both lines were seen silent are no whole line
        TimeUnit.SECONDS.sleep(2);
        near.write("$PLWT,00354,0268.8,F,007440,A*1B\r\n");
        far.write("268.9\r\n");
        assertTrue(reading.await(10, TimeUnit.SECONDS), () -> "a shot is confirmed, not " + others);
        assertEquals(
            "number 00354; Plain decimal on " + far.path() + ": 268.9\\r\\n  268.9 ft/s",
            words.toString());
      }
    }
  }

  @Test
  void aSimulatedEventHasNothingToListenTo() {
    assertEquals("SIMULATED", codeOf(() -> Listening.toEvent(event, PracticeEvent.here())));
  }
}
