package lanewarden.kiosk.protest;

import java.util.List;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.collections.WeakListChangeListener;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.form.ChoiceRow;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.trouble.TroubleCard;

/** The slip of a check: prints it or saves it, says how far it is and where the file lies. */
final class SlipPanel implements Page {
  private final SlipViewModel model;
  private final Texts texts;
  private final PanelFrame root = new PanelFrame("slip-panel");
  private final VBox printers = new VBox();
  private final Optional<ChoiceRow> checks;
  private final KeyButton print;
  private final KeyButton save;
  private final KeyButton back;

  // Held here: the model holds it weakly, so that a closed panel is not kept
  private final ListChangeListener<String> follow =
      change -> {
        list();
        focus();
      };

  /**
   * @param leave goes back; the making goes on
   */
  SlipPanel(SlipViewModel model, Texts texts, Runnable leave) {
    this.model = model;
    this.texts = texts;
    Label words = new Label();
    words.setId("slip-words");
    words.textProperty().bind(model.words());
    PanelFrame.wrap(words);
    ProgressBar bar = new ProgressBar();
    bar.setMaxWidth(Double.MAX_VALUE);
    bar.setFocusTraversable(false);
    bar.accessibleTextProperty().bind(model.words());
    bar.visibleProperty().bind(model.busy());
    TroubleCard card = new TroubleCard(texts);
    card.setId("slip-trouble");
    model.trouble().addListener((all, before, now) -> card.show(now));
    card.show(model.trouble().get());
    print = new KeyButton(texts.of("slip.print"), KeyCode.F9, model::print);
    save = new KeyButton(texts.of("slip.save"), KeyCode.F2, model::save);
    back = new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, leave);
    save.disableProperty().bind(model.busy());
    root.say(new Label(texts.of("slip.title")), new Label(texts.of("slip.about")));
    checks = model.sheets().size() > 1 ? Optional.of(sheets()) : Optional.empty();
    checks.ifPresent(root.getChildren()::add);
    root.getChildren().addAll(printers, words, bar, card);
    root.offer(print, save, back);
    root.getStyleClass().add("form-panel");
    model.printers().addListener(new WeakListChangeListener<>(follow));
    model.busy().addListener((all, before, now) -> offer());
    list();
  }

  private ChoiceRow sheets() {
    return new ChoiceRow(
        Question.choice(
            "sheet",
            texts.of("slip.which"),
            model.sheets().stream().map(SheetPage::title).toList()),
        model.sheet(),
        texts);
  }

  private void list() {
    List<String> names = List.copyOf(model.printers());
    printers.getChildren().clear();
    if (!names.isEmpty()) {
      Label label = new Label(texts.of("slip.printer"));
      ChoiceRow row =
          new ChoiceRow(
              Question.choice("printer", texts.of("slip.printer"), names), model.printer(), texts);
      label.setLabelFor(row);
      printers.getChildren().addAll(label, row);
    }
    offer();
  }

  private void offer() {
    print.setDisable(model.busy().get() || model.printers().isEmpty());
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    if (checks.isPresent() && !model.busy().get()) {
      checks.get().requestFocus();
    } else if (!print.isDisabled()) {
      print.requestFocus();
    } else if (!save.isDisabled()) {
      save.requestFocus();
    } else {
      back.requestFocus();
    }
  }

  @Override
  public boolean press(KeyCode code) {
    return root.press(code);
  }

  @Override
  public boolean isPassable() {
    return true;
  }

  @Override
  public void typed(String text) {
    // Only the number of a check is an answer: a bib scanned over the slip is none
    checks.filter(ChoiceRow::isFocused).ifPresent(row -> row.typed(text));
  }
}
