package lanewarden.kiosk.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.value.ObservableBooleanValue;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.form.Chooser;
import lanewarden.kiosk.form.OrganizersKey;
import lanewarden.kiosk.look.KeyBar;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Panels;
import lanewarden.kiosk.look.ScreenFrame;
import lanewarden.kiosk.look.Texts;

/** The records: what can be made of the ledger and proved with it, each with its key. */
public final class RecordsScreen implements Page {

  /**
   * What the screen's buttons lead to that is not the screen's own.
   *
   * @param theme turns through the themes
   * @param goTo lists every screen with its key
   * @param leave goes back; what is on its way goes on
   */
  public record Doors(KeyButton theme, KeyButton goTo, Runnable leave) {}

  private final LedgerViewModel model;
  private final Texts texts;
  private final LedgerPanels own;
  private final ScreenFrame root = new ScreenFrame();
  private final Keys keys = new Keys();
  private final VBox errands = new VBox();
  private final KeyBar bar = new KeyBar();
  private final List<KeyButton> acts = new ArrayList<>();
  private final ErrandPane pane;

  private RecordsScreen(
      LedgerViewModel model,
      Label head,
      Texts texts,
      Panels panels,
      Supplier<Optional<Chooser>> chooser,
      Doors doors) {
    this.model = model;
    this.texts = texts;
    own = new LedgerPanels(model, texts, panels, chooser);
    pane = new ErrandPane(model.errand(), texts);
    Label title = new Label(texts.of("records.title"));
    title.getStyleClass().add("sign-in-title");
    head.setId("records-own");
    PanelFrame.wrap(title, head);
    BooleanProperty busy = model.errand().busy();
    errand("records.report", KeyCode.F8, own::report, busy);
    errand("records.slip", KeyCode.F2, own::slip, busy);
    errand("records.write", KeyCode.F12, own::write, busy);
    errand("records.docket", KeyCode.F1, own::docket, busy);
    errand("records.verify", KeyCode.F3, own::verify, busy);
    errand("records.export", KeyCode.F4, own::export, busy);
    errand("records.import", KeyCode.F5, own::bringIn, busy);
    errands.getStyleClass().add("errands");
    VBox column = new VBox(title, head, errands);
    column.getStyleClass().add("docket-column");
    acts.add(doors.theme());
    acts.add(doors.goTo());
    acts.add(new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, doors.leave()));
    acts.forEach(keys::add);
    acts.addAll(
        0,
        List.of(
            button("records.check", KeyCode.HOME, own::check, busy),
            button("act.chart", KeyCode.DELETE, own::chart, busy),
            button("records.accuracy", KeyCode.F9, own::accuracy, busy)));
    bar.offer(acts);
    root.fill(column, pane, bar);
    root.getStyleClass().add("protest");
    root.setId("records");
  }

  /**
   * The records of an event: what needs a ledger alone, and what its station signs.
   *
   * @param chooser with which files are chosen, if there is one at the time
   */
  public static RecordsScreen of(
      RecordsViewModel model,
      OrganizersKey key,
      Texts texts,
      Panels panels,
      Supplier<Optional<Chooser>> chooser,
      Doors doors) {
    Label head = new Label();
    head.textProperty().bind(model.own());
    RecordsScreen screen = new RecordsScreen(model.ledger(), head, texts, panels, chooser, doors);
    screen.add(model, new RecordsPanels(model, key, texts, panels, chooser));
    return screen;
  }

  /** A ledger without its event: what needs nothing else. */
  public static RecordsScreen ofLedgers(
      LedgerViewModel model, Texts texts, Panels panels, Chooser chooser, Doors doors) {
    return new RecordsScreen(
        model,
        new Label(texts.of("records.alone")),
        texts,
        panels,
        () -> Optional.of(chooser),
        doors);
  }

  private void add(RecordsViewModel station, RecordsPanels signed) {
    BooleanProperty busy = model.errand().busy();
    KeyButton witness =
        errand("records.witness", KeyCode.END, signed::witness, busy.or(station.onDuty().not()));
    say(witness, station.onDuty(), "records.witness", "records.witness.barred");
    KeyButton draw =
        errand("records.draw", KeyCode.F11, signed::draw, busy.or(station.onDuty().not()));
    say(draw, station.onDuty(), "records.draw", "records.draw.barred");
    KeyButton seal =
        button("records.seal", KeyCode.F10, signed::makeSeal, busy.or(station.sealed()));
    say(seal, station.sealed(), "records.seal.barred", "records.seal");
    acts.add(3, seal);
    bar.offer(acts);
  }

  /** An errand says why it is not open now. */
  private void say(KeyButton button, BooleanProperty turn, String whenTrue, String whenFalse) {
    turn.addListener((all, before, now) -> button.rename(texts.of(now ? whenTrue : whenFalse)));
    button.rename(texts.of(turn.get() ? whenTrue : whenFalse));
  }

  private KeyButton errand(String words, KeyCode key, Runnable act, ObservableBooleanValue barred) {
    KeyButton button = button(words, key, act, barred).abreast();
    button.setMaxWidth(Double.MAX_VALUE);
    VBox.setVgrow(button, Priority.ALWAYS);
    errands.getChildren().add(button);
    return button;
  }

  private KeyButton button(String words, KeyCode key, Runnable act, ObservableBooleanValue barred) {
    KeyButton button = new KeyButton(texts.of(words), key, act);
    button.setId("errand-" + key.name().toLowerCase(Locale.ROOT));
    button.disableProperty().bind(barred);
    keys.add(button);
    return button;
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    pane.focus();
  }

  @Override
  public boolean press(KeyCode code) {
    return keys.press(code);
  }

  /** What a reader types here is the code of a slip. */
  @Override
  public void typed(String text) {
    if (!model.errand().busy().get()) {
      own.slip().typed(text);
    }
  }
}
