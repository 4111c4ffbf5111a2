package lanewarden.kiosk;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ObjectProperty;
import javafx.event.ActionEvent;
import javafx.event.Event;
import javafx.event.EventTarget;
import javafx.geometry.NodeOrientation;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import lanewarden.kiosk.look.KeyCap;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.Panels;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.Theme;
import org.jspecify.annotations.Nullable;

/** The official's scene: one screen, at most one panel over it, and the way keys take to them. */
final class Shell implements Panels {
  // The look is drawn for this size and grows with the window, in pixels
  private static final double WIDTH = 1280;

  static final double HEIGHT = 800;
  private static final double TEXT = 18;

  /** Below this, text is no longer read with ease; a smaller window cuts off instead. */
  private static final double SMALLEST_TEXT = 13;

  private final StackPane veil = new StackPane();
  private final StackPane root = new StackPane();
  private final BorderPane frame = new BorderPane(root);
  private final Scene scene = new Scene(frame, WIDTH, HEIGHT);
  private final List<Runnable> turned = new ArrayList<>();
  private final Map<KeyCode, Runnable> otherwise = new EnumMap<>(KeyCode.class);
  private @Nullable Page screen;
  private @Nullable Page panel;

  /**
   * @param above stands above every screen and every panel
   * @param height of which the look is drawn, what always stands above included, in pixels
   */
  Shell(ObjectProperty<Theme> theme, Texts texts, Node above, double height) {
    this(theme, texts, height);
    frame.setTop(above);
  }

  /** Nothing stands above the screens. */
  Shell(ObjectProperty<Theme> theme, Texts texts) {
    this(theme, texts, HEIGHT);
  }

  private Shell(ObjectProperty<Theme> theme, Texts texts, double height) {
    veil.getStyleClass().add("veil");
    root.getStyleClass().add("shell");
    dress(scene, frame, theme, texts, height);
    scene.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    scene.addEventFilter(KeyEvent.KEY_TYPED, this::typed);
    scene.addEventHandler(ActionEvent.ACTION, this::acted);
    scene.focusOwnerProperty().addListener((all, before, now) -> keepFocus(now));
  }

  /**
   * Gives a scene its theme, its language's direction, and a text size that follows the window.
   *
   * @param height of which the look is drawn, in pixels
   */
  static void dress(
      Scene scene, Parent root, ObjectProperty<Theme> theme, Texts texts, double height) {
    KeyCap.speak(scene, texts);
    if (texts.language().isRightToLeft()) {
      scene.setNodeOrientation(NodeOrientation.RIGHT_TO_LEFT);
    }
    scene.getStylesheets().setAll(theme.get().stylesheets());
    theme.addListener((all, before, now) -> scene.getStylesheets().setAll(now.stylesheets()));
    root.styleProperty()
        .bind(
            Bindings.createStringBinding(
                () -> {
                  double share = Math.min(scene.getWidth() / WIDTH, scene.getHeight() / height);
                  return "-fx-font-size: " + Math.max(SMALLEST_TEXT, TEXT * share) + "px;";
                },
                scene.widthProperty(),
                scene.heightProperty()));
  }

  Scene scene() {
    return scene;
  }

  /** Gives a key a meaning wherever it has none of its own. */
  void otherwise(KeyCode code, Runnable act) {
    otherwise.put(code, act);
  }

  /** Runs whenever another screen or panel is uppermost. */
  void whenTurned(Runnable act) {
    turned.add(act);
  }

  /** Whether this is the screen, be there a panel over it or not. */
  boolean shows(Page page) {
    return screen == page;
  }

  /** Whether a panel is open. */
  boolean hasPanel() {
    return panel != null;
  }

  /** Takes a key pressed in another window: keys and reader always work the official's screen. */
  void relay(KeyEvent event) {
    Node owner = scene.getFocusOwner();
    EventTarget target = owner == null ? scene : owner;
    Event.fireEvent(target, event.copyFor(target, target));
    event.consume();
  }

  /** Puts a screen in place of the one before; a panel that was open belonged to that one. */
  void show(Page next) {
    screen = next;
    panel = null;
    root.getChildren().setAll(next.root());
    next.root().setDisable(false);
    ready(next);
    turned.forEach(Runnable::run);
  }

  @Override
  public void open(Page next) {
    panel = next;
    veil.getChildren().setAll(next.root());
    if (!root.getChildren().contains(veil)) {
      root.getChildren().add(veil);
    }
    disableScreen(true);
    ready(next);
    turned.forEach(Runnable::run);
  }

  /** A field takes no keys before it is styled, and a reader may be faster than the next frame. */
  private static void ready(Page page) {
    page.root().applyCss();
    page.focus();
  }

  @Override
  public void close() {
    panel = null;
    root.getChildren().remove(veil);
    veil.getChildren().clear();
    disableScreen(false);
    Page left = screen;
    if (left != null) {
      left.focus();
    }
    turned.forEach(Runnable::run);
  }

  /** Keeps the tabulator and screen readers out of what lies under a panel. */
  private void disableScreen(boolean disabled) {
    Page under = screen;
    if (under != null) {
      under.root().setDisable(disabled);
    }
  }

  private @Nullable Page uppermost() {
    return panel == null ? screen : panel;
  }

  private void pressed(KeyEvent event) {
    Page page = uppermost();
    if (page == null
        || event.isAltDown()
        || event.isControlDown()
        || event.isMetaDown()
        || event.isShiftDown()) {
      return;
    }
    if (event.getCode() == KeyCode.ENTER && scene.getFocusOwner() instanceof Button button) {
      // Whoever went to a button with the tabulator means that button
      button.fire();
      event.consume();
    } else if (page.press(event.getCode()) || elsewhere(event.getCode())) {
      event.consume();
    }
  }

  /** A key that means the same on every screen, and on panels in which nothing can be lost. */
  private boolean elsewhere(KeyCode code) {
    Runnable act = otherwise.get(code);
    boolean free = panel == null || panel.isPassable();
    if (act == null || !free) {
      return false;
    }
    act.run();
    return true;
  }

  /** A reader types wherever the focus is; what it types belongs into the page's field. */
  private void typed(KeyEvent event) {
    Page page = uppermost();
    String text = event.getCharacter();
    boolean plain =
        !text.isBlank()
            && !Character.isISOControl(text.codePointAt(0))
            && !event.isControlDown()
            && !event.isMetaDown()
            && !event.isAltDown();
    if (page != null && plain && !(scene.getFocusOwner() instanceof TextInputControl)) {
      page.typed(text);
      event.consume();
    }
  }

  private void acted(ActionEvent event) {
    EventTarget target = event.getTarget();
    Page page = uppermost();
    if (page != null && target instanceof Button) {
      page.focus();
    }
  }

  private void keepFocus(@Nullable Node owner) {
    Page page = uppermost();
    if (owner == null && page != null) {
      page.focus();
    }
  }
}
