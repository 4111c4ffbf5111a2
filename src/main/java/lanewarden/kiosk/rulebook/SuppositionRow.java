package lanewarden.kiosk.rulebook;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import javafx.css.PseudoClass;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Figures;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.Supposition;

/** What is supposed of archers and instrument: a small field for each. */
final class SuppositionRow extends VBox {
  private static final PseudoClass FAULTY = PseudoClass.getPseudoClass("faulty");

  private static final PseudoClass MANY = PseudoClass.getPseudoClass("many");

  /** So many stand beside each other in the ordinary size. */
  private static final int FIRST_ROW = 5;

  private final EffectViewModel model;
  private final Map<Supposition, VBox> boxes = new EnumMap<>(Supposition.class);
  private final Label fault = new Label();

  SuppositionRow(EffectViewModel model, Texts texts) {
    this.model = model;
    FlowPane row = new FlowPane();
    row.setRowValignment(VPos.BOTTOM);
    row.setMinHeight(USE_PREF_SIZE);
    row.getStyleClass().add("suppositions");
    for (Supposition one : Supposition.values()) {
      TextField field = Figures.field(new TextField());
      field.textProperty().bindBidirectional(model.supposed(one));
      field.setId("suppose-" + one.name().toLowerCase(Locale.ROOT));
      Label name = new Label(texts.of(words(one)));
      PanelFrame.wrap(name);
      name.getStyleClass().add("supposition-name");
      name.setLabelFor(field);
      model
          .fault(one)
          .addListener(
              (all, before, now) -> {
                field.pseudoClassStateChanged(FAULTY, !now.isEmpty());
                field.setAccessibleText(name.getText() + ". " + now);
                tell(texts);
              });
      field.setAccessibleText(texts.of("suppose.spoken", name.getText()));
      VBox box = new VBox(name, field);
      box.getStyleClass().add("supposition");
      boxes.put(one, box);
      row.getChildren().add(box);
    }
    fault.setId("suppose-fault");
    PanelFrame.wrap(fault);
    fault.getStyleClass().add("effect-note");
    getStyleClass().add("supposed");
    getChildren().addAll(row, fault);
    model.page().addListener((all, before, now) -> refresh());
    refresh();
    tell(texts);
  }

  /** The key of its name on the screen. */
  private static String words(Supposition one) {
    return switch (one) {
      case ARROWS -> "suppose.arrows";
      case READING -> "suppose.reading";
      case CALIBRATION -> "suppose.calibration";
      case VOIDS -> "suppose.voids";
      case EXCESS -> "suppose.excess";
      case ARROW -> "suppose.arrow";
      case DRAW -> "suppose.draw";
      case CERTIFIED -> "suppose.certified";
    };
  }

  private void refresh() {
    boolean many = Stream.of(Supposition.values()).filter(model::isAsked).count() > FIRST_ROW;
    pseudoClassStateChanged(MANY, many);
    boxes.forEach(
        (one, box) -> {
          boolean asked = model.isAsked(one);
          box.setVisible(asked);
          box.setManaged(asked);
        });
  }

  private void tell(Texts texts) {
    StringBuilder words = new StringBuilder();
    for (Supposition one : Supposition.values()) {
      String wrong = model.fault(one).get();
      if (!wrong.isEmpty()) {
        words.append(words.isEmpty() ? "" : "\n");
        words.append(texts.of("suppose.fault", texts.of(words(one)), wrong));
      }
    }
    fault.setText(words.toString());
    fault.setVisible(!words.isEmpty());
    fault.setManaged(!words.isEmpty());
  }
}
