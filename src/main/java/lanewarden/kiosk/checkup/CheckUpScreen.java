package lanewarden.kiosk.checkup;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.binding.Bindings;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.form.FormPanel;
import lanewarden.kiosk.form.FormViewModel;
import lanewarden.kiosk.form.Question;
import lanewarden.kiosk.look.KeyBar;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Panels;
import lanewarden.kiosk.look.ScreenFrame;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.trouble.TroubleCard;
import lanewarden.station.SelfCheck;
import lanewarden.station.SupportBundle;

/** Whether a day can begin with the station: every point with its remedy, and the bundle. */
public final class CheckUpScreen implements Page {
  private static final String PLACE = "place";

  /**
   * What the screen's buttons lead to that is not the screen's own.
   *
   * @param theme turns through the themes
   * @param goTo lists every screen with its key
   * @param leave goes back
   */
  public record Doors(KeyButton theme, KeyButton goTo, Runnable leave) {}

  private final CheckUpViewModel model;
  private final Texts texts;
  private final Panels panels;
  private final ScreenFrame root = new ScreenFrame();
  private final Keys keys = new Keys();
  private final Mark mark = new Mark();
  private final HBox verdict;
  private final ListView<SelfCheck.Point> list = new ListView<>();

  /** Shows what the model finds. */
  public CheckUpScreen(CheckUpViewModel model, Texts texts, Panels panels, Doors doors) {
    this.model = model;
    this.texts = texts;
    this.panels = panels;
    Label title = new Label(texts.of("checkup.title"));
    title.getStyleClass().add("sign-in-title");
    Label about = new Label(model.about());
    PanelFrame.wrap(title, about);
    KeyButton again = act("checkup.again", KeyCode.F2, model::look);
    again.disableProperty().bind(model.busy());
    KeyButton bundle = act("checkup.bundle", KeyCode.F8, () -> model.gather(this::ask));
    bundle
        .disableProperty()
        .bind(
            model
                .busy()
                .or(
                    Bindings.createBooleanBinding(
                        () -> model.found().get().isEmpty(), model.found())));
    VBox acts = new VBox(again, bundle);
    acts.getStyleClass().add("errands");
    VBox column = new VBox(title, about, acts);
    column.getStyleClass().add("docket-column");
    Label words = new Label();
    words.textProperty().bind(model.words());
    words.setId("checkup-words");
    words.getStyleClass().add("errand-words");
    PanelFrame.wrap(words);
    HBox.setHgrow(words, Priority.ALWAYS);
    verdict = new HBox(mark, words);
    verdict.setId("checkup-verdict");
    TroubleCard card = new TroubleCard(texts);
    card.setId("checkup-trouble");
    list.setCellFactory(all -> new PointCell(texts));
    list.setId("checkup-points");
    list.setAccessibleText(texts.of("checkup.title"));
    list.setPlaceholder(new Label(texts.of("checkup.running")));
    VBox.setVgrow(list, Priority.ALWAYS);
    VBox middle = new VBox(verdict, card, list);
    middle.getStyleClass().add("people-middle");
    KeyButton[] ways = {
      doors.theme(),
      doors.goTo(),
      new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, doors.leave())
    };
    keys.add(ways);
    root.fill(column, middle, new KeyBar(ways));
    root.getStyleClass().add("protest");
    root.setId("checkup");
    model.trouble().addListener((all, before, now) -> card.show(now));
    model.found().addListener((all, before, now) -> show());
    model.busy().addListener((all, before, now) -> show());
    show();
  }

  private KeyButton act(String words, KeyCode key, Runnable act) {
    KeyButton button = new KeyButton(texts.of(words), key, act);
    button.setMaxWidth(Double.MAX_VALUE);
    keys.add(button);
    return button;
  }

  /** What stands worst comes first; among equals as a day would stumble over it. */
  private void show() {
    Optional<SelfCheck> found = model.found().get().filter(now -> !model.busy().get());
    verdict.getStyleClass().setAll("errand-verdict");
    mark.setVisible(found.isPresent());
    mark.setManaged(found.isPresent());
    list.getItems().setAll(found.map(CheckUpScreen::worstFirst).orElse(List.of()));
    found.ifPresent(
        now -> {
          Sign sign = PointWords.sign(now.worst());
          verdict.getStyleClass().setAll("errand-verdict", "outcome");
          mark.show(sign);
          Mark.show(verdict, sign);
        });
  }

  private static List<SelfCheck.Point> worstFirst(SelfCheck found) {
    return found.points().stream()
        .sorted((one, other) -> other.state().compareTo(one.state()))
        .toList();
  }

  /** What the bundle will hold is told before it is written. */
  private void ask(SupportBundle bundle) {
    String parts =
        bundle.parts().stream()
            .map(part -> texts.of("checkup.bundle.part", part.name(), part.bytes()))
            .collect(Collectors.joining(", "));
    FormViewModel form =
        new FormViewModel(
            List.of(Question.words(PLACE, texts.of("records.ask.file"), List.of()).mayStayOpen()),
            (answers, done, missed) -> model.write(bundle, answers.words(PLACE), done, missed),
            panels::close);
    panels.open(
        new FormPanel(
            "bundle-panel",
            form,
            new FormPanel.Wording(
                texts.of("checkup.bundle"),
                texts.of("checkup.bundle.words", parts),
                texts.of("checkup.bundle.act")),
            texts,
            panels::close));
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
    return keys.press(code);
  }

  /** A reader has nothing to say here. */
  @Override
  public void typed(String text) {
    focus();
  }
}
