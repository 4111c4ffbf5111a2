package lanewarden.ledger;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.List;
import lanewarden.ledger.LedgerFault.Kind;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VerificationTest {
  @TempDir Path folder;
  SampleLedger sample;
  List<Entry> entries;

  @BeforeEach
  void prepare() throws LedgerException {
    sample = new SampleLedger(folder.resolve("event.ledger")).with(5);
    entries = new ArrayList<>();
    Verification.of(sample.file, List.of(), examined -> entries.add(examined.entry()));
  }

  private Head headBefore(long sequence) {
    return new Head(sequence - 1, entries.get((int) sequence - 2).hash());
  }

  private List<Kind> kindsAfter(Tampering tampering) throws Exception {
    try (TamperedLedger tampered = new TamperedLedger(sample.file)) {
      tampering.with(tampered);
    }
    return TamperedLedger.kinds(sample.file);
  }

  /** What someone does to the rows. */
  interface Tampering {
    void with(TamperedLedger ledger) throws Exception;
  }

  @Test
  void findsNothingInAnUntouchedLedger() throws LedgerException {
    Verification verification = Verification.of(sample.file);
    assertEquals(List.of(), verification.faults());
    assertTrue(verification.sound());
    assertEquals(7, verification.entries());
    assertEquals(sample.organizer.thumbprint(), verification.organizer().orElseThrow());
    assertEquals("Official Ash", verification.officials().get(0).name());
  }

  @Test
  void leavesTheFolderAsItFoundIt() throws Exception {
    byte[] before = Files.readAllBytes(sample.file);
    Verification.of(sample.file);
    assertArrayEquals(before, Files.readAllBytes(sample.file));
    try (var files = Files.list(folder)) {
      assertEquals(
          List.of("event.ledger", "event.ledger.lock"),
          files.map(file -> file.getFileName().toString()).sorted().toList());
    }
  }

  @Test
  void readsTheLogOfAKilledStationWithoutTouchingIt() throws Exception {
    Path left = Files.createDirectory(folder.resolve("left")).resolve("event.ledger");
    Path log = left.resolveSibling("event.ledger-wal");
    try (Ledger ledger = sample.open()) {
      ledger.append(sample.official, List.of(SampleLedger.reading(6)));
      Files.copy(sample.file, left);
      Files.copy(folder.resolve("event.ledger-wal"), log);
    }
    byte[] file = Files.readAllBytes(left);
    byte[] logged = Files.readAllBytes(log);
    assertEquals(8, Verification.of(left).entries());
    assertArrayEquals(file, Files.readAllBytes(left));
    assertArrayEquals(logged, Files.readAllBytes(log));
  }

  @Test
  void findsDroppedGuards() throws Exception {
    new TamperedLedger(sample.file).close();
    List<LedgerFault> faults = Verification.of(sample.file).faults();
    assertEquals(3, faults.size());
    assertTrue(faults.stream().allMatch(fault -> fault.kind() == Kind.GUARDS_CHANGED));
  }

  @Test
  void findsForeignPartsInTheFile() throws Exception {
    try (TamperedLedger tampered = new TamperedLedger(sample.file)) {
      tampered.execute("CREATE VIEW kind_of_entry AS SELECT 1");
    }
    assertTrue(
        Verification.of(sample.file).faults().stream()
            .anyMatch(fault -> fault.words().contains("kind_of_entry")));
  }

  @Test
  void findsAMissingEntry() throws Exception {
    assertEquals(
        List.of(Kind.GAP), kindsAfter(ledger -> ledger.execute("DELETE FROM entry WHERE seq = 4")));
    assertEquals("Entry 4 is missing.", TamperedLedger.faults(sample.file).get(0).words());
  }

  @Test
  void findsAMissingStretch() throws Exception {
    kindsAfter(ledger -> ledger.execute("DELETE FROM entry WHERE seq IN (4, 5)"));
    assertEquals("Entries 4 to 5 are missing.", TamperedLedger.faults(sample.file).get(0).words());
  }

  @Test
  void findsAnEntryMovedToTheEnd() throws Exception {
    List<Kind> kinds =
        kindsAfter(ledger -> ledger.execute("UPDATE entry SET seq = 8 WHERE seq = 4"));
    assertEquals(List.of(Kind.GAP, Kind.COLUMNS_DISAGREE, Kind.BROKEN_LINK), kinds);
  }

  @Test
  void findsTwoEntriesExchanged() throws Exception {
    List<Kind> kinds =
        kindsAfter(
            ledger -> {
              ledger.put(4, entries.get(4));
              ledger.put(5, entries.get(3));
            });
    assertTrue(kinds.contains(Kind.COLUMNS_DISAGREE));
    assertTrue(kinds.contains(Kind.BROKEN_LINK));
  }

  @Test
  void findsAnEntryReplacedByAnotherOfTheSameOfficial() throws Exception {
    Entry other = TamperedLedger.after(headBefore(4), sample.official, SampleLedger.reading(999));
    assertEquals(List.of(Kind.BROKEN_LINK), kindsAfter(ledger -> ledger.put(4, other)));
  }

  @Test
  void findsAStrangersEntry() throws Exception {
    SigningKey stranger = SigningKey.generate(new SecureRandom());
    Entry forged = TamperedLedger.after(headBefore(8), stranger, SampleLedger.reading(1));
    // headBefore(8) is the head of the whole ledger.
    assertEquals(List.of(Kind.UNKNOWN_SIGNER), kindsAfter(ledger -> ledger.put(8, forged)));
  }

  @Test
  void findsAnEntrySignedBeforeItsSignersEnrolment() throws Exception {
    SigningKey late = SigningKey.generate(new SecureRandom());
    Entry early = TamperedLedger.after(headBefore(8), late, SampleLedger.reading(1));
    Entry enrolment =
        TamperedLedger.after(
            new Head(8, early.hash()),
            sample.organizer,
            KeyNotice.enrolment(late.publicKey(), "Official Birch", Role.OFFICIAL));
    assertEquals(
        List.of(Kind.SIGNED_BEFORE_ENROLMENT),
        kindsAfter(
            ledger -> {
              ledger.put(8, early);
              ledger.put(9, enrolment);
            }));
    assertEquals(
        "Entry 8 is signed by Official Birch, whom only entry 9 enrols.",
        TamperedLedger.faults(sample.file).get(0).words());
  }

  @Test
  void findsAnEnrolmentThatTheOrganizerDidNotSign() throws Exception {
    SigningKey friend = SigningKey.generate(new SecureRandom());
    Entry enrolment =
        TamperedLedger.after(
            headBefore(8),
            sample.official,
            KeyNotice.enrolment(friend.publicKey(), "Friend", Role.OFFICIAL));
    Entry reading =
        TamperedLedger.after(new Head(8, enrolment.hash()), friend, SampleLedger.reading(1));
    assertEquals(
        List.of(Kind.BAD_ENROLMENT, Kind.UNKNOWN_SIGNER),
        kindsAfter(
            ledger -> {
              ledger.put(8, enrolment);
              ledger.put(9, reading);
            }));
  }

  @Test
  void findsAnEnrolmentOfAKeyThatMaySignAlready() throws Exception {
    Entry twice =
        TamperedLedger.after(
            headBefore(8),
            sample.organizer,
            KeyNotice.enrolment(sample.official.publicKey(), "Again", Role.OFFICIAL));
    assertEquals(List.of(Kind.BAD_ENROLMENT), kindsAfter(ledger -> ledger.put(8, twice)));
  }

  @Test
  void findsAnEntryOfAnotherStation() throws Exception {
    Entry foreign =
        TamperedLedger.after(headBefore(8), sample.official, "South gate", SampleLedger.reading(1));
    assertEquals(List.of(Kind.WRONG_STATION), kindsAfter(ledger -> ledger.put(8, foreign)));
  }

  @Test
  void findsASecondOpening() throws Exception {
    Entry second =
        TamperedLedger.after(
            headBefore(8), sample.organizer, KeyNotice.opening(sample.organizer.publicKey()));
    assertEquals(List.of(Kind.BAD_OPENING), kindsAfter(ledger -> ledger.put(8, second)));
  }

  @Test
  void findsAnOpeningThatNamesAnotherKeyThanItsSigners() throws Exception {
    Entry opening =
        TamperedLedger.after(
            new Head(0, Sha256.none()),
            SigningKey.generate(new SecureRandom()),
            KeyNotice.opening(sample.organizer.publicKey()));
    List<Kind> kinds = kindsAfter(ledger -> ledger.put(1, opening));
    assertEquals(Kind.BAD_OPENING, kinds.get(0));
    assertTrue(Verification.of(sample.file).organizer().isEmpty());
  }

  @Test
  void findsALedgerThatDoesNotBeginWithAnOpening() throws Exception {
    Entry first =
        TamperedLedger.after(new Head(0, Sha256.none()), sample.organizer, SampleLedger.reading(1));
    assertEquals(Kind.BAD_OPENING, kindsAfter(ledger -> ledger.put(1, first)).get(0));
  }

  @Test
  void findsALedgerWithoutAnyEntry() throws Exception {
    assertEquals(List.of(Kind.NO_ENTRY), kindsAfter(ledger -> ledger.execute("DELETE FROM entry")));
  }

  @Test
  void findsBytesThatAreNoJws() throws Exception {
    byte[] text = "not a signed entry".getBytes(StandardCharsets.US_ASCII);
    List<Kind> kinds = kindsAfter(ledger -> ledger.set(5, "jws", text));
    assertEquals(List.of(Kind.COLUMNS_DISAGREE, Kind.BAD_JWS, Kind.BROKEN_LINK), kinds);
  }

  @Test
  void findsARightlySignedPayloadOfAnotherForm() throws Exception {
    byte[] payload = "{\"v\":2}".getBytes(StandardCharsets.US_ASCII);
    byte[] jws = Jws.sign(sample.official, payload);
    List<Kind> kinds =
        kindsAfter(
            ledger -> {
              ledger.set(7, "jws", jws);
              ledger.set(7, "hash", Sha256.of(jws).bytes());
            });
    assertEquals(List.of(Kind.BAD_PAYLOAD), kinds);
  }

  @Test
  void listsEveryFaultAndDoesNotStopAtTheFirst() throws Exception {
    List<Kind> kinds =
        kindsAfter(
            ledger -> {
              ledger.execute("DELETE FROM entry WHERE seq = 3");
              ledger.set(5, "prev", new byte[32]);
              ledger.set(6, "hash", new byte[32]);
              ledger.set(7, "jws", new byte[] {'x'});
            });
    assertEquals(
        List.of(
            Kind.GAP,
            Kind.COLUMNS_DISAGREE,
            Kind.COLUMNS_DISAGREE,
            Kind.COLUMNS_DISAGREE,
            Kind.BAD_JWS),
        kinds);
    assertEquals(
        List.of(3L, 5L, 6L, 7L, 7L),
        TamperedLedger.faults(sample.file).stream().map(LedgerFault::sequence).toList());
  }

  @Test
  void handsOverEveryReadableEntryWithItsOwnFaults() throws Exception {
    kindsAfter(ledger -> ledger.set(5, "prev", new byte[32]));
    List<Examined> examined = new ArrayList<>();
    Verification.of(sample.file, List.of(), examined::add);
    assertEquals(7, examined.size());
    for (Examined each : examined) {
      assertEquals(each.entry().sequence() != 5, each.sound());
    }
  }

  @Test
  void findsACutTailByAPrintedHead() throws Exception {
    PrintedHead slip = Verification.of(sample.file).head().orElseThrow().printed();
    kindsAfter(ledger -> ledger.execute("DELETE FROM entry WHERE seq > 5"));
    List<LedgerFault> faults = Verification.of(sample.file, List.of(slip), examined -> {}).faults();
    assertEquals(Kind.CUT_TAIL, faults.get(faults.size() - 1).kind());
  }

  @Test
  void findsARewrittenPastByAPrintedHead() throws Exception {
    PrintedHead slip = new Head(4, entries.get(3).hash()).printed();
    PrintedHead other = PrintedHead.parse("4-0123456789ab");
    assertTrue(Verification.of(sample.file, List.of(slip), examined -> {}).sound());
    List<LedgerFault> faults =
        Verification.of(sample.file, List.of(slip, other), examined -> {}).faults();
    assertEquals(List.of(Kind.OTHER_HEAD), faults.stream().map(LedgerFault::kind).toList());
  }

  @Test
  void isRefusedByTheWriterWhenUnsound() throws Exception {
    kindsAfter(ledger -> ledger.set(5, "prev", new byte[32]));
    LedgerException refused = assertThrows(LedgerException.class, sample::open);
    assertEquals("LEDGER-UNSOUND", refused.code());
    assertFalse(refused.remedy().isBlank());
  }

  @Test
  void checksTheSignaturesOfManyBatches() throws Exception {
    SampleLedger large = new SampleLedger(folder.resolve("large.ledger"));
    try (Ledger ledger = large.create()) {
      ledger.enrol(large.organizer, large.official.publicKey(), "Official Ash");
      List<Draft> many = new ArrayList<>();
      for (int i = 0; i < 3000; i++) {
        many.add(SampleLedger.reading(i));
      }
      ledger.append(large.official, many);
    }
    List<Long> order = new ArrayList<>();
    Verification.of(large.file, List.of(), each -> order.add(each.entry().sequence()));
    assertEquals(3002, order.size());
    for (int i = 0; i < order.size(); i++) {
      assertEquals(i + 1L, order.get(i));
    }
  }
}
