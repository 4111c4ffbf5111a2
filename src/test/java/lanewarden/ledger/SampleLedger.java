package lanewarden.ledger;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;

/** Keys, a fixed clock and an invented ledger for tests. */
final class SampleLedger {
  static final Instant NOON = Instant.parse("2026-05-01T12:00:00.123Z");
  static final Clock CLOCK = Clock.fixed(NOON, ZoneOffset.UTC);
  static final String STATION = "North gate";

  final SigningKey organizer = SigningKey.generate(new SecureRandom());
  final SigningKey official = SigningKey.generate(new SecureRandom());
  final Path file;

  SampleLedger(Path file) {
    this.file = file;
  }

  Ledger create() throws LedgerException {
    return Ledger.create(file, STATION, organizer, CLOCK, System::nanoTime);
  }

  Ledger open() throws LedgerException {
    return Ledger.open(file, CLOCK, System::nanoTime);
  }

  /** A closed ledger: the opening, one enrolment, then this many entries of the official. */
  SampleLedger with(int entries) throws LedgerException {
    try (Ledger ledger = create()) {
      ledger.enrol(organizer, official.publicKey(), "Official Ash");
      for (int i = 0; i < entries; i++) {
        ledger.append(official, List.of(reading(i)));
      }
    }
    return this;
  }

  static Draft reading(int number) {
    return draft(
        "reading", "{\"speed\":\"" + (290 + number % 9) + ".4 ft/s\",\"n\":" + number + "}");
  }

  static Draft draft(String kind, String json) {
    return new Draft(kind, json.getBytes(StandardCharsets.UTF_8));
  }
}
