package lanewarden.ledger;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Verification of a whole ledger against BouncyCastle's bare Ed25519 verification of the same
 * signatures on all cores, by turns in one run.
 *
 * <p>Arguments: entries (100000), or several counts with commas between them, to see the growth;
 * rounds (5). The bare signatures are those of the first entries, as many as fit in the heap beside
 * a verification: run it with {@code -Xmx256m} to show that this is enough for any ledger.
 */
final class VerificationBenchmark {
  /** Signatures for the bare rate: enough for a steady figure, few enough for a small heap. */
  private static final int BARE = 50_000;

  private final SampleLedger sample;
  private final int entries;
  private final List<byte[]> messages = new ArrayList<>();
  private final List<byte[]> signatures = new ArrayList<>();
  private final OperatingSystemMXBean system =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  private VerificationBenchmark(Path file, int entries) {
    this.sample = new SampleLedger(file);
    this.entries = entries;
  }

  public static void main(String[] arguments) throws Exception {
    String[] counts = (arguments.length > 0 ? arguments[0] : "100000").split(",");
    int rounds = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 5;
    for (String count : counts) {
      Path folder = Files.createTempDirectory("lanewarden-benchmark");
      try {
        new VerificationBenchmark(folder.resolve("event.ledger"), Integer.parseInt(count))
            .run(rounds);
      } finally {
        clear(folder);
      }
    }
  }

  static void clear(Path folder) throws IOException {
    List<Path> files = new ArrayList<>();
    try (var inside = Files.list(folder)) {
      inside.forEach(files::add);
    }
    for (Path file : files) {
      Files.delete(file);
    }
    Files.delete(folder);
  }

  private void run(int rounds) throws Exception {
    fill();
    double[] ours = new double[rounds];
    double[] bare = new double[rounds];
    double[] ratios = new double[rounds];
    double[] processor = new double[rounds];
    bare();
    ours();
    for (int round = 0; round < rounds; round++) {
      long started = system.getProcessCpuTime();
      bare[round] = bare();
      long between = system.getProcessCpuTime();
      ours[round] = ours();
      long ended = system.getProcessCpuTime();
      double bareTime = (double) (between - started) / messages.size();
      processor[round] = bareTime / ((double) (ended - between) / entries);
      ratios[round] = ours[round] / bare[round];
      System.out.printf(
          Locale.ROOT,
          "round %d: ledger %.0f entries/s, bare signatures %.0f/s, ratio %.3f; by processor time"
              + " %.3f%n",
          round + 1,
          ours[round],
          bare[round],
          ratios[round],
          processor[round]);
    }
    System.out.printf(
        Locale.ROOT,
        "%d entries, %d cores, %d MB heap at most, median: %.1f s, ledger %.0f entries/s, bare"
            + " %.0f/s, ratio %.3f (aim 0.9); by processor time, which a busy machine does not blur,"
            + " %.3f; heap after the last %d MB%n",
        entries,
        Runtime.getRuntime().availableProcessors(),
        Runtime.getRuntime().maxMemory() >> 20,
        entries / median(ours),
        median(ours),
        median(bare),
        median(ratios),
        median(processor),
        (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) >> 20);
  }

  static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  private void fill() throws LedgerException {
    try (Ledger ledger = sample.create()) {
      ledger.enrol(sample.organizer, sample.official.publicKey(), "Official Ash");
      List<Draft> drafts = new ArrayList<>();
      for (int number = 2; number < entries; number++) {
        drafts.add(AppendBenchmark.draft(number));
        if (drafts.size() == 1000 || number == entries - 1) {
          ledger.append(sample.official, drafts);
          drafts.clear();
        }
      }
      ledger.forEach(
          entry -> {
            byte[] jws = entry.jws();
            int dot = jws.length - 1;
            while (jws[dot] != '.') {
              dot--;
            }
            if (messages.size() < BARE && entry.signer().equals(sample.official.thumbprint())) {
              messages.add(Arrays.copyOf(jws, dot));
              signatures.add(Base64Url.decode(jws, dot + 1, jws.length).orElseThrow());
            }
          });
    }
  }

  private double ours() throws LedgerException {
    long start = System.nanoTime();
    Verification verification = Verification.of(sample.file);
    double seconds = (System.nanoTime() - start) / 1e9;
    if (!verification.sound() || verification.entries() != entries) {
      throw new IllegalStateException("The ledger should be sound: " + verification.faults());
    }
    return entries / seconds;
  }

  private double bare() throws Exception {
    int cores = Runtime.getRuntime().availableProcessors();
    ExecutorService pool = Executors.newFixedThreadPool(cores);
    try {
      List<Callable<Integer>> parts = new ArrayList<>();
      for (int core = 0; core < cores; core++) {
        int first = core;
        parts.add(() -> verify(first, cores));
      }
      long start = System.nanoTime();
      int good = 0;
      for (Future<Integer> part : pool.invokeAll(parts)) {
        good += part.get();
      }
      double seconds = (System.nanoTime() - start) / 1e9;
      if (good != messages.size()) {
        throw new IllegalStateException("Every signature should be good.");
      }
      return good / seconds;
    } finally {
      pool.shutdownNow();
    }
  }

  private int verify(int first, int step) {
    VerifyingKey key = sample.official.publicKey();
    int good = 0;
    for (int i = first; i < messages.size(); i += step) {
      good += key.verifies(messages.get(i), signatures.get(i)) ? 1 : 0;
    }
    return good;
  }
}
