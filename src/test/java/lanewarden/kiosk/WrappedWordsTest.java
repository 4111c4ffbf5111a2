package lanewarden.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.geometry.NodeOrientation;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import lanewarden.kiosk.look.Typeface;
import lanewarden.kiosk.look.WrappedWords;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Words that wrap, from right to left, as they are drawn. */
class WrappedWordsTest {
  private static final int WIDE = 1200;
  private static final int LABEL = 400;
  private static final String HEBREW =
      "יש לבדוק את מספר החזה עם המתחרה; מי שנרשם באיחור נוסף קודם לרשימה.";

  @BeforeAll
  static void start() throws Exception {
    Booth.startToolkit();
  }

  /** The toolkit alone draws the first line as long as all the words, beyond the label. */
  @Test
  void noLineFromRightToLeftIsDrawnBeyondItsLabel() throws Exception {
    Booth.call(
        () -> {
          Typeface.load();
          Label label = new Label(HEBREW);
          WrappedWords.in(label);
          Scene scene = laidOut(label);
          assertTrue(label.getHeight() > 2 * label.getFont().getSize(), "it wraps");
          Image drawn = scene.snapshot(null);
          int beyond = 0;
          int within = 0;
          for (int y = 0; y < drawn.getHeight(); y++) {
            for (int x = 0; x < WIDE; x++) {
              boolean ink = drawn.getPixelReader().getColor(x, y).getBrightness() < 0.5;
              boolean inside = Math.abs(x - WIDE / 2.0) <= LABEL / 2.0 + 1;
              beyond += ink && !inside ? 1 : 0;
              within += ink && inside ? 1 : 0;
            }
          }
          assertEquals(0, beyond);
          assertTrue(within > 500, within + " dots");
          return true;
        });
  }

  private static Scene laidOut(Label label) {
    label.setStyle("-fx-font-family: \"DejaVu Sans\"; -fx-font-size: 18px; -fx-text-fill: black;");
    label.setMaxWidth(LABEL);
    label.setPrefWidth(LABEL);
    label.relocate((WIDE - LABEL) / 2.0, 10);
    Pane pane = new Pane(label);
    Scene scene = new Scene(pane, WIDE, 120, Color.WHITE);
    pane.setStyle("-fx-background-color: white;");
    scene.setNodeOrientation(NodeOrientation.RIGHT_TO_LEFT);
    pane.applyCss();
    pane.layout();
    return scene;
  }

  @Test
  void marksStandOnlyBehindWordsFromRightToLeftAndDoNotPileUp() throws Exception {
    assertEquals("Nobody was called.", said("Nobody was called."));
    assertEquals("איש \u200eלא \u200eזומן. \u200eקוד", said("איש לא זומן. קוד"));
    assertEquals("לב \u200eCaps Lock\u00a0ולשפת", said("לב Caps Lock ולשפת"));
    assertEquals(said("איש לא"), said(said("איש לא")));
  }

  private static String said(String words) throws Exception {
    return Booth.call(
        () -> {
          Label label = new Label("");
          WrappedWords.in(label);
          label.setText(words);
          return label.getText();
        });
  }
}
