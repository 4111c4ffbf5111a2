package lanewarden.kiosk.start;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
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
import lanewarden.roster.RosterSheet;
import lanewarden.station.EventForm;
import lanewarden.station.EventFormFindings;
import lanewarden.station.Listening;
import lanewarden.station.Packed;
import lanewarden.station.StationException;
import lanewarden.station.StationSettings;
import lanewarden.station.Surroundings;
import lanewarden.station.Trouble;

/**
 * The form of an event to be made, with what is wrong in it at every moment; used on the screen's
 * thread. What was typed stays, also when one goes back to the start, until the event is made.
 */
public final class NewEventViewModel {
  private static final int FEWEST_PEOPLE = 4;
  private static final int MOST_PEOPLE = 13;

  private final Surroundings here;
  private final Executor files;
  private final Executor screen;
  private final Map<String, StringProperty> texts = new HashMap<>();
  private final Map<Integer, BooleanProperty> judges = new HashMap<>();
  private final IntegerProperty people = new SimpleIntegerProperty(FEWEST_PEOPLE);
  private final ObjectProperty<StationSettings.Kind> kind =
      new SimpleObjectProperty<>(StationSettings.Kind.SERIAL);
  private final ObjectProperty<Step> step = new SimpleObjectProperty<>(Step.PLACE);
  private final ObjectProperty<Optional<EventFormFindings>> findings =
      new SimpleObjectProperty<>(Optional.empty());
  private Consumer<String> stopped = field -> {};
  private final ObjectProperty<Map<String, List<EventFormFindings.Fault>>> faults =
      new SimpleObjectProperty<>(Map.of());
  private final ObservableList<String> ports = FXCollections.observableArrayList();
  private final BooleanProperty busy = new SimpleBooleanProperty();
  private final ObjectProperty<Optional<Trouble>> trouble =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<EventForm.Made>> made =
      new SimpleObjectProperty<>(Optional.empty());
  private final Set<Step> tried = EnumSet.noneOf(Step.class);
  private final AtomicLong change = new AtomicLong();
  private Map<String, Integer> columns = Map.of();

  /**
   * @param files does work on files, one task after the other
   * @param screen the screen's thread
   */
  public NewEventViewModel(Surroundings here, Executor files, Executor screen) {
    this.here = here;
    this.files = files;
    this.screen = screen;
    text(EventForm.PROFILE).set(Packed.profiles().get(0).file());
    text(EventForm.ROSTER).addListener((all, before, now) -> columns = Map.of());
    kind.addListener((all, before, now) -> changed());
  }

  /** Goes to the first page; after an event was made, with nothing filled in. */
  public void begin() {
    step.set(Step.PLACE);
    trouble.set(Optional.empty());
    if (made.get().isPresent()) {
      made.set(Optional.empty());
      tried.clear();
      texts.forEach((field, text) -> text.set(""));
      judges.values().forEach(judge -> judge.set(false));
      text(EventForm.PROFILE).set(Packed.profiles().get(0).file());
    }
    lookForPorts();
    changed();
  }

  /** What stands in a field, named as {@link EventForm} names it. */
  StringProperty text(String field) {
    return texts.computeIfAbsent(
        field,
        f -> {
          StringProperty text = new SimpleStringProperty("");
          text.addListener((all, before, now) -> changed());
          return text;
        });
  }

  /** Whether a person is a judge. */
  BooleanProperty judge(int person) {
    return judges.computeIfAbsent(person, p -> new SimpleBooleanProperty());
  }

  /** How many people there is room for, the organizer among them. */
  IntegerProperty people() {
    return people;
  }

  /** Makes room for one more. */
  void addPerson() {
    people.set(Math.min(MOST_PEOPLE, people.get() + 1));
  }

  /** Where readings come from. */
  ObjectProperty<StationSettings.Kind> kind() {
    return kind;
  }

  /** The page that is open. */
  ObjectProperty<Step> step() {
    return step;
  }

  /** What was found in the form last. */
  ObjectProperty<Optional<EventFormFindings>> findings() {
    return findings;
  }

  /** What is wrong in the pages that were filled in, by field. */
  ObjectProperty<Map<String, List<EventFormFindings.Fault>>> faults() {
    return faults;
  }

  /** The serial ports that are here. */
  ObservableList<String> ports() {
    return ports;
  }

  /** Whether the event is being made. */
  BooleanProperty busy() {
    return busy;
  }

  /** Why it was not made. */
  ObjectProperty<Optional<Trouble>> trouble() {
    return trouble;
  }

  /** The event that was made. */
  ObjectProperty<Optional<EventForm.Made>> made() {
    return made;
  }

  /** Looks which ports there are. */
  void lookForPorts() {
    files.execute(
        () -> {
          List<String> found = Listening.ports();
          screen.execute(() -> ports.setAll(found));
        });
  }

  /**
   * Takes another of the list's columns for one of the roster's: the next (1) or the one before.
   */
  void turn(String title, int by) {
    Optional<RosterSheet> sheet = findings.get().flatMap(EventFormFindings::sheet);
    if (sheet.isEmpty()) {
      return;
    }
    int choices = sheet.get().headers().size() + 1;
    int next = Math.floorMod(column(title) + 1 + by, choices) - 1;
    Map<String, Integer> other =
        new LinkedHashMap<>(
            columns.isEmpty()
                ? findings.get().map(EventFormFindings::columns).orElse(Map.of())
                : columns);
    if (next < 0) {
      other.remove(title);
    } else {
      other.put(title, next);
    }
    columns = other;
    changed();
  }

  /** The place of the list's column that is taken for one of the roster's; -1 for none. */
  int column(String title) {
    Map<String, Integer> now =
        columns.isEmpty()
            ? findings.get().map(EventFormFindings::columns).orElse(Map.of())
            : columns;
    return now.getOrDefault(title, -1);
  }

  /** Reads the files again and says what is wrong now. */
  void changed() {
    examine(Optional.empty());
  }

  /**
   * @param then takes what is found, also when something was typed meanwhile
   */
  private void examine(Optional<Consumer<EventFormFindings>> then) {
    long mine = change.incrementAndGet();
    EventForm form = form();
    files.execute(
        () -> {
          if (change.get() != mine && then.isEmpty()) {
            // Something was typed since; that is examined next
            return;
          }
          EventFormFindings found = form.examine();
          screen.execute(() -> take(found, mine, then));
        });
  }

  private void take(
      EventFormFindings found, long mine, Optional<Consumer<EventFormFindings>> then) {
    if (change.get() == mine) {
      findings.set(Optional.of(found));
    }
    then.ifPresent(t -> t.accept(found));
    if (change.get() == mine) {
      show(found);
    }
  }

  private void show(EventFormFindings found) {
    Map<String, List<EventFormFindings.Fault>> shown = new LinkedHashMap<>();
    tried.forEach(page -> shown.putAll(found.faultsOf(page.fields())));
    faults.set(shown);
  }

  /**
   * @param at takes the name of the first field that keeps somebody on a page
   */
  void onStopped(Consumer<String> at) {
    stopped = at;
  }

  /** Goes to the next page if nothing is wrong on this one; on the last, makes the event. */
  void next() {
    Step page = step.get();
    if (busy.get()) {
      return;
    }
    tried.add(page);
    trouble.set(Optional.empty());
    examine(Optional.of(found -> leave(page, found)));
  }

  private void leave(Step page, EventFormFindings found) {
    if (step.get() != page) {
      return;
    }
    Optional<String> faulty = found.faultsOf(page.fields()).keySet().stream().findFirst();
    if (faulty.isPresent()) {
      stopped.accept(faulty.get());
      return;
    }
    if (page.isLast()) {
      make(found);
    } else {
      step.set(page.next());
    }
  }

  /** Goes to the page before; false on the first one. */
  boolean back() {
    boolean first = step.get() == Step.PLACE;
    step.set(step.get().before());
    return !first;
  }

  private void make(EventFormFindings found) {
    Optional<Step> faulty =
        Arrays.stream(Step.values())
            .filter(page -> !found.faultsOf(page.fields()).isEmpty())
            .findFirst();
    if (faulty.isPresent()) {
      tried.addAll(EnumSet.allOf(Step.class));
      step.set(faulty.get());
      return;
    }
    busy.set(true);
    EventForm form = form();
    files.execute(
        () -> {
          try {
            EventForm.Made event = form.make(here);
            screen.execute(() -> finish(Optional.of(event), Optional.empty()));
          } catch (StationException | RuntimeException | Error e) {
            Trouble missed = Trouble.of(e);
            screen.execute(() -> finish(Optional.empty(), Optional.of(missed)));
          }
        });
  }

  /** Once the event is there, the passphrases are forgotten here. */
  private void finish(Optional<EventForm.Made> event, Optional<Trouble> missed) {
    busy.set(false);
    trouble.set(missed);
    if (event.isPresent()) {
      tried.clear();
      for (int person = 0; person < people.get(); person++) {
        text(EventForm.passphraseField(person)).set("");
        text(EventForm.againField(person)).set("");
      }
    }
    made.set(event);
  }

  private EventForm form() {
    List<EventForm.Person> all = new ArrayList<>();
    for (int person = 0; person < people.get(); person++) {
      all.add(
          new EventForm.Person(
              text(EventForm.nameField(person)).get(),
              text(EventForm.passphraseField(person)).get(),
              text(EventForm.againField(person)).get(),
              judge(person).get()));
    }
    return new EventForm(
        text(EventForm.FOLDER).get(),
        text(EventForm.STATION).get(),
        text(EventForm.RULE_BOOK).get(),
        text(EventForm.ROSTER).get(),
        columns,
        text(EventForm.PROFILE).get(),
        kind.get(),
        text(EventForm.PORT).get(),
        all);
  }

  /** Takes a file or folder that was chosen. */
  void choose(String field, Path path) {
    text(field).set(path.toString());
  }
}
