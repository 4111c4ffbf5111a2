package lanewarden.kiosk.line;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import lanewarden.kiosk.desk.Desk;
import lanewarden.station.Trouble;
import lanewarden.station.VerificationView.Round;
import org.jspecify.annotations.Nullable;

/** Verifying the instrument, holding the line, lifting a hold; used on the screen's thread. */
public final class ProvingViewModel {
  private final Desk desk;
  private final ObjectProperty<@Nullable LinePage> page;
  private final StringProperty typed = new SimpleStringProperty("");
  private final ObjectProperty<Optional<Trouble>> trouble =
      new SimpleObjectProperty<>(Optional.empty());

  ProvingViewModel(Desk desk, ObjectProperty<@Nullable LinePage> page) {
    this.desk = desk;
    this.page = page;
  }

  /** The line as it is. */
  public ObjectProperty<@Nullable LinePage> page() {
    return page;
  }

  /** The verification that goes on, or was begun last. */
  public Optional<Round> round() {
    LinePage now = page.get();
    return now == null ? Optional.empty() : now.proving().round();
  }

  /** Whether a verification goes on. */
  public boolean running() {
    LinePage now = page.get();
    return now != null && now.proving().running();
  }

  /** The text in the field. */
  public StringProperty typed() {
    return typed;
  }

  /** Why what was typed was not taken. */
  public ObjectProperty<Optional<Trouble>> trouble() {
    return trouble;
  }

  /** Begins a verification. */
  public void begin(Runnable done, Consumer<Trouble> missed) {
    desk.act(station -> station.proving().begin(), done, missed);
  }

  /**
   * Takes what is typed: the second instrument's value where one is awaited, else a shot of the
   * station's own.
   */
  public void take() {
    String text = typed.get();
    boolean reference = round().filter(Round::awaitsReference).isPresent();
    trouble.set(Optional.empty());
    desk.act(
        station -> {
          if (reference) {
            station.proving().reference(text);
          } else {
            station.type(text);
          }
        },
        () -> typed.set(""),
        missed -> trouble.set(Optional.of(missed)));
  }

  /** Breaks the verification off; the answer goes to the panel that asked. */
  public void breakOff(String reason, Runnable done, Consumer<Trouble> missed) {
    desk.act(station -> station.proving().breakOff(reason), done, missed);
  }

  /** Holds the line; the answer goes to the panel that asked. */
  public void hold(String reason, Runnable done, Consumer<Trouble> missed) {
    desk.act(station -> station.proving().hold(reason), done, missed);
  }

  /** Lifts a hold; the answer goes to the panel that asked. */
  public void lift(String reason, Runnable done, Consumer<Trouble> missed) {
    desk.act(station -> station.proving().lift(reason), done, missed);
  }
}
