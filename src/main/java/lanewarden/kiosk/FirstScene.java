package lanewarden.kiosk;

import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.PasswordField;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Theme;
import lanewarden.kiosk.look.Typeface;

/**
 * A scene that nobody sees, with every kind of control that the first screen has: while a station
 * is opened elsewhere, the toolkit reads the stylesheets and the skins of the controls, and the
 * screen is there the sooner.
 */
final class FirstScene {

  private FirstScene() {}

  /** Lays it out; on the screen's thread. */
  static void prepare() {
    Typeface.load();
    ListView<String> list = new ListView<>();
    list.getItems().add("0");
    VBox fields = new VBox(new Label("0"), new TextField("0"), new PasswordField(), list);
    BorderPane root = new BorderPane(fields);
    root.setBottom(new KeyButton("0", KeyCode.ENTER, () -> {}));
    Scene scene = new Scene(root);
    scene.getStylesheets().setAll(Theme.DAY.stylesheets());
    root.applyCss();
    root.layout();
  }
}
