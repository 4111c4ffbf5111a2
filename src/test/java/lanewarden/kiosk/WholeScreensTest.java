package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import javafx.geometry.NodeOrientation;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import lanewarden.kiosk.look.Language;
import lanewarden.kiosk.look.Texts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What an organizer works with is whole on the smallest screen, 1280 by 800, in every language. */
class WholeScreensTest {
  private static final double WIDTH = 1280;
  private static final double HEIGHT = 800;

  @TempDir Path temp;

  private Doorstep door(Language language) throws Exception {
    return door(language, HEIGHT);
  }

  private Doorstep door(Language language, double height) throws Exception {
    Doorstep door = new Doorstep(temp, WIDTH, height, Optional.empty());
    Booth.call(
        () -> {
          door.look.language().set(language);
          return true;
        });
    door.settle();
    return door;
  }

  private static List<String> found(Scene scene, String style, Predicate<Node> wrong)
      throws Exception {
    return Booth.call(
        () -> {
          scene.getRoot().applyCss();
          scene.getRoot().layout();
          return scene.getRoot().lookupAll(style).stream()
              .filter(Booth::seen)
              .filter(wrong)
              .map(String::valueOf)
              .toList();
        });
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void theStartsKeysStayOnTheScreenBelowATrouble(Language language) throws Exception {
    try (Doorstep door = door(language)) {
      door.chosen.add(temp);
      door.press(KeyCode.F3);
      Scene scene = door.scene();
      assertTrue(door.words("start-trouble").contains("NO-EVENT"));
      assertEquals(
          List.of(),
          found(
              scene,
              ".key-button",
              button -> button.localToScene(button.getLayoutBounds()).getMaxY() > HEIGHT));
      assertEquals(List.of(), found(scene, ".key-button .label", WholeScreensTest::isShortened));
    }
  }

  /** Lower than the smallest screen, of which a desktop's bars and a title take their part. */
  @ParameterizedTest
  @EnumSource(Language.class)
  void whatWasHeardScrollsAboveTheKeysOfItsPanel(Language language) throws Exception {
    try (Doorstep door = door(language, 560)) {
      door.press(KeyCode.INSERT);
      door.press(KeyCode.F6);
      door.focus("form-capture");
      door.type(Path.of("demo-data/gate-timer.capture").toAbsolutePath().toString());
      door.focus("form-profile");
      door.type("gate-timer.toml");
      door.press(KeyCode.ENTER);
      String again = Texts.in(language).of("listen.again");
      for (int i = 0; i < 200 && !door.text("listen-turn").startsWith(again); i++) {
        Thread.sleep(20);
        door.settle();
      }
      assertTrue(door.text("listen-turn").startsWith(again), door.text("listen-turn"));
      assertFalse(door.words("wire-findings").isBlank(), "there is much to be told");
      Scene scene = door.scene();
      assertEquals(2, found(scene, "#wire-panel .key-button", button -> true).size());
      assertEquals(
          List.of(),
          found(
              scene,
              "#wire-panel .key-button .label",
              label -> isShortened(label) || isBelowTheEdge(label)));
      assertTrue(
          Booth.call(
              () -> {
                Region told = (Region) scene.lookup("#wire-findings");
                ScrollPane room = (ScrollPane) scene.lookup("#wire-found");
                return room.getHeight() < told.getHeight() && room.getHeight() >= 60;
              }),
          "the findings scroll");
    }
  }

  private static boolean isBelowTheEdge(Node node) {
    return node.localToScene(node.getLayoutBounds()).getMaxY() > node.getScene().getHeight();
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void thePeopleOfANewEventAreNumbered(Language language) throws Exception {
    try (Doorstep door = door(language)) {
      door.press(KeyCode.F4);
      door.chosen.add(temp.resolve("new"));
      door.press(KeyCode.F4);
      door.focus("field-station");
      door.type("North gate");
      door.press(KeyCode.ENTER);
      door.chosen.add(
          Files.writeString(
              temp.resolve("list.csv"), "bib,name,division\n11,Ines Wetherholt,OC\n"));
      door.press(KeyCode.F4);
      door.press(KeyCode.ENTER);
      door.press(KeyCode.RIGHT);
      door.press(KeyCode.ENTER);
      door.focus("field-person-3-name");
      assertEquals(List.of(), found(door.scene(), ".form-name", WholeScreensTest::isShortened));
    }
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void figuresOfAProspectStandInTheirFieldsWhole(Language language) throws Exception {
    try (Booth booth = Booth.in(language, BoothEvent.CLAUSES, temp, WIDTH, HEIGHT)) {
      booth.press(KeyCode.INSERT);
      booth.press(KeyCode.F5);
      for (String field : List.of("prospect-speed", "prospect-draw", "prospect-certified")) {
        booth.focusField(field);
        booth.type("62.5");
      }
      assertEquals(
          List.of(), found(booth.front.official(), ".text-field", WholeScreensTest::hidesItsText));
      assertEquals(
          List.of(),
          found(booth.front.official(), ".prospects-grid .label", WholeScreensTest::isShortened));
    }
  }

  /** A path that begins with a slash would end with it where it is read from right to left. */
  @Test
  void aPathIsReadFromLeftToRight() throws Exception {
    try (Doorstep door = door(Language.HEBREW)) {
      door.press(KeyCode.INSERT);
      door.press(KeyCode.F9);
      assertEquals(
          List.of(),
          found(
              door.scene(),
              ".form-place .text-field",
              field -> field.getEffectiveNodeOrientation() != NodeOrientation.LEFT_TO_RIGHT));
      assertEquals(2, found(door.scene(), ".form-place .text-field", field -> true).size());
    }
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void theLegendOfComparedMeansIsWhole(Language language) throws Exception {
    try (Booth booth = Booth.in(language, BoothEvent.PLAIN, temp, WIDTH, HEIGHT)) {
      booth.press(KeyCode.INSERT);
      booth.press(KeyCode.F9);
      booth.press(KeyCode.F3);
      booth.type(Path.of("demo-data/practice.csv").toAbsolutePath().toString());
      booth.press(KeyCode.ENTER);
      assertFalse(booth.text("setups-legend").isBlank());
      assertEquals(
          List.of(),
          found(booth.front.official(), "#setups-legend", WholeScreensTest::isShortened));
    }
  }

  private static boolean isShortened(Node node) {
    Label label = (Label) node;
    double width = label.getWidth();
    return label.isWrapText()
        ? label.getHeight() < Math.floor(label.prefHeight(width))
        : width < Math.floor(label.prefWidth(-1));
  }

  private static boolean hidesItsText(Node node) {
    TextField field = (TextField) node;
    double room = field.getWidth() - field.getInsets().getLeft() - field.getInsets().getRight();
    return field.lookupAll(".text").stream()
        .map(Text.class::cast)
        .filter(text -> text.getText().equals(field.getText()))
        .anyMatch(text -> text.getLayoutBounds().getWidth() > room);
  }
}
