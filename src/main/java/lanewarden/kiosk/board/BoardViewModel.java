package lanewarden.kiosk.board;

import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.LineView;

/** What the board shows; used on the screen's thread. */
public final class BoardViewModel {
  private final Texts texts;
  private final ObjectProperty<Optional<BoardPage>> page =
      new SimpleObjectProperty<>(Optional.empty());

  private final BooleanProperty held = new SimpleBooleanProperty();
  private final BooleanProperty stopped = new SimpleBooleanProperty();

  /** A board that shows nobody. */
  public BoardViewModel(Texts texts) {
    this.texts = texts;
  }

  /** Takes the next state of the line. */
  public void take(LineView view) {
    stopped.set(!view.goesOn());
    held.set(view.verification().held().isPresent());
    page.set(view.check().map(check -> BoardPage.of(check, texts)));
  }

  /** Whether the line is held. */
  public BooleanProperty held() {
    return held;
  }

  /** Whether the line is stopped for safety. */
  public BooleanProperty stopped() {
    return stopped;
  }

  /** Who is at the line; empty while nobody is. */
  public ObjectProperty<Optional<BoardPage>> page() {
    return page;
  }
}
