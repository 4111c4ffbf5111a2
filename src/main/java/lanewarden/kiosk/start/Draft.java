package lanewarden.kiosk.start;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import lanewarden.roster.RosterSheet;
import lanewarden.station.EventForm;
import lanewarden.station.EventFormFindings;

/**
 * Fields that somebody fills in, a list of competitors with its columns among them, and what is
 * found in them at every moment; used on the screen's thread.
 */
final class Draft {
  private final Executor files;
  private final Executor screen;
  private final Supplier<Supplier<EventFormFindings>> form;
  private final Map<String, StringProperty> texts = new HashMap<>();
  private final ObjectProperty<Optional<EventFormFindings>> findings =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Map<String, List<EventFormFindings.Fault>>> faults =
      new SimpleObjectProperty<>(Map.of());
  private final Set<String> told = new LinkedHashSet<>();
  private final AtomicLong change = new AtomicLong();
  private Map<String, Integer> columns = Map.of();

  /**
   * @param files does work on files, one task after the other
   * @param screen the screen's thread
   * @param form gives what is filled in now, as something to be examined off the screen's thread
   */
  Draft(Executor files, Executor screen, Supplier<Supplier<EventFormFindings>> form) {
    this.files = files;
    this.screen = screen;
    this.form = form;
  }

  /** What stands in a field, named as {@link EventForm} names it. */
  StringProperty text(String field) {
    return texts.computeIfAbsent(
        field,
        f -> {
          StringProperty text = new SimpleStringProperty("");
          text.addListener(
              (all, before, now) -> {
                if (f.equals(EventForm.ROSTER)) {
                  // Another list has other columns
                  columns = Map.of();
                }
                changed();
              });
          return text;
        });
  }

  /** Takes a file or folder that was chosen. */
  void choose(String field, Path path) {
    text(field).set(path.toString());
  }

  /** Empties every field, of which nothing is told then. */
  void empty() {
    tellNothing();
    texts.values().forEach(text -> text.set(""));
  }

  /** What was found last. */
  ObjectProperty<Optional<EventFormFindings>> findings() {
    return findings;
  }

  /** What is wrong, by field, of those whose faults are told. */
  ObjectProperty<Map<String, List<EventFormFindings.Fault>>> faults() {
    return faults;
  }

  /** Tells the faults of more fields from now on: those whose names begin so. */
  void tell(Set<String> beginnings) {
    told.addAll(beginnings);
  }

  /** Tells the faults of no field. */
  void tellNothing() {
    told.clear();
  }

  /** Which columns of the list were chosen; none as long as nobody chose. */
  Map<String, Integer> columns() {
    return columns;
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
    Map<String, Integer> other = new LinkedHashMap<>(taken());
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
    return taken().getOrDefault(title, -1);
  }

  private Map<String, Integer> taken() {
    return columns.isEmpty()
        ? findings.get().map(EventFormFindings::columns).orElse(Map.of())
        : columns;
  }

  /** Reads the files again and says what is wrong now. */
  void changed() {
    examine(Optional.empty());
  }

  /**
   * The same.
   *
   * @param then takes what is found, also when something was typed meanwhile
   */
  void examine(Optional<Consumer<EventFormFindings>> then) {
    long mine = change.incrementAndGet();
    Supplier<EventFormFindings> now = form.get();
    files.execute(
        () -> {
          if (change.get() != mine && then.isEmpty()) {
            // Something was typed since; that is examined next
            return;
          }
          EventFormFindings found = now.get();
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
      faults.set(found.faultsOf(told));
    }
  }
}
