package lanewarden.kiosk.rulebook;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import lanewarden.station.Trouble;

/** The organizer puts the event's rule book in force; on the screen's thread. */
public final class AdoptViewModel {
  private final Adoption adoption;
  private final Consumer<Optional<Trouble>> done;
  private final StringProperty reason = new SimpleStringProperty("");
  private final BooleanProperty busy = new SimpleBooleanProperty();
  private final ObjectProperty<Optional<Trouble>> trouble =
      new SimpleObjectProperty<>(Optional.empty());

  /**
   * @param done runs when it is in force, with what there is to remark on it
   */
  public AdoptViewModel(Adoption adoption, Consumer<Optional<Trouble>> done) {
    this.adoption = adoption;
    this.done = done;
  }

  /** Why the rules are changed. */
  public StringProperty reason() {
    return reason;
  }

  /** Whether it is being signed. */
  public BooleanProperty busy() {
    return busy;
  }

  /** Why it is not in force. */
  public ObjectProperty<Optional<Trouble>> trouble() {
    return trouble;
  }

  /**
   * Has it signed.
   *
   * @param passphrase of the organizer's key; is wiped
   */
  public void adopt(char[] passphrase) {
    if (busy.get()) {
      return;
    }
    busy.set(true);
    trouble.set(Optional.empty());
    adoption.adopt(
        passphrase,
        reason.get().strip(),
        remark -> {
          busy.set(false);
          done.accept(remark);
        },
        missed -> {
          busy.set(false);
          trouble.set(Optional.of(missed));
        });
  }
}
