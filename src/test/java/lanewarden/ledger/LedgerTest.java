package lanewarden.ledger;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LedgerTest {
  @TempDir Path folder;
  SampleLedger sample;

  @BeforeEach
  void prepare() {
    sample = new SampleLedger(folder.resolve("event.ledger"));
  }

  @Test
  void beginsWithTheOrganizersKeyAndTheStation() throws LedgerException {
    try (Ledger ledger = sample.create()) {
      Entry opening = ledger.entries().get(0);
      assertEquals("ledger-opened", opening.kind());
      assertEquals(SampleLedger.STATION, opening.station());
      assertEquals(
          "{\"organizer\":" + sample.organizer.publicKey().jwk() + "}",
          new String(opening.body(), StandardCharsets.UTF_8));
      assertEquals(sample.organizer.thumbprint(), ledger.organizer());
      assertEquals("0".repeat(64), opening.previous().hex());
    }
  }

  @Test
  void chainsEachEntryToTheBytesOfTheOneBefore() throws LedgerException {
    sample.with(3);
    try (Ledger ledger = sample.open()) {
      List<Entry> entries = ledger.entries();
      for (int i = 1; i < entries.size(); i++) {
        assertEquals(Sha256.of(entries.get(i - 1).jws()), entries.get(i).previous());
        assertEquals(i + 1, entries.get(i).sequence());
      }
    }
  }

  @Test
  void keepsTheBodysBytesAsGiven() throws LedgerException {
    String odd = "{ \"speed\" :\t\"299.80 ft/s\",\n \"note\":\"caf\u00e9 \ud83c\udff9\" }";
    sample.with(0);
    try (Ledger ledger = sample.open()) {
      Entry entry = ledger.append(sample.official, List.of(SampleLedger.draft("note", odd))).get(0);
      assertArrayEquals(odd.getBytes(StandardCharsets.UTF_8), entry.body());
      assertArrayEquals(entry.body(), ledger.entries().get(2).body());
    }
  }

  @Test
  void comesBackAfterClosingAsItWas() throws LedgerException {
    sample.with(5);
    Head head;
    try (Ledger ledger = sample.open()) {
      head = ledger.head();
      assertEquals(7, head.sequence());
      assertEquals(SampleLedger.STATION, ledger.station());
      assertEquals(
          List.of("Official Ash"), ledger.officials().stream().map(Enrolled::name).toList());
    }
    try (Ledger again = sample.open()) {
      assertEquals(head, again.head());
      assertEquals(
          8, again.append(sample.official, List.of(SampleLedger.reading(9))).get(0).sequence());
    }
    assertTrue(Verification.of(sample.file).sound());
  }

  @Test
  void takesTheTimeFromTheClockAndSecondsFromTheNanoseconds() throws LedgerException {
    AtomicLong nanos = new AtomicLong(5_000_000_000L);
    Instant at = Instant.parse("2026-06-30T23:59:59.987654321Z");
    Clock clock = Clock.fixed(at, ZoneOffset.ofHours(2));
    sample.with(0);
    try (Ledger ledger = Ledger.open(sample.file, clock, nanos::get)) {
      nanos.addAndGet(12_345_678_999L);
      Entry entry = ledger.append(sample.official, List.of(SampleLedger.reading(1))).get(0);
      assertEquals(Instant.parse("2026-06-30T23:59:59.987Z"), entry.at());
      assertEquals(new BigDecimal("12.345678"), entry.monotonicSeconds());
      assertEquals(entry.at(), ledger.entries().get(2).at());
    }
  }

  @Test
  void appendsSeveralDraftsTogether() throws LedgerException {
    sample.with(0);
    try (Ledger ledger = sample.open()) {
      List<Entry> both =
          ledger.append(
              sample.official,
              List.of(SampleLedger.reading(1), SampleLedger.draft("verdict", "{}")));
      assertEquals(both.get(0).hash(), both.get(1).previous());
      assertEquals(new Head(4, both.get(1).hash()), ledger.head());
    }
  }

  @Test
  void refusesSignerWhoIsNotEnrolled() throws LedgerException {
    sample.with(0);
    SigningKey stranger = SigningKey.generate(new SecureRandom());
    try (Ledger ledger = sample.open()) {
      LedgerException refused =
          assertThrows(
              LedgerException.class,
              () -> ledger.append(stranger, List.of(SampleLedger.reading(1))));
      assertEquals("LEDGER-NOT-ENROLLED", refused.code());
      assertEquals(2, ledger.head().sequence());
    }
  }

  @Test
  void letsTheOrganizerSignWithoutEnrolment() throws LedgerException {
    try (Ledger ledger = sample.create()) {
      assertEquals(
          2, ledger.append(sample.organizer, List.of(SampleLedger.reading(1))).get(0).sequence());
    }
    assertTrue(Verification.of(sample.file).sound());
  }

  @Test
  void refusesEnrolmentByAnOfficial() throws LedgerException {
    sample.with(0);
    SigningKey other = SigningKey.generate(new SecureRandom());
    try (Ledger ledger = sample.open()) {
      LedgerException refused =
          assertThrows(
              LedgerException.class,
              () -> ledger.enrol(sample.official, other.publicKey(), "Official Birch"));
      assertEquals("LEDGER-NOT-ORGANIZER", refused.code());
    }
  }

  @Test
  void aJudgeIsEnrolledAsOneAndStaysOne() throws LedgerException {
    sample.with(0);
    SigningKey judge = SigningKey.generate(new SecureRandom());
    try (Ledger ledger = sample.open()) {
      Entry entry = ledger.enrol(sample.organizer, judge.publicKey(), "Judge \"Elm\"", Role.JUDGE);
      String body = new String(entry.body(), StandardCharsets.UTF_8);
      assertTrue(body.endsWith(",\"name\":\"Judge \\\"Elm\\\"\",\"role\":\"judge\"}"), body);
      assertEquals(Optional.of(ledger.officials().get(1)), Enrolled.of(entry));
    }
    assertEquals(
        List.of(Role.OFFICIAL, Role.JUDGE),
        Verification.of(sample.file).officials().stream().map(Enrolled::role).toList());
  }

  @Test
  void anEnrolmentWithoutARoleSaysNothingOfOne() throws LedgerException {
    Entry entry;
    try (Ledger ledger = sample.with(0).open()) {
      entry = ledger.entries().get(1);
    }
    assertFalse(new String(entry.body(), StandardCharsets.UTF_8).contains("role"));
    assertFalse(Enrolled.of(entry).orElseThrow().isJudge());
  }

  @Test
  void refusesToEnrolTheSameKeyTwice() throws LedgerException {
    sample.with(0);
    try (Ledger ledger = sample.open()) {
      LedgerException refused =
          assertThrows(
              LedgerException.class,
              () -> ledger.enrol(sample.organizer, sample.official.publicKey(), "Again"));
      assertEquals("LEDGER-ENROLLED", refused.code());
    }
  }

  @Test
  void refusesDraftOfAKindThatIsTheLedgersOwn() throws LedgerException {
    try (Ledger ledger = sample.create()) {
      Draft forged = SampleLedger.draft("official-enrolled", "{}");
      assertThrows(
          IllegalArgumentException.class, () -> ledger.append(sample.organizer, List.of(forged)));
    }
  }

  @Test
  void neverOverwritesWhenCreating() throws Exception {
    Files.writeString(sample.file, "a shopping list");
    LedgerException refused = assertThrows(LedgerException.class, sample::create);
    assertEquals("LEDGER-EXISTS", refused.code());
    assertEquals("a shopping list", Files.readString(sample.file));
  }

  @Test
  void neverCreatesWhenOpening() {
    LedgerException refused = assertThrows(LedgerException.class, sample::open);
    assertEquals("LEDGER-MISSING", refused.code());
    assertFalse(Files.exists(sample.file));
  }

  @Test
  void refusesASecondWriter() throws LedgerException {
    sample.with(0);
    try (Ledger first = sample.open()) {
      for (int attempt = 0; attempt < 2; attempt++) {
        LedgerException refused = assertThrows(LedgerException.class, sample::open);
        assertEquals("LEDGER-IN-USE", refused.code());
      }
      assertEquals(
          3, first.append(sample.official, List.of(SampleLedger.reading(1))).get(0).sequence());
    }
    sample.open().close();
  }

  @Test
  void refusesToAppendAfterClosing() throws LedgerException {
    Ledger ledger = sample.create();
    ledger.close();
    ledger.close();
    LedgerException refused =
        assertThrows(
            LedgerException.class,
            () -> ledger.append(sample.organizer, List.of(SampleLedger.reading(1))));
    assertEquals("LEDGER-CLOSED", refused.code());
  }

  @Test
  void refusesStationNamesThatWouldNeedEscapes() {
    for (String name : List.of("", " ", "a\"b", "a\\b", "a\nb", "x".repeat(101), "\ud83c")) {
      assertThrows(
          IllegalArgumentException.class,
          () ->
              Ledger.create(
                  sample.file, name, sample.organizer, SampleLedger.CLOCK, System::nanoTime),
          name);
    }
  }

  @Test
  void takesStationNamesInAnyScript() throws LedgerException {
    String name = "\u041b\u0438\u043d\u0438\u044f 3 \ud83c\udff9";
    Ledger.create(sample.file, name, sample.organizer, SampleLedger.CLOCK, System::nanoTime)
        .close();
    assertEquals(name, Verification.of(sample.file).station().orElseThrow());
  }

  @Test
  void livesInFoldersWithOddNames() throws Exception {
    Path odd = Files.createDirectory(folder.resolve("a b?c=d #1 100% \u00e9"));
    SampleLedger there = new SampleLedger(odd.resolve("event 1.ledger")).with(2);
    assertEquals(4, Verification.of(there.file).entries());
    assertTrue(Files.exists(there.file));
  }

  @Test
  void leavesOneFileAndTheLockWhenClosed() throws Exception {
    sample.with(3);
    sample.open().close();
    List<String> names = new ArrayList<>();
    try (var files = Files.list(folder)) {
      files.forEach(file -> names.add(file.getFileName().toString()));
    }
    names.sort(null);
    assertEquals(List.of("event.ledger", "event.ledger.lock"), names);
  }

  @Test
  void isReadWhileAWriterAppends() throws LedgerException {
    sample.with(1);
    try (Ledger ledger = sample.open()) {
      ledger.append(sample.official, List.of(SampleLedger.reading(2)));
      Verification beside = Verification.of(sample.file);
      assertTrue(beside.sound());
      assertEquals(ledger.head(), beside.head().orElseThrow());
      ledger.append(sample.official, List.of(SampleLedger.reading(3)));
      assertEquals(5, ledger.entries().size());
    }
  }

  @Test
  void saysSoWhenItsEntriesWereChangedWhileItWasOpen() throws Exception {
    sample.with(3);
    try (Ledger ledger = sample.open()) {
      try (TamperedLedger tampered = new TamperedLedger(sample.file)) {
        tampered.set(4, "prev", new byte[32]);
      }
      LedgerException refused = assertThrows(LedgerException.class, ledger::entries);
      assertEquals("LEDGER-CHANGED", refused.code());
    }
  }

  @Test
  void saysSoWhenItsTailWasCutWhileItWasOpen() throws Exception {
    sample.with(3);
    try (Ledger ledger = sample.open()) {
      try (TamperedLedger tampered = new TamperedLedger(sample.file)) {
        tampered.execute("DELETE FROM entry WHERE seq = 5");
      }
      assertEquals("LEDGER-CHANGED", assertThrows(LedgerException.class, ledger::entries).code());
    }
  }

  @Test
  void letsSeveralThreadsAppendInTurn() throws Exception {
    sample.with(0);
    try (Ledger ledger = sample.open()) {
      List<Thread> threads = new ArrayList<>();
      for (int t = 0; t < 4; t++) {
        Thread thread =
            new Thread(
                () -> {
                  for (int i = 0; i < 20; i++) {
                    try {
                      ledger.append(sample.official, List.of(SampleLedger.reading(i)));
                    } catch (LedgerException refused) {
                      throw new IllegalStateException(refused);
                    }
                  }
                });
        threads.add(thread);
        thread.start();
      }
      for (Thread thread : threads) {
        thread.join();
      }
      assertEquals(82, ledger.head().sequence());
    }
    assertTrue(Verification.of(sample.file).sound());
  }
}
