package lanewarden.kiosk;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.beans.property.ObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.event.ActionEvent;
import javafx.event.Event;
import javafx.event.EventTarget;
import javafx.geometry.NodeOrientation;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import lanewarden.kiosk.look.Appearance;
import lanewarden.kiosk.look.KeyCap;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.Panels;
import lanewarden.kiosk.look.Reach;
import lanewarden.kiosk.look.ScreenFrame;
import lanewarden.kiosk.look.TextSize;
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

  private static final PseudoClass LARGE = PseudoClass.getPseudoClass("large");

  private final Appearance look;
  private final StackPane veil = new StackPane();
  private final ScrollPane over = new ScrollPane(veil);
  private final StackPane root = new StackPane();
  private final BorderPane frame = new BorderPane(root);
  private final Scene scene = new Scene(frame, WIDTH, HEIGHT);
  private final List<Runnable> turned = new ArrayList<>();
  private final Map<KeyCode, Runnable> otherwise = new EnumMap<>(KeyCode.class);
  private final Map<KeyCode, Runnable> urgent = new EnumMap<>(KeyCode.class);
  private @Nullable Page screen;
  private @Nullable Page panel;

  /**
   * @param above stands above every screen and every panel
   * @param height of which the look is drawn, what always stands above included, in pixels
   */
  Shell(Appearance look, Texts texts, Node above, double height) {
    this(look, texts, height);
    frame.setTop(above);
  }

  /** Nothing stands above the screens. */
  Shell(Appearance look, Texts texts) {
    this(look, texts, HEIGHT);
  }

  private Shell(Appearance look, Texts texts, double height) {
    this.look = look;
    veil.getStyleClass().add("veil");
    over.getStyleClass().add("veil-scroll");
    over.setFitToWidth(true);
    over.setFitToHeight(true);
    over.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    over.setFocusTraversable(false);
    root.getStyleClass().add("shell");
    ScreenFrame.size(scene, look.textSize());
    look.textSize().subscribe(size -> enlarge(size.isLarge()));
    dress(scene, frame, look.theme(), look.textSize(), texts, height);
    scene.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    scene.addEventFilter(KeyEvent.KEY_TYPED, this::typed);
    scene.addEventHandler(ActionEvent.ACTION, this::acted);
    scene.focusOwnerProperty().addListener((all, before, now) -> keepFocus(now));
    scene.windowProperty().subscribe(this::moved);
  }

  /** Into a window that is open already somebody may be typing. */
  private void moved() {
    Page uppermost = panel == null ? screen : panel;
    if (uppermost != null && isSeen()) {
      ready(uppermost);
    }
  }

  private void enlarge(boolean large) {
    frame.pseudoClassStateChanged(LARGE, large);
    // As drawn a panel can be squeezed a little; enlarged it scrolls before anything is cut off
    veil.setMinHeight(large ? Region.USE_PREF_SIZE : Region.USE_COMPUTED_SIZE);
  }

  /**
   * Gives a scene its theme, its language's direction, and a text size that follows the window.
   *
   * @param size how large text is against that
   * @param height of which the look is drawn, in pixels
   */
  static void dress(
      Scene scene,
      Parent root,
      ObjectProperty<Theme> theme,
      ObservableValue<TextSize> size,
      Texts texts,
      double height) {
    KeyCap.speak(scene, texts);
    if (texts.language().isRightToLeft()) {
      scene.setNodeOrientation(NodeOrientation.RIGHT_TO_LEFT);
    }
    scene.getStylesheets().setAll(theme.get().stylesheets());
    theme.addListener((all, before, now) -> scene.getStylesheets().setAll(now.stylesheets()));
    // Set, not bound: where the size of the text stays, no style is looked up anew
    Runnable fit =
        () -> {
          double share = Math.min(scene.getWidth() / WIDTH, scene.getHeight() / height);
          if (share <= 0) {
            // On its way to its size a window can be of none
            return;
          }
          double drawn = Math.max(SMALLEST_TEXT, TEXT * share);
          root.setStyle("-fx-font-size: " + drawn * size.getValue().times() + "px;");
        };
    scene.widthProperty().subscribe(fit);
    scene.heightProperty().subscribe(fit);
    size.subscribe(fit);
    fit.run();
  }

  Scene scene() {
    return scene;
  }

  /** Gives a key a meaning wherever it has none of its own. */
  void otherwise(KeyCode code, Runnable act) {
    otherwise.put(code, act);
  }

  /**
   * Gives a key a meaning wherever it has none of its own, also where something that was typed may
   * be lost by it.
   */
  void urgent(KeyCode code, Runnable act) {
    urgent.put(code, act);
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

  /** Whether the panel that is open may be put away: nothing would be lost. */
  boolean isPassable() {
    return panel == null || panel.isPassable();
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
    over.setVvalue(0);
    if (!root.getChildren().contains(over)) {
      root.getChildren().add(over);
      // What is scrolled stands in the scene, where it can have the focus, once this has its skin
      over.applyCss();
    }
    disableScreen(true);
    ready(next);
    turned.forEach(Runnable::run);
  }

  /**
   * A field takes no keys before it is styled, and a reader may be faster than the next frame. A
   * page is seen from its beginning, or from the field that is to be filled in.
   */
  private void ready(Page page) {
    if (!isSeen()) {
      // Nobody types yet, and the window that is about to open lays everything out by itself
      page.focus();
      return;
    }
    page.root().applyCss();
    page.focus();
    if (scene.getFocusOwner() instanceof TextInputControl) {
      scene.getRoot().layout();
      Reach.bring(scene.getFocusOwner());
    } else {
      over.setVvalue(0);
      if (page.root() instanceof ScreenFrame large) {
        large.scroll().setVvalue(0);
      }
    }
  }

  private boolean isSeen() {
    return scene.getWindow() != null && scene.getWindow().isShowing();
  }

  @Override
  public void close() {
    panel = null;
    root.getChildren().remove(over);
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
    if (event.isShortcutDown() && !event.isAltDown() && readable(event.getCode())) {
      event.consume();
    }
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

  /** With the control key: larger and smaller text, as drawn, and what is scrolled out of sight. */
  private boolean readable(KeyCode code) {
    switch (code) {
      case PLUS, ADD, EQUALS -> look.textSize().set(look.textSize().get().larger());
      case MINUS, SUBTRACT -> look.textSize().set(look.textSize().get().smaller());
      case DIGIT0, NUMPAD0 -> look.textSize().set(TextSize.PLAIN);
      case DOWN -> turn(1);
      case UP -> turn(-1);
      default -> {
        return false;
      }
    }
    return true;
  }

  private void turn(int way) {
    Page under = screen;
    if (panel != null) {
      Reach.turn(over, way);
    } else if (under != null && under.root() instanceof ScreenFrame large) {
      Reach.turn(large.scroll(), way);
    }
  }

  /** A key that means the same on every screen, and on panels in which nothing can be lost. */
  private boolean elsewhere(KeyCode code) {
    Runnable now = urgent.get(code);
    if (now != null) {
      now.run();
      return true;
    }
    Runnable act = otherwise.get(code);
    if (act == null || !isPassable()) {
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
    } else if (owner != null) {
      Reach.bring(owner);
    }
  }
}
