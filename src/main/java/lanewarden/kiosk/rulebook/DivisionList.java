package lanewarden.kiosk.rulebook;

import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;
import lanewarden.station.RuleDraft;
import lanewarden.station.RuleKey;

/** The event and its divisions, one under the other; one of them is open. */
final class DivisionList extends ScrollPane {
  private static final PseudoClass LONG = PseudoClass.getPseudoClass("long");

  /** Characters of a name that fit on one line. */
  private static final int ONE_LINE = 12;

  private final RuleBookViewModel model;
  private final Texts texts;
  private final VBox list = new VBox();

  DivisionList(RuleBookViewModel model, Texts texts) {
    this.model = model;
    this.texts = texts;
    list.getStyleClass().add("divisions");
    setContent(list);
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    setFocusTraversable(false);
    getStyleClass().add("division-scroll");
    model.draft().addListener((all, before, now) -> refresh());
    model.section().addListener((all, before, now) -> refresh());
    refresh();
  }

  private void refresh() {
    RuleDraft draft = model.draft().get();
    while (list.getChildren().size() > draft.divisions() + 1) {
      list.getChildren().remove(list.getChildren().size() - 1);
    }
    while (list.getChildren().size() < draft.divisions() + 1) {
      list.getChildren().add(new Row(list.getChildren().size()));
    }
    list.getChildren().forEach(row -> ((Row) row).refresh());
  }

  /** One section; the button stays the same while what it says changes. */
  private final class Row extends ToggleButton {
    private final int section;
    private final Label code = new Label();
    private final Label name = new Label();
    private final Label faults = new Label();
    private final Mark mark = new Mark();

    Row(int section) {
      this.section = section;
      code.getStyleClass().add("division-code");
      WrappedWords.in(name);
      name.getStyleClass().add("division-name");
      faults.getStyleClass().add("division-faults");
      mark.show(Sign.OVER);
      VBox words = new VBox(code, name, faults);
      HBox.setHgrow(words, Priority.ALWAYS);
      HBox content = new HBox(words, mark);
      content.getStyleClass().add("division-content");
      setGraphic(content);
      setMaxWidth(Double.MAX_VALUE);
      getStyleClass().add("division-row");
      setId("section-" + section);
      setOnAction(e -> model.open(section));
    }

    private void refresh() {
      RuleDraft draft = model.draft().get();
      boolean event = section == RuleBookViewModel.EVENT;
      String said = draft.text(section, event ? RuleKey.NAME : RuleKey.CODE).strip();
      code.setText(
          event
              ? texts.of("group.event")
              : said.isEmpty() ? texts.of("division.unnamed", section) : said);
      name.setText(draft.text(section, RuleKey.NAME).strip());
      name.pseudoClassStateChanged(LONG, name.getText().length() > ONE_LINE);
      int wrong = draft.faults(section).size();
      boolean faulty = wrong > 0;
      faults.setText(faulty ? texts.of("division.faults", wrong) : "");
      faults.setVisible(faulty);
      faults.setManaged(faulty);
      mark.setVisible(faulty);
      mark.setManaged(faulty);
      boolean open = model.section().get() == section;
      setSelected(open);
      setAccessibleText(
          String.join(", ", code.getText(), name.getText(), faults.getText()).strip());
    }
  }
}
