package lanewarden.kiosk.look;

import java.util.ArrayList;
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
public final class Inks {

  /** One colour of the theme. */
  public enum Ink {
    /** The ground of a picture. */
    CARD("ink-card"),
    /** Words and lines that matter. */
    TEXT("ink-text"),
    /** Lines that help the eye. */
    EDGE("ink-edge"),
    /** Good. */
    WITHIN("ink-within"),
    /** Beyond a limit. */
    OVER("ink-over"),
    /** Neither. */
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
  public Inks(Runnable changed) {
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
  public List<Region> samples() {
    List<Region> all = new ArrayList<>(samples.values());
    all.add(text);
    return all;
  }

  /** The colour in the theme of the moment. */
  public Paint of(Ink ink) {
    Region sample = Objects.requireNonNull(samples.get(ink));
    return sample.getBackground() == null || sample.getBackground().getFills().isEmpty()
        ? Color.TRANSPARENT
        : sample.getBackground().getFills().get(0).getFill();
  }

  /** Of all words in a picture. */
  public Font font() {
    return text.getFont();
  }
}
