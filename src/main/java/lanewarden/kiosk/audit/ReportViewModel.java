package lanewarden.kiosk.audit;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Consumer;
import lanewarden.audit.AuditReport;
import lanewarden.audit.AuditSummary;
import lanewarden.audit.Export;
import lanewarden.audit.ReportEdition;
import lanewarden.audit.press.Progress;
import lanewarden.audit.seal.Seal;
import lanewarden.audit.seal.TimeStampAuthority;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.EventFolder;
import lanewarden.station.StationException;
import lanewarden.station.Trouble;

/** Reports of a ledger, plain or sealed; used on the screen's thread. */
final class ReportViewModel {

  /**
   * The report that is wanted.
   *
   * @param ledger as typed; empty for the event's own
   * @param named whether names stand in it
   * @param folder that is made with the entries and the page that verifies them, as typed; blank
   *     for its usual place
   * @param printer on which it is printed too
   * @param file where, as typed; empty for its usual place
   */
  record Wish(
      String ledger,
      boolean named,
      Optional<String> folder,
      Optional<String> printer,
      String file) {}

  /**
   * What sealing asks for.
   *
   * @param place where the key of the seal belongs
   * @param away whether it is not there
   * @param key where it may be instead; empty where nobody knows
   * @param authority the address of whoever is asked for a time-stamp; empty for nobody
   */
  record Sealing(Path place, boolean away, String key, String authority) {}

  /** What a report is sealed with. */
  record Sealed(Seal seal, Optional<TimeStampAuthority> authority) {}

  private final LedgerViewModel ledgers;
  private final Paper paper;
  private final Export export;
  private final ErrandViewModel errand;
  private final LedgerWords words;
  private final Texts texts;
  private String last = "";

  ReportViewModel(
      LedgerViewModel ledgers,
      Paper paper,
      Export export,
      ErrandViewModel errand,
      LedgerWords words,
      Texts texts) {
    this.ledgers = ledgers;
    this.paper = paper;
    this.export = export;
    this.errand = errand;
    this.words = words;
    this.texts = texts;
  }

  /** Refuses a report that could not be put where it is wanted, before anything else is asked. */
  void check(Wish wish, Runnable done, Consumer<Trouble> missed) {
    errand.ask(
        () -> requirePlaces(ledgers.subject(wish.ledger()), wish),
        subject -> {
          ledgers.named(wish.ledger());
          done.run();
        },
        missed);
  }

  private static LedgerViewModel.Subject requirePlaces(LedgerViewModel.Subject of, Wish wish)
      throws IOException {
    Path pdf = place(of, wish, "");
    if (wish.folder().isPresent() && folder(of, wish.folder().get()).equals(pdf)) {
      throw new FileAlreadyExistsException(pdf.toString());
    }
    return of;
  }

  private static Path folder(LedgerViewModel.Subject of, String typed) throws IOException {
    return of.beside().fresh(typed, of.names().with("entries-", ""));
  }

  /** A report of the same ledger may take the place of the one before; of nothing else. */
  private static Path place(LedgerViewModel.Subject of, Wish wish, String usual)
      throws IOException {
    return wish.file().isBlank() ? of.beside().at(usual) : of.beside().fresh(wish.file(), "");
  }

  /** The same for a report that is to be sealed; tells what sealing asks for. */
  void checkSealed(Wish wish, Consumer<Sealing> asks, Consumer<Trouble> missed) {
    check(wish, () -> errand.ask(() -> sealing(wish), asks, missed), missed);
  }

  /** The seal and the authority are those of the event that the ledger lies in. */
  private Sealing sealing(Wish wish) throws IOException, StationException {
    EventFolder around = LedgerViewModel.around(ledgers.places().ledger(wish.ledger()));
    Path place = around.reportSeal();
    return new Sealing(
        place,
        !Files.isRegularFile(place),
        last,
        around.hasSettings() ? around.settings().timeStamp().orElse("") : "");
  }

  /**
   * Opens the seal for one report.
   *
   * @param key where its key lies, as typed, if it is away
   * @param passphrase is wiped
   * @param address of whoever is asked for a time-stamp; empty for nobody
   */
  void openSeal(
      Sealing asked,
      Optional<String> key,
      char[] passphrase,
      Optional<String> address,
      Consumer<Sealed> opened,
      Consumer<Trouble> missed) {
    Optional<TimeStampAuthority> authority;
    try {
      authority = address.map(url -> new TimeStampAuthority(url, paper.random()));
    } catch (IllegalArgumentException e) {
      Arrays.fill(passphrase, '\0');
      missed.accept(Trouble.noTimeStampAddress(String.valueOf(e.getMessage())));
      return;
    }
    errand.ask(
        () -> {
          try {
            Path file = key.isPresent() ? ledgers.places().at(key.get()) : asked.place();
            return new Sealed(Seal.open(file, passphrase), authority);
          } finally {
            Arrays.fill(passphrase, '\0');
          }
        },
        held -> {
          last = key.orElse(last);
          opened.accept(held);
        },
        missed);
  }

  /** Makes a report of the ledger as it is now. */
  void make(Wish wish, Optional<Sealed> sealed) {
    errand.begin(texts.of("records.report"), progress -> make(wish, sealed, progress));
  }

  private Ending make(Wish wish, Optional<Sealed> sealed, Consumer<Progress> progress)
      throws Exception {
    LedgerViewModel.Subject of = ledgers.subject(wish.ledger());
    Path pdf = place(of, wish, of.names().report(wish.named(), sealed.isPresent()));
    Optional<Seal> seal = sealed.map(Sealed::seal);
    AuditReport.Written written =
        paper
            .reports()
            .make(
                of.ledger(),
                pdf,
                new ReportEdition(wish.named(), seal, sealed.flatMap(Sealed::authority)),
                progress);
    Optional<Path> beside = Optional.empty();
    if (wish.folder().isPresent()) {
      beside = Optional.of(folder(of, wish.folder().get()));
      AuditSummary unused = export.whole(of.ledger(), beside.get(), progress);
    }
    Ending made = words.reported(written, pdf, seal, beside);
    return ledgers.printed(made, pdf, wish.printer(), progress);
  }
}
