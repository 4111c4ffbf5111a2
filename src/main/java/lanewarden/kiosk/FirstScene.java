package lanewarden.kiosk;

import javafx.application.Application;
import javafx.css.CssParser;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.PasswordField;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.skin.ButtonSkin;
import javafx.scene.control.skin.ScrollPaneSkin;
import javafx.scene.control.skin.TextFieldSkin;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.StackPane;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Theme;
import lanewarden.kiosk.look.Typeface;

/**
 * What nobody sees, of the kinds that the first screen has: while the program reads what it was
 * told, the toolkit reads stylesheets and the controls' inner works, on two threads, and the screen
 * is there the sooner.
 */
final class FirstScene {

  private FirstScene() {}

  /** Reads the stylesheets; on the screen's thread. */
  static void readStyles() {
    // The toolkit's own stylesheet first: it needs no typeface, which are read elsewhere meanwhile
    Application.setUserAgentStylesheet(null);
    Typeface.load();
    Label words = new Label("0");
    Scene scene = new Scene(words);
    scene.getStylesheets().setAll(Theme.DAY.stylesheets());
    words.applyCss();
    words.layout();
  }

  /** Makes controls that no scene shows, which any thread may; the toolkit has started. */
  static void makeControls() {
    // The size of the text is styled with every window, in words that are read then
    new CssParser().parse("* { -fx-font-size: 18px; }");
    PasswordField field = new PasswordField();
    field.setSkin(new TextFieldSkin(field));
    KeyButton button = new KeyButton("0", KeyCode.ENTER, () -> {});
    button.setSkin(new ButtonSkin(button));
    ScrollPane scroll = new ScrollPane(new StackPane());
    scroll.setSkin(new ScrollPaneSkin(scroll));
  }
}
