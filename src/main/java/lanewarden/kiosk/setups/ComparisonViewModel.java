package lanewarden.kiosk.setups;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import lanewarden.audit.comparison.ComparisonPaper;
import lanewarden.bench.Comparison;
import lanewarden.bench.ComparisonSheet;
import lanewarden.kiosk.desk.SideTable;
import lanewarden.kiosk.form.Places;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.PracticeDay;
import lanewarden.station.Trouble;

/** A practice file that somebody brings, compared without an event; used on the screen's thread. */
public final class ComparisonViewModel {
  private final ComparisonPaper paper;
  private final Places places;
  private final SideTable table;
  private final Texts texts;
  private final ObjectProperty<Optional<ComparisonSheet>> sheet =
      new SimpleObjectProperty<>(Optional.empty());
  private final ReadOnlyStringWrapper files = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper done = new ReadOnlyStringWrapper("");
  private Optional<Read> read = Optional.empty();

  /** What was read, and from where. */
  private record Read(Path file, Optional<Path> rules, Comparison comparison) {}

  /**
   * Nothing is read yet.
   *
   * @param paper writes what was found
   * @param places where files lie
   * @param table where they are read and written
   */
  public ComparisonViewModel(ComparisonPaper paper, Places places, SideTable table, Texts texts) {
    this.paper = paper;
    this.places = places;
    this.table = table;
    this.texts = texts;
  }

  /** What the shots show; empty before the first file. */
  ObjectProperty<Optional<ComparisonSheet>> sheet() {
    return sheet;
  }

  /** Which file it is, and by which rule book it is looked at. */
  ReadOnlyStringProperty files() {
    return files.getReadOnlyProperty();
  }

  /** What was written last, in a sentence; else blank. */
  ReadOnlyStringProperty done() {
    return done.getReadOnlyProperty();
  }

  /**
   * Compares the set-ups of another file; the one before stays where this one cannot be read.
   *
   * @param file the shots
   * @param rules a rule book or an event's folder with one, whose limits are looked at; blank for
   *     none
   */
  public void open(String file, String rules, Runnable taken, Consumer<Trouble> refused) {
    table.ask(
        () -> {
          Path shots = places.there(file);
          Optional<Path> book =
              rules.isBlank() ? Optional.empty() : Optional.of(places.there(rules));
          return new Read(shots, book, PracticeDay.compare(shots, book));
        },
        now -> {
          show(now);
          taken.run();
        },
        refused);
  }

  private void show(Read now) {
    read = Optional.of(now);
    done.set("");
    files.set(
        now.rules()
            .map(book -> texts.of("compared.files.rules", now.file(), book))
            .orElseGet(() -> texts.of("compared.files", now.file())));
    sheet.set(Optional.of(new ComparisonSheet(now.comparison())));
  }

  /**
   * Writes tables and pictures, or a line a set-up, beside the file of shots where nobody names
   * another place.
   *
   * @param typed the file, or blank for the usual
   */
  void write(Copy copy, String typed, Runnable taken, Consumer<Trouble> refused) {
    read.ifPresent(found -> write(found, copy, typed, taken, refused));
  }

  private void write(
      Read found, Copy copy, String typed, Runnable taken, Consumer<Trouble> refused) {
    Path around = found.file().toAbsolutePath().resolveSibling("");
    Copies copies = new Copies(paper, Places.in(around), table);
    Consumer<Path> written =
        to -> {
          done.set(texts.of("setups.written", to));
          taken.run();
        };
    if (copy == Copy.TABLE) {
      copies.table(found.comparison(), typed, written, refused);
    } else {
      copies.paper(found.comparison(), typed, written, refused);
    }
  }
}
