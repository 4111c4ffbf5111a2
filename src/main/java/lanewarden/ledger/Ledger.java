package lanewarden.ledger;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.LongSupplier;

/** Public shape only; the next commits fill it. */
@SuppressWarnings("DoNotCallSuggester")
public final class Ledger implements AutoCloseable {
  private Ledger() {}

  public static Ledger create(
      Path file, String station, SigningKey organizer, Clock clock, LongSupplier nanos)
      throws LedgerException {
    throw new UnsupportedOperationException();
  }

  public static Ledger open(Path file, Clock clock, LongSupplier nanos) throws LedgerException {
    throw new UnsupportedOperationException();
  }

  public List<Entry> append(SigningKey signer, List<Draft> drafts) throws LedgerException {
    throw new UnsupportedOperationException();
  }

  public Entry enrol(SigningKey organizer, VerifyingKey official, String name)
      throws LedgerException {
    throw new UnsupportedOperationException();
  }

  public void forEach(Consumer<? super Entry> reader) throws LedgerException {
    throw new UnsupportedOperationException();
  }

  public List<Entry> entries() throws LedgerException {
    throw new UnsupportedOperationException();
  }

  public Head head() {
    throw new UnsupportedOperationException();
  }

  public String station() {
    throw new UnsupportedOperationException();
  }

  /** Thumbprint of the organizer's key. */
  public String organizer() {
    throw new UnsupportedOperationException();
  }

  public List<Enrolled> officials() {
    throw new UnsupportedOperationException();
  }

  @Override
  public void close() throws LedgerException {
    throw new UnsupportedOperationException();
  }
}
