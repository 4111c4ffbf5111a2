package lanewarden.kiosk.look;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * What a screen stands in: its head, its middle with or without a column beside it, its bar. With
 * large text the column stands above the middle and both scroll, between head and bar.
 */
public final class ScreenFrame extends BorderPane {
  private static final ObjectProperty<TextSize> AS_DRAWN =
      new SimpleObjectProperty<>(TextSize.PLAIN);

  private final VBox stacked = new VBox();
  private final ScrollPane scroll = new ScrollPane(stacked);
  private final VBox foot = new VBox();
  private Region middle = new Region();
  private @Nullable Region column;
  private Node bar = new Region();
  private double least;
  private final List<Mover> pinned = new ArrayList<>();
  private final List<Mover> loosened = new ArrayList<>();

  // Held here, so that it is followed as long as the screen lives
  private final ObservableValue<TextSize> size;

  /** An empty one. */
  public ScreenFrame() {
    stacked.setMinHeight(USE_PREF_SIZE);
    stacked.getStyleClass().add("stacked");
    scroll.setFitToWidth(true);
    scroll.setFitToHeight(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setFocusTraversable(false);
    scroll.getStyleClass().add("screen-scroll");
    scroll.viewportBoundsProperty().addListener((all, before, now) -> keepInSight(before));
    foot.getStyleClass().add("screen-foot");
    size = sizeAt(this);
    size.subscribe(now -> arrange(now.isLarge()));
  }

  /** Puts the middle and what is below it into the frame. */
  public void fill(Region itsMiddle, Node itsBar) {
    fill(null, itsMiddle, itsBar);
  }

  /**
   * Puts everything below the head into the frame.
   *
   * @param itsColumn beside the middle
   * @param itsBar below both
   */
  public void fill(@Nullable Region itsColumn, Region itsMiddle, Node itsBar) {
    column = itsColumn;
    middle = itsMiddle;
    bar = itsBar;
    least = middle.getMinHeight();
    VBox.setVgrow(middle, Priority.ALWAYS);
    arrange(size.getValue().isLarge());
  }

  /** Lets a scene know its text size; for what is put into it from then on. */
  public static void size(Scene scene, ObservableValue<TextSize> size) {
    scene.getProperties().put(TextSize.class, size);
  }

  /** The text size of the scene that a node stands in; hold it as long as it is to be followed. */
  public static ObservableValue<TextSize> sizeAt(Node node) {
    return node.sceneProperty().flatMap(ScreenFrame::sizeIn).orElse(TextSize.PLAIN);
  }

  @SuppressWarnings("unchecked") // nothing else is put under this key
  private static ObservableValue<TextSize> sizeIn(Scene scene) {
    Object size = scene.getProperties().get(TextSize.class);
    return size == null ? AS_DRAWN : (ObservableValue<TextSize>) size;
  }

  /**
   * Keeps something of the middle in sight where the middle scrolls: it stands above the bar then.
   *
   * @param node must be visible to be in sight
   * @param from where it stands otherwise, alone
   */
  public void pin(Node node, Pane from) {
    pinned.add(new Mover(node, from));
    arrange(size.getValue().isLarge());
  }

  /**
   * Lets something of the head scroll with the middle, below it.
   *
   * @param from where it stands otherwise, alone
   */
  public void loosen(Node node, Pane from) {
    loosened.add(new Mover(node, from));
    arrange(size.getValue().isLarge());
  }

  /** A field that is written in stays in sight when what is pinned above the bar grows. */
  private void keepInSight(Bounds before) {
    Scene scene = getScene();
    if (scene != null && scene.getFocusOwner() instanceof TextInputControl field) {
      for (Node at = field; at != null; at = at.getParent()) {
        if (at == stacked) {
          Reach.keep(field, scroll, before);
        }
      }
    }
  }

  /** What scrolls with large text. */
  public ScrollPane scroll() {
    return scroll;
  }

  private void arrange(boolean large) {
    Scene scene = getScene();
    Node owner = scene == null ? null : scene.getFocusOwner();
    place(large);
    if (owner != null) {
      // What is scrolled stands in the scene, where it can have the focus, once that has its skin
      applyCss();
      owner.requestFocus();
    }
  }

  private void place(boolean large) {
    setLeft(null);
    setCenter(null);
    setBottom(null);
    stacked.getChildren().clear();
    foot.getChildren().clear();
    if (large) {
      middle.setMinHeight(USE_COMPUTED_SIZE);
      if (column != null) {
        stacked.getChildren().add(column);
      }
      stacked.getChildren().add(middle);
      loosened.forEach(one -> one.to(stacked));
      pinned.forEach(one -> one.to(foot));
      foot.getChildren().add(bar);
      setCenter(scroll);
      setBottom(foot);
    } else {
      loosened.forEach(one -> one.to(one.home()));
      pinned.forEach(one -> one.to(one.home()));
      middle.setMinHeight(least);
      setLeft(column);
      setCenter(middle);
      setBottom(bar);
    }
  }

  /**
   * Where something stands with plain text and with large text.
   *
   * @param home its place with plain text, for it alone
   */
  private record Mover(Node node, Pane home) {
    void to(Pane place) {
      home.getChildren().remove(node);
      place.getChildren().add(node);
    }
  }
}
