package lanewarden.ledger;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import lanewarden.ledger.LedgerFault.Kind;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Entries leave a ledger as lines, prove the same there, and become the same ledger again. */
class ExportedEntriesTest {
  @TempDir Path folder;
  SampleLedger sample;
  Path lines;

  @BeforeEach
  void export() throws Exception {
    sample = new SampleLedger(folder.resolve("event.ledger")).with(2);
    try (Ledger ledger = sample.open()) {
      ledger.append(
          sample.official,
          List.of(
              SampleLedger.draft("note", "{ \"who\" :\r\n\t\"Zo\u00eb \ud83c\udff9 \u2028\"\n}"),
              SampleLedger.reading(9)));
    }
    lines = Files.write(folder.resolve("entries.jsonl"), exported(sample.file));
  }

  private static byte[] exported(Path ledger) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (Entry entry : entries(ledger)) {
      ExportedEntries.write(entry, out);
    }
    return out.toByteArray();
  }

  private static List<Entry> entries(Path ledger) throws LedgerException {
    List<Entry> entries = new ArrayList<>();
    Verification.of(ledger, List.of(), examined -> entries.add(examined.entry()));
    return entries;
  }

  private List<LedgerFault> faults() throws LedgerException {
    return ExportedEntries.verify(lines, List.of(), examined -> {}).faults();
  }

  private List<String> faultsAs(List<String> changed) throws Exception {
    Files.writeString(lines, String.join("\n", changed) + "\n");
    return faults().stream().map(f -> f.kind() + " " + f.sequence()).toList();
  }

  private List<String> read() throws IOException {
    return new ArrayList<>(List.of(Files.readString(lines).split("\n", -1)).subList(0, 6));
  }

  @Test
  void eachLineIsOneJsonObjectThatRepeatsWhatIsSigned() throws Exception {
    ObjectMapper json = new ObjectMapper();
    assertEquals(6, Files.readString(lines).chars().filter(c -> c == '\n').count());
    for (String line : read()) {
      JsonNode members = json.readTree(line);
      byte[] payload =
          Base64.getUrlDecoder().decode(members.get("jws").asText().split("\\.", -1)[1]);
      assertEquals(json.readTree(payload), members.get("entry"));
    }
  }

  @Test
  void anUntouchedExportIsFoundSound() throws Exception {
    Verification ledger = Verification.of(sample.file);
    Verification export =
        ExportedEntries.verify(
            lines, List.of(ledger.head().orElseThrow().printed()), examined -> {});
    assertEquals(List.of(), export.faults());
    assertEquals(ledger.head(), export.head());
    assertEquals(ledger.organizer(), export.organizer());
    assertEquals(ledger.officials().size(), export.officials().size());
  }

  @Test
  void whatIsRemovedSwappedRepeatedOrInsertedIsNamed() throws Exception {
    List<String> whole = read();
    List<String> removed = new ArrayList<>(whole);
    removed.remove(3);
    assertEquals(List.of("GAP 4"), faultsAs(removed));
    List<String> swapped = new ArrayList<>(whole);
    Collections.swap(swapped, 3, 4);
    assertEquals(
        List.of("GAP 4", "REPEATED 4", "BROKEN_LINK 4", "BROKEN_LINK 6"), faultsAs(swapped));
    List<String> repeated = new ArrayList<>(whole);
    repeated.add(3, whole.get(2));
    assertEquals(List.of("REPEATED 3", "BROKEN_LINK 3"), faultsAs(repeated));
    List<String> inserted = new ArrayList<>(whole);
    SigningKey stranger = SigningKey.generate(new SecureRandom());
    Entry second = entries(sample.file).get(1);
    Entry forged =
        TamperedLedger.after(
            new Head(2, second.hash()), stranger, SampleLedger.draft("reading", "{}"));
    inserted.add(2, new String(EntryLine.of(forged), StandardCharsets.UTF_8));
    assertEquals(List.of("UNKNOWN_SIGNER 3", "REPEATED 3", "BROKEN_LINK 3"), faultsAs(inserted));
  }

  @Test
  void aLineThatTellsSomethingElseThanIsSignedIsNamed() throws Exception {
    List<String> changed = read();
    changed.set(2, changed.get(2).replace("290.4 ft/s", "280.4 ft/s"));
    assertEquals(List.of("LINE_DISAGREES 3"), faultsAs(changed));
  }

  @Test
  void linesEndedAnotherWayAreNamedEachAndTheirSignaturesStillHold() throws Exception {
    Files.writeString(lines, Files.readString(lines).replace("\n", "\r\n"));
    assertEquals(6, faults().size());
    assertTrue(faults().stream().allMatch(f -> f.kind() == Kind.LINE_DISAGREES));
  }

  @Test
  void aCutTailShowsAgainstAHead() throws Exception {
    PrintedHead head = Verification.of(sample.file).head().orElseThrow().printed();
    List<String> cut = read().subList(0, 5);
    assertEquals(List.of(), faultsAs(cut));
    assertEquals(
        List.of(Kind.CUT_TAIL),
        ExportedEntries.verify(lines, List.of(head), examined -> {}).faults().stream()
            .map(LedgerFault::kind)
            .toList());
  }

  @Test
  void anEntrySignedBeforeItsEnrolmentIsReadAgainAndItsSignatureTried() throws Exception {
    SigningKey late = SigningKey.generate(new SecureRandom());
    List<String> changed = read();
    Entry last = entries(sample.file).get(5);
    Entry early =
        TamperedLedger.after(
            new Head(6, last.hash()), late, SampleLedger.draft("reading", "{\"n\":1}"));
    String jws = new String(early.jws(), StandardCharsets.US_ASCII);
    char other = jws.charAt(jws.length() - 9) == 'A' ? 'B' : 'A';
    String broken = jws.substring(0, jws.length() - 9) + other + jws.substring(jws.length() - 8);
    changed.add(new String(EntryLine.of(early), StandardCharsets.UTF_8).replace(jws, broken));
    Head head = new Head(7, Sha256.of(broken.getBytes(StandardCharsets.US_ASCII)));
    // So many between them that the key is not known yet when the early entry is examined
    for (int i = 0; i < 600; i++) {
      Entry between = TamperedLedger.after(head, sample.official, SampleLedger.reading(i));
      changed.add(new String(EntryLine.of(between), StandardCharsets.UTF_8));
      head = new Head(between.sequence(), between.hash());
    }
    Entry enrolment =
        TamperedLedger.after(
            head,
            sample.organizer,
            KeyNotice.enrolment(late.publicKey(), "Official Late", Role.OFFICIAL));
    changed.add(new String(EntryLine.of(enrolment), StandardCharsets.UTF_8));
    assertEquals(List.of("SIGNED_BEFORE_ENROLMENT 7", "BAD_SIGNATURE 7"), faultsAs(changed));
  }

  @Test
  void theImportedLedgerHoldsTheSameBytesAndCanBeGoneOnWith() throws Exception {
    Path copy = folder.resolve("copy.ledger");
    assertTrue(ExportedEntries.makeLedger(lines, copy, List.of()).sound());
    assertEquals(entries(sample.file), entries(copy));
    assertArrayEquals(Files.readAllBytes(lines), exported(copy));
    assertEquals(List.of(), Verification.of(copy).faults());
    try (Ledger ledger = Ledger.open(copy, SampleLedger.CLOCK, System::nanoTime)) {
      assertEquals(
          7, ledger.append(sample.official, List.of(SampleLedger.reading(1))).get(0).sequence());
    }
    assertEquals(List.of(), leftovers());
  }

  @Test
  void nothingIsMadeOfADamagedExport() throws Exception {
    List<String> changed = read();
    changed.remove(4);
    Files.writeString(lines, String.join("\n", changed) + "\n");
    Path copy = folder.resolve("copy.ledger");
    assertEquals(
        List.of(Kind.GAP),
        ExportedEntries.makeLedger(lines, copy, List.of()).faults().stream()
            .map(LedgerFault::kind)
            .toList());
    assertFalse(Files.exists(copy));
    assertEquals(List.of(), leftovers());
  }

  @Test
  void neverOverwritesALedger() {
    LedgerException refused =
        assertThrows(
            LedgerException.class, () -> ExportedEntries.makeLedger(lines, sample.file, List.of()));
    assertEquals("LEDGER-EXISTS", refused.code());
  }

  @Test
  void aFileThatIsNotThereIsSaidSo() {
    Path none = folder.resolve("none.jsonl");
    LedgerException refused =
        assertThrows(
            LedgerException.class, () -> ExportedEntries.verify(none, List.of(), examined -> {}));
    assertEquals("LEDGER-MISSING", refused.code());
  }

  /** A little more than one transaction, so that both a full and a begun one are written. */
  @Test
  void importsMoreThanOneTransaction() throws Exception {
    SampleLedger big = new SampleLedger(folder.resolve("long.ledger"));
    try (Ledger ledger = big.create()) {
      List<Draft> many = new ArrayList<>();
      for (int i = 0; i < 1100; i++) {
        many.add(SampleLedger.reading(i));
      }
      ledger.append(big.organizer, many);
    }
    Files.write(lines, exported(big.file));
    Path copy = folder.resolve("copy.ledger");
    assertEquals(1101, ExportedEntries.makeLedger(lines, copy, List.of()).entries());
    assertEquals(Verification.of(big.file).head(), Verification.of(copy).head());
  }

  private List<String> leftovers() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).filter(n -> n.startsWith(".")).toList();
    }
  }
}
