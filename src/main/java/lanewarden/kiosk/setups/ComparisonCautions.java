package lanewarden.kiosk.setups;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import lanewarden.bench.ComparisonSheet;
import lanewarden.kiosk.look.PanelFrame;

/** What is minded by whoever changes a bow or an arrow; below what scrolls, so in sight. */
final class ComparisonCautions extends VBox {

  ComparisonCautions() {
    getStyleClass().add("cautions");
    setId("setups-cautions");
    setMinHeight(USE_PREF_SIZE);
  }

  /** Those of a comparison, or none beside nothing. */
  void show(Optional<ComparisonSheet> sheet) {
    getChildren().clear();
    sheet.map(ComparisonSheet::cautions).orElse(List.of()).forEach(this::add);
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
