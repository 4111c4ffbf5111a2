package lanewarden.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.audit.Audited;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.chronograph.RawBytes;
import lanewarden.chronograph.SimulatedInstrument;
import lanewarden.journal.Check;
import lanewarden.journal.Fact;
import lanewarden.journal.FactJson;
import lanewarden.journal.FactRefused;
import lanewarden.journal.Outcome;
import lanewarden.ledger.Examined;
import lanewarden.ledger.Verification;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.function.Executable;

/** A station on a practice event, with its simulator in the test's hands. */
final class PracticeLine implements AutoCloseable {
  final EventFolder folder;
  final SimulatedInstrument simulator;
  final Station station;
  private boolean closed;

  private PracticeLine(EventFolder folder, SimulatedInstrument simulator, Station station) {
    this.folder = folder;
    this.simulator = simulator;
    this.station = station;
  }

  static PracticeLine open(EventFolder folder) throws Exception {
    SimulatedInstrument simulator = new SimulatedInstrument(folder.profile(), Clock.systemUTC());
    Station station =
        Station.open(
            folder, simulator, "Lanewarden under test", Clock.systemUTC(), System::nanoTime);
    simulator.settle();
    return new PracticeLine(folder, simulator, station);
  }

  PracticeLine onDuty() throws StationException {
    station.signIn(PracticeEvent.OFFICIAL, PracticeEvent.PASSPHRASE.toCharArray());
    return this;
  }

  /** Shoots an arrow of each speed, and waits until the station has taken them. */
  void shoot(String... speeds) throws InterruptedException {
    for (String speed : speeds) {
      simulator.shoot(Speed.parse(speed));
    }
    simulator.settle();
  }

  void emit(String escaped) throws InterruptedException {
    // A wire that was quiet before proves that the line begins with its first byte
    simulator.pause(Duration.ofSeconds(2));
    simulator.emit(RawBytes.parse(escaped));
    simulator.settle();
  }

  Check check() {
    return station.view().check().orElseThrow().check();
  }

  Optional<Outcome> outcome() {
    return station.view().check().flatMap(CheckView::outcome);
  }

  /** What the ledger says, verified and in order. */
  List<Fact> facts() throws Exception {
    List<Fact> facts = new ArrayList<>();
    Verification found =
        Verification.of(
            folder.ledger(), List.of(), examined -> read(examined).ifPresent(facts::add));
    assertEquals(List.of(), found.faults());
    return facts;
  }

  /** What an entry says, by its number. */
  Fact factOf(long sequence) throws Exception {
    List<Fact> facts = new ArrayList<>();
    Verification unused =
        Verification.of(
            folder.ledger(),
            List.of(),
            examined -> {
              if (examined.entry().sequence() == sequence) {
                read(examined).ifPresent(facts::add);
              }
            });
    return facts.get(0);
  }

  <F extends Fact> List<F> facts(Class<F> type) throws Exception {
    return facts().stream().filter(type::isInstance).map(type::cast).toList();
  }

  private static Optional<Fact> read(Examined examined) {
    try {
      return FactJson.read(examined.entry());
    } catch (FactRefused e) {
      throw new AssertionError(e);
    }
  }

  /** The code of the trouble that a step runs into. */
  static String codeOf(Executable step) {
    return assertThrows(StationException.class, step).trouble().code();
  }

  /**
   * Closes it; an honest station refuses no line for another reason than it has. Closed again it
   * does nothing: what a test did to the ledger since is its own affair.
   */
  @Override
  public void close() throws Exception {
    if (closed) {
      return;
    }
    closed = true;
    station.close();
    assertEquals(List.of(), Audited.of(folder.ledger()).words(Kind.REFUSED));
  }
}
