package lanewarden.kiosk.audit;

import java.util.function.Supplier;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.trouble.TroubleCard;

/** The audit report: makes it, shows how far it is and where the file lies. */
public final class ReportPanel implements Page {
  private final VBox root = new VBox();
  private final Keys keys = new Keys();
  private final KeyButton make;
  private final KeyButton back;

  /**
   * @param head the ledger's head at the moment of asking
   * @param leave goes back; the making goes on
   */
  public ReportPanel(ReportViewModel model, Texts texts, Supplier<String> head, Runnable leave) {
    Label title = new Label(texts.of("report.title"));
    title.getStyleClass().add("panel-title");
    Label about = new Label(texts.of("report.about"));
    Label words = new Label();
    words.setId("report-words");
    words.textProperty().bind(model.words());
    ProgressBar bar = new ProgressBar();
    bar.setId("report-progress");
    bar.setMaxWidth(Double.MAX_VALUE);
    bar.setFocusTraversable(false);
    bar.progressProperty().bind(model.progress());
    bar.accessibleTextProperty().bind(model.words());
    TroubleCard card = new TroubleCard(texts);
    model.trouble().addListener((all, before, now) -> card.show(now));
    card.show(model.trouble().get());
    make = new KeyButton(texts.of("report.act"), KeyCode.ENTER, () -> model.make(head.get()));
    make.getStyleClass().add("primary");
    make.setId("make-report");
    make.disableProperty().bind(model.phase().isEqualTo(ReportViewModel.Phase.MAKING));
    back = new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, leave);
    keys.add(make, back);
    HBox buttons = new HBox(make, back);
    buttons.getStyleClass().add("panel-buttons");
    for (Label label : new Label[] {title, about, words}) {
      label.setWrapText(true);
      label.setMinHeight(Label.USE_PREF_SIZE);
    }
    root.getChildren().addAll(title, about, words, bar, card, buttons);
    root.getStyleClass().add("panel");
    root.setMaxHeight(VBox.USE_PREF_SIZE);
    root.setId("report-panel");
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    if (make.isDisabled()) {
      back.requestFocus();
    } else {
      make.requestFocus();
    }
  }

  @Override
  public boolean press(KeyCode code) {
    return keys.press(code);
  }

  @Override
  public boolean isPassable() {
    return true;
  }

  @Override
  public void typed(String text) {
    // A bib scanned over the report is no answer to it
  }
}
