package lanewarden.kiosk.audit;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import lanewarden.audit.Export;
import lanewarden.audit.press.Progress;
import lanewarden.audit.slip.SlipSearch;
import lanewarden.audit.slip.Slips;
import lanewarden.kiosk.desk.Printing;
import lanewarden.kiosk.form.Places;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.protest.DocketWords;
import lanewarden.kiosk.protest.SlipMaker;
import lanewarden.kiosk.trouble.Causes;
import lanewarden.station.Budget;
import lanewarden.station.EventFolder;
import lanewarden.station.LedgerInspection;
import lanewarden.station.LedgerNames;
import lanewarden.station.SignedPapers;
import lanewarden.station.StationException;
import lanewarden.station.Trouble;

/**
 * What is done with a ledger alone, the event's own or any other; needs no station. Used on the
 * screen's thread.
 */
public final class LedgerViewModel {

  /**
   * The slip that is wanted.
   *
   * @param ledger as typed; empty for the event's own
   * @param numbered whether the check is named by its number; else by the bib, whose last it is
   * @param which the number or the bib
   * @param printer on which it is printed too
   * @param file where, as typed; empty for its usual place
   */
  record SlipWish(
      String ledger, boolean numbered, String which, Optional<String> printer, String file) {}

  /**
   * One ledger, and where what is made of it is put.
   *
   * @param names of the files made of it
   * @param beside where they lie unless somebody says otherwise
   */
  record Subject(Path ledger, LedgerNames names, Places beside) {}

  private final SlipMaker slips;
  private final Printing printing;
  private final Optional<EventFolder> event;
  private final Texts texts;
  private final Places places;
  private final LedgerWords words;
  private final ErrandViewModel errand;
  private final ReportViewModel report;
  private final InsightViewModel insight;
  private final Export export = new Export(SignedPapers::of);
  private Optional<List<String>> printers = Optional.empty();
  private String last = "";

  /**
   * @param dockets how protests and corrections read
   * @param event the one whose ledger is meant where none is named; without it one is named
   * @param work runs errands off the screen's thread and apart from the line's own work
   * @param screen runs tasks on the screen's thread
   */
  public LedgerViewModel(
      Paper paper,
      DocketWords dockets,
      Optional<EventFolder> event,
      Executor work,
      Executor screen,
      Texts texts) {
    this.slips = paper.slips();
    this.printing = paper.printing();
    this.event = event;
    this.texts = texts;
    places = new Places(event.orElseGet(() -> new EventFolder(Path.of(""))));
    words = new LedgerWords(texts, dockets);
    errand = new ErrandViewModel(work, screen, texts);
    report = new ReportViewModel(this, paper, export, errand, words, texts);
    insight = new InsightViewModel(this, errand, dockets, texts);
  }

  /** Begins to look; a printer may have come or gone since. */
  public void open() {
    lookForPrinters(names -> {});
  }

  /** Whether something is being made or looked up. */
  public boolean isBusy() {
    return errand.busy().get();
  }

  /** What is on its way or was done last. */
  ErrandViewModel errand() {
    return errand;
  }

  /** How what was found reads. */
  LedgerWords words() {
    return words;
  }

  /** Reports of a ledger. */
  ReportViewModel report() {
    return report;
  }

  /** What can be looked into. */
  InsightViewModel insight() {
    return insight;
  }

  /** Whether a ledger has to be named, since no event is open. */
  boolean asksLedger() {
    return event.isEmpty();
  }

  /** The ledger that was named last, where one has to be. */
  String last() {
    return last;
  }

  /** Tells which printers there are, the usual one first. */
  void askPrinters(Consumer<List<String>> answer) {
    printers.ifPresentOrElse(answer, () -> lookForPrinters(answer));
  }

  private void lookForPrinters(Consumer<List<String>> answer) {
    errand.ask(
        printing::printers,
        names -> {
          printers = Optional.of(List.copyOf(names));
          answer.accept(names);
        },
        missed -> answer.accept(List.of()));
  }

  /** The ledger that was named, off the screen's thread. */
  Subject subject(String typed) throws IOException, StationException {
    Path ledger = places.ledger(typed);
    return new Subject(
        ledger, LedgerNames.of(ledger), new Places(event.orElseGet(() -> around(ledger))));
  }

  /** The folder that a ledger lies in, as if it were its event's. */
  static EventFolder around(Path ledger) {
    return new EventFolder(ledger.toAbsolutePath().resolveSibling(""));
  }

  Places places() {
    return places;
  }

  /** Looks a slip up. */
  void find(String code, String ledger, Runnable done, Consumer<Trouble> missed) {
    errand.ask(
        () -> words.found(SlipSearch.find(places.ledger(ledger), code, SignedPapers::of)),
        ending -> {
          named(ledger);
          errand.end(texts.of("records.slip"), ending);
          done.run();
        },
        missed);
  }

  /** Writes the slip of a check, and prints it where that is wanted. */
  void write(SlipWish wish, Runnable done, Consumer<Trouble> missed) {
    begin(
        "records.write",
        wish.ledger(),
        () -> {
          Subject of = subject(wish.ledger());
          String which = wish.numbered() ? SlipMaker.numbered(wish.which()) : wish.which();
          String start = "slip-" + which.replaceAll("[^\\p{L}\\p{N}.-]", "-") + "-";
          Path pdf =
              wish.file().isBlank()
                  ? of.beside().at(of.names().with(start, ".pdf"))
                  : of.beside().fresh(wish.file(), "");
          return progress -> {
            Slips.Written written = slips.make(of.ledger(), which, pdf);
            return printed(words.written(written, pdf), pdf, wish.printer(), progress);
          };
        },
        done,
        missed);
  }

  /** What was made is made, whatever the printer says of it. */
  Ending printed(Ending made, Path pdf, Optional<String> printer, Consumer<Progress> progress) {
    if (printer.isEmpty()) {
      return made;
    }
    progress.accept(new Progress(texts.of("records.printing"), 1, 1));
    try {
      return words.printed(made, printing.print(pdf, printer));
    } catch (Exception e) {
      return words.notPrinted(made, Causes.trouble(e));
    }
  }

  /** Tells of every protest, ruling and correction. */
  void docket(String ledger, Runnable done, Consumer<Trouble> missed) {
    begin(
        "records.docket",
        ledger,
        () -> {
          Path file = places.ledger(ledger);
          return progress -> words.docket(LedgerInspection.of(file, List.of()));
        },
        done,
        missed);
  }

  /** Verifies a ledger. */
  void verify(
      String ledger, String witnesses, String heads, Runnable done, Consumer<Trouble> missed) {
    begin(
        "records.verify",
        ledger,
        () -> {
          Path file = places.ledger(ledger);
          List<Path> others = places.ledgers(witnesses);
          List<String> printed = Places.heads(heads);
          LedgerInspection.requireHeads(printed);
          return progress -> words.verified(LedgerInspection.of(file, printed, others));
        },
        done,
        missed);
  }

  /** Writes a ledger into files. */
  void export(
      String ledger, boolean named, String target, Runnable done, Consumer<Trouble> missed) {
    begin(
        "records.export",
        ledger,
        () -> {
          Subject of = subject(ledger);
          Path fresh =
              of.beside().fresh(target, of.names().with(named ? "export-" : "public-export-", ""));
          return progress ->
              words.exported(
                  named
                      ? export.whole(of.ledger(), fresh, progress)
                      : export.forThePublic(of.ledger(), fresh, progress),
                  fresh);
        },
        done,
        missed);
  }

  /** Makes a ledger of exported entries. */
  void bringIn(
      String entries, String ledger, String heads, Runnable done, Consumer<Trouble> missed) {
    begin(
        "records.import",
        ledger,
        () -> {
          Path from = places.there(entries);
          Path to = places.fresh(ledger, "");
          List<String> printed = Places.heads(heads);
          LedgerInspection.requireHeads(printed);
          return progress -> words.broughtIn(LedgerInspection.ofImport(from, to, printed));
        },
        done,
        missed);
  }

  /**
   * Works out what makes a reading uncertain.
   *
   * @param settings as typed: a station's settings, or the folder with them; without an event only
   */
  void accuracy(String settings, String speed, Runnable done, Consumer<Trouble> missed) {
    errand.ask(
        () -> {
          Path from = event.isPresent() ? event.get().path() : places.there(settings);
          return words.budget(Budget.of(from, Budget.speed(texts.typed(speed))));
        },
        ending -> {
          errand.end(texts.of("records.accuracy"), ending);
          done.run();
        },
        missed);
  }

  /** What can be refused at once is refused in the form; the rest goes on without it. */
  private void begin(
      String name,
      String ledger,
      Callable<ErrandViewModel.Errand> wanted,
      Runnable done,
      Consumer<Trouble> missed) {
    errand.ask(
        wanted,
        begun -> {
          named(ledger);
          done.run();
          errand.begin(texts.of(name), begun);
        },
        missed);
  }

  /** Remembers a ledger that was named and found. */
  void named(String ledger) {
    if (asksLedger()) {
      last = ledger;
    }
  }
}
