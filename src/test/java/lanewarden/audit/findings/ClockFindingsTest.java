package lanewarden.audit.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.List;
import lanewarden.audit.Audited;
import lanewarden.audit.findings.Finding.Kind;
import lanewarden.ledger.Draft;
import lanewarden.ledger.Ledger;
import lanewarden.ledger.SigningKey;
import lanewarden.station.SetClock;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the audit says of a station's clock, from times and seconds alone. */
class ClockFindingsTest {
  @TempDir Path folder;
  private Path file;
  private final SigningKey organizer = SigningKey.generate(new SecureRandom());
  private final SetClock clock = new SetClock();

  @BeforeEach
  void make() throws Exception {
    file = folder.resolve("event.ledger");
    Ledger.create(file, "Range East", organizer, clock, clock::nanos).close();
  }

  /** Time passes by both clocks. */
  private void pass(long seconds) {
    clock.pass(Duration.ofSeconds(seconds));
  }

  /** The clock is set, forward or back. */
  private void set(double seconds) {
    clock.set(Duration.ofMillis((long) (seconds * 1000)));
  }

  private Ledger open() throws Exception {
    return Ledger.open(file, clock, clock::nanos);
  }

  private void say(Ledger ledger, String kind, String body) throws Exception {
    ledger.append(organizer, List.of(new Draft(kind, body.getBytes(StandardCharsets.UTF_8))));
  }

  private void signIn(Ledger ledger) throws Exception {
    say(ledger, "official-signed-in", "{\"name\":\"O\"}");
  }

  private void link(Ledger ledger) throws Exception {
    say(
        ledger,
        "link-changed",
        "{\"state\":\"up\",\"words\":\"w\",\"at\":\"2026-05-30T07:30:00Z\"}");
  }

  private Evidence evidence() throws Exception {
    return Audited.of(file).evidence();
  }

  private List<Finding> found() throws Exception {
    return evidence().findings().stream()
        .filter(f -> f.kind() == Kind.CLOCK || f.kind() == Kind.CLOCK_STEP)
        .toList();
  }

  private String sheet() throws Exception {
    return String.join(" ", evidence().clock().sentences());
  }

  @Test
  void twoHonestDaysGiveNoFindingAndSaySo() throws Exception {
    for (int day = 0; day < 2; day++) {
      pass(3600);
      try (Ledger ledger = open()) {
        for (int hour = 0; hour < 6; hour++) {
          // Longer after the opening than the last day's last entry was
          pass(3600 + 600 * day);
          signIn(ledger);
          link(ledger);
          set(0.3);
        }
      }
    }
    assertEquals(List.of(), found());
    String sheet = sheet();
    assertTrue(sheet.contains("open for writing 3 times"), sheet);
    assertTrue(sheet.contains("never jumped apart by more than 2 s"), sheet);
    assertTrue(sheet.contains("drifted apart by at most 1.5 s"), sheet);
    assertTrue(sheet.contains("No opening began earlier"), sheet);
  }

  @Test
  void aStepThatNoEntryTellsOfIsFoundEitherWay() throws Exception {
    for (double by : new double[] {-2.5, 2.5}) {
      pass(60);
      try (Ledger ledger = open()) {
        signIn(ledger);
        pass(60);
        set(by);
        link(ledger);
      }
    }
    List<Finding> found = found();
    assertEquals(
        List.of(Kind.CLOCK_STEP, Kind.CLOCK_STEP), found.stream().map(Finding::kind).toList());
    assertEquals(List.of(3L), found.get(0).entries());
    assertTrue(found.get(0).words().contains("jumped back by 2.5 s"), found.get(0).words());
    assertTrue(found.get(1).words().contains("jumped forward by 2.5 s"), found.get(1).words());
    assertTrue(found.get(1).words().contains("no entry tells of it"), found.get(1).words());
    assertTrue(sheet().contains("The largest step: at entry 3"), sheet());
  }

  @Test
  void aStepThatTheStationSignedIsFoundOnce() throws Exception {
    try (Ledger ledger = open()) {
      signIn(ledger);
      pass(60);
      set(-3600);
      say(ledger, "clock-stepped", "{\"by\":\"-3600.000\",\"expected\":\"2026-05-30T07:31:00Z\"}");
      pass(7200);
      link(ledger);
    }
    List<Finding> steps = found().stream().filter(f -> f.kind() == Kind.CLOCK_STEP).toList();
    assertEquals(1, steps.size());
    assertTrue(
        steps
            .get(0)
            .words()
            .startsWith("The station noticed that its clock jumped back by 3,600.0"),
        steps.get(0).words());
    assertTrue(sheet().contains("jumped back by 3,600.0 s"), sheet());
  }

  @Test
  void aClockSetBackWhileTheLedgerWasClosedIsFound() throws Exception {
    try (Ledger ledger = open()) {
      pass(7200);
      signIn(ledger);
    }
    set(-3600);
    try (Ledger ledger = open()) {
      pass(60);
      signIn(ledger);
    }
    List<Finding> found = found();
    assertEquals(List.of(Kind.CLOCK), found.stream().map(Finding::kind).toList());
    assertTrue(sheet().contains("opened with entry 3 began earlier"), sheet());
  }

  @Test
  void twoProgramsLessThanTwoSecondsApartAreTwoOpeningsAndNoDrift() throws Exception {
    pass(60);
    try (Ledger ledger = open()) {
      clock.pass(Duration.ofMillis(300));
      signIn(ledger);
    }
    clock.pass(Duration.ofMillis(1200));
    try (Ledger ledger = open()) {
      // More seconds after its opening than the first had, so the seconds do not fall back
      clock.pass(Duration.ofMillis(470));
      signIn(ledger);
    }
    assertEquals(List.of(), found());
    assertTrue(sheet().contains("open for writing 3 times"), sheet());
    assertTrue(sheet().contains("drifted apart by at most 0.0 s"), sheet());
  }
}
