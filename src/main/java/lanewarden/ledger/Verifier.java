package lanewarden.ledger;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import lanewarden.ledger.LedgerFault.Kind;

/**
 * One run of a verification: this thread reads rows and judges them in order, the others examine
 * batches in between. Only a few batches are in flight, so the heap stays level.
 */
final class Verifier {
  private final RowSource rows;
  private final Heads heads;
  private final Consumer<? super Examined> reader;
  private final KeyDirectory keys = new KeyDirectory();
  private final Chain chain;
  private final int window = 2 * Runtime.getRuntime().availableProcessors() + 1;

  Verifier(RowSource rows, Heads heads, Consumer<? super Examined> reader) {
    this.rows = rows;
    this.heads = heads;
    this.reader = reader;
    this.chain = new Chain(keys, this::entry);
  }

  private Optional<Entry> entry(long sequence) throws LedgerException {
    return rows.row(sequence).flatMap(row -> new RowExaminer(keys).examine(row).readable());
  }

  Verification verify() throws LedgerException {
    for (String difference : rows.differences()) {
      chain.fault(new LedgerFault(0, Kind.GUARDS_CHANGED, difference));
    }
    ExecutorService examiners =
        Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors(), Verifier::thread);
    try {
      run(examiners);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new LedgerException(
          "LEDGER-INTERRUPTED",
          "The verification ended early.",
          "It was told to stop.",
          "Start it again when there is time.",
          stopped);
    } finally {
      examiners.shutdownNow();
    }
    long last = chain.head().map(Head::sequence).orElse(0L);
    if (chain.rows() == 0) {
      chain.fault(
          new LedgerFault(0, Kind.NO_ENTRY, "The ledger holds no entry, not even its first."));
    }
    heads.end(last).forEach(chain::fault);
    return new Verification(chain);
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "ledger-examiner");
    thread.setDaemon(true);
    return thread;
  }

  private void run(ExecutorService examiners) throws LedgerException, InterruptedException {
    // The first batch goes alone, on this thread: it names most keys, which the others then find
    // known, and a small ledger needs no other thread at all.
    List<Row> first = rows.next();
    judge(new RowExaminer(keys).examine(first));
    Deque<Future<List<Finding>>> inFlight = new ArrayDeque<>();
    boolean more = !first.isEmpty();
    while (more || !inFlight.isEmpty()) {
      while (more && inFlight.size() < window) {
        List<Row> batch = rows.next();
        more = !batch.isEmpty();
        if (more) {
          inFlight.add(examiners.submit(() -> new RowExaminer(keys).examine(batch)));
        }
      }
      if (!inFlight.isEmpty()) {
        judge(result(inFlight.remove()));
      }
    }
  }

  private static List<Finding> result(Future<List<Finding>> findings) throws InterruptedException {
    try {
      return findings.get();
    } catch (ExecutionException bug) {
      throw new IllegalStateException("Examining a row must never fail.", bug);
    }
  }

  private void judge(List<Finding> findings) throws LedgerException {
    for (Finding finding : findings) {
      Optional<Examined> examined = chain.judge(finding);
      Sha256 hash = finding.hash();
      if (hash != null) {
        heads.pass(finding.row().sequence(), hash).forEach(chain::fault);
      }
      examined.ifPresent(reader);
    }
  }
}
