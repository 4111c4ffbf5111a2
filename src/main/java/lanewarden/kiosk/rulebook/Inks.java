package lanewarden.kiosk.rulebook;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import javafx.scene.text.Font;

/** The theme's colours and text size for what is drawn by hand; the stylesheets hold them. */
final class Inks {

  /** One colour of the theme. */
  enum Ink {
    CARD("ink-card"),
    TEXT("ink-text"),
    EDGE("ink-edge"),
    WITHIN("ink-within"),
    OVER("ink-over"),
    NOT_DECIDED("ink-not-decided");

    private final String style;

    Ink(String style) {
      this.style = style;
    }
  }

  private final Map<Ink, Region> samples = new EnumMap<>(Ink.class);
  private final Label text = new Label();

  /**
   * @param changed runs when the theme or the text size changed
   */
  Inks(Runnable changed) {
    for (Ink ink : Ink.values()) {
      Region sample = new Region();
      sample.getStyleClass().add(ink.style);
      sample.backgroundProperty().addListener((all, before, now) -> changed.run());
      sample.setVisible(false);
      sample.setManaged(false);
      samples.put(ink, sample);
    }
    text.getStyleClass().add("chart-text");
    text.setVisible(false);
    text.setManaged(false);
    text.fontProperty().addListener((all, before, now) -> changed.run());
  }

  /** What must stand in the scene, unseen, for the stylesheets to reach it. */
  List<Region> samples() {
    List<Region> all = new java.util.ArrayList<>(samples.values());
    all.add(text);
    return all;
  }

  Paint of(Ink ink) {
    Region sample = Objects.requireNonNull(samples.get(ink));
    return sample.getBackground() == null || sample.getBackground().getFills().isEmpty()
        ? Color.TRANSPARENT
        : sample.getBackground().getFills().get(0).getFill();
  }

  Font font() {
    return text.getFont();
  }
}
