package lanewarden.kiosk.setups;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.bench.ComparisonSheet;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.look.KeyBar;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Panels;
import lanewarden.kiosk.look.ScreenFrame;
import lanewarden.kiosk.look.Scroll;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.trouble.TroubleCard;

/** Set-ups that are shot beside each other, and what the shots show, never without its cautions. */
public final class SetUpsScreen implements Page {

  /**
   * What the screen's buttons lead to that is not the screen's own.
   *
   * @param theme turns through the themes
   * @param goTo lists every screen with its key
   * @param leave goes back
   */
  public record Doors(KeyButton theme, KeyButton goTo, Runnable leave) {}

  private final SetUpsViewModel model;
  private final Texts texts;
  private final SetUpsPanels own;
  private final ScreenFrame root = new ScreenFrame();
  private final Keys keys = new Keys();
  private final ListView<SetUpRow> list = new ListView<>();
  private final ComparisonPane told;
  private final Scroll scroll;
  private final ComparisonCautions cautions;
  private final KeyButton again;
  private final KeyButton listen;
  private final KeyButton mark;
  private final KeyButton write;
  private final KeyButton keep;

  /** Shows what the model knows. */
  public SetUpsScreen(
      SetUpsViewModel model,
      Texts texts,
      Panels panels,
      Supplier<Optional<Chooser>> chooser,
      Doors doors) {
    this.model = model;
    this.texts = texts;
    own = new SetUpsPanels(model, texts, panels, chooser);
    told = new ComparisonPane(texts);
    cautions = new ComparisonCautions(texts);
    scroll = new Scroll(told);
    again = new KeyButton(texts.of("act.setups.again"), KeyCode.ENTER, model::again);
    listen = new KeyButton(texts.of("act.listen"), KeyCode.F4, model::turnListening);
    mark = new KeyButton(texts.of("act.setups.mark"), KeyCode.F5, own::mark);
    write = new KeyButton(texts.of("act.setups.write"), KeyCode.F8, own::write);
    keep = new KeyButton(texts.of("act.setups.keep"), KeyCode.F9, own::keep);
    KeyButton more = new KeyButton(texts.of("act.more"), KeyCode.PAGE_DOWN, () -> scroll.turn(1));
    more.setId("setups-more");
    more.disableProperty().bind(scroll.isAtEnd());
    KeyButton[] acts = {
      again,
      new KeyButton(texts.of("act.setups.state"), KeyCode.F2, own::state),
      listen,
      mark,
      new KeyButton(texts.of("act.setups.begin"), KeyCode.F3, own::begin),
      write,
      keep,
      more,
      doors.theme(),
      doors.goTo(),
      new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, doors.leave())
    };
    again.getStyleClass().add("primary");
    keys.add(acts);
    root.fill(column(), side(), new KeyBar(acts));
    root.getStyleClass().add("protest");
    root.setId("setups");
    model.sheet().addListener((all, before, now) -> show(now));
    show(model.sheet().get());
  }

  private VBox column() {
    Label title = new Label(texts.of("setups.title"));
    title.getStyleClass().add("panel-title");
    PanelFrame.wrap(title);
    ShootingCard card = new ShootingCard(texts);
    card.setId("setups-shooting");
    card.show(model.practice().get());
    model
        .practice()
        .addListener(
            (all, before, now) -> {
              card.show(now);
              listen.rename(texts.of(model.isListening() ? "act.setups.rest" : "act.listen"));
            });
    list.setItems(model.rows());
    list.setCellFactory(all -> new SetUpCell(texts));
    list.setId("setups-list");
    list.setAccessibleText(texts.of("setups.title"));
    Label none = new Label(texts.of("setups.list.none"));
    PanelFrame.wrap(none);
    list.setPlaceholder(none);
    list.getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (all, before, now) -> {
              if (now != null) {
                model.chosen().set(Optional.of(now));
              }
            });
    model.chosen().addListener((all, before, now) -> pickOut(now));
    VBox.setVgrow(list, Priority.ALWAYS);
    VBox column = new VBox(title, card, list);
    column.getStyleClass().add("docket-column");
    return column;
  }

  private VBox side() {
    TroubleCard trouble = new TroubleCard(texts);
    trouble.setId("setups-trouble");
    trouble.show(model.trouble().get());
    model.trouble().addListener((all, before, now) -> trouble.show(now));
    TroubleCard disk = new TroubleCard(texts);
    disk.setId("setups-disk");
    model
        .practice()
        .addListener((all, before, now) -> disk.show(now.flatMap(view -> view.trouble())));
    Label done = new Label();
    done.setId("setups-done");
    done.getStyleClass().add("docket-title");
    done.textProperty().bind(model.done());
    done.visibleProperty().bind(model.done().isNotEmpty());
    done.managedProperty().bind(done.visibleProperty());
    PanelFrame.wrap(done);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    VBox side = new VBox(trouble, disk, done, scroll, cautions);
    side.getStyleClass().add("dossier-side");
    side.setMinHeight(0);
    return side;
  }

  private void show(Optional<ComparisonSheet> sheet) {
    told.show(sheet);
    cautions.show(sheet);
    again.setDisable(sheet.isEmpty());
    mark.setDisable(sheet.isEmpty());
    write.setDisable(sheet.isEmpty());
    keep.setDisable(sheet.isEmpty());
  }

  private void pickOut(Optional<SetUpRow> chosen) {
    int at = chosen.map(model.rows()::indexOf).orElse(-1);
    if (at >= 0 && list.getSelectionModel().getSelectedIndex() != at) {
      list.getSelectionModel().select(at);
      list.scrollTo(at);
    }
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    list.requestFocus();
  }

  @Override
  public boolean press(KeyCode code) {
    if (code == KeyCode.DOWN || code == KeyCode.UP) {
      model.choose(code == KeyCode.DOWN ? 1 : -1);
      return true;
    }
    return keys.press(code) || scroll.press(code);
  }

  /** What is typed here is a reading. */
  @Override
  public void typed(String text) {
    own.type().typed(text);
  }
}
