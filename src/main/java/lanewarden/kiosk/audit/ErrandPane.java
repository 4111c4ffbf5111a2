package lanewarden.kiosk.audit;

import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.trouble.TroubleCard;

/** The errand on its way, or how the last one ended. */
final class ErrandPane extends VBox {
  private final ErrandViewModel model;
  private final Texts texts;
  private final Mark mark = new Mark();
  private final HBox verdict;
  private final ListView<Ending.Told> list = new ListView<>();

  ErrandPane(ErrandViewModel model, Texts texts) {
    this.model = model;
    this.texts = texts;
    Label title = new Label();
    title.textProperty().bind(model.title());
    title.getStyleClass().add("panel-title");
    title.setId("errand-title");
    Label words = new Label();
    words.textProperty().bind(model.words());
    words.setId("errand-words");
    words.getStyleClass().add("errand-words");
    PanelFrame.wrap(title, words);
    verdict = new HBox(mark, words);
    HBox.setHgrow(words, Priority.ALWAYS);
    verdict.setId("errand-verdict");
    ProgressBar bar = new ProgressBar();
    bar.setId("errand-progress");
    bar.setMaxWidth(Double.MAX_VALUE);
    bar.setFocusTraversable(false);
    bar.progressProperty().bind(model.progress());
    bar.accessibleTextProperty().bind(model.words());
    bar.visibleProperty().bind(model.busy());
    bar.managedProperty().bind(model.busy());
    TroubleCard card = new TroubleCard(texts);
    card.setId("errand-trouble");
    card.show(model.trouble().get());
    model.trouble().addListener((all, before, now) -> card.show(now));
    list.setCellFactory(all -> new ToldCell(texts));
    list.setId("errand-told");
    list.accessibleTextProperty().bind(model.title());
    list.setPlaceholder(placeholder());
    VBox.setVgrow(list, Priority.ALWAYS);
    getChildren().addAll(title, verdict, bar, card, list);
    getStyleClass().add("people-middle");
    model.ending().addListener((all, before, now) -> show());
    model.trouble().addListener((all, before, now) -> show());
    show();
  }

  private Label placeholder() {
    Label words = new Label(texts.of("records.told.nothing"));
    PanelFrame.wrap(words);
    return words;
  }

  /** The verdict has its sign and colour once there is one. */
  private void show() {
    list.getItems().setAll(model.told());
    verdict.getStyleClass().setAll("errand-verdict");
    boolean ended = model.ending().get().isPresent();
    mark.setVisible(ended);
    mark.setManaged(ended);
    model
        .ending()
        .get()
        .ifPresent(
            ending -> {
              Sign sign = ending.good() ? Sign.WITHIN : Sign.OVER;
              verdict.getStyleClass().setAll("errand-verdict", "outcome");
              mark.show(sign);
              Mark.show(verdict, sign);
            });
  }

  /** Puts the focus on what was told, which the arrow keys go through. */
  void focus() {
    list.requestFocus();
  }
}
