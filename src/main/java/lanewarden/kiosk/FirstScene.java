package lanewarden.kiosk;

import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.PasswordField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Theme;
import lanewarden.kiosk.look.Typeface;

/**
 * A scene that nobody sees, with the kinds of control that the first screen has: while the program
 * reads what it was told, the toolkit reads the stylesheets and the skins of the controls, and the
 * screen is there the sooner.
 */
final class FirstScene {

  private FirstScene() {}

  /** Lays it out; on the screen's thread. */
  static void prepare() {
    // The toolkit's own stylesheet first: it needs no typeface, which are read elsewhere meanwhile
    Application.setUserAgentStylesheet(null);
    Typeface.load();
    VBox fields = new VBox(new Label("0"), new PasswordField());
    BorderPane root = new BorderPane(fields);
    root.setBottom(new KeyButton("0", KeyCode.ENTER, () -> {}));
    Scene scene = new Scene(root);
    scene.getStylesheets().setAll(Theme.DAY.stylesheets());
    root.applyCss();
    root.layout();
  }
}
