package lanewarden.kiosk.setups;

import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import lanewarden.bench.ComparisonSheet;
import lanewarden.kiosk.look.Cautions;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Texts;

/** What is minded by whoever changes a bow or an arrow; below what scrolls, so in sight. */
final class ComparisonCautions extends VBox {

  ComparisonCautions(Texts texts) {
    getStyleClass().add("cautions");
    setId("setups-cautions");
    setMinHeight(USE_PREF_SIZE);
    add(texts.of("setups.no-verdict"));
    add(Cautions.paragraph(texts));
  }

  /** Beside a comparison, and not beside nothing. */
  void show(Optional<ComparisonSheet> sheet) {
    setVisible(sheet.isPresent());
    setManaged(sheet.isPresent());
  }

  private void add(String words) {
    Label label = new Label(words);
    label.getStyleClass().add("setups-cautions");
    label.setId("setups-caution-" + getChildren().size());
    PanelFrame.wrap(label);
    getChildren().add(label);
  }
}
