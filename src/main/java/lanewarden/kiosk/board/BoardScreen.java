package lanewarden.kiosk.board;

import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Figure;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;

/** The archer-facing board: one reading, one limit, one word, to be read at three metres. */
public final class BoardScreen {
  private static final PseudoClass EXPLAINED = PseudoClass.getPseudoClass("explained");
  private static final PseudoClass FOLLOWED = PseudoClass.getPseudoClass("followed");
  private static final PseudoClass VOID = PseudoClass.getPseudoClass("void");

  private final Texts texts;
  private final StackPane root = new StackPane();
  private final Label bib = label("board-bib");
  private final Label name = label("board-name");
  private final Label division = label("board-division");
  private final Label value = label("board-value");
  private final Label unit = label("board-unit");
  private final Label beside = label("board-beside");
  private final Label limit = label("board-limit");
  private final Label deciding = label("board-deciding");
  private final Mark mark = new Mark();
  private final Label word = label("board-word");
  private final Label follows = label("board-follows");
  private final VBox said = new VBox(word, follows);
  private final HBox outcome = new HBox(mark, said);
  private final VBox check;
  private final VBox idle;

  /** Follows the model from now on. */
  public BoardScreen(BoardViewModel model, Texts texts) {
    this.texts = texts;
    bib.setMinWidth(Region.USE_PREF_SIZE);
    value.setMinWidth(Region.USE_PREF_SIZE);
    HBox who = new HBox(bib, name);
    who.getStyleClass().add("board-who");
    HBox reading = new HBox(value, new VBox(unit, beside));
    reading.getStyleClass().add("board-reading");
    VBox.setVgrow(reading, Priority.ALWAYS);
    outcome.getStyleClass().addAll("outcome", "board-outcome");
    WrappedWords.in(follows);
    follows.setMinHeight(Region.USE_PREF_SIZE);
    follows.managedProperty().bind(follows.textProperty().isNotEmpty());
    said.getStyleClass().add("board-said");
    word.setMinWidth(Region.USE_PREF_SIZE);
    WrappedWords.in(deciding);
    deciding.setMinHeight(Region.USE_PREF_SIZE);
    WrappedWords.in(limit);
    limit.setMinHeight(Region.USE_PREF_SIZE);
    deciding.managedProperty().bind(deciding.textProperty().isNotEmpty());
    check = new VBox(who, division, reading, limit, deciding, outcome);
    check.getStyleClass().add("board-check");
    Label wait = new Label(texts.of("board.idle"));
    wait.getStyleClass().add("board-idle");
    WrappedWords.in(wait);
    Label caution = new Label(texts.of("board.caution"));
    caution.getStyleClass().add("board-caution");
    WrappedWords.in(caution);
    idle = new VBox(wait, caution);
    idle.getStyleClass().add("board-check");
    StackPane line = new StackPane(idle, check);
    line.visibleProperty().bind(model.held().or(model.stopped()).not());
    VBox held = instead("board-held", Sign.HELD, "proving.held", "board.held");
    held.visibleProperty().bind(model.held().and(model.stopped().not()));
    VBox stopped = instead("board-stopped", Sign.STOPPED, "stop.word", "board.stopped");
    stopped.visibleProperty().bind(model.stopped());
    root.getChildren().addAll(line, held, stopped);
    root.getStyleClass().add("board");
    root.setId("board");
    model.page().addListener((all, before, now) -> show(now));
    show(model.page().get());
  }

  /** In the place of everything, while the line is held or not clear. */
  private VBox instead(String name, Sign sign, String word, String words) {
    Mark mark = new Mark();
    mark.show(sign);
    Label large = label(name);
    large.setText(texts.of(word));
    Label small = label(name + "-words");
    small.getStyleClass().add("board-instead-words");
    small.setText(texts.of(words));
    WrappedWords.in(large, small);
    VBox all = new VBox(new HBox(mark, large), small);
    all.getChildren().get(0).getStyleClass().add("board-instead-row");
    Mark.show(all, sign);
    all.getStyleClass().addAll("outcome", "board-instead-page");
    return all;
  }

  private static Label label(String word) {
    Label label = new Label();
    label.getStyleClass().add(word);
    label.setId(word);
    return label;
  }

  private void show(Optional<BoardPage> page) {
    check.setVisible(page.isPresent());
    idle.setVisible(page.isEmpty());
    page.ifPresent(this::show);
  }

  private void show(BoardPage page) {
    bib.setText(page.bib());
    name.setText(page.name());
    division.setText(page.division());
    value.setText(page.figure().map(Figure::value).orElseGet(() -> texts.of("reading.none")));
    unit.setText(page.figure().map(Figure::unit).orElse(""));
    boolean counts = page.figure().map(Figure::counts).orElse(true);
    beside.setText(
        counts
            ? page.figure()
                .flatMap(Figure::converted)
                .map(c -> texts.of("reading.about", c))
                .orElse("")
            : texts.of("reading.void"));
    value.pseudoClassStateChanged(VOID, !counts);
    limit.setText(page.limit());
    mark.show(page.sign());
    Mark.show(outcome, page.sign());
    word.setText(page.word());
    deciding.setText(page.deciding());
    // What it says below needs some of the room that the reading had
    value.pseudoClassStateChanged(EXPLAINED, !page.deciding().isEmpty());
    follows.setText(page.follows());
    outcome.pseudoClassStateChanged(FOLLOWED, !page.follows().isEmpty());
  }

  /** What it shows. */
  public Parent root() {
    return root;
  }
}
