package lanewarden.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import lanewarden.chronograph.SimulatedInstrument;
import lanewarden.quantity.Speed;
import lanewarden.station.EventFolder;
import lanewarden.station.PracticeEvent;
import lanewarden.station.Station;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * No bit can change unseen in the exported ledger of a whole small event: organizer, officials,
 * rule book, roster, opening, call, three readings, verdict, closing.
 *
 * <p>Every bit of every byte is tried. A ledger is judged in the order of its lines, and a fault
 * once found is renamed at most, never taken away: so the lines before the changed one are examined
 * once for all, the changed one each time, and of those after it only the next, whose link tells of
 * other bytes. Where a flip makes or removes a line end, and for a sample of all others, the whole
 * file is verified as a stranger's program would.
 */
class FlippedExportTest {
  /** Every so many flips, the whole file is verified too. */
  private static final int SAMPLE = 2003;

  private static final String RULES =
      """
      format = 1
      [event]
      name = "Practice"
      edition = "1"
      [[division]]
      code = "OC"
      name = "Open compound"
      limit = "300 ft/s"
      tolerance = "3 %"
      decide = "mean"
      counted = 3
      shots = 3
      voids = 0
      rechecks = 0
      """;

  @TempDir static Path folder;
  private static byte[] whole;
  private static final List<Line> LINES = new ArrayList<>();

  /** An untouched line: where it begins, and what it shows on its own. */
  private record Line(int start, byte[] bytes, Finding finding) {}

  @BeforeAll
  static void shootACheckAndExportIt() throws Exception {
    EventFolder event =
        PracticeEvent.make(folder.resolve("event"), RULES, "bib,name,division\n1,Ann Archer,OC\n");
    SimulatedInstrument simulator = new SimulatedInstrument(event.profile(), Clock.systemUTC());
    try (Station station =
        Station.open(event, simulator, "Lanewarden", Clock.systemUTC(), System::nanoTime)) {
      simulator.settle();
      station.signIn(PracticeEvent.OFFICIAL, PracticeEvent.PASSPHRASE.toCharArray());
      station.call("1");
      for (String speed : List.of("299.8 ft/s", "300.1 ft/s", "300.2 ft/s")) {
        simulator.shoot(Speed.parse(speed));
      }
      simulator.settle();
      station.next();
    }
    Path file = folder.resolve("entries.jsonl");
    try (OutputStream out = Files.newOutputStream(file)) {
      Verification.of(event.ledger(), List.of(), examined -> write(examined.entry(), out));
    }
    whole = Files.readAllBytes(file);
    examine();
  }

  private static void write(Entry entry, OutputStream out) {
    try {
      ExportedEntries.write(entry, out);
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private static void examine() {
    RowExaminer examiner = new RowExaminer(new KeyDirectory());
    int start = 0;
    for (int at = 0; at < whole.length; at++) {
      if (whole[at] == '\n') {
        byte[] bytes = Arrays.copyOfRange(whole, start, at);
        Finding finding = examiner.examine(LineRows.row(bytes, true, 0, LINES.size() + 1));
        LINES.add(new Line(start, bytes, finding));
        start = at + 1;
      }
    }
  }

  @Test
  void theUntouchedExportIsAWholeCheckAndSound() throws Exception {
    TreeSet<String> kinds = new TreeSet<>();
    Verification found =
        ExportedEntries.verify(
            folder.resolve("entries.jsonl"),
            List.of(),
            examined -> kinds.add(examined.entry().kind()));
    assertEquals(List.of(), found.faults());
    assertTrue(found.entries() >= 12, found.entries() + " entries");
    assertTrue(
        kinds.containsAll(
            List.of(
                "ledger-opened",
                "official-enrolled",
                "rule-book-adopted",
                "station-opened",
                "check-opened",
                "reading-taken",
                "verdict-given",
                "check-closed")),
        kinds::toString);
  }

  @Test
  void noBitOfTheExportCanBeFlippedUnseen() {
    List<String> unseen =
        IntStream.range(0, LINES.size())
            .boxed()
            .flatMap(line -> IntStream.range(0, length(line)).mapToObj(at -> new int[] {line, at}))
            .parallel()
            .flatMap(place -> unseen(place[0], place[1]).stream())
            .toList();
    assertEquals(List.of(), unseen, "bits that can change unseen");
  }

  /** With its line end. */
  private static int length(int line) {
    return LINES.get(line).bytes().length + 1;
  }

  private static List<String> unseen(int line, int at) {
    List<String> unseen = new ArrayList<>();
    int place = LINES.get(line).start() + at;
    for (int bit = 0; bit < Byte.SIZE; bit++) {
      byte flipped = (byte) (whole[place] ^ 1 << bit);
      boolean otherLines = whole[place] == '\n' || flipped == '\n';
      boolean found = otherLines || isFoundFrom(line, at, flipped);
      if (otherLines || (place * Byte.SIZE + bit) % SAMPLE == 0) {
        found &= isFoundInTheFile(place, flipped);
      }
      if (!found) {
        unseen.add("entry " + (line + 1) + ", byte " + at + ", bit " + bit);
      }
    }
    return unseen;
  }

  /**
   * Whether the changed line has a fault, or the one after it. The signature is tried only where
   * the line has no fault without it, since trying it can add one and never take one away.
   */
  private static boolean isFoundFrom(int line, int at, byte flipped) {
    byte[] bytes = LINES.get(line).bytes().clone();
    bytes[at] = flipped;
    Row.Line row = LineRows.row(bytes, true, line + 1, line + 1);
    return !new RowExaminer(new KeyDirectory()).examine(row).faults().isEmpty()
        || isFoundBySignatureOrPlace(line, row);
  }

  private static boolean isFoundBySignatureOrPlace(int line, Row.Line row) {
    KeyDirectory keys = new KeyDirectory();
    Chain chain = new Chain(keys, sequence -> Optional.empty());
    try {
      for (Line before : LINES.subList(0, line)) {
        KeyNotice.key(before.finding().readable().orElseThrow().payload()).ifPresent(keys::note);
        chain.judge(before.finding());
      }
      chain.judge(new RowExaminer(keys).examine(row));
      if (chain.faults().isEmpty() && line + 1 < LINES.size()) {
        chain.judge(LINES.get(line + 1).finding());
      }
      return !chain.faults().isEmpty();
    } catch (LedgerException impossible) {
      throw new IllegalStateException("Nothing was read from a disk.", impossible);
    }
  }

  private static boolean isFoundInTheFile(int place, byte flipped) {
    byte[] changed = whole.clone();
    changed[place] = flipped;
    Path file = folder.resolve("flipped-" + place + "-" + flipped);
    try {
      Files.write(file, changed);
      boolean found = !ExportedEntries.verify(file, List.of(), examined -> {}).sound();
      Files.delete(file);
      return found;
    } catch (IOException | LedgerException unread) {
      throw new AssertionError(unread);
    }
  }
}
