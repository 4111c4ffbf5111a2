package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.event.Event;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Shape;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Reach;
import lanewarden.kiosk.look.TextSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Text twice as large on the smallest screen, 1280 by 800: nothing is lost (WCAG 2.2, success
 * criterion 1.4.4, resize text). Whatever takes the focus can be brought into the window whole.
 */
class LargeTextTest {
  private static final double WIDTH = 1280;
  private static final double HEIGHT = 800;

  @TempDir Path temp;

  /** What cannot be reached on what is shown now. */
  static List<String> lost(Scene scene) throws Exception {
    return Booth.call(
        () -> {
          scene.getRoot().applyCss();
          scene.getRoot().layout();
          List<String> lost = new ArrayList<>();
          for (Node node : takers(scene.getRoot())) {
            Reach.bring(node);
            scene.getRoot().layout();
            Bounds bounds = node.localToScene(node.getLayoutBounds());
            if (!room(node, scene).contains(bounds)) {
              lost.add(name(node) + " at " + bounds + " in " + room(node, scene));
            }
            Region region = (Region) node;
            if (region.getHeight() < Math.floor(region.prefHeight(region.getWidth()))) {
              lost.add("squeezed: " + name(node));
            }
          }
          for (Node node : scene.getRoot().lookupAll(".label")) {
            if (node instanceof Label label && isSeen(label) && isCut(label)) {
              lost.add("cut: " + label.getText());
            }
          }
          lost.addAll(covered(scene.getRoot()));
          return lost;
        });
  }

  /** What stands in one row or column must not lie on its neighbour, nor reach out of it. */
  private static List<String> covered(Parent parent) {
    List<String> covered = new ArrayList<>();
    List<Node> shown =
        parent.getChildrenUnmodifiable().stream()
            .filter(node -> node.isVisible() && node.isManaged())
            .toList();
    for (Node node : shown) {
      Bounds bounds = node.localToParent(node.getLayoutBounds());
      if ((parent instanceof HBox || parent instanceof VBox)
          && bounds.getMaxX() > parent.getLayoutBounds().getMaxX() + 2) {
        covered.add("wider than its holder: " + name(node) + " in " + name(parent));
      }
      for (Node other : shown.subList(0, shown.indexOf(node))) {
        Bounds beside = other.localToParent(other.getLayoutBounds());
        boolean beneath =
            Math.min(bounds.getMaxX(), beside.getMaxX()) - 2
                    > Math.max(bounds.getMinX(), beside.getMinX())
                && Math.min(bounds.getMaxY(), beside.getMaxY()) - 2
                    > Math.max(bounds.getMinY(), beside.getMinY());
        if (beneath && !(parent instanceof StackPane) && !(node instanceof Shape)) {
          covered.add(name(node) + " lies on " + name(other) + " in " + name(parent));
        }
      }
      if (node instanceof Parent more
          && !(node instanceof Control && !(node instanceof ScrollPane))) {
        covered.addAll(covered(more));
      }
    }
    return covered;
  }

  private static boolean isSeen(Label label) {
    return !label.getText().isEmpty() && Booth.seen(label);
  }

  private static boolean isCut(Label label) {
    return label.isWrapText()
        ? label.getHeight() < Math.floor(label.prefHeight(label.getWidth()))
        : label.getWidth() < Math.floor(label.prefWidth(-1));
  }

  private static List<Node> takers(Parent parent) {
    List<Node> takers = new ArrayList<>();
    for (Node node : parent.getChildrenUnmodifiable()) {
      boolean mine = node instanceof ButtonBase || node instanceof TextInputControl;
      if (!node.isVisible() || !node.isManaged()) {
        continue;
      }
      if (mine) {
        takers.add(node);
      } else if (node instanceof Parent more) {
        takers.addAll(takers(more));
      }
    }
    return takers;
  }

  /** What of the window the holders of a node leave of it: a viewport hides what is beyond it. */
  private static Bounds room(Node node, Scene scene) {
    double left = 0;
    double top = 0;
    double right = scene.getWidth();
    double bottom = scene.getHeight();
    for (Node at = node.getParent(); at != null; at = at.getParent()) {
      if (at.getStyleClass().contains("viewport")) {
        Bounds seen = at.localToScene(at.getLayoutBounds());
        left = Math.max(left, seen.getMinX());
        top = Math.max(top, seen.getMinY());
        right = Math.min(right, seen.getMaxX());
        bottom = Math.min(bottom, seen.getMaxY());
      }
    }
    return new BoundingBox(left - 1, top - 1, right - left + 2, bottom - top + 2);
  }

  private static String name(Node node) {
    return node.getId() + " " + node.getStyleClass() + " " + node.getAccessibleText();
  }

  private static void assertNothingIsLost(Booth booth, String state) throws Exception {
    booth.settle();
    assertEquals(List.of(), lost(booth.front.official()), state);
  }

  private static boolean isInSight(Booth booth, String id) throws Exception {
    return Booth.call(
        () -> {
          Scene scene = booth.front.official();
          scene.getRoot().applyCss();
          scene.getRoot().layout();
          Node node = scene.lookup("#" + id);
          return Booth.seen(node)
              && room(node, scene).contains(node.localToScene(node.getLayoutBounds()));
        });
  }

  private static void enlarge(Booth booth, TextSize size) throws Exception {
    Booth.call(
        () -> {
          booth.front.look().textSize().set(size);
          return true;
        });
    booth.settle();
  }

  static Stream<Arguments> languagesAndSizes() {
    return Arrays.stream(Language.values())
        .flatMap(
            language ->
                Stream.of(TextSize.values()[0], TextSize.LARGEST)
                    .map(size -> Arguments.of(language, size)));
  }

  @ParameterizedTest
  @MethodSource("languagesAndSizes")
  void everyMainScreenKeepsItsButtonsWithinReach(Language language, TextSize size)
      throws Exception {
    try (Booth booth = Booth.in(language, BoothEvent.PLAIN, temp, WIDTH, HEIGHT)) {
      enlarge(booth, size);
      assertNothingIsLost(booth, "sign-in");
      booth.press(KeyCode.INSERT);
      assertNothingIsLost(booth, "go to");
      booth.press(KeyCode.ESCAPE);
      booth.press(KeyCode.F10);
      assertNothingIsLost(booth, "studio");
      booth.press(KeyCode.F12);
      booth.signIn();
      assertNothingIsLost(booth, "clear line");
      booth.scan("103");
      booth.shoot("312.4 ft/s", "310.0 ft/s", "311.2 ft/s");
      assertNothingIsLost(booth, "over");
      for (String id : List.of("reading", "outcome", "verdict", "outcome-words", "next")) {
        assertTrue(isInSight(booth, id), id);
      }
      booth.press(KeyCode.F3);
      assertNothingIsLost(booth, "void");
      booth.press(KeyCode.ESCAPE);
      booth.press(KeyCode.F1);
      assertNothingIsLost(booth, "protests");
      booth.press(KeyCode.F2);
      assertNothingIsLost(booth, "protest being filed");
      booth.press(KeyCode.ESCAPE);
      booth.press(KeyCode.INSERT);
      for (KeyCode screen :
          new KeyCode[] {KeyCode.F3, KeyCode.F8, KeyCode.F5, KeyCode.F9, KeyCode.END}) {
        booth.press(screen);
        assertNothingIsLost(booth, "screen of " + screen);
        if (screen == KeyCode.F8) {
          booth.press(KeyCode.F8);
          assertNothingIsLost(booth, "report");
          booth.press(KeyCode.ESCAPE);
        }
        booth.press(KeyCode.INSERT);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void theFirstScreenIsWholeInEveryLanguage(Language language) throws Exception {
    try (Doorstep door = new Doorstep(temp, WIDTH, HEIGHT, Optional.empty())) {
      Booth.call(
          () -> {
            door.look.language().set(language);
            return true;
          });
      door.settle();
      assertEquals(List.of(), lost(door.scene()), "start");
    }
  }

  @Test
  void theStartOfTheProgramKeepsItsButtonsWithinReach() throws Exception {
    try (Doorstep door = new Doorstep(temp, WIDTH, HEIGHT, Optional.empty())) {
      Booth.call(
          () -> {
            door.look.language().set(Language.GERMAN);
            door.look.textSize().set(TextSize.LARGEST);
            return true;
          });
      door.settle();
      assertTrue(isAtItsBeginning(door.scene()));
      assertEquals(List.of(), lost(door.scene()), "start");
      door.press(KeyCode.F4);
      assertEquals(List.of(), lost(door.scene()), "a new event");
      door.chosen.add(temp.resolve("my-event"));
      door.press(KeyCode.F4);
      door.focus("field-station");
      door.type("North gate");
      door.press(KeyCode.ENTER);
      door.chosen.add(
          Files.writeString(
              temp.resolve("list.csv"),
              "Start number;Who;Bow class\n11;Ines Wetherholt;OC\n12;Goran Pellinor;TR\n"));
      door.press(KeyCode.F4);
      door.press(KeyCode.ENTER);
      assertEquals(List.of(), lost(door.scene()), "competitors without a name");
      door.focus("field-column-name");
      door.press(KeyCode.RIGHT, 2);
      assertEquals(List.of(), lost(door.scene()), "competitors");
      door.press(KeyCode.ENTER);
      door.press(KeyCode.ENTER);
      assertEquals(List.of(), lost(door.scene()), "instrument without a port");
      door.focus("field-port");
      door.type("COM3");
      door.press(KeyCode.ENTER);
      door.person(0, "Orla Finch", "a long oak");
      door.press(KeyCode.ENTER);
      assertEquals(List.of(), lost(door.scene()), "people without passphrases");
    }
  }

  private static boolean isAtItsBeginning(Scene scene) throws Exception {
    return Booth.call(
        () -> {
          scene.getRoot().applyCss();
          scene.getRoot().layout();
          return ((ScrollPane) scene.lookup(".screen-scroll")).getVvalue() == 0;
        });
  }

  @Test
  void controlPlusAndMinusChangeTheSizeInStepsAndControlZeroTakesItBack() throws Exception {
    try (Booth booth = new Booth(temp)) {
      control(booth, KeyCode.PLUS);
      control(booth, KeyCode.ADD);
      assertEquals(TextSize.LARGER, booth.front.look().textSize().get());
      control(booth, KeyCode.MINUS);
      assertEquals(TextSize.LARGE, booth.front.look().textSize().get());
      for (int i = 0; i < 5; i++) {
        control(booth, KeyCode.EQUALS);
      }
      assertEquals(TextSize.LARGEST, booth.front.look().textSize().get());
      control(booth, KeyCode.DIGIT0);
      assertEquals(TextSize.PLAIN, booth.front.look().textSize().get());
    }
  }

  @Test
  void textIsAsManyTimesLargerAsItSays() throws Exception {
    try (Booth booth = new Booth(temp)) {
      booth.signIn();
      double drawn = letters(booth);
      for (TextSize size : TextSize.values()) {
        enlarge(booth, size);
        assertEquals(drawn * size.percent() / 100, letters(booth), 0.01);
      }
    }
  }

  private static double letters(Booth booth) throws Exception {
    return Booth.call(
        () -> {
          booth.front.official().getRoot().applyCss();
          return ((Label) booth.front.official().lookup("#link-words")).getFont().getSize();
        });
  }

  @Test
  void whatHasTheFocusIsScrolledIntoSightAndTheScreenIsAsBeforeWithPlainText() throws Exception {
    try (Booth booth = new Booth(temp)) {
      booth.signIn();
      booth.scan("103");
      booth.shoot("312.4 ft/s");
      enlarge(booth, TextSize.LARGEST);
      Booth.call(
          () -> {
            booth.front.official().lookup(".shot").requestFocus();
            return true;
          });
      booth.settle();
      assertTrue(
          Booth.call(
              () -> {
                Scene scene = booth.front.official();
                Node shot = scene.lookup(".shot");
                return room(shot, scene).contains(shot.localToScene(shot.getLayoutBounds()));
              }));
      assertFalse(isInSight(booth, "call-field"));
      enlarge(booth, TextSize.PLAIN);
      assertTrue(isInSight(booth, "call-field"));
      assertTrue(isInSight(booth, "reading"));
    }
  }

  private static void control(Booth booth, KeyCode code) throws Exception {
    Booth.call(
        () -> {
          Scene scene = booth.front.official();
          Event.fireEvent(
              scene.getFocusOwner() == null ? scene : scene.getFocusOwner(),
              new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, true, false, false));
          return true;
        });
    booth.settle();
  }
}
