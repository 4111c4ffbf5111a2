package lanewarden.kiosk.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
import lanewarden.station.Difference;

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
  private final Told open;
  private final Told beside;
  private final Label differing = new Label();
  private final SaidLines difference = new SaidLines(false);
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
    open = new Told("rule-words", "rule-cases");
    beside = new Told("beside-words", "beside-cases");
    difference.setId("rule-difference");
    GridPane lower = new GridPane();
    lower.getStyleClass().add("rule-meaning");
    lower.getColumnConstraints().setAll(share(44), share(56));
    lower.add(titled(differing, difference), 0, 0, 2, 1);
    lower.addRow(1, titled(open.wordsTitle, open.words), titled(open.casesTitle, open.cases));
    lower.addRow(
        2, titled(beside.wordsTitle, beside.words), titled(beside.casesTitle, beside.cases));
    lower.add(everywhere, 0, 3, 2, 1);
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

  /** One of the two rules, in words and in worked cases. */
  private final class Told {
    final Label wordsTitle = new Label();
    final SaidLines words = new SaidLines(false);
    final Label casesTitle = new Label();
    final SaidLines cases = new SaidLines(true);

    Told(String wordsId, String casesId) {
      words.setId(wordsId);
      cases.setId(casesId);
    }

    /**
     * Shows a rule, or nothing.
     *
     * @param named whether its name has to be said
     * @return how many lines that takes
     */
    int show(Optional<EffectPage.Shown> shown, boolean named) {
      String name = shown.map(EffectPage.Shown::name).orElse("");
      wordsTitle.setText(title("meaning.words", name, named));
      casesTitle.setText(title("meaning.cases", name, named));
      List<Sentence> sentences = shown.map(EffectPage.Shown::sentences).orElse(List.of());
      List<WorkedCase> worked = shown.map(one -> one.effect().cases()).orElse(List.of());
      words.say(sentences.stream().map(texts::of).toList());
      cases.say(inWords(worked), i -> sign(worked.get(i)));
      return sentences.size() + worked.size();
    }

    private String title(String key, String name, boolean named) {
      return named ? texts.of("meaning.of", name, texts.of(key)) : texts.of(key);
    }
  }

  private VBox titled(Label title, SaidLines lines) {
    title.getStyleClass().add("meaning-title");
    WrappedWords.in(title);
    title.setMinHeight(USE_PREF_SIZE);
    VBox box = new VBox(title, lines);
    box.visibleProperty().bind(Bindings.isNotEmpty(lines.getChildren()));
    box.managedProperty().bind(box.visibleProperty());
    return box;
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
    boolean two = page.second().isPresent();
    first.show(page.first(), two);
    second.show(page.second(), true);
    List<String> differs = page.difference().map(this::inWords).orElse(List.of());
    differing.setText(
        two ? texts.of("beside.differs", name(page.first()), name(page.second())) : "");
    difference.say(differs);
    int lines = open.show(page.first(), two) + beside.show(page.second(), true) + differs.size();
    pseudoClassStateChanged(CROWDED, lines > COMFORTABLE);
  }

  private static String name(Optional<EffectPage.Shown> shown) {
    return shown.map(EffectPage.Shown::name).orElse("");
  }

  private List<String> inWords(Difference difference) {
    if (difference.isNone()) {
      return List.of(texts.of("beside.same"));
    }
    return Stream.concat(
            difference.onlyFirst().stream().map(s -> texts.of("beside.only-first", texts.of(s))),
            difference.onlySecond().stream().map(s -> texts.of("beside.only-second", texts.of(s))))
        .toList();
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
