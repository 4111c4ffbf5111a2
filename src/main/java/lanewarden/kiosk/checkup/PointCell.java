package lanewarden.kiosk.checkup;

import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.RowCell;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.trouble.Particulars;
import lanewarden.kiosk.trouble.TroubleWords;
import lanewarden.station.SelfCheck;

/**
 * One point: its sign, its subject and how it stands in words, what was found, what to do. What has
 * a code is said in the language of the screens, and in English below.
 */
final class PointCell extends RowCell<SelfCheck.Point> {
  private final Texts texts;
  private final PointWords words;
  private final Mark mark = new Mark();
  private final Label title = new Label();
  private final Label found = new Label();
  private final Label details = new Label();
  private final Label remedy = new Label();
  private final Particulars particulars = new Particulars();

  PointCell(Texts texts) {
    super("docket-row");
    this.texts = texts;
    words = new PointWords(texts);
    title.getStyleClass().add("docket-title");
    details.getStyleClass().add("point-details");
    PanelFrame.wrap(title, found, details, remedy);
    VBox column = new VBox(title, found, details, remedy, particulars);
    column.setMinWidth(0);
    HBox.setHgrow(column, Priority.ALWAYS);
    lay(mark, column);
  }

  @Override
  protected String show(SelfCheck.Point point) {
    mark.show(PointWords.sign(point.state()));
    title.setText(texts.of("checkup.point", words.of(point.subject()), words.of(point.state())));
    String own = joined(point.found(), point.details(), point.remedy());
    Optional<TroubleWords> said = TroubleWords.in(own, texts);
    String act = said.map(TroubleWords::remedy).orElse(point.remedy());
    fill(found, said.map(TroubleWords::what).orElse(point.found()));
    fill(details, said.isPresent() ? "" : point.details());
    fill(remedy, act.isBlank() ? "" : texts.of("checkup.remedy", act));
    particulars.show(said.map(TroubleWords::particulars).orElse(""));
    return joined(
        title.getText(),
        found.getText(),
        details.getText(),
        remedy.getText(),
        particulars.getText());
  }

  private static String joined(String... parts) {
    return String.join(" ", parts);
  }

  private static void fill(Label label, String text) {
    label.setText(text);
    label.setVisible(!text.isBlank());
    label.setManaged(!text.isBlank());
  }
}
