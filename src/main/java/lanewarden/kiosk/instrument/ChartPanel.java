package lanewarden.kiosk.instrument;

import java.util.List;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.WeakChangeListener;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.Row;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;

/**
 * The instrument's control charts: single shots, the average that sees a drift sooner, and the
 * shots themselves.
 */
public final class ChartPanel implements Page {
  private final Texts texts;
  private final VBox root = new VBox();
  private final Keys keys = new Keys();
  private final Label note = new Label();
  private final Part single;
  private final Part average;
  private final Label heading = new Label();
  private final ListView<ChartPage.Shot> shots = new ListView<>();
  private final Row buttons;

  // Held here: the model holds it weakly, so that a closed panel is not kept
  private final ChangeListener<ChartPage> follow = (all, before, now) -> show(now);

  /** A chart under its title, with what it says. */
  private static final class Part extends VBox {
    private final Label title = new Label();
    private final ChartPicture picture;
    private final Mark mark = new Mark();
    private final Label words = new Label();

    Part(Texts texts, String id) {
      picture = new ChartPicture(texts);
      picture.setId(id);
      title.getStyleClass().add("chart-name");
      WrappedWords.in(title);
      title.setMinHeight(USE_PREF_SIZE);
      words.setId(id + "-words");
      WrappedWords.in(words);
      words.setMinHeight(USE_PREF_SIZE);
      HBox said = new HBox(mark, words);
      said.getStyleClass().add("said-line");
      VBox.setVgrow(picture, Priority.ALWAYS);
      getChildren().addAll(title, picture, said);
    }

    void show(String titled, ChartPage.Said said, ChartPicture.Drawing drawing) {
      title.setText(titled);
      Mark.show(mark, said.sign());
      words.setText(said.words());
      picture.setAccessibleText(titled + ". " + said.words());
      picture.show(drawing);
    }
  }

  /**
   * @param acts what can be done there, the way back last
   */
  public ChartPanel(ChartViewModel model, Texts texts, List<KeyButton> acts) {
    this.texts = texts;
    single = new Part(texts, "chart-single");
    average = new Part(texts, "chart-average");
    Label title = new Label(texts.of("chart.title"));
    title.getStyleClass().add("panel-title");
    note.setId("chart-note");
    WrappedWords.in(note);
    note.setMinHeight(Label.USE_PREF_SIZE);
    heading.setText(texts.of("chart.shots"));
    heading.getStyleClass().add("chart-name");
    shots.setId("chart-shots");
    shots.setAccessibleText(heading.getText());
    shots.setCellFactory(all -> new ShotCell());
    KeyButton[] all = acts.toArray(KeyButton[]::new);
    keys.add(all);
    buttons = new Row(all);
    buttons.getStyleClass().add("panel-buttons");
    buttons.setMinHeight(Row.USE_PREF_SIZE);
    root.getChildren().addAll(title, single, average, heading, shots, note, buttons);
    root.getStyleClass().addAll("panel", "instrument-panel");
    root.setMaxHeight(VBox.USE_PREF_SIZE);
    root.setId("chart-panel");
    model.page().addListener(new WeakChangeListener<>(follow));
    show(model.page().get());
  }

  private void show(ChartPage page) {
    note.setText(page.note());
    note.setVisible(!page.note().isBlank());
    note.setManaged(!page.note().isBlank());
    for (Node part : new Node[] {single, average, heading, shots}) {
      part.setVisible(page.charts().isPresent());
      part.setManaged(page.charts().isPresent());
    }
    page.charts().ifPresent(this::show);
  }

  private void show(ChartPage.Charts charts) {
    if (!charts.shots().equals(shots.getItems())) {
      shots.getItems().setAll(charts.shots());
      shots.scrollTo(0);
    }
    String unit = charts.chart().unit().symbol();
    single.show(
        texts.of("chart.single", unit),
        charts.single(),
        new ChartPicture.Drawing(charts.chart().singles(), charts.chart()));
    average.show(
        texts.of("chart.average", unit),
        charts.average(),
        new ChartPicture.Drawing(charts.chart().averages(), charts.chart()));
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    (shots.isVisible() ? shots : buttons.getChildren().get(buttons.getChildren().size() - 1))
        .requestFocus();
  }

  @Override
  public boolean press(KeyCode code) {
    return keys.press(code);
  }

  @Override
  public boolean isPassable() {
    return true;
  }
}
