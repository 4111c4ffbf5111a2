package lanewarden.ledger;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Locale;

/**
 * Appending a reading and its verdict against one bare SQLite commit (WAL, synchronous=FULL) plus
 * one raw Ed25519 signature, on the same disk, by turns in one run.
 *
 * <p>Arguments: pairs (3000).
 */
final class AppendBenchmark {
  private AppendBenchmark() {}

  public static void main(String[] arguments) throws Exception {
    int pairs = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 3000;
    Path folder = Files.createTempDirectory("lanewarden-benchmark");
    try {
      run(folder, pairs);
    } finally {
      VerificationBenchmark.clear(folder);
    }
  }

  private static void run(Path folder, int pairs) throws Exception {
    SampleLedger sample = new SampleLedger(folder.resolve("event.ledger")).with(0);
    Path bareFile = Files.createFile(folder.resolve("bare.db"));
    double[] ours = new double[pairs];
    double[] bare = new double[pairs];
    double[] oursCpu = new double[pairs];
    double[] bareCpu = new double[pairs];
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    try (Ledger ledger = sample.open();
        Connection connection = Sqlite.writer(bareFile)) {
      PreparedStatement insert = bareTable(connection);
      byte[] row = ledger.entries().get(1).jws();
      byte[] message = new byte[400];
      for (int i = -pairs / 2; i < pairs; i++) {
        List<Draft> pair = List.of(draft(i), verdict(i));
        long startCpu = threads.getCurrentThreadCpuTime();
        long start = System.nanoTime();
        byte[] signature = sample.official.sign(message);
        insert.setBytes(1, row);
        insert.setBytes(2, signature);
        insert.execute();
        long between = System.nanoTime();
        long betweenCpu = threads.getCurrentThreadCpuTime();
        ledger.append(sample.official, pair);
        long end = System.nanoTime();
        long endCpu = threads.getCurrentThreadCpuTime();
        if (i >= 0) {
          bare[i] = (between - start) / 1e3;
          ours[i] = (end - between) / 1e3;
          bareCpu[i] = (betweenCpu - startCpu) / 1e3;
          oursCpu[i] = (endCpu - betweenCpu) / 1e3;
        }
      }
    }
    double ourMedian = VerificationBenchmark.median(ours);
    double bareMedian = VerificationBenchmark.median(bare);
    System.out.printf(
        Locale.ROOT,
        "%d pairs, medians: reading and verdict %.0f us, bare commit and signature %.0f us, ratio"
            + " %.2f (aim at most 1.5); processor time %.0f and %.0f us%n",
        pairs,
        ourMedian,
        bareMedian,
        ourMedian / bareMedian,
        VerificationBenchmark.median(oursCpu),
        VerificationBenchmark.median(bareCpu));
  }

  private static PreparedStatement bareTable(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute("CREATE TABLE bare (id INTEGER PRIMARY KEY, content BLOB, signature BLOB)");
    }
    return connection.prepareStatement("INSERT INTO bare (content, signature) VALUES (?, ?)");
  }

  /** About as long as a reading with its raw bytes, source and instrument. */
  static Draft draft(int number) {
    String json =
        "{\"check\":\"17-2\",\"shot\":%d,\"speed\":\"299.%d ft/s\",\"raw\":\"$LWGT,2998,F*3C\\\\r\\\\n\",\"source\":\"serial\",\"instrument\":\"gate timer 1\",\"heard\":\"2026-05-01T12:00:00.123Z\"}"
            .formatted(number, Math.abs(number % 10));
    return new Draft("reading", json.getBytes(StandardCharsets.UTF_8));
  }

  private static Draft verdict(int number) {
    String json =
        "{\"check\":\"17-2\",\"rules\":\"ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad\",\"word\":\"within\",\"reason\":\"The mean of 3 readings is 300.0 ft/s, at most 309 ft/s.\",\"n\":%d}"
            .formatted(number);
    return new Draft("verdict", json.getBytes(StandardCharsets.UTF_8));
  }
}
