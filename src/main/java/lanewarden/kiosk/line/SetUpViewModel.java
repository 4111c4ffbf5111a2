package lanewarden.kiosk.line;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import lanewarden.kiosk.line.Preparation.Figure;
import lanewarden.station.SetUpText;
import lanewarden.station.Trouble;

/** Bow and arrow as the official enters them; used on the screen's thread. */
public final class SetUpViewModel {

  /** Hands over what was entered. */
  @FunctionalInterface
  public interface Handover {
    /** Answers through one of the two. */
    void give(SetUpText figures, Runnable done, Consumer<Trouble> missed);
  }

  private final List<Preparation.Asked> offered;
  private final Handover handover;
  private final Runnable leave;
  private final Map<Figure, StringProperty> texts = new EnumMap<>(Figure.class);
  private final BooleanProperty busy = new SimpleBooleanProperty();
  private final ObjectProperty<Optional<Trouble>> trouble =
      new SimpleObjectProperty<>(Optional.empty());

  /**
   * @param offered the figures that can be entered. Their fields begin empty whatever is known:
   *     what is handed over is signed as weighed, and a figure that nobody typed was not
   * @param leave runs when it is done
   */
  public SetUpViewModel(List<Preparation.Asked> offered, Handover handover, Runnable leave) {
    this.offered = List.copyOf(offered);
    this.handover = handover;
    this.leave = leave;
    offered.forEach(figure -> texts.put(figure.figure(), new SimpleStringProperty("")));
  }

  /** The figures, in the order of the fields. */
  public List<Preparation.Asked> offered() {
    return offered;
  }

  /** What is entered for a figure that can be entered. */
  public StringProperty text(Figure figure) {
    return texts.getOrDefault(figure, new SimpleStringProperty(""));
  }

  /** Whether it was handed over and is not answered yet. */
  public BooleanProperty busy() {
    return busy;
  }

  /** Why it was not taken. */
  public ObjectProperty<Optional<Trouble>> trouble() {
    return trouble;
  }

  /** The first figure that the rule asks for and nobody states; empty if there is none. */
  public Optional<Figure> firstBlank() {
    return offered.stream()
        .filter(asked -> asked.needed() && asked.known().isBlank())
        .map(Preparation.Asked::figure)
        .filter(figure -> text(figure).get().isBlank())
        .findFirst();
  }

  /** Hands over what is entered. */
  public void enter() {
    if (busy.get()) {
      return;
    }
    busy.set(true);
    trouble.set(Optional.empty());
    handover.give(
        new SetUpText(
            text(Figure.ARROW_MASS).get(),
            text(Figure.DRAW_WEIGHT).get(),
            text(Figure.CERTIFIED_DRAW_WEIGHT).get(),
            text(Figure.DRAW_LENGTH).get(),
            text(Figure.BRACE_HEIGHT).get()),
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
