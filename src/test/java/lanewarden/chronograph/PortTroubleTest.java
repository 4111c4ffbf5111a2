package lanewarden.chronograph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Every row of the table of port faults in {@code serial-format.md}, as the official reads it. */
class PortTroubleTest {
  private static final PortHere KNOWN = new PortHere("/dev/ttyUSB0", Optional.of("A7"));
  private static final PortHere ELSEWHERE = new PortHere("/dev/ttyUSB1", Optional.of("A7"));
  private static final PortHere STRANGER = new PortHere("/dev/ttyACM0", Optional.empty());
  private static final PortSettings SETTINGS = Profiles.gateTimer().port();

  @TempDir Path folder;

  private static String words(Collected.Arrival arrival) {
    return ((Signal.LinkChanged) arrival.signal()).words();
  }

  @Test
  void everyTroubleSaysWhatWhyAndWhatToDoWithACodeThatTheTableLists() throws IOException {
    String table = Files.readString(Path.of("src/site/markdown/serial-format.md"));
    List<PortTrouble> all =
        List.of(
            PortTrouble.missing("P"),
            PortTrouble.busy("P"),
            PortTrouble.denied("P"),
            PortTrouble.vanished("P"),
            PortTrouble.renamed("P", List.of("Q")),
            PortTrouble.unusable("P", SETTINGS, 5),
            PortTrouble.noise(SETTINGS),
            PortTrouble.flood(9_999));
    assertEquals(List.of(PortTrouble.Kind.values()), all.stream().map(PortTrouble::kind).toList());
    for (PortTrouble trouble : all) {
      assertTrue(table.contains("| `" + trouble.kind().code() + "` |"), trouble.toString());
      assertTrue(trouble.words().endsWith(" (" + trouble.kind().code() + ")"), trouble.words());
      assertTrue(trouble.words().split("\\. ").length >= 2, "what and a mend: " + trouble.words());
    }
  }

  @Test
  void aPortThatCameUnderAnotherNameIsToldWithItsDevice() {
    AtomicReference<List<PortHere>> here = new AtomicReference<>(List.of(KNOWN));
    Whereabouts whereabouts = new Whereabouts(KNOWN.path(), here::get);
    whereabouts.seen();
    PortTrouble missing = PortTrouble.missing(KNOWN.path());
    here.set(List.of());
    assertEquals(missing, whereabouts.known(missing));
    here.set(List.of(STRANGER, ELSEWHERE));
    assertEquals(
        "The port /dev/ttyUSB0 is away, and since then there is /dev/ttyACM0 and /dev/ttyUSB1 (the"
            + " same device, serial number A7): the system may have given the instrument another"
            + " name. Choose that port; on Linux, a name under /dev/serial/by-id stays the same."
            + " (PORT-RENAMED)",
        whereabouts.known(missing).words());
    PortTrouble busy = PortTrouble.busy(KNOWN.path());
    assertEquals(busy, whereabouts.known(busy), "only of a port that is away");
  }

  @Test
  void ofAPortNeverSeenOnlyWhatComesLaterIsNews() {
    AtomicReference<List<PortHere>> here = new AtomicReference<>(List.of(STRANGER));
    Whereabouts whereabouts = new Whereabouts(KNOWN.path(), here::get);
    PortTrouble missing = PortTrouble.missing(KNOWN.path());
    assertEquals(missing, whereabouts.known(missing));
    here.set(List.of(STRANGER, ELSEWHERE));
    PortTrouble told = whereabouts.known(missing);
    assertEquals(PortTrouble.Kind.RENAMED, told.kind());
    assertTrue(told.words().contains("there is /dev/ttyUSB1: "), told.words());
  }

  @Test
  void noiseIsToldOnceUntilAReadingWasHeard() {
    WireWatch watch = new WireWatch(Profiles.gateTimer());
    Decoder decoder = Profiles.opened(Profiles.gateTimer());
    watch.opened(0);
    RawBytes noise = RawBytes.ofText("\u0001\u0002~\u0003\u0004".repeat(6));
    assertEquals(Optional.empty(), watch.came(noise, List.of(), 1));
    assertEquals(PortTrouble.noise(SETTINGS), watch.came(noise, List.of(), 2).orElseThrow());
    assertEquals(Optional.empty(), watch.came(noise, List.of(), 3));
    RawBytes good = RawBytes.ofText("\r\n").then(Profiles.good(1));
    assertEquals(Optional.empty(), watch.came(good, decoder.feed(good, 4), 4));
    watch.came(noise, List.of(), 5);
    assertTrue(watch.came(noise, List.of(), 6).isPresent());
  }

  @Test
  void tenShotsWithinASecondAreNoFloodButMoreBytesAre() {
    WireWatch watch = new WireWatch(Profiles.gateTimer());
    watch.opened(0);
    RawBytes line = RawBytes.ofText("x".repeat(82));
    for (int i = 0; i < 10; i++) {
      assertEquals(Optional.empty(), watch.came(line, List.of(), i));
    }
    assertEquals(PortTrouble.flood(902), watch.came(line, List.of(), 10).orElseThrow());
    assertEquals(Optional.empty(), watch.came(line, List.of(), 11), "told once");
    long second = 1_000 * Profiles.MILLI;
    watch.came(line, List.of(), 2 * second);
    for (int i = 0; i < 9; i++) {
      assertEquals(Optional.empty(), watch.came(line, List.of(), 4 * second + i));
    }
    watch.came(line, List.of(), 4 * second + 9);
    assertTrue(watch.came(line, List.of(), 4 * second + 10).isPresent(), "told anew");
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void onARealPortTheEndOfNoiseIsTold() throws IOException, InterruptedException {
    AtomicLong ahead = new AtomicLong();
    Collected heard = new Collected();
    try (PseudoTerminal terminal = PseudoTerminal.open();
        SerialInstrument instrument =
            new SerialInstrument(
                terminal.path().toString(),
                Profiles.gateTimer(),
                Profiles.CLOCK,
                () -> System.nanoTime() + ahead.get())) {
      instrument.start(heard);
      String connected = words(heard.awaitLink(1, LinkState.UP));
      terminal.write("\u0001\u0002\u0003\u0004".repeat(15) + "\r\n");
      assertTrue(words(heard.awaitLink(2, LinkState.UP)).endsWith("(WIRE-NOISE)"));
      terminal.write(new String(Profiles.good(1).bytes(), StandardCharsets.US_ASCII));
      heard.awaitHeard(1);
      ahead.set(WireWatch.QUIET);
      assertEquals(connected, words(heard.awaitLink(3, LinkState.UP)));
    }
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void onARealPortNoiseFloodAndVanishingAreTold() throws IOException, InterruptedException {
    Path port = folder.resolve("port");
    AtomicReference<List<PortHere>> here = new AtomicReference<>(List.of());
    Collected heard = new Collected();
    PseudoTerminal terminal = PseudoTerminal.linkedAs(port);
    try (SerialInstrument instrument =
        new SerialInstrument(
            port.toString(), Profiles.gateTimer(), Profiles.CLOCK, System::nanoTime, here::get)) {
      instrument.start(heard);
      heard.awaitLink(1, LinkState.UP);
      terminal.write("\u0001\u0002\u0003\u0004".repeat(15));
      assertTrue(words(heard.awaitLink(2, LinkState.UP)).endsWith("(WIRE-NOISE)"));
      terminal.write("$PLWT\r\n".repeat(200));
      assertTrue(words(heard.awaitLink(3, LinkState.UP)).endsWith("(WIRE-FLOOD)"));
      terminal.close();
      String lost = words(heard.awaitLink(1, LinkState.LOST));
      assertTrue(lost.startsWith("The port " + port + " went away"), lost);
      here.set(List.of(ELSEWHERE));
      assertTrue(words(heard.awaitLink(2, LinkState.LOST)).contains("there is /dev/ttyUSB1:"));
    }
  }
}
