package lanewarden.kiosk.start;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import lanewarden.kiosk.form.Places;
import lanewarden.station.CurrentLine;
import lanewarden.station.EventFolder;
import lanewarden.station.InstrumentPort;
import lanewarden.station.LastEvents;
import lanewarden.station.Listening;
import lanewarden.station.OpeningTerms;
import lanewarden.station.Packed;
import lanewarden.station.RuleDraft;
import lanewarden.station.Station;
import lanewarden.station.StationException;
import lanewarden.station.Trouble;
import lanewarden.station.UserFolder;

/** What can be opened, and its opening; used on the screen's thread. */
public final class StartViewModel {

  /** Takes what was opened, on the screen's thread. */
  public interface Handover {
    /**
     * A line that is open.
     *
     * @param practice whether it is the invented event
     */
    void line(Station station, EventFolder folder, boolean practice);

    /**
     * The port of an event's instrument, to be changed.
     *
     * @param here the ports that are here
     */
    void port(InstrumentPort port, List<String> here);

    /**
     * A line is to be opened otherwise than usual, for once.
     *
     * @param event the one that is picked, if there is one
     * @param here the ports that are here
     */
    void otherwise(Optional<Path> event, List<String> here);

    /** A rule book that is open. */
    void rules(RuleDraft draft);
  }

  /** Opens something off the screen's thread, and says how to hand it over. */
  @FunctionalInterface
  private interface Opening {
    Runnable open() throws StationException, IOException;
  }

  private final CurrentLine line;
  private final UserFolder user;
  private final LastEvents last;
  private final Executor files;
  private final Executor screen;
  private final Handover handover;
  private final ObservableList<LastEvents.Event> events = FXCollections.observableArrayList();
  private final IntegerProperty chosen = new SimpleIntegerProperty(-1);
  private final BooleanProperty busy = new SimpleBooleanProperty();
  private Optional<Trouble> untold;
  private final ObjectProperty<Optional<Trouble>> trouble =
      new SimpleObjectProperty<>(Optional.empty());

  /**
   * @param files does work on files, one task after the other
   * @param screen the screen's thread
   */
  public StartViewModel(
      CurrentLine line, UserFolder user, Executor files, Executor screen, Handover handover) {
    this.line = line;
    this.user = user;
    this.last = user.lastEvents();
    this.untold = line.here().log().untold();
    this.files = files;
    this.screen = screen;
    this.handover = handover;
  }

  /** Looks at the list of the events opened last. */
  public void refresh() {
    trouble.set(untold);
    untold = Optional.empty();
    files.execute(
        () -> {
          LastEvents.Read read = last.read();
          screen.execute(() -> show(read));
        });
  }

  private void show(LastEvents.Read read) {
    events.setAll(read.events());
    chosen.set(events.isEmpty() ? -1 : 0);
    if (trouble.get().isEmpty()) {
      trouble.set(read.trouble());
    }
  }

  /** The events opened last, the last one first. */
  ObservableList<LastEvents.Event> events() {
    return events;
  }

  /** The place of the event that is picked; negative if there is none. */
  IntegerProperty chosen() {
    return chosen;
  }

  /** The folder of the event that is picked, if there is one. */
  public Optional<Path> picked() {
    return chosen.get() < 0 ? Optional.empty() : Optional.of(events.get(chosen.get()).folder());
  }

  /** Picks the one before (-1) or after (1) the one picked now. */
  void choose(int step) {
    if (!events.isEmpty()) {
      chosen.set(Math.max(0, Math.min(events.size() - 1, chosen.get() + step)));
    }
  }

  /** Whether something is being opened or left. */
  public BooleanProperty busy() {
    return busy;
  }

  /** Why something was not opened. */
  public ObjectProperty<Optional<Trouble>> trouble() {
    return trouble;
  }

  /** Opens the event that is picked. */
  void openChosen() {
    picked().ifPresent(this::open);
  }

  /** Opens the event in a folder. */
  public void open(Path folder) {
    begin(() -> opened(folder, OpeningTerms.USUAL));
  }

  private Runnable opened(Path folder, OpeningTerms terms) throws StationException {
    EventFolder event = new EventFolder(folder);
    Station station = line.open(event, terms);
    Optional<Trouble> missed = remember(folder);
    return () -> {
      untold = missed;
      handover.line(station, event, false);
    };
  }

  /** The list only spares a way: an event that is not on it is open all the same. */
  private Optional<Trouble> remember(Path folder) {
    try {
      last.add(folder);
      return Optional.empty();
    } catch (StationException e) {
      return Optional.of(e.trouble());
    }
  }

  /** Opens the invented event. */
  void practise() {
    begin(() -> practised(OpeningTerms.USUAL));
  }

  private Runnable practised(OpeningTerms terms) throws StationException {
    CurrentLine.Practice practice = line.practise(user.practice(), terms);
    return () -> handover.line(practice.station(), practice.folder(), true);
  }

  /** Looks which ports are here, for a line that is to be opened otherwise than usual. */
  void askOtherwise() {
    Optional<Path> event = picked();
    begin(
        () -> {
          List<String> here = Listening.ports();
          return () -> handover.otherwise(event, here);
        });
  }

  /**
   * Opens a line otherwise than usual, for once.
   *
   * @param event empty for the invented one
   * @param other the folder of another event instead, as typed; blank for none
   * @param port as typed; blank for what the settings say
   * @param pace of invented archers, as typed; blank for the usual
   * @param missed takes why it was not opened
   */
  void openOtherwise(
      Optional<Path> event,
      String other,
      String port,
      String pace,
      Runnable done,
      Consumer<Trouble> missed) {
    begin(
        () -> {
          OpeningTerms terms = OpeningTerms.typed(port, pace);
          Optional<Path> meant =
              other.isBlank() ? event : Optional.of(Places.in(Path.of("")).folder(other));
          Runnable handed = meant.isPresent() ? opened(meant.get(), terms) : practised(terms);
          return () -> {
            done.run();
            handed.run();
          };
        },
        missed);
  }

  /** Looks up the port of the event that is picked, and the ports that are here. */
  void lookUpPort() {
    if (chosen.get() >= 0) {
      EventFolder event = new EventFolder(events.get(chosen.get()).folder());
      begin(
          () -> {
            InstrumentPort port = InstrumentPort.of(event);
            List<String> here = Listening.ports();
            return () -> handover.port(port, here);
          });
    }
  }

  /** Gives an event's instrument another port, off the screen's thread. */
  void changePort(InstrumentPort port, String other, Runnable done, Consumer<Trouble> missed) {
    files.execute(
        () -> {
          try {
            port.change(other);
            screen.execute(done);
          } catch (StationException | RuntimeException | Error e) {
            Trouble trouble = Trouble.of(e);
            screen.execute(() -> missed.accept(trouble));
          }
        });
  }

  /** Opens a rule book. */
  void openRules(Path file) {
    begin(() -> rules(file));
  }

  /** Begins a rule book with the example; the file must not be there yet. */
  void beginRules(Path file) {
    begin(
        () -> {
          Packed.copyRuleBook(file);
          return rules(file);
        });
  }

  private Runnable rules(Path file) throws StationException {
    RuleDraft draft = RuleDraft.open(file);
    return () -> handover.rules(draft);
  }

  private void begin(Opening opening) {
    begin(opening, missed -> trouble.set(Optional.of(missed)));
  }

  private void begin(Opening opening, Consumer<Trouble> refused) {
    if (busy.get()) {
      return;
    }
    busy.set(true);
    trouble.set(Optional.empty());
    files.execute(
        () -> {
          try {
            Runnable opened = opening.open();
            screen.execute(
                () -> {
                  busy.set(false);
                  opened.run();
                });
          } catch (StationException | IOException | RuntimeException | Error e) {
            Trouble missed = Trouble.of(e);
            screen.execute(
                () -> {
                  busy.set(false);
                  refused.accept(missed);
                });
          }
        });
  }
}
