package lanewarden.kiosk.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewarden.journal.Outcome;
import lanewarden.kiosk.look.PanelFrame;
import lanewarden.kiosk.look.Sign;
import lanewarden.kiosk.look.Texts;
import lanewarden.kiosk.look.WrappedWords;
import lanewarden.quantity.Sentence;
import lanewarden.rules.WorkedCase;

/** What the open rule means and does, redrawn at every key. */
final class MeaningPane extends VBox {
  private static final PseudoClass CROWDED = PseudoClass.getPseudoClass("crowded");

  /** Sentences and cases that find room in the ordinary size. */
  private static final int COMFORTABLE = 12;

  private static final double LEAST_PICTURE = 180;

  private final Texts texts;
  private final Label note = new Label();
  private final CurvePicture picture;
  private final NumbersBox first;
  private final NumbersBox second;
  private final SaidLines words = new SaidLines(false);
  private final SaidLines cases = new SaidLines(true);
  private final Label everywhere = new Label();

  MeaningPane(EffectViewModel model, Texts texts) {
    this.texts = texts;
    this.picture = new CurvePicture(texts);
    this.first = new NumbersBox("numbers-first", texts);
    this.second = new NumbersBox("numbers-second", texts);
    note.getStyleClass().add("effect-note");
    note.setId("effect-note");
    note.setMaxWidth(Double.MAX_VALUE);
    everywhere.setText(texts.of("meaning.everywhere"));
    everywhere.setId("rule-everywhere");
    PanelFrame.wrap(note, everywhere);
    VBox.setVgrow(picture, Priority.ALWAYS);
    picture.setMinHeight(LEAST_PICTURE);
    picture.setPrefHeight(LEAST_PICTURE);
    HBox numbers = new HBox(first, second);
    numbers.getStyleClass().add("effect-numbers");
    numbers.setId("effect-numbers");
    for (NumbersBox box : List.of(first, second)) {
      HBox.setHgrow(box, Priority.ALWAYS);
      box.setPrefWidth(1);
    }
    words.setId("rule-words");
    cases.setId("rule-cases");
    GridPane lower = new GridPane();
    lower.getStyleClass().add("rule-meaning");
    lower.getColumnConstraints().setAll(share(44), share(56));
    lower.add(titled("meaning.words", words), 0, 0);
    lower.add(titled("meaning.cases", cases), 1, 0);
    lower.add(everywhere, 0, 1, 2, 1);
    Scroll scroll = new Scroll(lower);
    scroll.setAccessibleText(texts.of("meaning.words"));
    setMinHeight(0);
    getChildren().addAll(note, picture, numbers, new SuppositionRow(model, texts), scroll);
    getStyleClass().add("meaning");
    model.page().addListener((all, before, now) -> show(now));
    show(model.page().get());
  }

  private static ColumnConstraints share(double percent) {
    ColumnConstraints column = new ColumnConstraints();
    column.setPercentWidth(percent);
    return column;
  }

  private VBox titled(String key, SaidLines lines) {
    Label title = new Label(texts.of(key));
    title.getStyleClass().add("meaning-title");
    WrappedWords.in(title);
    title.setMinHeight(USE_PREF_SIZE);
    title.visibleProperty().bind(Bindings.isNotEmpty(lines.getChildren()));
    return new VBox(title, lines);
  }

  private void show(EffectPage page) {
    note.setText(page.note());
    note.setVisible(!page.note().isEmpty());
    note.setManaged(!page.note().isEmpty());
    boolean drawn = page.first().isEmpty() || hasCurve(page.first()) || hasCurve(page.second());
    picture.setVisible(drawn);
    picture.setManaged(drawn);
    picture.show(page);
    everywhere.setVisible(hasCurve(page.first()));
    everywhere.setManaged(hasCurve(page.first()));
    first.show(page.first(), page.second().isPresent());
    second.show(page.second(), true);
    List<Sentence> sentences = page.first().map(EffectPage.Shown::sentences).orElse(List.of());
    List<WorkedCase> worked = page.first().map(shown -> shown.effect().cases()).orElse(List.of());
    pseudoClassStateChanged(CROWDED, sentences.size() + worked.size() > COMFORTABLE);
    words.say(sentences.stream().map(texts::of).toList());
    cases.say(inWords(worked), i -> sign(worked.get(i)));
  }

  private static boolean hasCurve(Optional<EffectPage.Shown> shown) {
    return shown.flatMap(EffectPage.Shown::curve).isPresent();
  }

  private List<String> inWords(List<WorkedCase> all) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      words.add(texts.of(i == 0 ? all.get(i).inWords() : all.get(i).inWordsAfter(all.get(i - 1))));
    }
    return words;
  }

  private static Sign sign(WorkedCase one) {
    return one.verdict().takesShots()
        ? Sign.RUNNING
        : Sign.of(Optional.of(Outcome.of(one.verdict())));
  }

  /** Wants to be as high as what is in it, and scrolls where there is no such room. */
  private static final class Scroll extends ScrollPane {
    private final GridPane content;

    Scroll(GridPane content) {
      super(content);
      this.content = content;
      setFitToWidth(true);
      setHbarPolicy(ScrollBarPolicy.NEVER);
      setMinHeight(0);
      getStyleClass().add("meaning-scroll");
    }

    @Override
    protected double computePrefHeight(double width) {
      double borders = snappedTopInset() + snappedBottomInset() + 1;
      return content.prefHeight(width < 0 ? getWidth() : width) + borders;
    }
  }
}
