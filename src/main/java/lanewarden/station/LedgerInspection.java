package lanewarden.station;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewarden.journal.Docket;
import lanewarden.ledger.ExportedEntries;
import lanewarden.ledger.Head;
import lanewarden.ledger.LedgerException;
import lanewarden.ledger.PrintedHead;
import lanewarden.ledger.Verification;

/**
 * What the verification of a ledger found, for people: never stops at the first fault.
 *
 * @param ledger the file
 * @param entries how many entries it holds
 * @param head sequence and short hash of the last, as printed on reports
 * @param station whose ledger it says it is
 * @param organizer thumbprint of the key that everything rests on: compare it with the printed one
 * @param officials who may sign or once might, with their thumbprints
 * @param docket every protest and correction, as far as the entries could be understood
 * @param compared how many heads it was held against
 * @param faults everything that is wrong
 */
public record LedgerInspection(
    Path ledger,
    long entries,
    Optional<String> head,
    Optional<String> station,
    Optional<String> organizer,
    List<Signatory> officials,
    Docket docket,
    int compared,
    List<Fault> faults) {

  /** Somebody who may sign. */
  public record Signatory(String name, String thumbprint) {}

  /**
   * Something wrong.
   *
   * @param entry its number; 0 for the file as a whole
   * @param kind the same word for every fault of its kind
   * @param words in plain words
   */
  public record Fault(long entry, String kind, String words) {}

  /** Copies the lists. */
  public LedgerInspection {
    officials = List.copyOf(officials);
    faults = List.copyOf(faults);
  }

  /**
   * Verifies a ledger: signatures, chain, and that every entry can be understood.
   *
   * @param ledgerOrFolder a ledger file, or the folder of an event
   * @param heads as printed on slips and reports, to find a cut tail
   * @throws StationException if it cannot be read at all, or a head has another form
   */
  public static LedgerInspection of(Path ledgerOrFolder, List<String> heads)
      throws StationException {
    return of(ledgerOrFolder, heads, List.of());
  }

  /**
   * The same, also against the heads that other stations' ledgers witness.
   *
   * @param witnesses ledger files, or folders of events
   * @throws StationException as the plain one does, or if a witness's ledger is not sound
   */
  public static LedgerInspection of(Path ledgerOrFolder, List<String> heads, List<Path> witnesses)
      throws StationException {
    Path ledger = EventFolder.ledgerAt(ledgerOrFolder);
    List<PrintedHead> printed = heads(heads);
    if (!witnesses.isEmpty()) {
      // Heads are told apart by the station's name, which only a first reading tells
      String station = of(ledgerOrFolder, List.of()).station().orElse("");
      for (Path witness : witnesses) {
        printed.addAll(heads(WitnessedHeads.in(witness).of(station)));
      }
    }
    LedgerMeaning meaning = new LedgerMeaning();
    try {
      return of(ledger, Verification.of(ledger, printed, meaning::take), meaning, printed.size());
    } catch (LedgerException e) {
      throw StationException.of(e);
    }
  }

  /**
   * Makes a ledger file of exported entries, while verifying them. Nothing is made unless every
   * signature and every link holds.
   *
   * @param entries the exported file
   * @param ledgerOrFolder the ledger file to make, or a folder that is there to make it in
   * @param heads as printed on slips and reports
   * @throws StationException if either file cannot be used, something is at the ledger's place
   *     already, or a head has another form
   */
  public static LedgerInspection ofImport(Path entries, Path ledgerOrFolder, List<String> heads)
      throws StationException {
    Path ledger = EventFolder.ledgerAt(ledgerOrFolder);
    try {
      Verification found = ExportedEntries.makeLedger(entries, ledger, heads(heads));
      return found.sound()
          ? of(ledger, heads)
          : of(ledger, found, new LedgerMeaning(), heads.size());
    } catch (LedgerException e) {
      throw StationException.of(e);
    }
  }

  private static LedgerInspection of(
      Path ledger, Verification found, LedgerMeaning meaning, int compared) {
    List<Fault> faults =
        new ArrayList<>(
            found.faults().stream()
                .map(f -> new Fault(f.sequence(), f.kind().word(), f.words()))
                .toList());
    if (found.sound()) {
      meaning.fault().ifPresent(faults::add);
    }
    return new LedgerInspection(
        ledger,
        found.entries(),
        found.head().map(Head::shortForm),
        found.station(),
        found.organizer(),
        found.officials().stream().map(o -> new Signatory(o.name(), o.thumbprint())).toList(),
        meaning.docket(),
        compared,
        faults);
  }

  /**
   * The head of a ledger as it is now, as printed on reports; nothing where none can be read.
   * Nothing is verified, so that it takes no time.
   *
   * @throws StationException if it cannot be read as a ledger at all
   */
  public static Optional<String> headNow(Path ledger) throws StationException {
    try {
      return Head.of(ledger).map(Head::shortForm);
    } catch (LedgerException e) {
      throw StationException.of(e);
    }
  }

  /** Whether nothing is wrong. */
  public boolean sound() {
    return faults.isEmpty();
  }

  /** Refuses heads that have another form, before anything else is looked at. */
  public static void requireHeads(List<String> texts) throws StationException {
    List<PrintedHead> unused = heads(texts);
  }

  private static List<PrintedHead> heads(List<String> texts) throws StationException {
    List<PrintedHead> heads = new ArrayList<>();
    for (String text : texts) {
      heads.add(head(text, "Nothing was verified."));
    }
    return heads;
  }

  /**
   * Reads a head as it was typed.
   *
   * @param what what a faulty one keeps from happening
   */
  static PrintedHead head(String text, String what) throws StationException {
    try {
      return PrintedHead.parse(text);
    } catch (IllegalArgumentException e) {
      throw StationException.misstep(
          "HEAD-FORM",
          what,
          String.valueOf(e.getMessage()),
          "Type the head as it stands on the slip or report.");
    }
  }
}
