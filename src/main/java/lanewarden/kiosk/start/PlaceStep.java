package lanewarden.kiosk.start;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.form.FormField;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.EventForm;

/** Where the event is to be, what the station is called, and by which rules it measures. */
final class PlaceStep implements StepPane {
  private final VBox node;
  private final FormField folder;
  private final List<KeyButton> buttons;

  PlaceStep(NewEventViewModel model, Texts texts, Chooser chooser) {
    Fields fields = new Fields(model.draft(), texts);
    folder = fields.text(EventForm.FOLDER, "make.folder", "make.folder.example");
    node =
        new VBox(
            folder,
            fields.text(EventForm.STATION, "make.station", "make.station.example"),
            fields.text(EventForm.RULE_BOOK, "make.rule-book", "make.rule-book.example"));
    node.getStyleClass().add("form");
    buttons =
        List.of(
            new KeyButton(
                texts.of("make.choose-folder"),
                KeyCode.F4,
                () ->
                    chooser
                        .newFile(texts.of("make.choose-folder.title"), "my-event")
                        .ifPresent(p -> model.draft().choose(EventForm.FOLDER, p))),
            new KeyButton(
                texts.of("make.choose-rules"),
                KeyCode.F5,
                () ->
                    chooser
                        .file(texts.of("make.choose-rules.title"))
                        .ifPresent(p -> model.draft().choose(EventForm.RULE_BOOK, p))));
  }

  @Override
  public Node node() {
    return node;
  }

  @Override
  public Node first() {
    return Fields.input(folder);
  }

  @Override
  public List<KeyButton> buttons() {
    return buttons;
  }
}
