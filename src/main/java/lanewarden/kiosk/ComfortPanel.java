package lanewarden.kiosk;

import java.util.Arrays;
import java.util.List;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.GridPane;
import lanewarden.kiosk.form.ChoiceRow;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.Appearance;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Row;
import lanewarden.kiosk.look.ScreenFrame;
import lanewarden.kiosk.look.TextSize;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.sound.Cue;
import lanewarden.kiosk.sound.Loudspeaker;
import lanewarden.kiosk.sound.Volume;

/** How large text is and how loud the sounds are, with every sound to listen to. */
final class ComfortPanel extends KeyedPanel {
  private final Texts texts;
  private final Appearance look;
  private final Loudspeaker speaker;
  private final GridPane grid = new GridPane();
  private final Label silent;

  // Held here, so that they are followed as long as the panel lives
  private final ObservableValue<TextSize> size = ScreenFrame.sizeAt(root);
  private final ObservableValue<Boolean> unheard;

  /**
   * @param leave keeps what was chosen
   */
  ComfortPanel(Appearance look, Loudspeaker speaker, Texts texts, Runnable leave) {
    super("comfort-panel", new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, leave));
    this.look = look;
    this.speaker = speaker;
    this.texts = texts;
    silent = new Label(texts.of("comfort.silent"));
    silent.getStyleClass().add("hint");
    silent.setId("comfort-silent");
    silent.managedProperty().bind(silent.visibleProperty());
    PanelFrame.wrap(silent);
    grid.getStyleClass().add("form-grid");
    IntegerProperty shown =
        add(
            "size",
            texts.of("comfort.size"),
            look.textSize(),
            Arrays.stream(TextSize.values()).map(this::words).toList());
    size.subscribe(now -> shown.set(List.of(TextSize.values()).indexOf(now)));
    add(
        "volume",
        texts.of("comfort.volume"),
        look.volume(),
        Arrays.stream(Volume.values()).map(this::words).toList());
    Row sounds =
        new Row(
            sound("cue.reading", KeyCode.F2, Cue.READING),
            sound("cue.within", KeyCode.F3, Cue.WITHIN),
            sound("cue.over", KeyCode.F4, Cue.OVER),
            sound("cue.refused", KeyCode.F5, Cue.REFUSED));
    sounds.getStyleClass().add("panel-buttons");
    Label listen = new Label(texts.of("comfort.listen"));
    PanelFrame.wrap(listen);
    root.say(new Label(texts.of("comfort.title")), new Label(texts.of("comfort.words")));
    root.getChildren().addAll(grid, listen, sounds, silent);
    offerBack();
    unheard = root.sceneProperty().flatMap(scene -> speaker.silent()).orElse(false);
    unheard.subscribe(silent::setVisible);
  }

  private String words(TextSize each) {
    return texts.of("comfort.percent", each.percent());
  }

  private String words(Volume each) {
    return switch (each) {
      case OFF -> texts.of("volume.off");
      case QUIET -> texts.of("volume.quiet");
      case MIDDLE -> texts.of("volume.middle");
      case LOUD -> texts.of("volume.loud");
    };
  }

  private <T extends Enum<T>> IntegerProperty add(
      String name, String words, ObjectProperty<T> chosen, List<String> options) {
    List<T> values = List.of(chosen.get().getDeclaringClass().getEnumConstants());
    IntegerProperty place = new SimpleIntegerProperty(values.indexOf(chosen.get()));
    place.addListener((all, before, now) -> chosen.set(values.get(now.intValue())));
    Label label = new Label(words);
    label.getStyleClass().add("form-label");
    PanelFrame.wrap(label);
    ChoiceRow row = new ChoiceRow(Question.choice(name, words, options), place, texts);
    label.setLabelFor(row);
    grid.addRow(grid.getRowCount(), label, row);
    return place;
  }

  private KeyButton sound(String words, KeyCode key, Cue cue) {
    KeyButton button =
        new KeyButton(texts.of(words), key, () -> speaker.play(cue, look.volume().get()));
    keys().add(button);
    return button;
  }
}
