package lanewarden.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.List;
import lanewarden.ledger.LedgerFault.Kind;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An official's key can be suspended, enrolled again, and replaced by another. */
class SuspensionTest {
  @TempDir Path folder;
  SampleLedger sample;

  @BeforeEach
  void prepare() throws LedgerException {
    sample = new SampleLedger(folder.resolve("event.ledger")).with(2);
  }

  private VerifyingKey ash() {
    return sample.official.publicKey();
  }

  private static String codeOf(Act act) {
    return assertThrows(LedgerException.class, act::run).code();
  }

  private interface Act {
    void run() throws Exception;
  }

  @Test
  void fromTheNextEntryOnTheKeySignsNothing() throws Exception {
    try (Ledger ledger = sample.open()) {
      Entry suspension = ledger.suspend(sample.organizer, ash(), "the laptop was stolen");
      assertEquals("official-suspended", suspension.kind());
      LedgerException refused =
          assertThrows(
              LedgerException.class,
              () -> ledger.append(sample.official, List.of(SampleLedger.reading(1))));
      assertEquals("LEDGER-SUSPENDED", refused.code());
      assertTrue(refused.why().contains("Official Ash with entry 5"), refused.why());
      assertTrue(refused.why().endsWith("the laptop was stolen"), refused.why());
    }
    Verification verification = Verification.of(sample.file);
    assertEquals(List.of(), verification.faults());
    assertEquals("Official Ash", verification.officials().get(0).name());
    Suspension found = verification.suspensions().get(0);
    assertEquals(5, found.sequence());
    assertEquals("the laptop was stolen", found.reason());
  }

  @Test
  void staysSuspendedWhenTheLedgerIsOpenedAgain() throws Exception {
    try (Ledger ledger = sample.open()) {
      ledger.suspend(sample.organizer, ash(), "left the event");
    }
    try (Ledger ledger = sample.open()) {
      assertEquals(
          "LEDGER-SUSPENDED",
          codeOf(() -> ledger.append(sample.official, List.of(SampleLedger.reading(1)))));
      ledger.enrol(sample.organizer, ash(), "Official Ash");
      ledger.append(sample.official, List.of(SampleLedger.reading(1)));
    }
    assertTrue(Verification.of(sample.file).sound());
    assertEquals(2, Verification.of(sample.file).officials().size());
  }

  @Test
  void isReplacedByAnotherKeyOfTheSameNameInOneStep() throws Exception {
    SigningKey fresh = SigningKey.generate(new SecureRandom());
    try (Ledger ledger = sample.open()) {
      List<Entry> written =
          ledger.replace(sample.organizer, ash(), fresh.publicKey(), "the passphrase is lost");
      assertEquals(
          List.of("official-suspended", "official-enrolled"),
          written.stream().map(Entry::kind).toList());
      assertEquals("Official Ash", ledger.official(fresh.thumbprint()).orElseThrow().name());
      ledger.append(fresh, List.of(SampleLedger.reading(1)));
    }
    assertTrue(Verification.of(sample.file).sound());
  }

  @Test
  void onlyTheOrganizerSuspendsAndOnlyWhoStands() throws Exception {
    SigningKey stranger = SigningKey.generate(new SecureRandom());
    try (Ledger ledger = sample.open()) {
      assertEquals(
          "LEDGER-NOT-ORGANIZER", codeOf(() -> ledger.suspend(sample.official, ash(), "why")));
      assertEquals(
          "LEDGER-NOT-ENROLLED",
          codeOf(() -> ledger.suspend(sample.organizer, stranger.publicKey(), "why")));
      assertEquals(
          "LEDGER-NOT-ENROLLED",
          codeOf(() -> ledger.suspend(sample.organizer, sample.organizer.publicKey(), "why")),
          "the root of trust stands as long as the ledger");
      ledger.suspend(sample.organizer, ash(), "why");
      assertEquals(
          "LEDGER-SUSPENDED", codeOf(() -> ledger.suspend(sample.organizer, ash(), "again")));
      assertThrows(
          IllegalArgumentException.class, () -> ledger.suspend(sample.organizer, ash(), " "));
      assertThrows(
          IllegalArgumentException.class,
          () ->
              ledger.append(
                  sample.organizer, List.of(SampleLedger.draft("official-suspended", "{}"))));
    }
  }

  private Head head() throws LedgerException {
    return Verification.of(sample.file).head().orElseThrow();
  }

  private static Head after(Entry entry) {
    return new Head(entry.sequence(), entry.hash());
  }

  private List<LedgerFault> with(Entry... entries) throws Exception {
    try (TamperedLedger tampered = new TamperedLedger(sample.file)) {
      for (Entry entry : entries) {
        tampered.put(entry.sequence(), entry);
      }
    }
    return TamperedLedger.faults(sample.file);
  }

  @Test
  void anEntrySignedWhileSuspendedIsFoundAndNamed() throws Exception {
    Entry suspension =
        TamperedLedger.after(head(), sample.organizer, KeyNotice.suspension(ash(), "left"));
    Entry first = TamperedLedger.after(after(suspension), sample.official, SampleLedger.reading(1));
    Entry second = TamperedLedger.after(after(first), sample.organizer, SampleLedger.reading(2));
    List<LedgerFault> faults = with(suspension, first, second);
    assertEquals(
        List.of(
            new LedgerFault(
                6,
                Kind.SIGNED_WHILE_SUSPENDED,
                "Entry 6 is signed by Official Ash, whom entry 5 had suspended.")),
        faults);
  }

  @Test
  void aSuspensionThatIsNoneIsFoundAndChangesNothing() throws Exception {
    Entry byOfficial =
        TamperedLedger.after(head(), sample.official, KeyNotice.suspension(ash(), "left"));
    Entry ofOrganizer =
        TamperedLedger.after(
            after(byOfficial),
            sample.organizer,
            KeyNotice.suspension(sample.organizer.publicKey(), "left"));
    Entry withoutReason =
        TamperedLedger.after(
            after(ofOrganizer),
            sample.organizer,
            SampleLedger.draft("official-suspended", "{\"official\":" + ash().jwk() + "}"));
    Entry later =
        TamperedLedger.after(after(withoutReason), sample.official, SampleLedger.reading(1));
    List<LedgerFault> faults = with(byOfficial, ofOrganizer, withoutReason, later);
    assertEquals(
        List.of(Kind.BAD_SUSPENSION, Kind.BAD_SUSPENSION, Kind.BAD_SUSPENSION),
        faults.stream().map(LedgerFault::kind).toList());
    assertEquals(
        "Entry 5 suspends an official, but the organizer did not sign it.", faults.get(0).words());
  }
}
