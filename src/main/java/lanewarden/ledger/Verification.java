package lanewarden.ledger;

import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Public shape only; the next commits fill it. */
@SuppressWarnings("DoNotCallSuggester")
public final class Verification {
  private Verification() {}

  public static Verification of(Path file) throws LedgerException {
    throw new UnsupportedOperationException();
  }

  /** Hands every readable entry, in order, to {@code reader} on the caller's thread. */
  public static Verification of(
      Path file, Collection<PrintedHead> printed, Consumer<? super Examined> reader)
      throws LedgerException {
    throw new UnsupportedOperationException();
  }

  public long entries() {
    throw new UnsupportedOperationException();
  }

  public Optional<Head> head() {
    throw new UnsupportedOperationException();
  }

  public Optional<String> station() {
    throw new UnsupportedOperationException();
  }

  public Optional<String> organizer() {
    throw new UnsupportedOperationException();
  }

  public List<Enrolled> officials() {
    throw new UnsupportedOperationException();
  }

  public List<LedgerFault> faults() {
    throw new UnsupportedOperationException();
  }

  public boolean sound() {
    throw new UnsupportedOperationException();
  }
}
