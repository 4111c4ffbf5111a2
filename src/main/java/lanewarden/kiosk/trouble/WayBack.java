package lanewarden.kiosk.trouble;

import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.KeyedPage;
import lanewarden.kiosk.look.Row;

/** A panel in which nothing is entered: it tells something and leads back. */
abstract class WayBack extends KeyedPage {
  private final VBox root = new VBox();

  /**
   * @param back the button that leads back, and has the focus
   */
  WayBack(String id, KeyButton back) {
    super(back);
    back.getStyleClass().add("primary");
    root.getStyleClass().add("panel");
    root.setMaxHeight(VBox.USE_PREF_SIZE);
    root.setId(id);
  }

  /** Fills the panel, the buttons below. */
  final void fill(Node[] told, KeyButton... more) {
    Row buttons = new Row(back());
    buttons.getStyleClass().add("panel-buttons");
    buttons.getChildren().addAll(more);
    keys().add(back());
    keys().add(more);
    root.getChildren().addAll(told);
    root.getChildren().add(buttons);
  }

  @Override
  public final Parent root() {
    return root;
  }
}
