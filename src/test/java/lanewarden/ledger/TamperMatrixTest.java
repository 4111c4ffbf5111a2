package lanewarden.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewarden.ledger.LedgerFault.Kind;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every way in which a ledger is tampered with is found, and named for what it is.
 *
 * <p>The ledger: 1 opened, 2 and 3 enrol Ash and Birch, 4 adopts a rule book (organizer), 5 to 8
 * readings (Ash), 9 suspends Ash, 10 and 11 readings (Birch). Whoever tampers knows the format and
 * mends the columns beside what is changed; so only signatures, links and roll can tell.
 */
class TamperMatrixTest {
  private static final SigningKey ORGANIZER = SigningKey.generate(new SecureRandom());
  private static final SigningKey ASH = SigningKey.generate(new SecureRandom());
  private static final SigningKey BIRCH = SigningKey.generate(new SecureRandom());
  private static final SigningKey STRANGER = SigningKey.generate(new SecureRandom());

  private static final Draft RULES =
      SampleLedger.draft("rule-book-adopted", "{\"file\":\"r.toml\",\"text\":\"limit 300 ft/s\"}");
  private static final Draft OTHER_RULES =
      SampleLedger.draft("rule-book-adopted", "{\"file\":\"r.toml\",\"text\":\"limit 320 ft/s\"}");

  @TempDir static Path scratch;
  private static Path whole;
  private static final List<Entry> ENTRIES = new ArrayList<>();

  @TempDir Path folder;
  private Path file;

  @BeforeAll
  static void make() throws Exception {
    whole = scratch.resolve("event.ledger");
    try (Ledger ledger =
        Ledger.create(
            whole, SampleLedger.STATION, ORGANIZER, SampleLedger.CLOCK, System::nanoTime)) {
      ledger.enrol(ORGANIZER, ASH.publicKey(), "Official Ash");
      ledger.enrol(ORGANIZER, BIRCH.publicKey(), "Official Birch");
      ledger.append(ORGANIZER, List.of(RULES));
      for (int number = 5; number <= 8; number++) {
        ledger.append(ASH, List.of(SampleLedger.reading(number)));
      }
      ledger.suspend(ORGANIZER, ASH.publicKey(), "shoots in this division");
      ledger.append(BIRCH, List.of(SampleLedger.reading(10), SampleLedger.reading(11)));
      ENTRIES.addAll(ledger.entries());
    }
  }

  @BeforeEach
  void copy() throws Exception {
    file = Files.copy(whole, folder.resolve("event.ledger"));
  }

  /**
   * One way to tamper.
   *
   * @param deed what is done to the file
   * @param found entry and kind of every fault, in the order in which they are found
   */
  private record Row(String name, Deed deed, String found) {
    @Override
    public String toString() {
      return name;
    }
  }

  @FunctionalInterface
  private interface Deed {
    void on(TamperedLedger ledger) throws Exception;
  }

  static Stream<Row> matrix() {
    return Stream.of(
        new Row("nothing is done", ledger -> {}, ""),
        // One byte of what was signed is changed
        changed("the header's algorithm", 6, 0, "EdDSA", "EdDSB", "6 BAD_JWS"),
        changed("the header's key", 6, 0, "\"kid\":\"", "\"kid\":\"A", "6 BAD_JWS"),
        changed("the format", 6, 1, "\"v\":1", "\"v\":2", "6 BAD_SIGNATURE, 6 BAD_PAYLOAD"),
        changed("the station", 6, 1, "North", "Worth", "6 WRONG_STATION, 6 BAD_SIGNATURE"),
        changed("the sequence", 6, 1, "q\":6", "q\":7", "6 COLUMNS_DISAGREE, 6 BAD_SIGNATURE"),
        changed("the time", 6, 1, "T12:", "T11:", "6 BAD_SIGNATURE"),
        changed("the seconds", 6, 1, "\"mono\":", "\"mono\":9", "6 BAD_SIGNATURE"),
        changed("the kind", 6, 1, "\"reading", "\"heading", "6 BAD_SIGNATURE"),
        changed("the body", 6, 1, ".4 ft/s", ".5 ft/s", "6 BAD_SIGNATURE"),
        changed("the rule book", 4, 1, "limit 300", "limit 320", "4 BAD_SIGNATURE"),
        new Row(
            "changed: an official's name, so that nobody is enrolled",
            ledger -> store(ledger, 3, edited(3, 1, "Birch", "Beech")),
            "3 BAD_SIGNATURE, 4 BROKEN_LINK, 10 UNKNOWN_SIGNER, 11 UNKNOWN_SIGNER"),
        new Row(
            "the last entry's signature",
            ledger -> store(ledger, 11, flipped(entry(11).jws())),
            "11 BAD_SIGNATURE"),
        new Row(
            "the link",
            ledger -> ledger.put(6, resigned(6, ASH, new Sha256(new byte[32]))),
            "6 BROKEN_LINK, 7 BROKEN_LINK"),
        // The columns beside it
        new Row(
            "the row's number",
            ledger -> ledger.execute("UPDATE entry SET seq = 99 WHERE seq = 11"),
            "99 COLUMNS_DISAGREE, 11 GAP"),
        new Row(
            "the hash beside the bytes",
            ledger -> ledger.set(6, "hash", new byte[32]),
            "6 COLUMNS_DISAGREE"),
        new Row(
            "the previous hash beside the bytes",
            ledger -> ledger.set(6, "prev", new byte[32]),
            "6 COLUMNS_DISAGREE"),
        // Whole entries
        new Row("removed", ledger -> ledger.execute("DELETE FROM entry WHERE seq = 6"), "6 GAP"),
        new Row(
            "swapped",
            ledger -> {
              ledger.put(6, entry(7));
              ledger.put(7, entry(6));
            },
            "6 COLUMNS_DISAGREE, 6 BROKEN_LINK, 7 COLUMNS_DISAGREE, 7 BROKEN_LINK,"
                + " 8 BROKEN_LINK"),
        new Row(
            "repeated",
            ledger -> ledger.put(12, entry(6)),
            "12 COLUMNS_DISAGREE, 12 BROKEN_LINK, 12 SIGNED_WHILE_SUSPENDED"),
        new Row(
            "inserted",
            ledger -> {
              ledger.put(12, entry(11));
              ledger.put(11, TamperedLedger.after(head(10), BIRCH, SampleLedger.reading(99)));
            },
            "12 COLUMNS_DISAGREE, 12 BROKEN_LINK"),
        // Keys
        new Row("signed with a foreign key", next(STRANGER), "12 UNKNOWN_SIGNER"),
        new Row("signed while suspended", next(ASH), "12 SIGNED_WHILE_SUSPENDED"),
        new Row(
            "signed again by another official",
            ledger -> ledger.put(6, resigned(6, BIRCH, entry(6).previous())),
            "7 BROKEN_LINK"),
        new Row(
            "a foreign key enrolled by an official",
            ledger ->
                ledger.put(
                    12,
                    TamperedLedger.after(
                        head(11),
                        BIRCH,
                        KeyNotice.enrolment(STRANGER.publicKey(), "Friend", Role.OFFICIAL))),
            "12 BAD_ENROLMENT"),
        new Row(
            "an official suspended by another",
            ledger ->
                ledger.put(
                    12,
                    TamperedLedger.after(
                        head(11), BIRCH, KeyNotice.suspension(BIRCH.publicKey(), "why"))),
            "12 BAD_SUSPENSION"),
        // The rule book exchanged, by an official and by the organizer
        new Row(
            "the rule book exchanged by an official",
            ledger -> ledger.put(4, TamperedLedger.after(head(3), ASH, OTHER_RULES)),
            "5 BROKEN_LINK"),
        new Row(
            "the rule book exchanged by the organizer",
            ledger -> ledger.put(4, TamperedLedger.after(head(3), ORGANIZER, OTHER_RULES)),
            "5 BROKEN_LINK"));
  }

  private static Row changed(String name, int row, int part, String from, String to, String found) {
    return new Row(
        "changed: " + name,
        ledger -> store(ledger, row, edited(row, part, from, to)),
        found + ", " + (row + 1) + " BROKEN_LINK");
  }

  /** An entry's bytes with other words in its header (part 0) or payload (part 1). */
  private static byte[] edited(int row, int part, String from, String to) {
    String[] parts = new String(entry(row).jws(), StandardCharsets.US_ASCII).split("\\.");
    String text = new String(Base64Url.decode(parts[part]).orElseThrow(), StandardCharsets.UTF_8);
    assertTrue(text.contains(from), text);
    parts[part] = Base64Url.encode(text.replace(from, to).getBytes(StandardCharsets.UTF_8));
    return String.join(".", parts).getBytes(StandardCharsets.US_ASCII);
  }

  private static void store(TamperedLedger ledger, long row, byte[] jws) throws Exception {
    ledger.set(row, "jws", jws);
    ledger.set(row, "hash", Sha256.of(jws).bytes());
  }

  /** Another character in the middle of the signature. */
  private static byte[] flipped(byte[] jws) {
    int at = jws.length - 40;
    jws[at] = (byte) (jws[at] == 'A' ? 'B' : 'A');
    return jws;
  }

  private static Deed next(SigningKey signer) {
    return ledger ->
        ledger.put(12, TamperedLedger.after(head(11), signer, SampleLedger.reading(12)));
  }

  /** What an entry says, signed by whoever, with this link. */
  private static Entry resigned(long sequence, SigningKey signer, Sha256 link) {
    Entry entry = entry(sequence);
    return Entry.sign(
        signer,
        new Head(sequence - 1, link),
        entry.station(),
        entry.at(),
        entry.monotonicSeconds(),
        new Draft(entry.kind(), entry.body()));
  }

  private static Entry entry(long sequence) {
    return ENTRIES.get((int) sequence - 1);
  }

  private static Head head(long sequence) {
    return new Head(sequence, entry(sequence).hash());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("matrix")
  void isFoundAndNamed(Row row) throws Exception {
    try (TamperedLedger tampered = new TamperedLedger(file)) {
      row.deed().on(tampered);
    }
    List<LedgerFault> faults = TamperedLedger.faults(file);
    assertEquals(
        row.found(),
        faults.stream().map(f -> f.sequence() + " " + f.kind()).collect(Collectors.joining(", ")));
    for (LedgerFault fault : faults) {
      assertTrue(
          fault.words().matches("Entr(y|ies) " + fault.sequence() + " .*"),
          "the words name the entry: " + fault.words());
    }
  }

  @Test
  void aCutTailIsFoundByAPrintedHeadAndByNothingElse() throws Exception {
    try (TamperedLedger tampered = new TamperedLedger(file)) {
      tampered.execute("DELETE FROM entry WHERE seq > 8");
    }
    assertEquals(List.of(), TamperedLedger.faults(file));
    assertEquals(List.of("11 CUT_TAIL"), against(head(11)));
    assertEquals(List.of(), against(head(8)));
  }

  /** Whoever holds the key can write its owner's newest entries anew: only paper remembers. */
  @Test
  void aTailRewrittenByItsOwnSignerIsFoundByAPrintedHeadAndByNothingElse() throws Exception {
    try (TamperedLedger tampered = new TamperedLedger(file)) {
      Entry other = TamperedLedger.after(head(9), BIRCH, SampleLedger.reading(98));
      tampered.put(10, other);
      tampered.put(
          11, TamperedLedger.after(new Head(10, other.hash()), BIRCH, SampleLedger.reading(99)));
    }
    assertEquals(List.of(), TamperedLedger.faults(file));
    assertEquals(List.of("11 OTHER_HEAD"), against(head(11)));
    assertEquals(List.of(), against(head(9)));
  }

  private List<String> against(Head printed) throws LedgerException {
    return Verification.of(file, List.of(printed.printed()), examined -> {}).faults().stream()
        .filter(fault -> fault.kind() != Kind.GUARDS_CHANGED)
        .map(fault -> fault.sequence() + " " + fault.kind())
        .toList();
  }

  /** The way of somebody with a database tool and no program of ours. */
  @Test
  void anEditWithTheDatabaseShellIsFoundAndSoAreTheDroppedGuards() throws Exception {
    String script =
        "DROP TRIGGER entry_follows_the_head; DROP TRIGGER entry_is_never_changed;"
            + " DROP TRIGGER entry_is_never_deleted;"
            + " UPDATE entry SET jws = replace(jws, substr(jws, 200, 1), 'A') WHERE seq = 6;"
            + " DELETE FROM entry WHERE seq = 11;";
    String refused = shell("UPDATE entry SET jws = 'x' WHERE seq = 6;");
    assertTrue(refused.contains("never changed"), refused);
    assertEquals(List.of(), Verification.of(file).faults(), "the guards held");
    assertEquals("", shell(script));
    List<LedgerFault> faults =
        Verification.of(file, List.of(head(11).printed()), examined -> {}).faults();
    assertEquals(3, faults.stream().filter(f -> f.kind() == Kind.GUARDS_CHANGED).count());
    assertTrue(faults.stream().anyMatch(f -> f.sequence() == 6), faults::toString);
    assertTrue(faults.stream().anyMatch(f -> f.kind() == Kind.CUT_TAIL), faults::toString);
  }

  private String shell(String sql) throws IOException, InterruptedException {
    Process shell;
    try {
      shell = new ProcessBuilder("sqlite3", file.toString(), sql).redirectErrorStream(true).start();
    } catch (IOException none) {
      return Assumptions.abort("not run: there is no sqlite3 on the path");
    }
    String said = new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(shell.waitFor(60, TimeUnit.SECONDS));
    return said.strip();
  }
}
