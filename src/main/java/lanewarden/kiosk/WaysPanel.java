package lanewarden.kiosk;

import java.util.List;
import java.util.Locale;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.GridPane;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.ScreenFrame;
import lanewarden.kiosk.look.TextSize;
import lanewarden.kiosk.look.Texts;

/** Lists screens with their keys; what is not open now says why. */
final class WaysPanel extends KeyedPanel {
  private static final PseudoClass SINGLE = PseudoClass.getPseudoClass("single");

  private final GridPane grid = new GridPane();

  // Held here, so that it is followed as long as the panel lives
  private final ObservableValue<TextSize> size = ScreenFrame.sizeAt(root);

  /**
   * @param leave stays where it was opened from
   */
  WaysPanel(List<Ways.Way> ways, Ways.Wording wording, Texts texts, Runnable leave) {
    super("ways-panel", new KeyButton(texts.of("ways.stay"), KeyCode.ESCAPE, leave));
    grid.getStyleClass().add("ways");
    List<KeyButton> buttons = ways.stream().map(way -> button(way, texts, leave)).toList();
    size.subscribe(now -> arrange(buttons, columns(now)));
    root.say(new Label(wording.title()), new Label(wording.words()));
    root.getChildren().add(grid);
    offerBack();
  }

  /** As many as fit beside each other; they fit below each other only with text as drawn. */
  private static int columns(TextSize size) {
    return switch (size) {
      case PLAIN -> 3;
      case LARGE, LARGER -> 2;
      case LARGEST -> 1;
    };
  }

  private void arrange(List<KeyButton> buttons, int columns) {
    grid.getChildren().clear();
    grid.pseudoClassStateChanged(SINGLE, columns == 1);
    for (int place = 0; place < buttons.size(); place++) {
      grid.add(buttons.get(place), place % columns, place / columns);
    }
  }

  private KeyButton button(Ways.Way way, Texts texts, Runnable leave) {
    String words =
        way.barred().map(why -> texts.of("way.barred", way.words(), why)).orElse(way.words());
    KeyButton button =
        new KeyButton(
            words,
            way.key(),
            () -> {
              leave.run();
              way.go().run();
            });
    button.setDisable(way.barred().isPresent());
    button.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
    button.setId("way-" + way.key().name().toLowerCase(Locale.ROOT));
    keys().add(button);
    return button;
  }

  @Override
  public boolean isPassable() {
    return true;
  }
}
