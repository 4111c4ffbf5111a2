package lanewarden.kiosk;

import java.util.List;
import java.util.Locale;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.GridPane;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Texts;

/** Lists every screen with its key; what is not open now says why. */
final class WaysPanel implements Page {
  private static final int COLUMNS = 2;

  private final PanelFrame root = new PanelFrame("ways-panel");
  private final Keys keys = new Keys();
  private final KeyButton back;

  /**
   * @param leave stays where it was opened from
   */
  WaysPanel(List<Ways.Way> ways, Texts texts, Runnable leave) {
    back = new KeyButton(texts.of("ways.stay"), KeyCode.ESCAPE, leave);
    GridPane grid = new GridPane();
    grid.getStyleClass().add("ways");
    for (Ways.Way way : ways) {
      int place = grid.getChildren().size();
      grid.add(button(way, texts, leave), place % COLUMNS, place / COLUMNS);
    }
    root.say(new Label(texts.of("ways.title")), new Label(texts.of("ways.words")));
    root.getChildren().add(grid);
    root.offer(back);
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
    keys.add(button);
    return button;
  }

  @Override
  public Parent root() {
    return root;
  }

  /** Back has the focus: a bib scanned by mistake ends here and leads nowhere else. */
  @Override
  public void focus() {
    back.requestFocus();
  }

  @Override
  public boolean press(KeyCode code) {
    return keys.press(code) || root.press(code);
  }

  @Override
  public boolean isPassable() {
    return true;
  }

  @Override
  public void typed(String text) {
    // Letters and digits mean nothing here
  }
}
