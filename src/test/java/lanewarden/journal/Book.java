package lanewarden.journal;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import lanewarden.ledger.Draft;
import lanewarden.ledger.Entry;
import lanewarden.ledger.Ledger;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.Role;
import lanewarden.ledger.SigningKey;

/** A real ledger in a folder of its own, with one official, for tests that need entries. */
final class Book implements AutoCloseable {
  static final Instant NOON = Instant.parse("2026-05-16T12:00:00Z");

  private final Ledger ledger;
  private final SigningKey organizer;
  private final SigningKey official;

  Book(Path folder) throws LedgerException {
    organizer = SigningKey.generate(new SecureRandom());
    official = SigningKey.generate(new SecureRandom());
    ledger =
        Ledger.create(
            folder.resolve("ledger.sqlite"),
            "North gate",
            organizer,
            Clock.fixed(NOON, ZoneOffset.UTC),
            () -> 0L);
    ledger.enrol(organizer, official.publicKey(), "Ada Holt");
  }

  List<Entry> append(Fact... facts) throws LedgerException {
    return appendAs(official, facts);
  }

  List<Entry> appendAs(SigningKey signer, Fact... facts) throws LedgerException {
    return ledger.append(signer, Stream.of(facts).map(FactJson::draft).toList());
  }

  SigningKey enrol(String name, Role role) throws LedgerException {
    SigningKey key = SigningKey.generate(new SecureRandom());
    ledger.enrol(organizer, key.publicKey(), name, role);
    return key;
  }

  Entry suspend(SigningKey key) throws LedgerException {
    return ledger.suspend(organizer, key.publicKey(), "for a while");
  }

  Entry enrolAgain(SigningKey key, String name, Role role) throws LedgerException {
    return ledger.enrol(organizer, key.publicKey(), name, role);
  }

  Entry appendRaw(String kind, String body) throws LedgerException {
    Draft draft = new Draft(kind, body.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    return ledger.append(official, List.of(draft)).get(0);
  }

  List<Entry> entries() throws LedgerException {
    return ledger.entries();
  }

  long next() {
    return ledger.head().sequence() + 1;
  }

  @Override
  public void close() throws LedgerException {
    ledger.close();
  }
}
