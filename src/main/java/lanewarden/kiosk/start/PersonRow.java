package lanewarden.kiosk.start;

import java.util.List;
import java.util.Map;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.PasswordField;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Row;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.EventForm;
import lanewarden.station.EventFormFindings;

/** One person who gets a key: a name, a passphrase twice, and whether this is a judge. */
final class PersonRow extends VBox {
  private static final PseudoClass FAULTY = PseudoClass.getPseudoClass("faulty");

  private final Texts texts;
  private final List<String> fields;
  private final TextField name = new TextField();
  private final TextField passphrase = new PasswordField();
  private final TextField again = new PasswordField();
  private final Label fault = new Label();
  private final HBox faultLine;

  /**
   * @param person the place among the people, from 0; that one is the organizer
   */
  PersonRow(NewEventViewModel model, Texts texts, int person) {
    this.texts = texts;
    fields =
        List.of(
            EventForm.nameField(person),
            EventForm.passphraseField(person),
            EventForm.againField(person));
    boolean organizer = person == 0;
    String who = organizer ? texts.of("make.organizer") : texts.of("make.official", person);
    Label label = new Label(who);
    label.getStyleClass().add("form-name");
    PanelFrame.wrap(label);
    bind(model, name, 0, who, texts.of("make.name"));
    bind(model, passphrase, 1, who, texts.of("make.passphrase"));
    bind(model, again, 2, who, texts.of("make.again"));
    label.setLabelFor(name);
    Row row = new Row(label, name, passphrase, again);
    row.getStyleClass().add("form-row");
    ToggleButton judge = new ToggleButton(texts.of("make.judge"));
    judge.setAccessibleText(texts.of("make.judge.spoken", who));
    judge.setMinWidth(USE_PREF_SIZE);
    judge.setId("judge-" + person);
    judge.selectedProperty().bindBidirectional(model.judge(person));
    // Where it would mean nothing its room stays, so that the fields stand below one another
    judge.setVisible(!organizer);
    row.getChildren().add(judge);
    Mark mark = new Mark();
    mark.show(Sign.OVER);
    PanelFrame.wrap(fault);
    fault.setId("fault-person-" + person);
    HBox.setHgrow(fault, Priority.ALWAYS);
    faultLine = new HBox(mark, fault);
    faultLine.getStyleClass().add("form-fault");
    getChildren().addAll(row, faultLine);
    model.draft().faults().addListener((all, before, now) -> show(now));
    show(model.draft().faults().get());
  }

  private void bind(NewEventViewModel model, TextField input, int field, String who, String what) {
    input.textProperty().bindBidirectional(model.draft().text(fields.get(field)));
    input.setPromptText(what);
    input.setAccessibleText(who + ": " + what);
    input.setId("field-" + fields.get(field));
    input.setMinWidth(0);
    HBox.setHgrow(input, Priority.ALWAYS);
  }

  private void show(Map<String, List<EventFormFindings.Fault>> faults) {
    List<TextField> inputs = List.of(name, passphrase, again);
    for (int i = 0; i < inputs.size(); i++) {
      List<String> own = Fields.told(faults, fields.get(i), texts);
      inputs.get(i).pseudoClassStateChanged(FAULTY, !own.isEmpty());
      inputs.get(i).setAccessibleHelp(String.join(" ", own));
    }
    List<String> all =
        fields.stream().flatMap(f -> Fields.told(faults, f, texts).stream()).toList();
    fault.setText(String.join("\n", all));
    faultLine.setVisible(!all.isEmpty());
    faultLine.setManaged(!all.isEmpty());
  }

  /** Where typing goes first. */
  Node first() {
    return name;
  }
}
