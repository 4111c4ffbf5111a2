package lanewarden.station;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import lanewarden.chronograph.Decoder;
import lanewarden.chronograph.Instrument;
import lanewarden.chronograph.LinkState;
import lanewarden.chronograph.RawBytes;
import lanewarden.chronograph.SentenceProfile;
import lanewarden.chronograph.Signal;
import lanewarden.chronograph.Source;
import org.bouncycastle.crypto.params.Ed25519PrivateKeyParameters;
import org.bouncycastle.math.ec.rfc8032.Ed25519;

/**
 * From the last byte into the framer to the durable signed verdict, against one bare SQLite commit
 * with {@code synchronous=FULL} and one raw Ed25519 signature on the same disk, in one run.
 *
 * <p>The verdict's path signs two entries (the reading and the verdict) in one commit. The two are
 * measured turn by turn, so that a busy disk burdens both alike.
 */
final class VerdictBenchmark {
  private static final int WARM_UP = 6000;
  private static final int ROUNDS = 4000;
  private static final int BARE_BYTES = 1000;

  private VerdictBenchmark() {}

  /** Hands bytes to a decoder and its signals to the station, on the caller's thread. */
  private static final class Direct implements Instrument {
    private final Decoder decoder;
    private Consumer<Signal> sink = signal -> {};
    private long nanos;

    Direct(SentenceProfile profile) {
      decoder = new Decoder(profile, Source.SIMULATED, name(), Clock.systemUTC());
    }

    @Override
    public String name() {
      return "benchmark";
    }

    @Override
    public Source source() {
      return Source.SIMULATED;
    }

    @Override
    public void start(Consumer<Signal> taker) {
      sink = taker;
      decoder.opened(nanos);
      sink.accept(new Signal.LinkChanged(LinkState.UP, "Listening.", Instant.now()));
    }

    void receive(RawBytes bytes) {
      decoder.feed(bytes, nanos).forEach(sink);
    }

    void pause() {
      nanos += 5_000_000_000L;
      decoder.idle(nanos).forEach(sink);
    }

    @Override
    public void close() {}
  }

  public static void main(String[] arguments) throws Exception {
    Path scratch = Files.createTempDirectory(Path.of("target"), "benchmark-");
    int competitors = WARM_UP + ROUNDS;
    EventFolder folder =
        event(competitors)
            .make(
                scratch.resolve("event"), Clock.systemUTC(), System::nanoTime, new SecureRandom());
    SentenceProfile profile = folder.profile();
    Direct instrument = new Direct(profile);
    long[] verdict = new long[ROUNDS];
    long[] bare = new long[ROUNDS];
    try (Station station =
            Station.open(folder, instrument, "benchmark", Clock.systemUTC(), System::nanoTime);
        Bare raw = new Bare(scratch.resolve("bare.sqlite"))) {
      station.signIn("Ada Holt", "benchmark only".toCharArray());
      for (int i = 0; i < competitors; i++) {
        station.call(Integer.toString(i + 1));
        instrument.pause();
        RawBytes line = RawBytes.ofText("285.3\r");
        RawBytes last = RawBytes.ofText("\n");
        instrument.receive(line);
        long start = System.nanoTime();
        instrument.receive(last);
        long between = System.nanoTime();
        raw.signAndCommit();
        long end = System.nanoTime();
        if (station.view().check().orElseThrow().outcome().isEmpty()) {
          throw new IllegalStateException("no verdict: " + station.view());
        }
        if (i >= WARM_UP) {
          verdict[i - WARM_UP] = between - start;
          bare[i - WARM_UP] = end - between;
        }
      }
    }
    print(verdict, bare);
  }

  private static void print(long[] verdict, long[] bare) {
    double ours = median(verdict);
    double theirs = median(bare);
    System.out.printf("last byte -> durable signed verdict   median %7.1f us%n", ours);
    System.out.printf("bare commit + one raw signature       median %7.1f us%n", theirs);
    System.out.printf("ratio %.2f (aim: 1.5 or less)%n", ours / theirs);
  }

  private static double median(long[] nanos) {
    long[] sorted = nanos.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2] / 1000.0;
  }

  private static NewEvent event(int competitors) throws Exception {
    StringBuilder roster = new StringBuilder("bib,name,division\n");
    for (int i = 1; i <= competitors; i++) {
      roster.append(i).append(",Archer ").append(i).append(",OC\n");
    }
    String rules =
        """
        format = 1
        [event]
        name = "Benchmark"
        edition = "1"
        [[division]]
        code = "OC"
        name = "Open compound"
        limit = "300 ft/s"
        tolerance = "3 %"
        decide = "highest"
        counted = 1
        shots = 2
        voids = 1
        rechecks = 1
        """;
    return new NewEvent(
        new NewEvent.Source("rule-book.toml", rules.getBytes(StandardCharsets.UTF_8)),
        new NewEvent.Source("roster.csv", roster.toString().getBytes(StandardCharsets.UTF_8)),
        NewEvent.Source.of(Path.of("config/profiles/plain-decimal.toml")),
        "Benchmark",
        StationSettings.Kind.SIMULATOR,
        "",
        new NewEvent.Person("Organizer", "benchmark only".toCharArray()),
        List.of(new NewEvent.Person("Ada Holt", "benchmark only".toCharArray())));
  }

  /** The bare cost: one row of about the size of both entries, one signature over it. */
  private static final class Bare implements AutoCloseable {
    private final Connection connection;
    private final PreparedStatement insert;
    private final Ed25519PrivateKeyParameters key =
        new Ed25519PrivateKeyParameters(new SecureRandom());
    private final byte[] row = new byte[BARE_BYTES];
    private final byte[] signature = new byte[Ed25519.SIGNATURE_SIZE];

    Bare(Path file) throws Exception {
      connection = DriverManager.getConnection("jdbc:sqlite:" + file);
      try (Statement statement = connection.createStatement()) {
        statement.execute("PRAGMA journal_mode=WAL");
        statement.execute("PRAGMA synchronous=FULL");
        statement.execute("CREATE TABLE bare (row BLOB NOT NULL) STRICT");
      }
      connection.setAutoCommit(false);
      insert = connection.prepareStatement("INSERT INTO bare VALUES (?)");
    }

    void signAndCommit() throws Exception {
      key.sign(Ed25519.Algorithm.Ed25519, null, row, 0, row.length, signature, 0);
      System.arraycopy(signature, 0, row, 0, signature.length);
      insert.setBytes(1, row);
      insert.executeUpdate();
      connection.commit();
    }

    @Override
    public void close() throws SQLException {
      connection.close();
    }
  }
}
