package lanewarden.kiosk.form;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.PasswordField;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Figures;
import lanewarden.kiosk.look.KeyButton;
import lanewarden.kiosk.look.Page;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;
import lanewarden.kiosk.trouble.TroubleCard;
import lanewarden.station.Trouble;

/**
 * A panel that asks the questions of a form. Enter goes to the next question that is still open,
 * and hands the answers over when none is.
 */
public final class FormPanel implements Page {

  /**
   * What the panel says.
   *
   * @param title what is about to be done
   * @param words what it means
   * @param act what the button does
   */
  public record Wording(String title, String words, String act) {}

  private final FormViewModel model;
  private final Texts texts;
  private final Optional<Chooser> chooser;
  private final PanelFrame root;
  private final GridPane grid = new GridPane();
  private final Map<Question, Node> entries = new LinkedHashMap<>();

  // Held here: it follows the model's own weakly
  private final ObservableList<Question> asked;
  private final Label open = new Label();

  /**
   * @param id by which the panel is found
   * @param leave goes back; nothing is done then
   */
  public FormPanel(String id, FormViewModel model, Wording wording, Texts texts, Runnable leave) {
    this(id, model, wording, texts, Optional.empty(), leave);
  }

  /**
   * @param id by which the panel is found
   * @param chooser with which places are chosen instead of typed, where there is one
   * @param leave goes back; nothing is done then
   */
  public FormPanel(
      String id,
      FormViewModel model,
      Wording wording,
      Texts texts,
      Optional<Chooser> chooser,
      Runnable leave) {
    this.model = model;
    asked = model.questions();
    this.texts = texts;
    this.chooser = chooser;
    root = new PanelFrame(id);
    root.getStyleClass().add("form-panel");
    root.say(new Label(wording.title()), new Label(wording.words()));
    ColumnConstraints labels = new ColumnConstraints();
    labels.setMinWidth(Region.USE_PREF_SIZE);
    ColumnConstraints fields = new ColumnConstraints();
    fields.setHgrow(Priority.ALWAYS);
    grid.getColumnConstraints().setAll(labels, fields);
    grid.getStyleClass().add("form-grid");
    asked.forEach(question -> add(question, grid.getRowCount()));
    asked.addListener(
        (ListChangeListener<Question>)
            change -> {
              while (change.next()) {
                change.getAddedSubList().forEach(this::addFirst);
              }
            });
    TroubleCard card = new TroubleCard(texts);
    card.setId("form-trouble");
    model.trouble().addListener((all, before, now) -> tell(card, now));
    KeyButton act = new KeyButton(wording.act(), KeyCode.ENTER, this::enter);
    act.disableProperty().bind(model.busy());
    KeyButton back = new KeyButton(texts.of("panel.back"), KeyCode.ESCAPE, () -> leave(leave));
    open.setId("form-open");
    open.getStyleClass().add("form-open");
    PanelFrame.wrap(open);
    open.visibleProperty().bind(open.textProperty().isNotEmpty());
    open.managedProperty().bind(open.visibleProperty());
    root.getChildren().addAll(grid, open, card);
    root.offer(act, back);
  }

  private void addFirst(Question question) {
    grid.getChildren().forEach(node -> GridPane.setRowIndex(node, GridPane.getRowIndex(node) + 1));
    add(question, 0);
    // A field takes what is typed once it has its skin
    grid.applyCss();
  }

  private void add(Question question, int row) {
    Label label = new Label(question.label());
    PanelFrame.wrap(label);
    label.getStyleClass().add("form-label");
    Node entry = entry(question);
    label.setLabelFor(entry);
    entries.put(question, entry);
    boolean picks = question.kind() == Question.Kind.WORDS && !question.options().isEmpty();
    grid.addRow(
        row,
        label,
        picks
            ? new VBox(chosen(question, entry), picksOf(question, entry))
            : chosen(question, entry));
  }

  /** Beside a place, the button that lets it be chosen. */
  private Node chosen(Question question, Node entry) {
    boolean file =
        question.place() != Question.Place.NONE && question.place() != Question.Place.PORT;
    if (!file || chooser.isEmpty()) {
      return entry;
    }
    Chooser from = chooser.get();
    Button choose = new Button(texts.of("form.choose"));
    choose.setId("choose-" + question.name());
    choose.getStyleClass().add("form-pick");
    choose.setAccessibleText(texts.of("form.choose.spoken", question.label()));
    choose.setMinWidth(Region.USE_PREF_SIZE);
    choose.setOnAction(
        e ->
            choice(from, question)
                .ifPresent(path -> model.text(question.name()).set(path.toString())));
    HBox.setHgrow(entry, Priority.ALWAYS);
    HBox row = new HBox(entry, choose);
    row.getStyleClass().add("form-place");
    return row;
  }

  private static Optional<Path> choice(Chooser from, Question question) {
    return switch (question.place()) {
      case NONE, PORT -> Optional.empty();
      case FILE -> from.file(question.label());
      case FOLDER -> from.folder(question.label());
      case NEW -> from.newFile(question.label(), "");
    };
  }

  private Node entry(Question question) {
    if (question.kind() == Question.Kind.CHOICE) {
      model.chosen(question.name()).addListener((all, before, now) -> open.setText(""));
      return new ChoiceRow(question, model.chosen(question.name()), texts);
    }
    TextField field =
        question.kind() == Question.Kind.SECRET ? new PasswordField() : new TextField();
    if (question.place() != Question.Place.NONE) {
      Figures.field(field);
    }
    field.setAccessibleText(question.label());
    field.setId("form-" + question.name());
    field.textProperty().bindBidirectional(model.text(question.name()));
    return field;
  }

  /** In sight until the question is answered: a form that is long must not get longer than high. */
  private FlowPane picksOf(Question question, Node entry) {
    FlowPane picks = new FlowPane();
    picks.setMinWidth(0);
    picks.getStyleClass().add("choice-row");
    for (String option : question.options()) {
      Button pick = new Button(texts.of("panel.pick", picks.getChildren().size() + 1, option));
      pick.getStyleClass().add("form-pick");
      WrappedWords.in(pick);
      pick.maxWidthProperty().bind(picks.widthProperty());
      pick.setFocusTraversable(false);
      pick.setOnAction(e -> model.text(question.name()).set(option));
      picks.getChildren().add(pick);
    }
    picks.visibleProperty().bind(entry.focusedProperty().or(model.text(question.name()).isEmpty()));
    picks.managedProperty().bind(picks.visibleProperty());
    return picks;
  }

  /** A passphrase that was wrong is typed anew; everything else stays. */
  private void tell(TroubleCard card, Optional<Trouble> trouble) {
    if (trouble.isPresent()) {
      focus();
    }
    card.show(trouble);
  }

  private void enter() {
    model.settle();
    Optional<Question> next = model.firstOpen();
    open.setText(next.map(this::stillOpen).orElse(""));
    next.map(entries::get).ifPresentOrElse(Node::requestFocus, model::enter);
  }

  /** A field that waits shows it by its caret; that an option is to be chosen has to be said. */
  private String stillOpen(Question question) {
    return question.kind() == Question.Kind.CHOICE ? texts.of("form.open", question.label()) : "";
  }

  private void leave(Runnable leave) {
    model.forget();
    leave.run();
  }

  @Override
  public Parent root() {
    return root;
  }

  @Override
  public void focus() {
    model
        .firstOpen()
        .map(entries::get)
        .or(() -> entries.values().stream().reduce((first, second) -> second))
        .ifPresent(Node::requestFocus);
  }

  @Override
  public boolean press(KeyCode code) {
    return root.press(code);
  }

  @Override
  public void typed(String text) {
    for (Node entry : entries.values()) {
      if (entry.isFocused() && entry instanceof ChoiceRow row) {
        row.typed(text);
        return;
      }
    }
    focus();
    if (root.getScene().getFocusOwner() instanceof TextField field) {
      field.appendText(text);
    }
  }
}
