package lanewarden.kiosk.checkup;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import lanewarden.kiosk.desk.Desk;
import lanewarden.kiosk.desk.SideTable;
import lanewarden.kiosk.form.Places;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.CheckUp;
import lanewarden.station.EventFolder;
import lanewarden.station.SelfCheck;
import lanewarden.station.Station;
import lanewarden.station.SupportBundle;
import lanewarden.station.Trouble;

/** A check-up of a station, beside its open line or without one; used on the screen's thread. */
public final class CheckUpViewModel {
  private static final String USUAL = "support.zip";

  private final CheckUp checkUp;
  private final Optional<Desk> desk;
  private final EventFolder folder;
  private final Places places;
  private final SideTable table;
  private final Texts texts;
  private final BooleanProperty busy = new SimpleBooleanProperty();
  private final StringProperty words = new SimpleStringProperty("");
  private final ObjectProperty<Optional<SelfCheck>> found =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<Trouble>> trouble =
      new SimpleObjectProperty<>(Optional.empty());

  /**
   * @param desk of its line, if that is open in this program
   * @param table where ledger and files are read
   */
  public CheckUpViewModel(
      CheckUp checkUp, Optional<Desk> desk, EventFolder folder, SideTable table, Texts texts) {
    this.checkUp = checkUp;
    this.desk = desk;
    this.folder = folder;
    this.places = new Places(folder);
    this.table = table;
    this.texts = texts;
  }

  /** Looks the station over, unless that is being done. */
  public void look() {
    if (busy.get()) {
      return;
    }
    busy.set(true);
    words.set(texts.of("checkup.running"));
    desk.ifPresentOrElse(
        line -> line.ask(station -> station, station -> look(Optional.of(station)), this::miss),
        () -> look(Optional.empty()));
  }

  private void look(Optional<Station> open) {
    table.ask(() -> checkUp.of(folder, open), this::tell, this::miss);
  }

  private void tell(SelfCheck now) {
    busy.set(false);
    found.set(Optional.of(now));
    trouble.set(Optional.empty());
    words.set(new PointWords(texts).of(now));
  }

  private void miss(Trouble missed) {
    busy.set(false);
    words.set(texts.of("records.missed"));
    trouble.set(Optional.of(missed));
  }

  /** What is looked over, and what for. */
  String about() {
    return desk.isPresent()
        ? texts.of("checkup.words")
        : texts.of("checkup.alone.words", folder.path());
  }

  /** Whether it is being looked over. */
  BooleanProperty busy() {
    return busy;
  }

  /** How all of it stands. */
  StringProperty words() {
    return words;
  }

  /** What was found last. */
  ObjectProperty<Optional<SelfCheck>> found() {
    return found;
  }

  /** Why it could not be looked over. */
  ObjectProperty<Optional<Trouble>> trouble() {
    return trouble;
  }

  /** Gathers the bundle of what was found; nothing is written yet. */
  void gather(Consumer<SupportBundle> gathered) {
    found
        .get()
        .ifPresent(check -> table.ask(() -> checkUp.bundle(folder, check), gathered, this::miss));
  }

  /** Writes a bundle. */
  void write(SupportBundle bundle, String place, Runnable done, Consumer<Trouble> missed) {
    table.ask(
        () -> {
          Path zip = places.fresh(place, USUAL);
          bundle.write(zip);
          return zip;
        },
        zip -> {
          words.set(texts.of("checkup.bundle.written", zip));
          done.run();
        },
        missed);
  }
}
