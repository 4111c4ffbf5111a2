package lanewarden.chronograph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A whole event's worth of shots over a real port, with every damage that the format lists. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class WireAbuseTest {
  private static final int SHOTS = 1_000;

  @TempDir Path folder;

  /** One way a line goes wrong: what is sent instead of it, and what it must be refused as. */
  private record Damage(Reason reason, String sent) {}

  private static String good(int shot) {
    Speed speed = Speed.of(BigDecimal.valueOf(2_000 + shot, 1), SpeedUnit.FEET_PER_SECOND);
    return Profiles.gateTimer().simulated().orElseThrow().write(speed, shot) + "\r\n";
  }

  private static String wrong(String fields) {
    return Profiles.sentence(fields).characters();
  }

  private static List<Damage> damages(int shot) {
    String line = good(shot);
    String number = "PLWT,%05d,".formatted(shot);
    return List.of(
        new Damage(Reason.TORN, line.substring(0, 13)),
        new Damage(Reason.TORN, line.substring(0, line.length() - 2)),
        new Damage(Reason.OVERLONG, line.replace(",F,", ",F," + "7".repeat(90))),
        new Damage(Reason.CHECKSUM, line.replace(",F,0", ",F,1")),
        new Damage(Reason.PATTERN, line.replace(",F,", ",F")),
        new Damage(Reason.PATTERN, line.replace(",F,", ",FF,")),
        new Damage(Reason.PATTERN, line.replace("$", "$\u007F")),
        new Damage(Reason.PATTERN, good(shot).strip() + line),
        new Damage(Reason.REPEATED, good(shot - 1)),
        new Damage(Reason.NOT_A_NUMBER, wrong(number + "9.91E37,F,000000,A")),
        new Damage(Reason.OUT_OF_RANGE, wrong(number + "0030.0,F,066667,A")),
        new Damage(Reason.STATUS, wrong(number + "0300.1,F,006664,W")),
        new Damage(Reason.UNIT, wrong(number + "0300.1,K,006664,A")),
        new Damage(Reason.GATES, wrong(number + "0300.1,F,006764,A")));
  }

  @Test
  void ofAThousandShotsExactlyTheNineHundredGoodAreHeardAndEachOtherHasItsReason()
      throws IOException, InterruptedException {
    List<String> good = new ArrayList<>();
    List<Reason> reasons = new ArrayList<>();
    Collected heard = new Collected();
    try (PseudoTerminal terminal = PseudoTerminal.open();
        SerialInstrument instrument =
            new SerialInstrument(
                terminal.path().toString(),
                Profiles.gateTimer(),
                Clock.systemUTC(),
                System::nanoTime)) {
      instrument.start(heard);
      heard.awaitLink(1, LinkState.UP);
      for (int shot = 1; shot <= SHOTS; shot++) {
        if (shot % 10 != 0) {
          terminal.write(good(shot));
          good.add(good(shot));
          continue;
        }
        List<Damage> damages = damages(shot);
        Damage damage = damages.get(shot / 10 % damages.size());
        terminal.write(damage.sent());
        reasons.add(damage.reason());
        if (damage.reason() == Reason.TORN) {
          // Half a line, then silence
          heard.awaitRefused(reasons.size());
        }
      }
      heard.awaitRefused(100);
      heard.awaitHeard(900);
    }
    assertEquals(good, raws(heard));
    assertEquals(reasons, Collected.reasons(heard.signals()));
    Set<Reason> tried = EnumSet.copyOf(reasons);
    assertEquals(10, tried.size(), "every way: " + tried);
    assertTrue(heard.refusals().stream().noneMatch(refusal -> refusal.words().isBlank()));
  }

  private static List<String> raws(Collected heard) {
    return heard.signals().stream()
        .filter(Signal.Heard.class::isInstance)
        .map(signal -> ((Signal.Heard) signal).reading().raw().characters())
        .toList();
  }

  @Test
  void pullingAndReplugging50TimesLosesNoShotReceivedWhole()
      throws IOException, InterruptedException {
    Path port = folder.resolve("port");
    List<String> good = new ArrayList<>();
    Collected heard = new Collected();
    PseudoTerminal terminal = PseudoTerminal.linkedAs(port);
    try (SerialInstrument instrument =
        new SerialInstrument(
            port.toString(), Profiles.gateTimer(), Clock.systemUTC(), System::nanoTime)) {
      instrument.start(heard);
      for (int round = 1; round <= 50; round++) {
        heard.awaitLink(round, LinkState.UP);
        for (int shot = 3 * round; shot < 3 * round + 3; shot++) {
          terminal.write(good(shot));
          good.add(good(shot));
        }
        // Half of the next shot goes out with this plug, the other half with the next
        terminal.write(good(900).substring(0, 12));
        heard.awaitHeard(good.size());
        terminal.close();
        heard.awaitLink(round, LinkState.LOST);
        terminal = PseudoTerminal.linkedAs(port);
        terminal.write(good(900).substring(12));
      }
    } finally {
      terminal.close();
    }
    assertEquals(good, raws(heard));
    assertTrue(Collected.reasons(heard.signals()).stream().allMatch(Reason.TORN::equals));
  }
}
