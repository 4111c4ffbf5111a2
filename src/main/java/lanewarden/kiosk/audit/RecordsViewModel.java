package lanewarden.kiosk.audit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import lanewarden.audit.AuditReport;
import lanewarden.audit.AuditSummary;
import lanewarden.audit.Export;
import lanewarden.audit.ReportEdition;
import lanewarden.audit.press.Progress;
import lanewarden.audit.seal.Seal;
import lanewarden.audit.seal.TimeStampAuthority;
import lanewarden.audit.slip.SlipSearch;
import lanewarden.kiosk.desk.Desk;
import lanewarden.kiosk.desk.Printing;
import lanewarden.kiosk.form.OrganizersKey;
import lanewarden.kiosk.form.Places;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.trouble.Causes;
import lanewarden.station.Budget;
import lanewarden.station.DueDraw;
import lanewarden.station.EventFolder;
import lanewarden.station.KeyOffice;
import lanewarden.station.LedgerInspection;
import lanewarden.station.LineView;
import lanewarden.station.SignedPapers;
import lanewarden.station.Trouble;

/** What is done with the records of the event; used on the screen's thread. */
public final class RecordsViewModel {

  /**
   * The report that is wanted.
   *
   * @param named whether names stand in it
   * @param verifier whether the entries and the page that verifies them are written beside it
   * @param printed whether it is printed too, on the system's usual printer
   * @param file where, as typed; empty for its usual place
   */
  record Wish(boolean named, boolean verifier, boolean printed, String file) {}

  private final ReportMaker maker;
  private final Printing printing;
  private final Desk desk;
  private final EventFolder folder;
  private final SecureRandom random;
  private final Texts texts;
  private final Places places;
  private final LedgerWords words;
  private final ErrandViewModel errand;
  private final Export export = new Export(SignedPapers::of);
  private final BooleanProperty onDuty = new SimpleBooleanProperty();
  private final StringProperty own = new SimpleStringProperty("");
  private final BooleanProperty sealed = new SimpleBooleanProperty();
  private String head = "";

  /**
   * @param random for keys and time-stamps
   * @param work runs errands off the screen's thread and apart from the line's own work
   * @param screen runs tasks on the screen's thread
   */
  public RecordsViewModel(
      ReportMaker maker,
      Printing printing,
      Desk desk,
      EventFolder folder,
      SecureRandom random,
      Executor work,
      Executor screen,
      Texts texts) {
    this.maker = maker;
    this.printing = printing;
    this.desk = desk;
    this.folder = folder;
    this.random = random;
    this.texts = texts;
    places = new Places(folder);
    words = new LedgerWords(texts);
    errand = new ErrandViewModel(work, screen, texts);
  }

  /** Takes the next state of the line. */
  public void take(LineView view) {
    head = view.head().shortForm();
    own.set(texts.of("records.own", view.station(), head));
    onDuty.set(view.official().isPresent());
  }

  /** Begins to look; a key may have come or gone since. */
  public void open() {
    sealed.set(Files.exists(folder.reportSeal()));
  }

  /** Whether something is being made or looked up. */
  public boolean isBusy() {
    return errand.busy().get();
  }

  /** What is on its way or was done last. */
  ErrandViewModel errand() {
    return errand;
  }

  /** The own station with its ledger's head, to be given to another station. */
  StringProperty own() {
    return own;
  }

  /** Whether an official is on duty, who signs. */
  BooleanProperty onDuty() {
    return onDuty;
  }

  /** Whether the event has the key that seals reports. */
  BooleanProperty sealed() {
    return sealed;
  }

  /** Refuses a report that could not be put where it is wanted, before anything else is asked. */
  void check(Wish wish, Runnable done, Consumer<Trouble> missed) {
    errand.ask(() -> place(wish, ""), place -> done.run(), missed);
  }

  /** A report of the same ledger may take the place of the one before; of nothing else. */
  private Path place(Wish wish, String usual) throws IOException {
    return wish.file().isBlank() ? places.at(usual) : places.fresh(wish.file(), "");
  }

  /** Opens the seal for one report. */
  void openSeal(char[] passphrase, Consumer<Seal> opened, Consumer<Trouble> missed) {
    errand.ask(() -> Seal.open(folder.reportSeal(), passphrase), opened, missed);
  }

  /** Makes a report of the ledger as it is now. */
  void report(Wish wish, Optional<Seal> seal) {
    String usual = (wish.named() ? "audit-" : "public-") + head;
    String entries = "entries-" + head;
    errand.begin(
        texts.of("records.report"), progress -> report(wish, seal, usual, entries, progress));
  }

  private Ending report(
      Wish wish, Optional<Seal> seal, String usual, String entries, Consumer<Progress> progress)
      throws Exception {
    String name = usual + (seal.isPresent() ? "-sealed.pdf" : ".pdf");
    Path pdf = place(wish, name);
    Optional<TimeStampAuthority> authority =
        seal.isPresent()
            ? folder.settings().timeStamp().map(url -> new TimeStampAuthority(url, random))
            : Optional.empty();
    AuditReport.Written written =
        maker.make(
            folder.ledger(), pdf, new ReportEdition(wish.named(), seal, authority), progress);
    Optional<Path> beside = Optional.empty();
    if (wish.verifier()) {
      beside = Optional.of(places.fresh("", entries));
      AuditSummary unused = export.whole(folder.ledger(), beside.get(), progress);
    }
    Ending made = words.reported(written, pdf, seal, beside);
    return wish.printed() ? printed(made, pdf, progress) : made;
  }

  /** The report is made, whatever the printer says of it. */
  private Ending printed(Ending made, Path pdf, Consumer<Progress> progress) {
    progress.accept(new Progress(texts.of("records.printing"), 1, 1));
    try {
      return words.printed(made, printing.print(pdf, Optional.empty()));
    } catch (Exception e) {
      return words.notPrinted(made, Causes.trouble(e));
    }
  }

  /** Looks a slip up. */
  void find(String code, String ledger, Runnable done, Consumer<Trouble> missed) {
    errand.ask(
        () -> words.found(SlipSearch.find(places.ledger(ledger), code, SignedPapers::of)),
        ending -> end("records.slip", ending, done),
        missed);
  }

  /** Verifies a ledger. */
  void verify(
      String ledger, String witnesses, String heads, Runnable done, Consumer<Trouble> missed) {
    errand.<ErrandViewModel.Errand>ask(
        () -> {
          Path file = places.ledger(ledger);
          List<Path> others = places.ledgers(witnesses);
          List<String> printed = Places.heads(heads);
          LedgerInspection.requireHeads(printed);
          return progress -> words.verified(LedgerInspection.of(file, printed, others));
        },
        verification -> begin("records.verify", verification, done),
        missed);
  }

  /** Writes the ledger into files. */
  void export(boolean named, String target, Runnable done, Consumer<Trouble> missed) {
    String usual = (named ? "export-" : "public-export-") + head;
    errand.<ErrandViewModel.Errand>ask(
        () -> {
          Path fresh = places.fresh(target, usual);
          return progress ->
              words.exported(
                  named
                      ? export.whole(folder.ledger(), fresh, progress)
                      : export.forThePublic(folder.ledger(), fresh, progress),
                  fresh);
        },
        export -> begin("records.export", export, done),
        missed);
  }

  /** Makes a ledger of exported entries. */
  void bringIn(
      String entries, String ledger, String heads, Runnable done, Consumer<Trouble> missed) {
    errand.<ErrandViewModel.Errand>ask(
        () -> {
          Path from = places.there(entries);
          Path to = places.fresh(ledger, "");
          List<String> printed = Places.heads(heads);
          LedgerInspection.requireHeads(printed);
          return progress -> words.broughtIn(LedgerInspection.ofImport(from, to, printed));
        },
        bringing -> begin("records.import", bringing, done),
        missed);
  }

  /** Signs another station's head. */
  void witness(String station, String seen, Runnable done, Consumer<Trouble> missed) {
    desk.ask(
        here -> here.proceedings().witness(station, seen),
        entry ->
            end(
                "records.witness",
                new Ending(
                    true,
                    texts.of("records.witnessed", seen, station),
                    new Ending.Lines()
                        .good(texts.of("records.told.witnessed", entry))
                        .fact(own.get())
                        .all()),
                done),
        missed);
  }

  /** Asks for the draws that are due; where none is, that is told instead. */
  void askForDraws(Consumer<List<DueDraw>> some) {
    desk.ask(
        here -> here.proceedings().dueDraws(),
        due -> {
          if (due.isEmpty()) {
            errand.end(
                texts.of("records.draw"),
                new Ending(true, texts.of("records.draw.none"), List.of()));
          } else {
            some.accept(due);
          }
        },
        trouble ->
            errand.end(
                texts.of("records.draw"),
                new Ending(false, texts.of("records.missed"), List.of(), Optional.of(trouble))));
  }

  /** Draws those of a division who are to be checked. */
  void draw(String division, String digits, Runnable done, Consumer<Trouble> missed) {
    desk.ask(
        here -> here.proceedings().draw(division, digits),
        drawn -> end("records.draw", words.drawn(drawn), done),
        missed);
  }

  /** Makes the key that seals reports; the line goes on until the organizer signs it. */
  void makeSeal(OrganizersKey.Signature organizer, Runnable done, Consumer<Trouble> missed) {
    desk.ask(
        here -> here.keyOffice(random),
        office ->
            errand.ask(
                () -> sealMade(office, organizer),
                ending -> {
                  open();
                  end("records.seal", ending, done);
                },
                missed),
        missed);
  }

  private Ending sealMade(KeyOffice office, OrganizersKey.Signature organizer) throws Exception {
    char[] again = organizer.passphrase();
    try {
      Path made = office.makeReportSeal(organizer.key(), organizer.passphrase());
      return new Ending(
          true,
          texts.of("records.sealed"),
          new Ending.Lines()
              .fact(texts.of("records.told.key", made.toAbsolutePath()))
              .fact(texts.of("records.told.seal", Seal.open(made, again).fingerprint()))
              .all());
    } finally {
      Arrays.fill(again, '\0');
    }
  }

  /** Works out what makes a reading uncertain. */
  void accuracy(String speed, Runnable done, Consumer<Trouble> missed) {
    errand.ask(
        () -> words.budget(Budget.of(folder.path(), Budget.speed(texts.typed(speed)))),
        ending -> end("records.accuracy", ending, done),
        missed);
  }

  private void end(String name, Ending ending, Runnable done) {
    errand.end(texts.of(name), ending);
    done.run();
  }

  private void begin(String name, ErrandViewModel.Errand wanted, Runnable done) {
    done.run();
    errand.begin(texts.of(name), wanted);
  }
}
