package lanewarden.kiosk.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.form.Chooser;
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
  private final Supplier<Optional<Chooser>> chooser;
  private final Optional<Adoption> adoption;
  private final ScreenFrame root = new ScreenFrame();
  private final Keys keys = new Keys();
  private final RuleForm form;
  private final Label file = new Label();
  private final StudioState state;
  private Optional<Node> typedIn = Optional.empty();

  /**
   * @param panels where questions are asked
   * @param theme turns through the themes
   * @param chooser with what a file is chosen, if there is anything at the time
   * @param adoption how it comes into force, where it is an event's
   * @param leave goes back to where the studio was opened, or ends the program
   */
  public RuleBookScreen(
      RuleBookViewModel model,
      EffectViewModel effect,
      Texts texts,
      Panels panels,
      KeyButton theme,
      Supplier<Optional<Chooser>> chooser,
      Optional<Adoption> adoption,
      Runnable leave) {
    this.model = model;
    this.effect = effect;
    this.texts = texts;
    this.lanes = new LanesViewModel(texts);
    this.panels = panels;
    this.chooser = chooser;
    this.adoption = adoption;
    this.leave = leave;
    form = new RuleForm(model, texts);
    state = new StudioState(model, adoption, texts);
    TroubleCard card = new TroubleCard(texts);
    card.setId("studio-trouble");
    model.trouble().addListener((all, before, now) -> card.show(now));
    file.getStyleClass().add("place");
    file.setId("studio-file");
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
    model.draft().addListener((all, before, now) -> nameFile());
    nameFile();
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
    for (KeyButton one : List.of(copy, remove, beside)) {
      one.disableProperty().bind(model.section().isEqualTo(RuleBookViewModel.EVENT));
    }
    other.disableProperty().bind(model.busy());
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
    adopt.disableProperty().bind(state.adoptable().not());
    KeyButton[] acts = {draft, add, copy, remove, save, other, adopt, beside, lanes, theme, back};
    keys.add(acts);
    return new KeyBar(acts);
  }

  private KeyButton button(String words, KeyCode key, Runnable act) {
    KeyButton button = new KeyButton(texts.of(words), key, act);
    button.setId(words.replace('.', '-'));
    return button;
  }

  private void nameFile() {
    file.setText(String.valueOf(model.draft().get().opened().getFileName()));
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
    panels.open(SaveAsPanel.of(model, texts, chooser.get(), panels::close));
  }

  private void askBeside() {
    List<EffectViewModel.Beside> choices = effect.choices();
    List<String> names = new ArrayList<>(choices.stream().map(effect::name).toList());
    names.add(texts.of("beside.book"));
    AskPanel.Wording wording =
        new AskPanel.Wording(texts.of("beside.title"), texts.of("beside.words"), "");
    panels.open(
        AskPanel.pick(
            wording,
            names,
            texts,
            chosen -> {
              panels.close();
              if (chosen == choices.size()) {
                panels.open(BesidePanel.of(effect, texts, chooser.get(), panels::close));
              } else {
                effect.setBeside(choices.get(chosen));
              }
            },
            panels::close));
  }

  private void askAdopt() {
    adoption.ifPresent(
        how -> panels.open(AdoptPanel.of(how, texts, chooser.get(), panels, this::adopted)));
  }

  /** What there is to remark stands here, where it can be mended, and not first at the line. */
  private void adopted(Optional<Trouble> remark) {
    model.trouble().set(remark);
    state.adopted();
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

  /** Leaves, but asks first whether to save what is not saved. */
  public void askLeave() {
    if (!model.draft().get().isChanged()) {
      leave.run();
      return;
    }
    int faults = model.draft().get().faults().size();
    String words =
        faults > 0
            ? texts.of("leave.words.faulty", faults, model.draft().get().target().getFileName())
            : texts.of("leave.words");
    KeyButton without =
        new KeyButton(
            texts.of("leave.without"),
            KeyCode.F4,
            () -> {
              panels.close();
              leave.run();
            });
    without.setId("leave-without");
    panels.open(
        AskPanel.confirm(
            new AskPanel.Wording(texts.of("leave.title"), words, texts.of("leave.act")),
            without,
            texts,
            () -> {
              panels.close();
              model.saveAnd(leave);
            },
            panels::close));
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
