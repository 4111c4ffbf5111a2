package lanewarden.kiosk.audit;

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

  private final RecordsViewModel model;
  private final Texts texts;
  private final RecordsPanels own;
  private final ScreenFrame root = new ScreenFrame();
  private final Keys keys = new Keys();
  private final VBox errands = new VBox();
  private final ErrandPane pane;

  /** Shows what the model looks at. */
  public RecordsScreen(
      RecordsViewModel model,
      OrganizersKey key,
      Texts texts,
      Panels panels,
      Supplier<Optional<Chooser>> chooser,
      Doors doors) {
    this.model = model;
    this.texts = texts;
    own = new RecordsPanels(model, key, texts, panels, chooser);
    pane = new ErrandPane(model.errand(), texts);
    Label title = new Label(texts.of("records.title"));
    title.getStyleClass().add("sign-in-title");
    Label head = new Label();
    head.textProperty().bind(model.own());
    head.setId("records-own");
    PanelFrame.wrap(title, head);
    BooleanProperty busy = model.errand().busy();
    errand("records.report", KeyCode.F8, own::report, busy);
    errand("records.slip", KeyCode.F2, own::slip, busy);
    errand("records.verify", KeyCode.F3, own::verify, busy);
    errand("records.export", KeyCode.F4, own::export, busy);
    errand("records.import", KeyCode.F5, own::bringIn, busy);
    KeyButton witness =
        errand("records.witness", KeyCode.F6, own::witness, busy.or(model.onDuty().not()));
    say(witness, model.onDuty(), "records.witness", "records.witness.barred");
    KeyButton draw = errand("records.draw", KeyCode.F11, own::draw, busy.or(model.onDuty().not()));
    say(draw, model.onDuty(), "records.draw", "records.draw.barred");
    errand("records.accuracy", KeyCode.F9, own::accuracy, busy);
    KeyButton seal = errand("records.seal", KeyCode.F10, own::makeSeal, busy.or(model.sealed()));
    say(seal, model.sealed(), "records.seal.barred", "records.seal");
    errands.getStyleClass().add("errands");
    VBox column = new VBox(title, head, errands);
    column.getStyleClass().add("docket-column");
    KeyButton[] acts = {
      doors.theme(),
      doors.goTo(),
      new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, doors.leave())
    };
    keys.add(acts);
    root.fill(column, pane, new KeyBar(acts));
    root.getStyleClass().add("protest");
    root.setId("records");
  }

  /** An errand says why it is not open now. */
  private void say(KeyButton button, BooleanProperty turn, String whenTrue, String whenFalse) {
    turn.addListener((all, before, now) -> button.rename(texts.of(now ? whenTrue : whenFalse)));
    button.rename(texts.of(turn.get() ? whenTrue : whenFalse));
  }

  private KeyButton errand(String words, KeyCode key, Runnable act, ObservableBooleanValue barred) {
    KeyButton button = new KeyButton(texts.of(words), key, act).abreast();
    button.setMaxWidth(Double.MAX_VALUE);
    button.setId("errand-" + key.name().toLowerCase(Locale.ROOT));
    button.disableProperty().bind(barred);
    VBox.setVgrow(button, Priority.ALWAYS);
    keys.add(button);
    errands.getChildren().add(button);
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
