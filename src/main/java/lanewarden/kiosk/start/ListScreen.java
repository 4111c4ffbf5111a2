package lanewarden.kiosk.start;

import java.util.ArrayList;
import java.util.List;
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
import lanewarden.kiosk.look.ScreenFrame;
import lanewarden.kiosk.look.Scroll;
import lanewarden.kiosk.look.Texts;
import lanewarden.station.EventForm;

/** What a new event would take from a list of competitors, and what is wrong with the list. */
public final class ListScreen implements Page {

  /**
   * What the screen's buttons lead to that is not the screen's own.
   *
   * @param theme turns through the themes
   * @param goTo lists what is done without an event
   * @param back leads back to the start
   */
  public record Doors(KeyButton theme, KeyButton goTo, KeyButton back) {}

  private final ScreenFrame root = new ScreenFrame();
  private final Keys keys = new Keys();
  private final RosterStep list;

  /** Shows what the model holds. */
  public ListScreen(ListViewModel model, Texts texts, Chooser chooser, Doors doors) {
    Draft draft = model.draft();
    list =
        new RosterStep(
            draft,
            texts,
            chooser,
            new Fields(draft, texts)
                .text(EventForm.RULE_BOOK, "make.rule-book", "list.rule-book.example"));
    Label title = new Label(texts.of("make.roster"));
    title.getStyleClass().add("sign-in-title");
    Label words = new Label(texts.of("list.words"));
    PanelFrame.wrap(title, words);
    Scroll scroll = new Scroll(new VBox(list.node()));
    scroll.setFocusTraversable(false);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    VBox middle = new VBox(title, words, scroll);
    middle.getStyleClass().add("people-middle");
    KeyButton look = new KeyButton(texts.of("list.act"), KeyCode.ENTER, model::look);
    look.getStyleClass().add("primary");
    List<KeyButton> acts = new ArrayList<>(List.of(look));
    acts.addAll(list.buttons());
    acts.add(
        new KeyButton(
            texts.of("make.choose-rules"),
            KeyCode.F6,
            () ->
                chooser
                    .file(texts.of("make.choose-rules.title"))
                    .ifPresent(path -> draft.choose(EventForm.RULE_BOOK, path))));
    acts.addAll(List.of(doors.theme(), doors.goTo(), doors.back()));
    acts.forEach(keys::add);
    KeyBar bar = new KeyBar();
    bar.offer(acts);
    root.fill(middle, bar);
    root.getStyleClass().addAll("studio", "make");
    root.setId("list");
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    list.first().requestFocus();
  }

  @Override
  public boolean press(KeyCode code) {
    return list.press(code) || keys.press(code);
  }

  @Override
  public void typed(String text) {
    focus();
  }
}
