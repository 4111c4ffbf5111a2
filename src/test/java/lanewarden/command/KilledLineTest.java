package lanewarden.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import lanewarden.chronograph.PseudoTerminal;
import lanewarden.journal.Check;
import lanewarden.journal.FactRefused;
import lanewarden.journal.Standing;
import lanewarden.journal.TakenShot;
import lanewarden.ledger.Verification;
import lanewarden.station.EventFolder;
import lanewarden.station.LineBytes;
import lanewarden.station.NewEvent;
import lanewarden.station.PracticeEvent;
import lanewarden.station.StationSettings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The line, killed in the middle of a check (SIGKILL where there are signals) twenty times: nothing
 * that it told is missing, and the check goes on where it stood.
 */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "Windows has no pseudo-terminals of this kind")
class KilledLineTest {
  private static final int ROUNDS = 20;
  private static final int COUNTED = 7;
  private static final String RULES =
      """
      format = 1
      [event]
      name = "Killed"
      edition = "1"
      [[division]]
      code = "OC"
      name = "Open compound"
      limit = "300 ft/s"
      tolerance = "3 %"
      decide = "mean"
      counted = 7
      shots = 9
      voids = 1
      rechecks = 1
      """;

  @TempDir Path here;
  private final Random random = new Random(20260502);
  private final List<JsonNode> readingsTold = new ArrayList<>();
  private final List<JsonNode> outcomesTold = new ArrayList<>();
  private int sent;
  private int bib;

  @Test
  void losesNothingItToldInTwentyKillsAndGoesOnWhereItStood() throws Exception {
    EventFolder event = event();
    Path passphrase =
        Files.writeString(here.resolve("passphrase"), PracticeEvent.PASSPHRASE + "\n");
    int killedInTheMiddle = 0;
    for (int round = 1; round <= ROUNDS; round++) {
      Optional<Check> before = standing(event).current();
      try (PseudoTerminal port = PseudoTerminal.open();
          LiveLine line = LiveLine.start(event, port.path(), passphrase)) {
        line.awaitReady();
        assertEquals(
            before.map(KilledLineTest::raws).orElse(List.of()),
            line.told("reading").stream().map(t -> t.get("raw").asText()).toList(),
            "round " + round + " comes back to the readings of the running check");
        shootAndKill(line, port, before);
        readingsTold.addAll(line.told("reading"));
        outcomesTold.addAll(line.told("outcome"));
      }
      Standing after = standing(event);
      killedInTheMiddle += after.current().filter(c -> c.outcome().isEmpty()).isPresent() ? 1 : 0;
      everythingToldIsThere(after, round);
    }
    assertTrue(killedInTheMiddle > ROUNDS / 2, killedInTheMiddle + " kills in the middle");
    assertTrue(!outcomesTold.isEmpty(), "some checks were decided over the kills");
  }

  /** Goes on with the check, or calls the next; kills around the moment of a reading. */
  private void shootAndKill(LiveLine line, PseudoTerminal port, Optional<Check> before)
      throws Exception {
    int taken = before.map(c -> c.shots().size()).orElse(0);
    if (before.isEmpty() || before.get().outcome().isPresent()) {
      bib++;
      taken = 0;
      int rules = line.told("rule").size();
      line.type(Integer.toString(bib));
      line.await(t -> LiveLine.kind(t).equals("rule"), rules + 1);
    }
    int told = line.told("reading").size();
    int more = 1 + random.nextInt(Math.max(1, COUNTED - taken));
    boolean killedBetweenReadings = random.nextInt(3) == 0;
    for (int i = 1; i <= more; i++) {
      sent++;
      port.write(Sentences.of(sent, (280 + sent % 20) + "." + sent % 10));
      if (i < more || killedBetweenReadings) {
        line.await(t -> LiveLine.kind(t).equals("reading"), told + i);
      }
    }
    // Somewhere between the bytes, the signature, the disk and the words
    Thread.sleep(random.nextInt(40));
    line.kill();
  }

  private void everythingToldIsThere(Standing standing, int round) {
    Set<String> taken = new HashSet<>();
    Set<String> decided = new HashSet<>();
    int all = 0;
    for (Check check : standing.checks()) {
      for (TakenShot shot : check.shots()) {
        all++;
        taken.add(shot.sequence() + " " + LineBytes.escaped(shot.reading().raw()));
      }
      check.outcome().ifPresent(outcome -> decided.add(check.number() + " " + outcome.word()));
    }
    for (JsonNode told : readingsTold) {
      String reading = told.get("entry").asLong() + " " + told.get("raw").asText();
      assertTrue(taken.contains(reading), "round " + round + " has " + reading);
    }
    for (JsonNode told : outcomesTold) {
      String outcome = told.get("check").asLong() + " " + told.get("outcome").asText();
      assertTrue(decided.contains(outcome), "round " + round + " has " + outcome);
    }
    assertTrue(all <= sent, "no reading was taken twice");
  }

  private static List<String> raws(Check check) {
    return check.shots().stream().map(s -> LineBytes.escaped(s.reading().raw())).toList();
  }

  private static Standing standing(EventFolder event) throws Exception {
    Standing standing = new Standing();
    Verification found =
        Verification.of(
            event.ledger(),
            List.of(),
            examined -> {
              try {
                standing.apply(examined.entry());
              } catch (FactRefused e) {
                throw new AssertionError(e);
              }
            });
    assertEquals(List.of(), found.faults());
    return standing;
  }

  private EventFolder event() throws Exception {
    StringBuilder roster = new StringBuilder("bib,name,division\n");
    for (int i = 1; i <= ROUNDS; i++) {
      roster.append(i).append(",Archer ").append(i).append(",OC\n");
    }
    return new NewEvent(
            source("rules.toml", RULES),
            source("roster.csv", roster.toString()),
            NewEvent.Source.of(Path.of("config/profiles/gate-timer.toml")),
            "Lane A",
            StationSettings.Kind.SERIAL,
            "/dev/none",
            person("Olga Root"),
            List.of(person(PracticeEvent.OFFICIAL)))
        .make(here.resolve("event"), Clock.systemUTC(), System::nanoTime, new SecureRandom());
  }

  private static NewEvent.Source source(String name, String text) {
    return new NewEvent.Source(name, text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
  }

  private static NewEvent.Person person(String name) {
    return new NewEvent.Person(name, PracticeEvent.PASSPHRASE.toCharArray());
  }
}
