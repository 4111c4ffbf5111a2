package lanewarden.kiosk.rulebook;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
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
import lanewarden.kiosk.trouble.TroubleCard;
import lanewarden.station.RuleDraft;
import lanewarden.station.RuleKey;
import lanewarden.station.Trouble;
import org.jspecify.annotations.Nullable;

/** The rule studio: divisions, the form of one, and what it means and does. */
public final class RuleBookScreen implements Page {
  private final RuleBookViewModel model;
  private final EffectViewModel effect;
  private final LanesViewModel lanes;
  private final Texts texts;
  private final Panels panels;
  private final Runnable leave;
  private final Optional<Adoption> adoption;
  private final ScreenFrame root = new ScreenFrame();
  private final Keys keys = new Keys();
  private final RuleForm form;
  private final Label file = new Label();
  private final Label state = new Label();
  private Optional<Node> typedIn = Optional.empty();

  /**
   * @param panels where questions are asked
   * @param theme turns through the themes
   * @param adoption how it comes into force, where it is an event's
   * @param leave goes back to where the studio was opened, or ends the program
   */
  public RuleBookScreen(
      RuleBookViewModel model,
      EffectViewModel effect,
      Texts texts,
      Panels panels,
      KeyButton theme,
      Optional<Adoption> adoption,
      Runnable leave) {
    this.model = model;
    this.effect = effect;
    this.texts = texts;
    this.lanes = new LanesViewModel(texts);
    this.panels = panels;
    this.adoption = adoption;
    this.leave = leave;
    form = new RuleForm(model, texts);
    TroubleCard card = new TroubleCard(texts);
    card.setId("studio-trouble");
    model.trouble().addListener((all, before, now) -> card.show(now));
    file.getStyleClass().add("place");
    file.setId("studio-file");
    state.setId("studio-state");
    PanelFrame.wrap(file, state);
    HBox.setHgrow(state, Priority.ALWAYS);
    Row head = new Row(file, state);
    head.getStyleClass().addAll("studio-head");
    root.setTop(new VBox(head, card));
    Row middle = new Row(form, meaning());
    HBox.setHgrow(middle.getChildren().get(1), Priority.ALWAYS);
    root.fill(new DivisionList(model, texts), middle, bar(theme));
    root.getStyleClass().add("studio");
    root.setId("studio");
    root.sceneProperty()
        .addListener(
            (all, before, now) -> {
              if (now != null) {
                now.focusOwnerProperty().addListener((owners, left, owner) -> remember(owner));
              }
            });
    model.draft().addListener((all, before, now) -> say());
    model.saved().addListener((all, before, now) -> say());
    say();
  }

  /** What a person works in, to go back to after a panel or a key button. */
  private void remember(@Nullable Node owner) {
    if (owner != null && !(owner instanceof KeyButton) && isWithin(owner)) {
      typedIn = Optional.of(owner);
    }
  }

  private boolean isWithin(Node node) {
    Node at = node;
    while (at != null && !at.equals(root)) {
      at = at.getParent();
    }
    return at != null;
  }

  private Node meaning() {
    return new MeaningPane(effect, texts);
  }

  private KeyBar bar(KeyButton theme) {
    KeyButton add = button("studio.add", KeyCode.F2, model::add);
    KeyButton copy = button("studio.copy", KeyCode.F3, model::copy);
    KeyButton remove = button("studio.remove", KeyCode.F4, this::askRemove);
    KeyButton save = button("studio.save", KeyCode.F5, model::save);
    save.getStyleClass().add("primary");
    KeyButton other = button("studio.save-as", KeyCode.F6, this::askName);
    KeyButton lanes = button("studio.lanes", KeyCode.F8, this::openLanes);
    KeyButton beside = button("studio.beside", KeyCode.F9, this::askBeside);
    KeyButton back = button("studio.leave", KeyCode.F12, this::askLeave);
    KeyButton draft = button("studio.draft", KeyCode.F1, model::openOtherDraft);
    for (KeyButton one : List.of(copy, remove)) {
      one.disableProperty().bind(model.section().isEqualTo(RuleBookViewModel.EVENT));
    }
    draft.managedProperty().bind(draft.visibleProperty());
    Runnable offer =
        () ->
            draft.setVisible(
                model.draft().get().otherDraft().isPresent() && !model.draft().get().isChanged());
    model.draft().addListener((all, before, now) -> offer.run());
    offer.run();
    KeyButton adopt = button("studio.adopt", KeyCode.F10, this::askAdopt);
    adopt.setVisible(adoption.isPresent());
    adopt.setManaged(adoption.isPresent());
    adopt
        .disableProperty()
        .bind(
            Bindings.createBooleanBinding(
                () -> !isEvents() || isChanged() || !model.draft().get().faults().isEmpty(),
                model.draft()));
    KeyButton[] acts = {draft, add, copy, remove, save, other, adopt, beside, lanes, theme, back};
    keys.add(acts);
    return new KeyBar(acts);
  }

  private KeyButton button(String words, KeyCode key, Runnable act) {
    KeyButton button = new KeyButton(texts.of(words), key, act);
    button.setId(words.replace('.', '-'));
    return button;
  }

  private void say() {
    RuleDraft draft = model.draft().get();
    Path name = draft.opened().getFileName();
    file.setText(String.valueOf(name));
    int faults = draft.faults().size();
    String what;
    if (model.saved().get().isPresent()) {
      what =
          faults > 0
              ? texts.of("studio.saved.draft")
              : texts.of(isEvents() ? "studio.saved.event" : "studio.saved");
    } else if (faults > 0) {
      what = texts.of("studio.faulty", faults, draft.target().getFileName());
    } else {
      what = draft.isChanged() ? texts.of("studio.changed") : texts.of("studio.unchanged");
    }
    state.setText(what.strip());
  }

  private void askRemove() {
    String code = model.text(RuleKey.CODE);
    AskPanel.Wording wording =
        new AskPanel.Wording(
            texts.of("remove.title", code), texts.of("remove.words"), texts.of("remove.act"));
    confirm(wording, model::remove);
  }

  private void confirm(AskPanel.Wording wording, Runnable act) {
    panels.open(
        AskPanel.confirm(
            wording,
            texts,
            () -> {
              panels.close();
              act.run();
            },
            panels::close));
  }

  private void askName() {
    AskPanel.Wording wording =
        new AskPanel.Wording(
            texts.of("save-as.title"), texts.of("save-as.words"), texts.of("studio.save"));
    panels.open(
        AskPanel.text(
            wording,
            texts.of("save-as.field"),
            String.valueOf(model.draft().get().file().getFileName()),
            texts,
            name -> {
              panels.close();
              model.saveAs(name);
            },
            panels::close));
  }

  private void askBeside() {
    List<EffectViewModel.Beside> choices = effect.choices();
    AskPanel.Wording wording =
        new AskPanel.Wording(texts.of("beside.title"), texts.of("beside.words"), "");
    panels.open(
        AskPanel.pick(
            wording,
            choices.stream().map(effect::name).toList(),
            texts,
            chosen -> {
              panels.close();
              effect.setBeside(choices.get(chosen));
            },
            panels::close));
  }

  /** Whether this is the file that the event's rules come from. */
  private boolean isEvents() {
    RuleDraft draft = model.draft().get();
    return adoption.filter(a -> a.ruleBook().equals(draft.opened())).isPresent();
  }

  private void askAdopt() {
    adoption.ifPresent(how -> panels.open(AdoptPanel.of(how, texts, panels, this::adopted)));
  }

  /** What there is to remark stands here, where it can be mended, and not first at the line. */
  private void adopted(Optional<Trouble> remark) {
    model.trouble().set(remark);
    state.setText(texts.of("studio.adopted"));
  }

  private void openLanes() {
    effect
        .page()
        .get()
        .first()
        .flatMap(EffectPage.Shown::curve)
        .ifPresent(curve -> lanes.suppose(curve.caught()));
    panels.open(new LanesPanel(lanes, texts, panels::close));
  }

  /** Leaves, but asks before anything that is not saved is given up. */
  public void askLeave() {
    if (!model.draft().get().isChanged()) {
      leave.run();
      return;
    }
    AskPanel.Wording wording =
        new AskPanel.Wording(
            texts.of("leave.title"), texts.of("leave.words"), texts.of("leave.act"));
    confirm(wording, leave);
  }

  /** Whether something was typed that is not saved. */
  public boolean isChanged() {
    return model.draft().get().isChanged();
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    typedIn
        .filter(node -> node.getScene() != null && node.isFocusTraversable() && !node.isDisabled())
        .orElseGet(form::first)
        .requestFocus();
  }

  @Override
  public boolean press(KeyCode code) {
    if (code == KeyCode.ESCAPE) {
      askLeave();
      return true;
    }
    return keys.press(code);
  }
}
