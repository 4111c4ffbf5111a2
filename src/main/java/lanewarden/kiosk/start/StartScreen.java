package lanewarden.kiosk.start;

import java.util.Optional;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
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
import lanewarden.kiosk.look.Row;
import lanewarden.kiosk.look.ScreenFrame;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.trouble.TroubleCard;
import lanewarden.station.LastEvents;
import org.jspecify.annotations.Nullable;

/** What the program opens with: practise, open or make an event, write rules. */
public final class StartScreen implements Page {

  /**
   * What the screen's buttons lead to that is not the screen's own.
   *
   * @param theme turns through the themes
   * @param language leads to the choice of the language
   * @param comfort leads to text size and sounds
   * @param makeEvent begins a new event
   * @param without lists what is done without an event
   * @param leave ends the program
   */
  public record Doors(
      KeyButton theme,
      KeyButton language,
      KeyButton comfort,
      Runnable makeEvent,
      Runnable without,
      KeyButton leave) {}

  private final StartViewModel model;
  private final Texts texts;
  private final Chooser chooser;
  private final ScreenFrame root = new ScreenFrame();
  private final Keys keys = new Keys();
  private final ListView<LastEvents.Event> list = new ListView<>();

  /**
   * @param program its name and version
   */
  public StartScreen(
      StartViewModel model, Texts texts, Chooser chooser, Doors doors, String program) {
    this.model = model;
    this.texts = texts;
    this.chooser = chooser;
    Label title = new Label(texts.of("start.title"));
    title.getStyleClass().add("sign-in-title");
    Label words = new Label(texts.of("start.words"));
    PanelFrame.wrap(words);
    TroubleCard card = new TroubleCard(texts);
    card.setId("start-trouble");
    model.trouble().addListener((all, before, now) -> card.show(now));
    Label version = new Label(program);
    version.getStyleClass().add("start-version");
    version.setId("start-version");
    Row halves = new Row(ways(doors), last());
    halves.getStyleClass().add("start-halves");
    VBox.setVgrow(halves, Priority.ALWAYS);
    VBox middle = new VBox(title, words, card, halves, version);
    middle.getStyleClass().add("people-middle");
    root.fill(middle, bar(doors));
    root.getStyleClass().add("protest");
    root.setId("start");
  }

  private VBox ways(Doors doors) {
    VBox ways = new VBox();
    ways.getStyleClass().add("start-ways");
    add(ways, "start.practise", "start.practise.words", KeyCode.F2, model::practise);
    add(ways, "start.open", "start.open.words", KeyCode.F3, this::open);
    add(ways, "start.make", "start.make.words", KeyCode.F4, doors.makeEvent());
    add(ways, "start.rules", "start.rules.words", KeyCode.F5, this::openRules);
    add(ways, "start.begin-rules", "start.begin-rules.words", KeyCode.F6, this::beginRules);
    add(ways, "start.without", "start.without.words", KeyCode.INSERT, doors.without());
    return ways;
  }

  private void add(VBox ways, String name, String about, KeyCode key, Runnable act) {
    KeyButton button = new KeyButton(texts.of(name), key, act);
    button.disableProperty().bind(model.busy());
    keys.add(button);
    Label words = new Label(texts.of(about));
    PanelFrame.wrap(words);
    HBox.setHgrow(words, Priority.ALWAYS);
    Row row = new Row(button, words);
    row.getStyleClass().add("start-way");
    ways.getChildren().add(row);
  }

  private VBox last() {
    Label title = new Label(texts.of("start.last"));
    title.getStyleClass().add("field-title");
    Label empty = new Label(texts.of("start.last.none"));
    PanelFrame.wrap(empty);
    list.setPlaceholder(empty);
    list.setItems(model.events());
    list.setCellFactory(all -> new EventCell());
    list.setId("last-events");
    list.setAccessibleText(texts.of("start.last"));
    model
        .chosen()
        .addListener((all, before, now) -> list.getSelectionModel().select(now.intValue()));
    list.getSelectionModel()
        .selectedIndexProperty()
        .addListener(
            (all, before, now) -> {
              if (now.intValue() >= 0) {
                model.chosen().set(now.intValue());
              }
            });
    VBox.setVgrow(list, Priority.ALWAYS);
    VBox last = new VBox(title, list);
    last.getStyleClass().add("start-last");
    HBox.setHgrow(last, Priority.ALWAYS);
    return last;
  }

  private KeyBar bar(Doors doors) {
    KeyButton open = new KeyButton(texts.of("start.open-chosen"), KeyCode.ENTER, model::openChosen);
    open.disableProperty().bind(model.busy().or(model.chosen().lessThan(0)));
    open.getStyleClass().add("primary");
    KeyButton port = new KeyButton(texts.of("start.port"), KeyCode.F8, model::lookUpPort);
    port.disableProperty().bind(open.disableProperty());
    KeyButton otherwise =
        new KeyButton(texts.of("start.otherwise"), KeyCode.F11, model::askOtherwise);
    otherwise.disableProperty().bind(model.busy());
    KeyButton[] acts = {
      open, otherwise, port, doors.theme(), doors.language(), doors.comfort(), doors.leave()
    };
    keys.add(acts);
    return new KeyBar(acts);
  }

  private void open() {
    chooser.folder(texts.of("start.open.choose")).ifPresent(model::open);
  }

  private void openRules() {
    chooser.file(texts.of("start.rules.choose")).ifPresent(model::openRules);
  }

  private void beginRules() {
    chooser
        .newFile(texts.of("start.begin-rules.choose"), "my-rules.toml")
        .ifPresent(model::beginRules);
  }

  /** An event that was opened, by the name of its folder, and where that is. */
  private final class EventCell extends ListCell<LastEvents.Event> {
    private final Label name = new Label();
    private final Label place = new Label();
    private final VBox both = new VBox(name, place);

    EventCell() {
      name.getStyleClass().add("docket-title");
      PanelFrame.wrap(name, place);
      getStyleClass().add("wire-cell");
      setPrefWidth(0);
      setOnMouseClicked(
          e -> {
            if (e.getClickCount() == 2 && !isEmpty()) {
              model.openChosen();
            }
          });
    }

    @Override
    protected void updateItem(LastEvents.@Nullable Event event, boolean empty) {
      super.updateItem(event, empty);
      if (empty || event == null) {
        setGraphic(null);
        setAccessibleText("");
        return;
      }
      String folder =
          Optional.ofNullable(event.folder().getFileName())
              .map(Object::toString)
              .orElseGet(() -> event.folder().toString());
      name.setText(event.here() ? folder : texts.of("start.last.gone", folder));
      place.setText(event.folder().toString());
      setAccessibleText(name.getText() + ". " + place.getText());
      setGraphic(both);
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
    return keys.press(code);
  }
}
