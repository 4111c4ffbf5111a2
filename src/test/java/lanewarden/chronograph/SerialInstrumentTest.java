package lanewarden.chronograph;

import static lanewarden.chronograph.Profiles.good;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The real way: a pseudo-terminal of the system, the serial library, a port opened by its path. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class SerialInstrumentTest {
  private static final long SECOND = 1_000_000_000L;

  @TempDir Path folder;

  private SerialInstrument on(Path port, SentenceProfile profile) {
    return new SerialInstrument(port.toString(), profile, Clock.systemUTC(), System::nanoTime);
  }

  private static String text(RawBytes bytes) {
    return new String(bytes.bytes(), StandardCharsets.US_ASCII);
  }

  @Test
  void bytesWrittenAtOneEndBecomeReadingsAtTheOther() throws IOException, InterruptedException {
    Collected heard = new Collected();
    try (PseudoTerminal terminal = PseudoTerminal.open();
        SerialInstrument instrument = on(terminal.path(), Profiles.gateTimer())) {
      instrument.start(heard);
      heard.awaitLink(1, LinkState.UP);
      terminal.write(text(good(1)) + text(good(2)).substring(0, 9));
      heard.awaitHeard(1);
      terminal.write(text(good(2)).substring(9) + "noise\r\n");
      heard.awaitRefused(1);
      assertEquals(List.of("300.1 ft/s", "300.1 ft/s"), heard.speeds());
      Reading reading = ((Signal.Heard) heard.awaitHeard(2).signal()).reading();
      assertEquals(Source.SERIAL, reading.source());
      assertEquals(good(2), reading.raw());
      assertEquals("Gate timer on " + terminal.path(), reading.instrument());
    }
    assertEquals(LinkState.CLOSED, heard.links().get(1));
    assertEquals(
        1,
        heard.arrivals().stream()
            .map(Collected.Arrival::thread)
            .collect(Collectors.toSet())
            .size());
  }

  @Test
  void everyByteValuePassesThePortUnchanged() throws IOException, InterruptedException {
    byte[] all = new byte[258];
    for (int i = 0; i < 256; i++) {
      all[i] = (byte) (i == '\r' ? 'r' : i);
    }
    all[256] = '\r';
    all[257] = '\n';
    SentenceProfile wide =
        Profiles.of(Profiles.text("gate-timer").replace("longest = 80", "longest = 300"));
    Collected heard = new Collected();
    try (PseudoTerminal terminal = PseudoTerminal.open();
        SerialInstrument instrument = on(terminal.path(), wide)) {
      instrument.start(heard);
      heard.awaitLink(1, LinkState.UP);
      terminal.write(all);
      Refusal refusal = ((Signal.Refused) heard.awaitRefused(1).signal()).refusal();
      assertEquals(RawBytes.of(all), refusal.raw());
    }
  }

  @Test
  void aLineAfterSeenQuietCountsWithoutAnyProofOfItsOwn() throws IOException, InterruptedException {
    Collected heard = new Collected();
    try (PseudoTerminal terminal = PseudoTerminal.open();
        SerialInstrument instrument = on(terminal.path(), Profiles.plainDecimal())) {
      instrument.start(heard);
      heard.awaitLink(1, LinkState.UP);
      Thread.sleep(800);
      terminal.write("300.1\r\n");
      assertTrue(heard.awaitHeard(1).signal() instanceof Signal.Heard);
    }
  }

  @Test
  void halfALineIsRefusedAfterSilenceWhileThePortIsOpen() throws IOException, InterruptedException {
    Collected heard = new Collected();
    try (PseudoTerminal terminal = PseudoTerminal.open();
        SerialInstrument instrument = on(terminal.path(), Profiles.gateTimer())) {
      instrument.start(heard);
      heard.awaitLink(1, LinkState.UP);
      terminal.write("$PLWT,0");
      Refusal refusal = ((Signal.Refused) heard.awaitRefused(1).signal()).refusal();
      assertEquals(Reason.TORN, refusal.reason());
      assertEquals("$PLWT,0", refusal.raw().escaped());
    }
  }

  @Test
  void unpluggingShowsAtOnceAndNothingReceivedWholeIsLost()
      throws IOException, InterruptedException {
    Path port = folder.resolve("port");
    Collected heard = new Collected();
    PseudoTerminal terminal = PseudoTerminal.linkedAs(port);
    try (SerialInstrument instrument = on(port, Profiles.gateTimer())) {
      instrument.start(heard);
      heard.awaitLink(1, LinkState.UP);
      terminal.write(text(good(1)) + text(good(2)) + "$PLWT,00003,03");
      heard.awaitHeard(2);
      long pulled = System.nanoTime();
      terminal.close();
      Collected.Arrival lost = heard.awaitLink(1, LinkState.LOST);
      assertTrue(lost.nanos() - pulled < SECOND / 2, (lost.nanos() - pulled) / 1_000_000 + " ms");
      assertEquals(List.of(Reason.TORN), Collected.reasons(heard.signals()));
      assertEquals("$PLWT,00003,03", heard.refusals().get(0).raw().escaped());
      Thread.sleep(1_000);
      assertEquals(List.of(LinkState.UP, LinkState.LOST), heard.links(), "told once");
    }
  }

  @Test
  void theLinkComesBackByItselfWithinTwoSecondsOfReplugging()
      throws IOException, InterruptedException {
    Path port = folder.resolve("port");
    Collected heard = new Collected();
    PseudoTerminal first = PseudoTerminal.linkedAs(port);
    try (SerialInstrument instrument = on(port, Profiles.gateTimer())) {
      instrument.start(heard);
      heard.awaitLink(1, LinkState.UP);
      for (int round = 1; round <= 3; round++) {
        first.write("$PLWT,00003,03");
        Thread.sleep(50);
        first.close();
        heard.awaitLink(round, LinkState.LOST);
        Thread.sleep(400);
        long replugged = System.nanoTime();
        first = PseudoTerminal.linkedAs(port);
        Collected.Arrival up = heard.awaitLink(round + 1, LinkState.UP);
        assertTrue(up.nanos() - replugged < 2 * SECOND, (up.nanos() - replugged) / 1e6 + " ms");
        // The rest of the line that was cut must not make a line with what went before
        first.write("00.1,F,006664,A*1D\r\n" + text(good(round)));
        heard.awaitHeard(round);
      }
      first.close();
    }
    assertEquals(3, heard.speeds().size());
    assertTrue(Collected.reasons(heard.signals()).stream().allMatch(Reason.TORN::equals));
    assertEquals(6, heard.refusals().size(), "head and tail of three lines");
  }

  @Test
  void aPortThatIsMissingAtTheStartIsToldOnceAndFoundWhenItComes()
      throws IOException, InterruptedException {
    Path port = folder.resolve("port");
    Collected heard = new Collected();
    try (SerialInstrument instrument = on(port, Profiles.gateTimer())) {
      instrument.start(heard);
      Signal.LinkChanged missing = (Signal.LinkChanged) heard.awaitLink(1, LinkState.LOST).signal();
      assertTrue(missing.words().startsWith("There is no port " + port), missing.words());
      Thread.sleep(700);
      try (PseudoTerminal terminal = PseudoTerminal.linkedAs(port)) {
        heard.awaitLink(1, LinkState.UP);
        terminal.write(text(good(1)));
        heard.awaitHeard(1);
      }
    }
    assertEquals(LinkState.LOST, heard.links().get(0));
    assertEquals(LinkState.UP, heard.links().get(1));
  }

  @Test
  void aPortInUseIsToldAsBusyAndTakenWhenItGetsFree() throws IOException, InterruptedException {
    Collected first = new Collected();
    Collected second = new Collected();
    try (PseudoTerminal terminal = PseudoTerminal.open();
        SerialInstrument waiting = on(terminal.path(), Profiles.gateTimer())) {
      SerialInstrument holder = on(terminal.path(), Profiles.gateTimer());
      holder.start(first);
      first.awaitLink(1, LinkState.UP);
      waiting.start(second);
      Signal.LinkChanged busy = (Signal.LinkChanged) second.awaitLink(1, LinkState.LOST).signal();
      assertTrue(busy.words().contains("in use by another program"), busy.words());
      holder.close();
      second.awaitLink(1, LinkState.UP);
    }
  }

  @Test
  void aPortThisUserMayNotOpenIsToldAsSuch() throws IOException, InterruptedException {
    Collected heard = new Collected();
    try (PseudoTerminal terminal = PseudoTerminal.open();
        SerialInstrument instrument = on(terminal.path(), Profiles.gateTimer())) {
      Files.setPosixFilePermissions(terminal.path(), Set.of());
      assumeFalse(Files.isReadable(terminal.path()), "this user may open everything");
      instrument.start(heard);
      Signal.LinkChanged lost = (Signal.LinkChanged) heard.awaitLink(1, LinkState.LOST).signal();
      assertTrue(lost.words().startsWith("This user may not open the port"), lost.words());
    }
  }

  @Test
  void aFileThatIsNoSerialPortIsToldApartFromAMissingOne()
      throws IOException, InterruptedException {
    Path file = Files.writeString(folder.resolve("file"), "300.1\n");
    Collected heard = new Collected();
    try (SerialInstrument instrument = on(file, Profiles.gateTimer())) {
      instrument.start(heard);
      Signal.LinkChanged lost = (Signal.LinkChanged) heard.awaitLink(1, LinkState.LOST).signal();
      assertTrue(lost.words().contains("Check that it is a serial port"), lost.words());
    }
    assertEquals("300.1\n", Files.readString(file), "and it is left as it was");
  }

  @Test
  void closingFreesThePortForTheNext() throws IOException, InterruptedException {
    try (PseudoTerminal terminal = PseudoTerminal.open()) {
      for (int round = 1; round <= 3; round++) {
        Collected heard = new Collected();
        try (SerialInstrument instrument = on(terminal.path(), Profiles.gateTimer())) {
          instrument.start(heard);
          heard.awaitLink(1, LinkState.UP);
          terminal.write(text(good(round)));
          heard.awaitHeard(1);
        }
        assertEquals(List.of(LinkState.UP, LinkState.CLOSED), heard.links());
      }
    }
  }

  @Test
  void listsPortsByTheirPaths() {
    assertFalse(SerialInstrument.ports().stream().anyMatch(String::isBlank));
  }
}
