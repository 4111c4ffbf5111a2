package lanewarden.kiosk.setups;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import lanewarden.bench.Prospect;
import lanewarden.kiosk.look.Cautions;
import lanewarden.kiosk.look.Figures;
import lanewarden.kiosk.look.KeyBar;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Keys;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.ScreenFrame;
import lanewarden.kiosk.look.Scroll;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.setups.ProspectsViewModel.Figure;
import lanewarden.kiosk.trouble.TroubleCard;
import lanewarden.rules.Division;
import lanewarden.station.Outlook;

/** What awaits a set-up in each division, never without its cautions. */
public final class ProspectsScreen implements Page {

  /**
   * What the screen's buttons lead to that is not the screen's own.
   *
   * @param rules asks for a rule book, where it is not the one in force
   * @param theme turns through the themes
   * @param goTo lists every screen with its key
   * @param leave goes back
   */
  public record Doors(Optional<KeyButton> rules, KeyButton theme, KeyButton goTo, Runnable leave) {}

  private final ProspectsViewModel model;
  private final Texts texts;
  private final ScreenFrame root = new ScreenFrame();
  private final Keys keys = new Keys();
  private final Map<Figure, TextField> fields = new EnumMap<>(Figure.class);
  private final VBox told = new VBox();
  private final Scroll scroll = new Scroll(told);

  /** Shows what the model knows. */
  public ProspectsScreen(ProspectsViewModel model, Texts texts, Doors doors) {
    this.model = model;
    this.texts = texts;
    TroubleCard trouble = new TroubleCard(texts);
    trouble.setId("prospects-trouble");
    model.trouble().addListener((all, before, now) -> trouble.show(now));
    told.setId("prospects-told");
    VBox.setVgrow(scroll, Priority.ALWAYS);
    Label by = new Label();
    by.setId("prospects-by");
    by.getStyleClass().add("docket-title");
    PanelFrame.wrap(by);
    by.textProperty().bind(model.by());
    by.visibleProperty().bind(by.textProperty().isNotEmpty());
    by.managedProperty().bind(by.visibleProperty());
    VBox side = new VBox(by, trouble, scroll, cautions());
    side.getStyleClass().add("dossier-side");
    side.setMinHeight(0);
    KeyButton show = new KeyButton(texts.of("act.reckon"), KeyCode.ENTER, model::reckon);
    show.getStyleClass().add("primary");
    KeyButton more = new KeyButton(texts.of("act.more"), KeyCode.PAGE_DOWN, () -> scroll.turn(1));
    more.setId("prospects-more");
    more.disableProperty().bind(scroll.isAtEnd());
    List<KeyButton> keyed = new ArrayList<>();
    keyed.add(show);
    keyed.add(more);
    keyed.add(new KeyButton(texts.of("act.empty"), KeyCode.F2, this::empty));
    doors.rules().ifPresent(keyed::add);
    keyed.add(doors.theme());
    keyed.add(doors.goTo());
    keyed.add(new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, doors.leave()));
    KeyButton[] acts = keyed.toArray(KeyButton[]::new);
    keys.add(acts);
    root.fill(figures(), side, new KeyBar(acts));
    root.getStyleClass().add("protest");
    root.setId("prospects");
    model.outlook().addListener((all, before, now) -> show(now));
    show(model.outlook().get());
  }

  private VBox figures() {
    Label title = new Label(texts.of("prospects.title"));
    title.getStyleClass().add("place");
    GridPane grid = new GridPane();
    grid.getStyleClass().add("prospects-grid");
    grid.getColumnConstraints().setAll(labels(), fields(), labels(), fields());
    for (Figure figure : Figure.values()) {
      Label label = new Label(texts.of(figure.label()));
      TextField field = field(figure);
      label.setLabelFor(field);
      fields.put(figure, field);
      if (figure.isBeside()) {
        int row = grid.getRowCount() - 1;
        GridPane.setColumnSpan(grid.getChildren().get(grid.getChildren().size() - 1), 1);
        grid.addRow(row, label, field);
      } else {
        label.getStyleClass().add("prospects-name");
        PanelFrame.wrap(label);
        grid.addRow(grid.getRowCount(), label, field);
        GridPane.setColumnSpan(field, GridPane.REMAINING);
      }
    }
    VBox column = new VBox(title, grid);
    column.getStyleClass().add("prospects-figures");
    return column;
  }

  private TextField field(Figure figure) {
    TextField field = Figures.field(new TextField());
    field.setAccessibleText(texts.of(figure.words()));
    field.setId("prospect-" + figure.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    field.textProperty().bindBidirectional(model.typed(figure));
    field.setPromptText(figure.example().map(texts::of).orElse(""));
    field.setPrefColumnCount(0);
    return field;
  }

  private static ColumnConstraints labels() {
    ColumnConstraints labels = new ColumnConstraints();
    labels.setMinWidth(Region.USE_PREF_SIZE);
    return labels;
  }

  private static ColumnConstraints fields() {
    ColumnConstraints fields = new ColumnConstraints();
    fields.setHgrow(Priority.ALWAYS);
    return fields;
  }

  private void empty() {
    model.empty();
    Objects.requireNonNull(fields.get(Figure.ARROW)).requestFocus();
  }

  private void show(Optional<Outlook> outlook) {
    told.getChildren().clear();
    outlook.ifPresentOrElse(this::tell, () -> say(texts.of("prospects.words")));
    scroll.setVvalue(0);
  }

  /** Below what scrolls: they are in sight however many divisions there are. */
  private VBox cautions() {
    Label words = new Label(texts.of("prospects.forecast", Cautions.paragraph(texts)));
    words.setId("prospects-cautions");
    words.getStyleClass().add("prospects-cautions");
    PanelFrame.wrap(words);
    VBox card = new VBox(words);
    card.getStyleClass().add("cautions");
    card.setMinHeight(Region.USE_PREF_SIZE);
    return card;
  }

  private void tell(Outlook outlook) {
    outlook.sentences().stream().map(texts::of).forEach(this::say);
    for (int i = 0; i < outlook.divisions().size(); i++) {
      told.getChildren().add(card(outlook.divisions().get(i), outlook.prospects().get(i)));
    }
    say(texts.of(outlook.supposed())).setId("prospects-supposed");
  }

  private Label say(String sentence) {
    Label label = new Label(sentence);
    PanelFrame.wrap(label);
    told.getChildren().add(label);
    return label;
  }

  private Node card(Division division, Prospect prospect) {
    Mark mark = new Mark();
    mark.show(sign(prospect));
    Label name = new Label(texts.of("prospects.division", division.code(), division.name()));
    name.getStyleClass().add("docket-title");
    Label words = new Label(texts.of(prospect.inWords()));
    PanelFrame.wrap(name, words);
    VBox said = new VBox(name, words);
    said.setMinWidth(0);
    HBox.setHgrow(said, Priority.ALWAYS);
    HBox card = new HBox(mark, said);
    card.getStyleClass().add("prospect");
    card.setId("prospect-of-" + division.code().toLowerCase(Locale.ROOT));
    card.setAccessibleRole(AccessibleRole.TEXT);
    card.setAccessibleText(texts.of("prospects.spoken", name.getText(), words.getText()));
    return card;
  }

  /** None has a tick: whether it passes is for the check to say, even where nobody is measured. */
  private static Sign sign(Prospect prospect) {
    if (prospect instanceof Prospect.NotAdmitted) {
      return Sign.NOT_ADMITTED;
    }
    return prospect instanceof Prospect.Lacking ? Sign.NOT_DECIDED : Sign.RUNNING;
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    // The field of a screen that was left can have the focus until the next frame
    boolean here =
        root.getScene().getFocusOwner() instanceof TextField field && fields.containsValue(field);
    if (!here) {
      Objects.requireNonNull(fields.get(Figure.ARROW)).requestFocus();
    }
  }

  @Override
  public boolean press(KeyCode code) {
    return scroll.press(code) || keys.press(code);
  }

  @Override
  public void typed(String text) {
    TextField field = Objects.requireNonNull(fields.get(Figure.ARROW));
    field.requestFocus();
    field.appendText(text);
  }
}
