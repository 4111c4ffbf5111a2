package lanewarden.kiosk.start;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
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
  private final Map<Integer, BooleanProperty> judges = new HashMap<>();
  private final IntegerProperty people = new SimpleIntegerProperty(FEWEST_PEOPLE);
  private final ObjectProperty<StationSettings.Kind> kind =
      new SimpleObjectProperty<>(StationSettings.Kind.SERIAL);
  private final ObjectProperty<Step> step = new SimpleObjectProperty<>(Step.PLACE);
  private Consumer<String> stopped = field -> {};
  private final ObservableList<String> ports = FXCollections.observableArrayList();
  private final BooleanProperty busy = new SimpleBooleanProperty();
  private final ObjectProperty<Optional<Trouble>> trouble =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<EventForm.Made>> made =
      new SimpleObjectProperty<>(Optional.empty());
  private final Draft draft;

  /**
   * @param files does work on files, one task after the other
   * @param screen the screen's thread
   */
  public NewEventViewModel(Surroundings here, Executor files, Executor screen) {
    this.here = here;
    this.files = files;
    this.screen = screen;
    draft =
        new Draft(
            files,
            screen,
            () -> {
              EventForm form = form();
              return form::examine;
            });
    text(EventForm.PROFILE).set(Packed.profiles().get(0).file());
    kind.addListener((all, before, now) -> draft.changed());
  }

  /** Goes to the first page; after an event was made, with nothing filled in. */
  public void begin() {
    step.set(Step.PLACE);
    trouble.set(Optional.empty());
    if (made.get().isPresent()) {
      made.set(Optional.empty());
      draft.empty();
      judges.values().forEach(judge -> judge.set(false));
      text(EventForm.PROFILE).set(Packed.profiles().get(0).file());
    }
    lookForPorts();
    draft.changed();
  }

  /** The fields, with what is wrong in those of the pages that were filled in. */
  Draft draft() {
    return draft;
  }

  private StringProperty text(String field) {
    return draft.text(field);
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
    draft.tell(page.fields());
    trouble.set(Optional.empty());
    draft.examine(Optional.of(found -> leave(page, found)));
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
      Arrays.stream(Step.values()).map(Step::fields).forEach(draft::tell);
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
      draft.tellNothing();
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
        draft.columns(),
        text(EventForm.PROFILE).get(),
        kind.get(),
        text(EventForm.PORT).get(),
        all);
  }
}
