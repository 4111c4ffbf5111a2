package lanewarden.kiosk;

import java.util.Optional;
import javafx.scene.Parent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.TrainingBand;
import lanewarden.station.Station;

/**
 * Whether what is shown is a real line, and how it says so if it is not.
 *
 * @param marked whether nothing counts: every screen and the board are marked then
 * @param hint a line under the passphrase at sign-in
 */
record Training(boolean marked, Optional<String> hint) {

  private static final double BAND = 88;

  /** As the station's instrument has it. */
  static Training at(Station station, Optional<String> hint) {
    return new Training(station.view().training(), hint);
  }

  /** What stands above every screen: the mark, if there is one, and what else there is. */
  VBox above(Texts texts, Ribbon ribbon) {
    VBox above = new VBox();
    if (marked) {
      above.getChildren().add(new TrainingBand(texts));
    }
    above.getChildren().add(ribbon);
    return above;
  }

  /** Of which the look is drawn: with the mark above, all else is a little smaller. */
  double height() {
    return marked ? Shell.HEIGHT + BAND : Shell.HEIGHT;
  }

  /** The board, under the mark if there is one. */
  Parent board(Texts texts, Parent board) {
    BorderPane frame = new BorderPane(board);
    if (marked) {
      frame.setTop(new TrainingBand(texts));
    }
    return frame;
  }

  /** A window's title, with the word in front that nobody can mistake. */
  String title(Texts texts, String title) {
    return marked ? texts.of("training.window", title) : title;
  }
}
