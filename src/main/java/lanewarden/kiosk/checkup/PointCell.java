package lanewarden.kiosk.checkup;

import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.RowCell;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.SelfCheck;

/** One point: its sign, its subject and how it stands in words, what was found, what to do. */
final class PointCell extends RowCell<SelfCheck.Point> {
  private final Texts texts;
  private final PointWords words;
  private final Mark mark = new Mark();
  private final Label title = new Label();
  private final Label found = new Label();
  private final Label details = new Label();
  private final Label remedy = new Label();

  PointCell(Texts texts) {
    super("docket-row");
    this.texts = texts;
    words = new PointWords(texts);
    title.getStyleClass().add("docket-title");
    details.getStyleClass().add("point-details");
    PanelFrame.wrap(title, found, details, remedy);
    VBox column = new VBox(title, found, details, remedy);
    column.setMinWidth(0);
    HBox.setHgrow(column, Priority.ALWAYS);
    lay(mark, column);
  }

  @Override
  protected String show(SelfCheck.Point point) {
    mark.show(PointWords.sign(point.state()));
    title.setText(texts.of("checkup.point", words.of(point.subject()), words.of(point.state())));
    fill(found, point.found());
    fill(details, point.details());
    fill(remedy, point.remedy().isBlank() ? "" : texts.of("checkup.remedy", point.remedy()));
    return String.join(" ", title.getText(), found.getText(), details.getText(), remedy.getText());
  }

  private static void fill(Label label, String text) {
    label.setText(text);
    label.setVisible(!text.isBlank());
    label.setManaged(!text.isBlank());
  }
}
