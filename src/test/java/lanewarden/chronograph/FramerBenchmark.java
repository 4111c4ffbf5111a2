package lanewarden.chronograph;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Arrays;
import java.util.Random;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * 100 MB of good and damaged lines of the gate timer through the framer alone, and through framer,
 * sentence and guard, against reading the same bytes line by line with the JDK's {@link
 * BufferedReader}, turn by turn in one run; with the heap that stays in use.
 */
final class FramerBenchmark {
  private static final long SIZE = 100_000_000;
  private static final int ROUNDS = 5;
  private static final int LINES = 30_000;

  private FramerBenchmark() {}

  /** The block of lines again and again, without keeping it more than once. */
  private static final class Again extends InputStream {
    private final byte[] block;
    private long left = SIZE;
    private int at;

    Again(byte[] block) {
      this.block = block;
    }

    @Override
    public int read() {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] into, int offset, int wanted) {
      int count = (int) Math.min(left, Math.min(wanted, block.length - at));
      if (left == 0) {
        return -1;
      }
      System.arraycopy(block, at, into, offset, count);
      at = (at + count) % block.length;
      left -= count;
      return count;
    }
  }

  /** Nine good lines, then a damaged one: a digit changed, a byte lost or doubled, a line cut. */
  private static byte[] block() {
    Random random = new Random(4);
    SimulatedLine written = Profiles.gateTimer().simulated().orElseThrow();
    StringBuilder block = new StringBuilder();
    for (int i = 0; i < LINES; i++) {
      Speed speed =
          Speed.of(BigDecimal.valueOf(2_000 + random.nextInt(1_500), 1), SpeedUnit.FEET_PER_SECOND);
      StringBuilder line = new StringBuilder(written.write(speed, i));
      int at = 1 + random.nextInt(28);
      if (i % 10 == 9) {
        switch (random.nextInt(4)) {
          case 0 -> line.setCharAt(at, (char) (line.charAt(at) ^ 1));
          case 1 -> line.deleteCharAt(at);
          case 2 -> line.insert(at, line.charAt(at));
          default -> line.setLength(at);
        }
      }
      block.append(line).append("\r\n");
    }
    return block.toString().getBytes(StandardCharsets.ISO_8859_1);
  }

  private static long lines(byte[] block) throws IOException {
    BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(new Again(block), StandardCharsets.ISO_8859_1), 8192);
    long count = 0;
    while (reader.readLine() != null) {
      count++;
    }
    return count;
  }

  private static long frames(byte[] block) {
    Framer framer = new Framer(Profiles.gateTimer().line());
    framer.opened(0);
    Again stream = new Again(block);
    byte[] buffer = new byte[4096];
    long count = 0;
    for (int got = stream.read(buffer, 0, 4096); got > 0; got = stream.read(buffer, 0, 4096)) {
      count += framer.feed(RawBytes.of(Arrays.copyOf(buffer, got)), 1).size();
    }
    return count;
  }

  private static long signals(byte[] block) {
    Decoder decoder =
        new Decoder(Profiles.gateTimer(), Source.SERIAL, "benchmark", Clock.systemUTC());
    decoder.opened(0);
    Again stream = new Again(block);
    byte[] buffer = new byte[4096];
    long heard = 0;
    for (int got = stream.read(buffer, 0, 4096); got > 0; got = stream.read(buffer, 0, 4096)) {
      for (Signal signal : decoder.feed(RawBytes.of(Arrays.copyOf(buffer, got)), 1)) {
        heard += signal instanceof Signal.Heard ? 1 : 0;
      }
    }
    return heard;
  }

  private static long heapInUse() {
    System.gc();
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }

  /** Prints megabytes a second of each, the ratios, and the heap before and after. */
  public static void main(String[] arguments) throws IOException {
    byte[] block = block();
    long[] best = {Long.MAX_VALUE, Long.MAX_VALUE, Long.MAX_VALUE};
    long[] found = new long[3];
    long heapBefore = 0;
    for (int round = 0; round <= ROUNDS; round++) {
      for (int way = 0; way < 3; way++) {
        long began = System.nanoTime();
        found[way] = way == 0 ? lines(block) : way == 1 ? frames(block) : signals(block);
        // The first round warms up
        if (round > 0) {
          best[way] = Math.min(best[way], System.nanoTime() - began);
        }
      }
      heapBefore = round == 0 ? heapInUse() : heapBefore;
    }
    long heapAfter = heapInUse();
    String[] ways = {"BufferedReader.readLine", "framer", "framer, sentence and guard"};
    for (int way = 0; way < 3; way++) {
      System.out.printf(
          "%-28s %7.1f MB/s  ratio %.3f  (%d found)%n",
          ways[way], SIZE * 1e3 / best[way], (double) best[0] / best[way], found[way]);
    }
    System.out.printf(
        "heap in use: %.1f MB after 100 MB, %.1f MB after %d MB%n",
        heapBefore / 1e6, heapAfter / 1e6, 100 * (ROUNDS + 1));
  }
}
