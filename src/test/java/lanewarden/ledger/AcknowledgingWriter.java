package lanewarden.ledger;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;

/** A program that appends pairs without end and says each head once it is durable. */
final class AcknowledgingWriter {
  private AcknowledgingWriter() {}

  public static void main(String[] arguments) throws LedgerException {
    SigningKey key = SigningKey.ofSeed(Base64Url.decode(arguments[1]).orElseThrow());
    try (Ledger ledger = Ledger.open(Path.of(arguments[0]), Clock.systemUTC(), System::nanoTime)) {
      for (int number = 0; ; number++) {
        ledger.append(
            key, List.of(SampleLedger.reading(number), SampleLedger.draft("verdict", "{}")));
        System.out.println(ledger.head().shortForm());
        System.out.flush();
      }
    }
  }
}
