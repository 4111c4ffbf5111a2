package lanewarden.kiosk.start;

import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import lanewarden.kiosk.look.Texts;

/** Which of a list's columns is taken for one of the roster's: turned with the arrow keys. */
final class ColumnTurner extends Label {
  private final Draft draft;
  private final Texts texts;
  private final String title;
  private final String name;

  /**
   * @param title the roster's own
   * @param name the same, in words
   */
  ColumnTurner(Draft draft, Texts texts, String title, String name) {
    this.draft = draft;
    this.texts = texts;
    this.title = title;
    this.name = name;
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.SPINNER);
    setMaxWidth(Double.MAX_VALUE);
    setId("turner-" + title);
    getStyleClass().add("column-turner");
    addEventHandler(KeyEvent.KEY_PRESSED, this::arrows);
    addEventHandler(
        MouseEvent.MOUSE_CLICKED,
        e -> {
          requestFocus();
          draft.turn(title, 1);
        });
  }

  private void arrows(KeyEvent event) {
    switch (event.getCode()) {
      case RIGHT -> draft.turn(title, 1);
      case LEFT -> draft.turn(title, -1);
      default -> {
        return;
      }
    }
    event.consume();
  }

  /** Shows which column it is now. */
  void show(List<String> headers) {
    int place = draft.column(title);
    String header =
        place < 0 || place >= headers.size() ? texts.of("make.column.none") : headers.get(place);
    setText(texts.of("make.column.turned", header));
    setAccessibleText(texts.of("make.column.spoken", name, header));
  }
}
