package lanewarden.kiosk.line;

import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import lanewarden.kiosk.look.Mark;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Row;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;

/** Who stands at the line, under which rule, with which reading and outcome. */
final class CheckCard extends VBox {
  private final Label bib = new Label();
  private final Label name = new Label();
  private final Label brief = new Label();
  private final Label division = new Label();
  private final Label attempt = new Label();
  private final Label wrong = new Label();
  private final Label rule = new Label();
  private final Label limit = new Label();
  private final ReadingFigure reading;
  private final Mark mark = new Mark();
  private final Label word = new Label();
  private final Label words = new Label();
  private final Row outcome;
  private final VBox verdict;
  private final VBox place;
  private final Label follows = new Label();
  private final AdviceStrip advice;
  private final ShotRow shots;
  private final PreparationStrip preparation;
  private final Texts texts;

  CheckCard(Texts texts, Consumer<ShotLine> declareVoid, PreparationStrip preparation) {
    this.texts = texts;
    this.preparation = preparation;
    reading = new ReadingFigure(texts);
    advice = new AdviceStrip(texts);
    shots = new ShotRow(texts, declareVoid);
    bib.getStyleClass().add("bib");
    bib.setId("bib");
    bib.setMinWidth(USE_PREF_SIZE);
    name.getStyleClass().add("name");
    name.setId("name");
    WrappedWords.in(rule);
    // Where room is short its words end in dots: what came of the check is to be whole
    rule.setId("rule");
    rule.managedProperty().bind(rule.visibleProperty());
    rule.getStyleClass().add("rule");
    limit.getStyleClass().add("limit");
    limit.setId("limit");
    WrappedWords.in(limit);
    limit.setMinSize(USE_PREF_SIZE, USE_PREF_SIZE);
    word.getStyleClass().add("outcome-word");
    word.setId("outcome");
    word.setMinWidth(USE_PREF_SIZE);
    WrappedWords.in(words);
    words.setMinHeight(USE_PREF_SIZE);
    words.setId("outcome-words");
    words.getStyleClass().add("outcome-words");
    division.setMinWidth(USE_PREF_SIZE);
    attempt.getStyleClass().add("attempt");
    attempt.setId("attempt");
    wrong.setText(texts.of("line.division.wrong"));
    wrong.getStyleClass().addAll("attempt", "division-wrong");
    wrong.setId("division-wrong");
    wrong.managedProperty().bind(wrong.visibleProperty());
    WrappedWords.in(follows);
    follows.setMinHeight(USE_PREF_SIZE);
    follows.setId("outcome-follows");
    follows.getStyleClass().add("outcome-follows");
    follows.managedProperty().bind(follows.textProperty().isNotEmpty());
    VBox why = new VBox(words, follows);
    why.getStyleClass().add("outcome-why");
    HBox.setHgrow(why, Priority.ALWAYS);
    outcome = new Row(mark, word, why);
    outcome.setMinHeight(USE_PREF_SIZE);
    outcome.getStyleClass().add("outcome");
    outcome.setAccessibleRole(AccessibleRole.TEXT);
    Row who = new Row(bib, name, gap(), new VBox(division, attempt, wrong));
    who.getStyleClass().add("who");
    Row figures = new Row(reading, gap(), limit);
    figures.getStyleClass().add("figures");
    VBox.setVgrow(figures, Priority.ALWAYS);
    brief.getStyleClass().add("verdict-who");
    PanelFrame.wrap(brief);
    verdict = new VBox(brief, figures, outcome);
    verdict.getStyleClass().add("verdict");
    verdict.setId("verdict");
    place = new VBox(verdict);
    // In its card it stands below the name; elsewhere it must say whose it is
    verdict.parentProperty().subscribe(parent -> brief.setVisible(parent != place));
    brief.managedProperty().bind(brief.visibleProperty());
    VBox.setVgrow(verdict, Priority.ALWAYS);
    VBox.setVgrow(place, Priority.ALWAYS);
    getChildren().addAll(who, rule, preparation, place, advice, shots);
    verdict.visibleProperty().bind(visibleProperty());
    verdict.managedProperty().bind(visibleProperty());
    getStyleClass().add("check-card");
    setId("check-card");
  }

  private static Region gap() {
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    return gap;
  }

  /** The reading and what came of it: what is to be in sight whatever else is. */
  VBox verdict() {
    return verdict;
  }

  /** Where that stands in the card. */
  VBox place() {
    return place;
  }

  /**
   * @param stopped whether the line is stopped for safety, which takes the room of the rule's words
   */
  void show(CheckPage check, boolean stopped) {
    bib.setText(check.bib());
    name.setText(check.name());
    brief.setText(texts.of("line.match", check.bib(), check.name()));
    division.setText(check.division());
    attempt.setText(
        check
            .grounds()
            .map(grounds -> texts.of("line.attempt.grounds", check.attempt(), grounds))
            .orElse(check.attempt()));
    wrong.setVisible(check.isFresh());
    rule.setText(check.rule());
    // The rule was there before each shot; what would help needs its room now
    rule.setVisible(check.advice().isEmpty() && !stopped);
    limit.setText(check.limit());
    preparation.show(check);
    reading.show(check.figure(), check.atBow());
    mark.show(check.sign());
    Mark.show(outcome, check.sign());
    word.setText(check.word());
    words.setText(check.words());
    follows.setText(check.follows());
    outcome.setAccessibleText(check.word() + ". " + check.words() + ". " + check.follows());
    advice.show(check);
    shots.show(check);
  }
}
