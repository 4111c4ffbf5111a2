package lanewarden.kiosk.rulebook;

import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;
import lanewarden.station.RuleCurve;

/** The two numbers that sum a rule up, and where they come from. */
final class NumbersBox extends VBox {
  private final Texts texts;
  private final Label head = new Label();
  private final Label said = new Label();

  NumbersBox(String id, Texts texts) {
    this.texts = texts;
    setId(id);
    head.getStyleClass().add("meaning-title");
    for (Label label : new Label[] {head, said}) {
      WrappedWords.in(label);
      label.setMinHeight(USE_PREF_SIZE);
    }
    getChildren().addAll(head, said);
  }

  /**
   * Shows a rule's numbers, or nothing.
   *
   * @param named whether its name has to be said
   */
  void show(Optional<EffectPage.Shown> shown, boolean named) {
    setVisible(shown.isPresent());
    setManaged(shown.isPresent());
    shown.ifPresent(
        rule -> {
          String name = named ? rule.name() : texts.of("curve.it");
          head.setText(rule.curve().map(curve -> how(name, curve)).orElse(named ? name : ""));
          head.setManaged(!head.getText().isEmpty());
          said.setText(texts.of(rule.effect().inWords()));
        });
  }

  private String how(String name, RuleCurve curve) {
    return texts.of("curve.how", name, curve.how());
  }
}
