package lanewarden.kiosk.start;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
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
import lanewarden.station.EventForm;

/** A new event, filled in page by page. */
public final class NewEventScreen implements Page {

  /**
   * What the screen's buttons lead to that is not the screen's own.
   *
   * @param theme turns through the themes
   * @param leave goes back to the start
   * @param open opens the event that was made
   */
  public record Doors(KeyButton theme, Runnable leave, Consumer<Path> open) {}

  private final NewEventViewModel model;
  private final Texts texts;
  private final Panels panels;
  private final Doors doors;
  private final ScreenFrame root = new ScreenFrame();
  private final Map<Step, StepPane> panes = new EnumMap<>(Step.class);
  private final Label title = new Label();
  private final VBox step = new VBox();
  private final Scroll scroll = new Scroll(step);
  private final KeyBar bar = new KeyBar();
  private final KeyButton next;
  private final KeyButton back;
  private Keys keys = new Keys();
  private Optional<Node> last = Optional.empty();

  /** Shows what the model holds. */
  public NewEventScreen(
      NewEventViewModel model, Texts texts, Panels panels, Chooser chooser, Doors doors) {
    this.model = model;
    this.texts = texts;
    this.panels = panels;
    this.doors = doors;
    panes.put(Step.PLACE, new PlaceStep(model, texts, chooser));
    panes.put(Step.COMPETITORS, new RosterStep(model.draft(), texts, chooser));
    panes.put(Step.INSTRUMENT, new InstrumentStep(model, texts, chooser));
    panes.put(Step.PEOPLE, new PeopleStep(model, texts));
    title.getStyleClass().add("sign-in-title");
    title.setId("make-title");
    PanelFrame.wrap(title);
    TroubleCard card = new TroubleCard(texts);
    card.setId("make-trouble");
    model.trouble().addListener((all, before, now) -> card.show(now));
    scroll.setFocusTraversable(false);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    VBox middle = new VBox(title, card, scroll);
    middle.getStyleClass().add("people-middle");
    next = new KeyButton(texts.of("make.next"), KeyCode.ENTER, model::next);
    next.getStyleClass().add("primary");
    next.disableProperty().bind(model.busy());
    back = new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, this::back);
    back.disableProperty().bind(model.busy());
    root.fill(middle, bar);
    root.getStyleClass().addAll("studio", "make");
    root.setId("make");
    model.step().addListener((all, before, now) -> turn());
    model.busy().addListener((all, before, now) -> name());
    model.made().addListener((all, before, now) -> now.ifPresent(this::finish));
    model.onStopped(this::goTo);
    turn();
  }

  private StepPane pane() {
    return Objects.requireNonNull(panes.get(model.step().get()));
  }

  private void turn() {
    last = Optional.empty();
    Step now = model.step().get();
    title.setText(
        texts.of("make.title", texts.of(now.title()), now.number(), Step.values().length));
    step.getChildren().setAll(pane().node());
    scroll.setVvalue(0);
    name();
    keys = new Keys();
    List<KeyButton> acts = new ArrayList<>(List.of(next));
    acts.addAll(pane().buttons());
    acts.addAll(List.of(doors.theme(), back));
    bar.offer(acts);
    acts.forEach(keys::add);
    if (root.getScene() != null) {
      root.applyCss();
      focus();
    }
  }

  /** Whoever is kept on the page goes on typing where something is wrong. */
  private void goTo(String field) {
    Node entry = pane().node().lookup("#field-" + field);
    if (entry != null) {
      Node input = entry.lookup(".text-input");
      (input == null ? entry : input).requestFocus();
    }
  }

  private void name() {
    if (model.busy().get()) {
      next.rename(texts.of("make.busy"));
    } else {
      next.rename(texts.of(model.step().get().isLast() ? "make.act" : "make.next"));
    }
  }

  private void back() {
    if (!model.back()) {
      doors.leave().run();
    }
  }

  private void finish(EventForm.Made made) {
    panels.open(
        new MadePanel(made, texts, () -> doors.open().accept(made.folder().path()), doors.leave()));
  }

  @Override
  public Parent root() {
    return root;
  }

  /** Back to the field where one was, or to the first. */
  @Override
  public void focus() {
    last.filter(this::isHere).orElseGet(() -> pane().first()).requestFocus();
  }

  private boolean isHere(Node node) {
    for (Node at = node; at != null; at = at.getParent()) {
      if (at == pane().node()) {
        return true;
      }
    }
    return false;
  }

  @Override
  public boolean press(KeyCode code) {
    Optional.ofNullable(root.getScene().getFocusOwner())
        .filter(this::isHere)
        .ifPresent(owner -> last = Optional.of(owner));
    return pane().press(code) || keys.press(code);
  }

  @Override
  public void typed(String text) {
    focus();
  }
}
