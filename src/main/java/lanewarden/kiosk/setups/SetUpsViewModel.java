package lanewarden.kiosk.setups;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import lanewarden.audit.comparison.ComparisonPaper;
import lanewarden.bench.Comparison;
import lanewarden.bench.ComparisonSheet;
import lanewarden.bench.Practice;
import lanewarden.bench.PracticeShot;
import lanewarden.kiosk.desk.Desk;
import lanewarden.kiosk.desk.SideTable;
import lanewarden.kiosk.form.Places;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.LineView;
import lanewarden.station.PracticeSetUpText;
import lanewarden.station.PracticeView;
import lanewarden.station.Station;
import lanewarden.station.Trouble;

/** Set-ups that are shot beside each other; used on the screen's thread. */
public final class SetUpsViewModel {
  private final Desk desk;
  private final Places places;
  private final SideTable table;
  private final Copies copies;
  private final Texts texts;
  private final ObservableList<SetUpRow> rows = FXCollections.observableArrayList();
  private final ObjectProperty<Optional<SetUpRow>> chosen =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<ComparisonSheet>> sheet =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<PracticeView>> practice =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<Trouble>> trouble =
      new SimpleObjectProperty<>(Optional.empty());
  private final StringProperty done = new SimpleStringProperty("");
  private final BooleanProperty onDuty = new SimpleBooleanProperty();
  private List<String> officials = List.of();
  private long shown = -1;

  /**
   * @param paper writes what was found
   * @param places where files lie
   * @param table where they are written
   */
  public SetUpsViewModel(
      Desk desk, ComparisonPaper paper, Places places, SideTable table, Texts texts) {
    this.desk = desk;
    this.places = places;
    this.table = table;
    this.copies = new Copies(paper, places, table);
    this.texts = texts;
  }

  /** Takes the next state of the line. */
  public void take(LineView view) {
    onDuty.set(view.official().isPresent());
    PracticeView now = view.practice();
    practice.set(Optional.of(now));
    if (now.changes() != shown) {
      shown = now.changes();
      compare();
    }
  }

  /** Begins to look; the rule book may be another by now. */
  public void open() {
    trouble.set(Optional.empty());
    compare();
    desk.ask(Station::officials, names -> officials = names, this::missed);
  }

  /** Looks at something else: the instrument's readings are the line's again. */
  public void close() {
    if (isListening()) {
      desk.act(station -> station.practising().rest(), () -> {}, this::missed);
    }
  }

  private void compare() {
    desk.ask(station -> station.practising().comparison(), this::show, this::missed);
  }

  private void show(Optional<Comparison> compared) {
    Optional<SetUpRow> before = chosen.get();
    sheet.set(compared.map(ComparisonSheet::new));
    rows.setAll(sheet.get().map(SetUpRow::of).orElse(List.of()));
    chosen.set(
        before
            .flatMap(was -> rows.stream().filter(was::isSame).findFirst())
            .or(() -> rows.stream().findFirst()));
  }

  private void missed(Trouble why) {
    done.set("");
    trouble.set(Optional.of(why));
  }

  /** What was shot, a row a set-up, from the fastest to the slowest. */
  ObservableList<SetUpRow> rows() {
    return rows;
  }

  /** The row that is looked at. */
  ObjectProperty<Optional<SetUpRow>> chosen() {
    return chosen;
  }

  /** Looks at the next or the previous row. */
  void choose(int step) {
    int at = chosen.get().map(rows::indexOf).orElse(-1) + step;
    if (at >= 0 && at < rows.size()) {
      chosen.set(Optional.of(rows.get(at)));
    }
  }

  /** What the shots show; empty before the first. */
  ObjectProperty<Optional<ComparisonSheet>> sheet() {
    return sheet;
  }

  /** What is shot now. */
  ObjectProperty<Optional<PracticeView>> practice() {
    return practice;
  }

  /** Whether the instrument's readings come here. */
  boolean isListening() {
    return practice.get().filter(PracticeView::listening).isPresent();
  }

  /** What could not be done. */
  ObjectProperty<Optional<Trouble>> trouble() {
    return trouble;
  }

  /** What was done last that left something behind, in a sentence; else blank. */
  StringProperty done() {
    return done;
  }

  /** Whether an official is on duty, who signs. */
  BooleanProperty onDuty() {
    return onDuty;
  }

  /** Who may sign while nobody is on duty. */
  List<String> officials() {
    return officials;
  }

  /** States which bow and arrow is shot from now on. */
  void state(PracticeSetUpText typed, Runnable taken, Consumer<Trouble> refused) {
    act(station -> station.practising().shoot(typed), "", taken, refused);
  }

  /** Goes on with the row that is looked at. */
  void again() {
    chosen
        .get()
        .ifPresent(
            row ->
                act(
                    station -> station.practising().shootAgain(row.bow(), row.arrow()),
                    "",
                    () -> {},
                    this::missed));
  }

  /** Takes the instrument for the practice, or gives it back to the line. */
  void turnListening() {
    boolean listening = isListening();
    act(
        station -> {
          if (listening) {
            station.practising().rest();
          } else {
            station.practising().listen();
          }
        },
        "",
        () -> {},
        this::missed);
  }

  /** Takes a reading that somebody read off the instrument. */
  void type(String reading, Runnable taken, Consumer<Trouble> refused) {
    act(station -> station.practising().type(reading), "", taken, refused);
  }

  /** Says of a shot whether it is a misread. */
  void mark(PracticeShot shot, PracticeShot.Word word, Runnable taken, Consumer<Trouble> refused) {
    act(station -> station.practising().mark(shot.line(), word), "", taken, refused);
  }

  /** Goes on with a file, or with none where nothing was typed; what was shot stays in its own. */
  void begin(String file, Runnable taken, Consumer<Trouble> refused) {
    if (file.isBlank()) {
      act(station -> station.practising().beginAnew(), "", taken, refused);
      return;
    }
    table.ask(
        () -> places.there(file),
        path ->
            act(
                station -> station.practising().open(path),
                texts.of("setups.opened", path),
                taken,
                refused),
        refused);
  }

  /** Writes what was found to a file, whose usual name it has where none was typed. */
  void write(Copy copy, String typed, Runnable taken, Consumer<Trouble> refused) {
    Optional<Comparison> found = sheet.get().map(ComparisonSheet::comparison);
    if (copy == Copy.SHOTS || found.isEmpty()) {
      table.ask(
          () -> places.fresh(typed, stem() + "-shots.csv"),
          to -> act(station -> station.practising().save(to), written(to), taken, refused),
          refused);
    } else if (copy == Copy.TABLE) {
      copies.table(found.get(), typed, to -> end(written(to), taken), refused);
    } else {
      copies.paper(found.get(), typed, to -> end(written(to), taken), refused);
    }
  }

  private String written(Path to) {
    return texts.of("setups.written", to);
  }

  /** The name of the practice's own file, without its ending. */
  private String stem() {
    return Copies.stem(
        practice.get().flatMap(PracticeView::practice).map(Practice::file).orElse("practice"));
  }

  /** Keeps the practice in the ledger, signed by whoever is on duty. */
  void keep(String title, Runnable taken, Consumer<Trouble> refused) {
    desk.ask(
        station -> station.practising().keep(title),
        entry -> end(texts.of("setups.kept", entry), taken),
        refused);
  }

  /** Keeps it in the ledger, signed by an official who comes for that. */
  void keep(
      String official, char[] passphrase, String title, Runnable taken, Consumer<Trouble> refused) {
    desk.ask(
        station -> station.practising().keep(official, passphrase, title),
        entry -> end(texts.of("setups.kept", entry), taken),
        refused);
  }

  private void act(Desk.Act act, String said, Runnable taken, Consumer<Trouble> refused) {
    desk.act(act, () -> end(said, taken), refused);
  }

  private void end(String said, Runnable taken) {
    trouble.set(Optional.empty());
    done.set(said);
    taken.run();
  }
}
