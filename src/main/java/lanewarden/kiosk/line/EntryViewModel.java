package lanewarden.kiosk.line;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import lanewarden.station.Trouble;

/** One thing that the official enters or confirms; used on the screen's thread. */
public final class EntryViewModel {

  /** Hands over what was entered. */
  @FunctionalInterface
  public interface Handover {
    /** Answers through one of the two. */
    void give(String text, Runnable done, Consumer<Trouble> missed);
  }

  private final List<String> picks;
  private final Handover handover;
  private final Runnable leave;
  private final StringProperty text = new SimpleStringProperty("");
  private final BooleanProperty busy = new SimpleBooleanProperty();
  private final ObjectProperty<Optional<Trouble>> trouble =
      new SimpleObjectProperty<>(Optional.empty());

  /**
   * @param picks texts that can be picked instead of written, none to nine
   * @param leave runs when it is done
   */
  public EntryViewModel(List<String> picks, Handover handover, Runnable leave) {
    this.picks = List.copyOf(picks);
    this.handover = handover;
    this.leave = leave;
  }

  /** Texts that can be picked. */
  public List<String> picks() {
    return picks;
  }

  /** The text written. */
  public StringProperty text() {
    return text;
  }

  /** Whether it was handed over and is not answered yet. */
  public BooleanProperty busy() {
    return busy;
  }

  /** Why it was not taken. */
  public ObjectProperty<Optional<Trouble>> trouble() {
    return trouble;
  }

  /** Hands over what is written; a single digit means the pick with that number. */
  public void enter() {
    submit(picked().orElseGet(text::get));
  }

  private Optional<String> picked() {
    String written = text.get().strip();
    if (written.length() != 1 || written.charAt(0) < '1' || written.charAt(0) > '9') {
      return Optional.empty();
    }
    int index = written.charAt(0) - '1';
    return index < picks.size() ? Optional.of(picks.get(index)) : Optional.empty();
  }

  /** Hands over this text. */
  public void submit(String entered) {
    if (busy.get()) {
      return;
    }
    busy.set(true);
    trouble.set(Optional.empty());
    handover.give(
        entered,
        () -> {
          busy.set(false);
          leave.run();
        },
        missed -> {
          busy.set(false);
          trouble.set(Optional.of(missed));
        });
  }
}
