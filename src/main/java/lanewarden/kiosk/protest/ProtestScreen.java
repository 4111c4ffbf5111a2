package lanewarden.kiosk.protest;

import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.KeyBar;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Panels;
import lanewarden.kiosk.look.Row;
import lanewarden.kiosk.look.ScreenFrame;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;
import lanewarden.kiosk.trouble.TroubleCard;

/** The docket, and one check with everything that stands beside it. */
public final class ProtestScreen implements Page {

  /**
   * What the screen's buttons lead to that is not the screen's own.
   *
   * @param theme turns through the themes
   * @param goTo lists every screen with its key
   * @param line goes to the line, where a recheck is shot
   * @param leave goes back to where it was opened from
   */
  public record Doors(KeyButton theme, KeyButton goTo, Runnable line, Runnable leave) {}

  private final ProtestViewModel model;
  private final Texts texts;
  private final ScreenFrame root = new ScreenFrame();
  private final Keys keys = new Keys();
  private final TextField field = new TextField();
  private final Label heading = new Label();
  private final ListView<DocketLine> list = new ListView<>();
  private final DossierPane dossier;
  private final TroubleCard notice;
  private final KeyButton file;
  private final KeyButton recheck;
  private final KeyButton rule;
  private final KeyButton correct;
  private final KeyButton confirm;
  private final KeyButton slip;
  private boolean picking;

  /** Shows what the model looks at. */
  public ProtestScreen(
      ProtestViewModel model, SlipViewModel slips, Texts texts, Panels panels, Doors doors) {
    this.model = model;
    this.texts = texts;
    ProtestPanels own = new ProtestPanels(model, texts, panels);
    dossier = new DossierPane(texts);
    notice = new TroubleCard(texts);
    notice.setId("protest-trouble");
    file = new KeyButton(texts.of("act.file"), KeyCode.F2, own::file);
    recheck = new KeyButton(texts.of("act.protest-recheck"), KeyCode.F3, () -> shoot(doors.line()));
    rule = new KeyButton(texts.of("act.rule"), KeyCode.F4, own::rule);
    correct = new KeyButton(texts.of("act.correct"), KeyCode.F5, own::correct);
    confirm = new KeyButton(texts.of("act.confirm"), KeyCode.F8, own::confirm);
    slip = new KeyButton(texts.of("act.slip"), KeyCode.F9, () -> openSlip(slips, panels));
    KeyButton back = new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, doors.leave());
    back.setId("protest-back");
    KeyButton[] acts = {
      file, recheck, rule, correct, confirm, slip, doors.theme(), doors.goTo(), back
    };
    keys.add(acts);
    VBox middle = new VBox(notice, dossier);
    VBox.setVgrow(dossier, Priority.ALWAYS);
    middle.getStyleClass().add("dossier-side");
    middle.setMinHeight(0);
    HBox top = new HBox(head());
    HBox.setHgrow(top.getChildren().get(0), Priority.ALWAYS);
    root.setTop(top);
    root.fill(column(), middle, new KeyBar(acts));
    root.loosen(top.getChildren().get(0), top);
    root.getStyleClass().add("protest");
    root.setId("protest");
    model.page().addListener((all, before, now) -> show());
    model.chosen().addListener((all, before, now) -> pickOut(now));
    model.notice().addListener((all, before, now) -> notice.show(now));
    model.lines().addListener((ListChangeListener<DocketLine>) change -> showHeading());
    showHeading();
    show();
  }

  private Row head() {
    Label title = new Label(texts.of("protest.title"));
    title.getStyleClass().add("place");
    Label how = new Label(how(model.goesOn().get()));
    how.setId("protest-how");
    model.goesOn().addListener((all, before, now) -> how.setText(how(now)));
    PanelFrame.wrap(title, how);
    Row head = new Row(title, how);
    head.getStyleClass().addAll("studio-head", "protest-head");
    return head;
  }

  private String how(boolean goesOn) {
    return texts.of(goesOn ? "protest.how" : "protest.how.stopped");
  }

  private VBox column() {
    Label label = new Label(texts.of("protest.search"));
    PanelFrame.wrap(label);
    label.setLabelFor(field);
    label.getStyleClass().add("field-title");
    field.setAccessibleText(texts.of("protest.search"));
    field.setId("protest-field");
    field.textProperty().bindBidirectional(model.typed());
    field.addEventFilter(KeyEvent.KEY_PRESSED, this::arrows);
    heading.setId("protest-heading");
    heading.getStyleClass().add("field-title");
    WrappedWords.in(heading);
    heading.setMinHeight(Region.USE_PREF_SIZE);
    // Of a ledger that is still verified nothing can be counted
    heading.visibleProperty().bind(model.opening().not());
    heading.managedProperty().bind(heading.visibleProperty());
    list.setItems(model.lines());
    list.setCellFactory(all -> new DocketCell());
    list.setId("docket");
    list.setAccessibleText(texts.of("protest.title"));
    Label none = new Label();
    none.setId("protest-none");
    none.textProperty()
        .bind(
            Bindings.when(model.opening())
                .then(texts.of("ledger.verifying"))
                .otherwise(texts.of("protest.none")));
    WrappedWords.in(none);
    list.setPlaceholder(none);
    list.getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (all, before, now) -> {
              if (!picking && now != null) {
                model.choose(Optional.of(now));
              }
            });
    VBox.setVgrow(list, Priority.ALWAYS);
    VBox column = new VBox(label, field, heading, list);
    column.getStyleClass().add("docket-column");
    return column;
  }

  private void arrows(KeyEvent event) {
    if (event.getCode() == KeyCode.DOWN || event.getCode() == KeyCode.UP) {
      model.choose(event.getCode() == KeyCode.DOWN ? 1 : -1);
      event.consume();
    }
  }

  private void showHeading() {
    long open = model.lines().stream().filter(DocketLine::open).count();
    heading.setText(
        !model.typed().get().isBlank()
            ? texts.of("protest.found", model.lines().size())
            : texts.of("protest.docket", open, model.lines().size() - open));
    pickOut(model.chosen().get());
  }

  private void pickOut(Optional<DocketLine> chosen) {
    picking = true;
    int at = chosen.map(model.lines()::indexOf).orElse(-1);
    if (at < 0) {
      list.getSelectionModel().clearSelection();
    } else if (list.getSelectionModel().getSelectedIndex() != at) {
      list.getSelectionModel().select(at);
      list.scrollTo(at);
    }
    picking = false;
    offer();
  }

  private void show() {
    dossier.show(model.page().get());
    offer();
  }

  private void offer() {
    boolean any = model.dossier().isPresent();
    file.setDisable(!any);
    recheck.setDisable(model.protest().isEmpty());
    rule.setDisable(model.protest().isEmpty());
    correct.setDisable(!any);
    confirm.setDisable(model.correction().isEmpty());
    slip.setDisable(!any);
  }

  private void shoot(Runnable line) {
    model.recheck(line);
  }

  private void openSlip(SlipViewModel slips, Panels panels) {
    model
        .page()
        .get()
        .ifPresent(
            page -> panels.open(new SlipPanel(slips.of(page.sheets()), texts, panels::close)));
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    field.requestFocus();
    field.end();
  }

  @Override
  public boolean press(KeyCode code) {
    return dossier.press(code) || keys.press(code);
  }

  @Override
  public void typed(String text) {
    focus();
    field.appendText(text);
  }
}
