package lanewarden.kiosk.protest;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import lanewarden.audit.slip.Slips;
import lanewarden.kiosk.desk.Printing;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.trouble.Causes;
import lanewarden.station.EventFolder;
import lanewarden.station.Trouble;

/** Making and printing slips while the line goes on; used on the screen's thread. */
public final class SlipViewModel {
  private final SlipMaker maker;
  private final Printing printing;
  private final EventFolder folder;
  private final Supplier<String> head;
  private final Executor work;
  private final Executor screen;
  private final Texts texts;
  private final ObservableList<String> printers = FXCollections.observableArrayList();
  private final IntegerProperty printer = new SimpleIntegerProperty();
  private final IntegerProperty sheet = new SimpleIntegerProperty();
  private final BooleanProperty busy = new SimpleBooleanProperty();
  private final StringProperty words = new SimpleStringProperty("");
  private final ObjectProperty<Optional<Trouble>> trouble =
      new SimpleObjectProperty<>(Optional.empty());
  private List<SheetPage> sheets = List.of();

  /**
   * @param head the ledger's head at the moment of asking, which names the files
   * @param work off the screen's thread and apart from the line's own work
   * @param screen runs tasks on the screen's thread
   */
  public SlipViewModel(
      SlipMaker maker,
      Printing printing,
      EventFolder folder,
      Supplier<String> head,
      Executor work,
      Executor screen,
      Texts texts) {
    this.maker = maker;
    this.printing = printing;
    this.folder = folder;
    this.head = head;
    this.work = work;
    this.screen = screen;
    this.texts = texts;
  }

  /**
   * The same, for slips of these checks, the one that counts being meant first; looks which
   * printers there are now.
   */
  SlipViewModel of(List<SheetPage> of) {
    if (!busy.get()) {
      sheets = List.copyOf(of);
      sheet.set(Math.max(0, sheets.stream().map(SheetPage::counts).toList().indexOf(true)));
      trouble.set(Optional.empty());
      words.set(texts.of("slip.printers.sought"));
      work.execute(this::lookForPrinters);
    }
    return this;
  }

  private void lookForPrinters() {
    try {
      List<String> names = printing.printers();
      screen.execute(
          () -> {
            printers.setAll(names);
            printer.set(0);
            words.set(
                names.isEmpty()
                    ? texts.of("slip.printers.none")
                    : texts.of("slip.printers", names.size()));
          });
    } catch (RuntimeException | Error e) {
      missed(e);
    }
  }

  /** The checks whose slips can be had. */
  List<SheetPage> sheets() {
    return sheets;
  }

  /** The place of the check whose slip is meant. */
  IntegerProperty sheet() {
    return sheet;
  }

  /** The printers of the system, the usual one first. */
  ObservableList<String> printers() {
    return printers;
  }

  /** The place of the printer that is meant. */
  IntegerProperty printer() {
    return printer;
  }

  /** Whether a slip is being made or printed. */
  BooleanProperty busy() {
    return busy;
  }

  /** What is being done, or what was done. */
  StringProperty words() {
    return words;
  }

  /** Why it was not. */
  ObjectProperty<Optional<Trouble>> trouble() {
    return trouble;
  }

  /** Writes the slip into the event's folder. */
  void save() {
    begin(Optional.empty());
  }

  /** Writes the slip and prints it. */
  void print() {
    if (!printers.isEmpty()) {
      begin(Optional.of(printers.get(printer.get())));
    }
  }

  private void begin(Optional<String> on) {
    if (busy.get()) {
      return;
    }
    long check = sheets.get(sheet.get()).number();
    Path pdf = folder.path().resolve("slip-check-" + check + "-" + head.get() + ".pdf");
    busy.set(true);
    trouble.set(Optional.empty());
    words.set(texts.of("slip.making", check));
    work.execute(() -> work(check, pdf, on));
  }

  private void work(long check, Path pdf, Optional<String> on) {
    try {
      Slips.Written unused =
          maker.make(folder.ledger(), SlipMaker.numbered(String.valueOf(check)), pdf);
      if (on.isPresent()) {
        screen.execute(() -> words.set(texts.of("slip.printing", on.get())));
        String taken = printing.print(pdf, on);
        end(texts.of("slip.printed", taken, pdf.toAbsolutePath()));
      } else {
        end(texts.of("slip.saved", pdf.toAbsolutePath()));
      }
    } catch (Exception | Error e) {
      missed(e);
    }
  }

  private void end(String told) {
    screen.execute(
        () -> {
          busy.set(false);
          words.set(told);
        });
  }

  private void missed(Throwable thrown) {
    Trouble missed = Causes.trouble(thrown);
    screen.execute(
        () -> {
          busy.set(false);
          trouble.set(Optional.of(missed));
          words.set(texts.of("slip.missed"));
        });
  }
}
