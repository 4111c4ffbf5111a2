package lanewarden.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No bit of an entry can change without verification finding it. */
class FlippedBitTest {
  @TempDir Path folder;
  SampleLedger sample;
  List<Entry> entries = new ArrayList<>();

  @BeforeEach
  void prepare() throws LedgerException {
    sample = new SampleLedger(folder.resolve("event.ledger")).with(3);
    Verification.of(sample.file, List.of(), examined -> entries.add(examined.entry()));
  }

  @Test
  void findsAFlippedBitInEveryByteOfEveryColumn() throws Exception {
    try (TamperedLedger tampered = new TamperedLedger(sample.file)) {
      for (Entry entry : entries) {
        flipAll(tampered, entry, "prev", entry.previous().bytes(), false);
        flipAll(tampered, entry, "hash", entry.hash().bytes(), false);
        flipAll(tampered, entry, "jws", entry.jws(), false);
      }
      assertEquals(List.of(), TamperedLedger.faults(sample.file));
    }
  }

  /**
   * The last entry has no successor whose link would tell: here each of the eight bits is tried.
   */
  @Test
  void findsEveryFlippedBitOfTheLastEntry() throws Exception {
    Entry last = entries.get(entries.size() - 1);
    try (TamperedLedger tampered = new TamperedLedger(sample.file)) {
      flipAll(tampered, last, "jws", last.jws(), true);
    }
  }

  /** As above, by someone who also mends the hash beside the bytes: the signature alone tells. */
  @Test
  void findsEveryFlippedByteWhenTheHashColumnIsMended() throws Exception {
    Entry last = entries.get(entries.size() - 1);
    try (TamperedLedger tampered = new TamperedLedger(sample.file)) {
      for (int at = 0; at < last.jws().length; at++) {
        byte[] flipped = last.jws();
        flipped[at] ^= (byte) (1 << at % 6);
        tampered.set(last.sequence(), "jws", flipped);
        tampered.set(last.sequence(), "hash", Sha256.of(flipped).bytes());
        assertNames(last, "jws", at);
      }
    }
  }

  @Test
  void findsEveryFlippedBitOfASequence() throws Exception {
    for (Entry entry : entries) {
      for (int bit = 0; bit < Long.SIZE; bit++) {
        long other = entry.sequence() ^ 1L << bit;
        if (other >= 1 && other <= entries.size()) {
          // Another row has that number; the database itself would refuse.
          continue;
        }
        try (TamperedLedger tampered = new TamperedLedger(sample.file)) {
          tampered.execute("PRAGMA ignore_check_constraints = on");
          tampered.execute("UPDATE entry SET seq = " + other + " WHERE seq = " + entry.sequence());
          assertFalse(TamperedLedger.faults(sample.file).isEmpty(), entry + " bit " + bit);
          tampered.execute("UPDATE entry SET seq = " + entry.sequence() + " WHERE seq = " + other);
        }
      }
    }
    assertEquals(List.of(), TamperedLedger.faults(sample.file));
  }

  private void flipAll(
      TamperedLedger tampered, Entry entry, String column, byte[] bytes, boolean everyBit)
      throws Exception {
    for (int at = 0; at < bytes.length; at++) {
      for (int bit = 0; bit < (everyBit ? Byte.SIZE : 1); bit++) {
        byte[] flipped = bytes.clone();
        flipped[at] ^= (byte) (1 << (at + bit) % Byte.SIZE);
        tampered.set(entry.sequence(), column, flipped);
        assertNames(entry, column, at);
      }
    }
    tampered.set(entry.sequence(), column, bytes);
  }

  private void assertNames(Entry entry, String column, int at) throws LedgerException {
    assertTrue(
        TamperedLedger.faults(sample.file).stream()
            .anyMatch(fault -> fault.sequence() == entry.sequence()),
        () -> "entry " + entry.sequence() + " " + column + " byte " + at);
  }

  /**
   * Flips bits of the file itself where entries lie. The file is then refused, or found unsound; a
   * flip that only touches what belongs to no entry may pass, but then every entry is as it was.
   */
  @Test
  void neverTakesAFlippedFileForSoundWithOtherEntries() throws Exception {
    byte[] whole = Files.readAllBytes(sample.file);
    Path flippedFile = folder.resolve("flipped.ledger");
    int found = 0;
    int tried = 0;
    for (int at = 0; at < whole.length; at += 13) {
      byte[] flipped = whole.clone();
      flipped[at] ^= (byte) (1 << at % Byte.SIZE);
      Files.write(flippedFile, flipped);
      tried++;
      found += isFound(flippedFile) ? 1 : 0;
    }
    assertTrue(found > 0 && found < tried, found + " of " + tried);
  }

  @Test
  void findsFlippedBytesOfTheStoredBytesInTheFile() throws Exception {
    byte[] whole = Files.readAllBytes(sample.file);
    Path flippedFile = folder.resolve("flipped.ledger");
    for (Entry entry : entries) {
      int start = indexOf(whole, entry.jws());
      for (int at = start; at < start + entry.jws().length; at += 5) {
        byte[] flipped = whole.clone();
        flipped[at] ^= (byte) (1 << at % Byte.SIZE);
        Files.write(flippedFile, flipped);
        assertTrue(isFound(flippedFile), "byte " + at);
      }
    }
  }

  private boolean isFound(Path file) throws IOException {
    List<Entry> read = new ArrayList<>();
    boolean found;
    try {
      found = !Verification.of(file, List.of(), each -> read.add(each.entry())).sound();
    } catch (LedgerException refused) {
      return true;
    } finally {
      Files.deleteIfExists(file.resolveSibling(file.getFileName() + "-wal"));
      Files.deleteIfExists(file.resolveSibling(file.getFileName() + "-shm"));
    }
    assertTrue(found || read.equals(entries), () -> "sound, but not the same entries: " + file);
    return found;
  }

  private static int indexOf(byte[] whole, byte[] part) {
    for (int at = 0; at <= whole.length - part.length; at++) {
      if (ByteBuffer.wrap(whole, at, part.length).equals(ByteBuffer.wrap(part))
          && Arrays.equals(whole, at, at + part.length, part, 0, part.length)) {
        return at;
      }
    }
    throw new AssertionError("The bytes are not in one piece in the file.");
  }
}
