package lanewarden.kiosk.rulebook;

import java.util.Locale;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.geometry.VPos;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Figures;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.Row;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;
import lanewarden.station.LaneFigure;

/** Lanes and samples: what is supposed above, what comes of it below. */
final class LanesPanel implements Page {
  private final VBox root = new VBox();
  private final Keys keys = new Keys();
  private final FlowPane fields = new FlowPane();

  LanesPanel(LanesViewModel model, Texts texts, Runnable leave) {
    Label title = new Label(texts.of("lanes.title"));
    title.getStyleClass().add("panel-title");
    fields.getStyleClass().add("suppositions");
    fields.setRowValignment(VPos.BOTTOM);
    for (LaneFigure figure : LaneFigure.values()) {
      String words = LanesViewModel.name(figure, texts);
      TextField field = Figures.field(new TextField());
      field.textProperty().bindBidirectional(model.figure(figure));
      field.setAccessibleText(words);
      field.setId("lanes-" + figure.name().toLowerCase(Locale.ROOT).replace('_', '-'));
      Label name = wrapped(words);
      name.setLabelFor(field);
      VBox box = new VBox(name, field);
      box.getStyleClass().add("lane-figure");
      fields.getChildren().add(box);
    }
    Label fault = wrapped("");
    fault.setId("lanes-fault");
    fault.getStyleClass().add("effect-note");
    fault.textProperty().bind(model.fault());
    fault.visibleProperty().bind(model.fault().isNotEmpty());
    fault.managedProperty().bind(model.fault().isNotEmpty());
    KeyButton back = new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, leave);
    keys.add(back);
    Row buttons = new Row(back);
    buttons.getStyleClass().add("panel-buttons");
    root.getChildren()
        .addAll(
            title,
            fields,
            fault,
            answers("lanes.of-lanes", "lanes-answer", model.lanes(), texts),
            answers("lanes.of-sample", "sample-answer", model.sample(), texts),
            buttons);
    root.getStyleClass().addAll("panel", "studio-panel");
    root.setMaxHeight(VBox.USE_PREF_SIZE);
    root.setId("lanes-panel");
  }

  private static VBox answers(String title, String id, ObservableList<String> said, Texts texts) {
    Label head = new Label(texts.of(title));
    head.getStyleClass().add("meaning-title");
    VBox lines = new VBox();
    lines.setId(id);
    Runnable show =
        () -> {
          lines.getChildren().setAll(said.stream().map(LanesPanel::wrapped).toList());
          lines.setAccessibleText(String.join(" ", said));
        };
    said.addListener((ListChangeListener<String>) change -> show.run());
    show.run();
    return new VBox(head, lines);
  }

  private static Label wrapped(String words) {
    Label label = new Label(words);
    WrappedWords.in(label);
    label.setMinHeight(Label.USE_PREF_SIZE);
    return label;
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    fields.lookup(".text-field").requestFocus();
  }

  @Override
  public boolean press(KeyCode code) {
    return keys.press(code);
  }
}
