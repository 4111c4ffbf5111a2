package lanewarden.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A writer killed at any moment (SIGKILL where there are signals) loses nothing it acknowledged.
 *
 * <p>One pair more than acknowledged may be there: committed, but not yet said. Twenty kills, or as
 * many as the property {@code lanewarden.kills} says.
 */
class KilledWriterTest {
  private static final int ROUNDS = Integer.getInteger("lanewarden.kills", 20);

  /** Each writer verifies all that the killed ones left: in a new ledger now and then, less. */
  private static final int MOST_A_LEDGER = 20;

  @TempDir Path folder;

  @Test
  void losesNothingAcknowledged() throws Exception {
    Random random = new Random(20260501);
    long entries = 0;
    int unsaid = 0;
    for (int done = 0; done < ROUNDS; done += MOST_A_LEDGER) {
      SampleLedger sample = new SampleLedger(folder.resolve("event-" + done + ".ledger")).with(0);
      String seed = Base64Url.encode(sample.official.seed());
      long last = 2;
      for (int round = 1; round <= Math.min(MOST_A_LEDGER, ROUNDS - done); round++) {
        String acknowledged = killedAfter(1 + random.nextInt(12), sample.file, seed);
        long sequence = Long.parseLong(acknowledged.substring(0, acknowledged.indexOf('-')));
        assertTrue(sequence > last, "the writer went on from where the killed one stood");
        // Given as a printed head: the acknowledged entry is there, with the same bytes.
        Verification after =
            Verification.of(sample.file, List.of(PrintedHead.parse(acknowledged)), examined -> {});
        assertEquals(List.of(), after.faults(), "round " + (done + round));
        long found = after.head().orElseThrow().sequence();
        assertTrue(found == sequence || found == sequence + 2, found + " after " + sequence);
        unsaid += found == sequence ? 0 : 1;
        last = found;
      }
      entries += last;
    }
    System.out.printf(
        Locale.ROOT,
        "%d kills, %d entries, none lost; after %d kills a pair stood that was not yet said%n",
        ROUNDS,
        entries,
        unsaid);
  }

  /** The last head the writer acknowledged before it was killed. */
  private static String killedAfter(int lines, Path file, String seed)
      throws IOException, InterruptedException {
    Process writer =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                // A short life: start quickly rather than run fast.
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty(
                    "surefire.test.class.path", System.getProperty("java.class.path")),
                AcknowledgingWriter.class.getName(),
                file.toString(),
                seed)
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    List<String> said = new ArrayList<>();
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(writer.getInputStream(), StandardCharsets.US_ASCII))) {
      while (said.size() < lines) {
        String line = out.readLine();
        assertTrue(line != null, "the writer ended by itself");
        said.add(line);
      }
      // Through the handle: the process's own method would also close what we still want to read.
      writer.toHandle().destroyForcibly();
      // What it said between our decision and its end counts too; a torn last line does not.
      for (String line = out.readLine(); line != null; line = out.readLine()) {
        if (line.matches("[0-9]+-[0-9a-f]{12}")) {
          said.add(line);
        }
      }
    }
    writer.waitFor();
    return said.get(said.size() - 1);
  }
}
